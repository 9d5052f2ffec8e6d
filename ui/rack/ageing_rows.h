#pragma once

#include "core/shop/ageing.h"
#include "core/shop/piece_worth.h"

#include <map>
#include <vector>

namespace riband::ui {

/// What ages out, what is not worth its place, and what each of them is good for by its belt's worth table.
struct AgeingRows {
    std::vector<shop::AgeingPiece> ageing;
    std::vector<shop::Burden> burdens;
    std::map<store::PieceId, shop::PieceWorth> worths;
};
AgeingRows ageingRows(const shop::Shop& shop, std::chrono::days within);

} // namespace riband::ui
