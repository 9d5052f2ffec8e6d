#include "core/shop/ready_piece.h"

namespace riband::shop {

store::PieceId addReadyFrom(const Shop& shop, const store::StockPiece& piece) {
    return store::Pieces{shop.connection}.add({.belt = piece.belt,
                                               .kind = cutting::PieceKind::Ready,
                                               .parent = piece.id,
                                               .place = "",
                                               .received = dayOf(shop.now()),
                                               .made = piece.born(),
                                               .batch = piece.batch});
}

} // namespace riband::shop
