#pragma once

#include "ui/papers/leaves.h"
#include "ui/papers/papers.h"

namespace riband::ui {

/// The set-up sheet of a mounting, for a paper so wide: shaft, distance, gap, trim; warnings; steps to tick.
void addSetUp(std::vector<Block>& rows, const shop::BenchMounting& mounting, double width);

/// What holds at every cutter: the cautions, framed.
Block cautionsBlock(double width);

} // namespace riband::ui
