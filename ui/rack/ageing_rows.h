#pragma once

#include "core/shop/ageing.h"
#include "core/shop/piece_worth.h"
#include "core/store/places.h"

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

/// Those at this place or in it, as the tree has it: "B3" holds the shelf B3-2; as people type it, so that
/// the first letters of places do, too. All for "".
AgeingRows rowsAt(const AgeingRows& rows, const std::string& typed, const std::vector<store::Place>& places);

} // namespace riband::ui
