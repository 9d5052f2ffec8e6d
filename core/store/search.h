#pragma once

#include "core/belt/belt.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <string>
#include <vector>

namespace riband::store {

/// The pieces on the rack in whose words each of these stands as the beginning of a word: code (with and
/// without its dash), belt, kind (sleeve, remnant, offcut, ready), place, batch, width in mm or ribs,
/// supplier, delivery note. By SQLite's full-text index; in no order. Words without a letter or digit are
/// left out; none at all finds nothing.
std::vector<PieceId> findPieces(Connection& connection, const std::vector<std::string>& words);

/// What is found of a piece, or of every piece at a place or of a belt, is what the book says, from the end
/// of the transaction that changed it on, and for whoever asks inside it. The classes of this folder call it:
/// whoever changes a piece need not. A piece is put into the index once a transaction.
void indexPiece(Connection& connection, PieceId piece);
void indexPlace(Connection& connection, PlaceId place);
void indexBelt(Connection& connection, BeltId belt);
/// Puts in what is waiting; Transaction::commit does it.
void indexWaiting(Connection& connection);

/// Every spelling that a belt is looked for by: "H8M 1200 H8M1200 8M 8M1200".
std::string searchWords(const belt::Belt& belt);

/// Puts the words of every belt in that has none yet, and those of its pieces: after an older schema was
/// brought up.
void wordBelts(Connection& connection);

} // namespace riband::store
