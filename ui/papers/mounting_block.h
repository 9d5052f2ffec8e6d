#pragma once

#include "ui/papers/leaves.h"
#include "ui/papers/papers.h"

namespace riband::ui {

/// One mounting on the cutting ticket: which piece, how the cutter is set up, the band, every stop with its
/// box to tick, what is left. One block, so that it is never cut in two by the end of a page that is so wide.
Block mountingBlock(const shop::BenchMounting& mounting, const std::vector<store::Order>& orders,
                    std::size_t number, std::size_t of, const store::ShopSettings& shop,
                    const belt::Tables& tables, double width);

} // namespace riband::ui
