#pragma once

#include "core/store/verify.h"

namespace riband::store {

// The parts of verify(): each recomputes one thing and adds what it finds. Throw StoreError.

void checkDatabase(Connection& connection, Verification& found);
void checkForeignKeys(Connection& connection, Verification& found);
/// Every movement sums to zero in width and in money, and has postings.
void checkMovements(Connection& connection, Verification& found);
/// What a piece keeps of its extent and cost is the sum of its postings.
void checkPieces(Connection& connection, Verification& found);
/// The sums that reports read are those of the postings.
void checkFlows(Connection& connection, Verification& found);
void checkScatters(Connection& connection, Verification& found);
void checkPieceCodes(Connection& connection, Verification& found);
/// Open mountings promise no more than the piece has, and keep the right figure of it.
void checkReservations(Connection& connection, Verification& found);
/// Belts cut of a line, times their width, are what the ledger sold of it.
void checkLines(Connection& connection, Verification& found);
void checkOrderStates(Connection& connection, Verification& found);
void checkTicketStates(Connection& connection, Verification& found);
/// Every scan has the width that the ledger had at its moment, every settlement its movement, and a countered
/// one a movement that is undone. Names what closed counts have left open.
void checkCounts(Connection& connection, Verification& found);
/// No movement, mounting or line touches a piece or line of another belt.
void checkUnits(Connection& connection, Verification& found);

} // namespace riband::store
