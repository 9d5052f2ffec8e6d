#pragma once

#include "ui/papers/leaves.h"
#include "ui/papers/papers.h"

namespace riband::ui {

/// The set-up sheet of a mounting: shaft, distance, gap, trim, tolerance; warnings; steps to tick.
void addSetUp(std::vector<Block>& rows, const shop::BenchMounting& mounting);

/// What holds at every cutter: the cautions, framed.
Block cautionsBlock(double width);

} // namespace riband::ui
