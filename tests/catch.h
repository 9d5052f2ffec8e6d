#pragma once

/// Catch2 2 (Debian 12) and 3 alike: tests include this and write `Approx` plainly.
#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
#endif
