#include "core/store/shelf_cuts.h"

#include "core/store/statement.h"

namespace riband::store {

bool ShelfCuts::drop(const TicketMounting& mounting, Extent stub) {
    Extent freed = Extent::none(mounting.trim.unit());
    for (const TicketCut& cut : mounting.cuts)
        if (!cut.line) freed = freed + (cut.extent + mounting.kerf) * cut.count;
    if (freed.isNone()) return false;
    change(connection_, "DELETE FROM mounting_cut WHERE mounting = ? AND line IS NULL", mounting.id);
    change(connection_,
           "UPDATE mounting SET reserved = reserved - ?, left_over = left_over + ?, rest_kept = ?"
           " WHERE id = ?",
           freed, freed, mounting.left + freed >= stub, mounting.id);
    return true;
}

} // namespace riband::store
