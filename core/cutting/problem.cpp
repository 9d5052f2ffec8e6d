#include "core/cutting/problem.h"
