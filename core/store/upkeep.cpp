#include "core/store/upkeep.h"

#include "core/store/pieces.h"
#include "core/store/places.h"
#include "core/store/statement.h"

namespace riband::store {
namespace {

#define INSPECTIONS "SELECT piece, at_ms, person, until_day, note, taken_back_ms FROM inspection "

Inspection inspectionOf(const Statement& row) {
    return {row.get<PieceId>(0),     row.get<Moment>(1),
            row.get<PersonId>(2),    row.get<std::optional<Date>>(3),
            row.get<std::string>(4), row.get<std::optional<Moment>>(5)};
}

} // namespace

void Upkeep::relocate(PieceId piece, const std::string& place, PersonId person, Moment at) {
    const std::optional<PlaceId> to = Places{connection_}.named(place);
    change(connection_,
           "INSERT INTO relocation (piece, at_ms, person, from_place, to_place)"
           " SELECT id, ?, ?, place, ? FROM piece WHERE id = ?",
           at, person, to, piece);
    Pieces{connection_}.move(piece, place);
}

std::vector<Relocation> Upkeep::relocationsOf(PieceId piece) const {
    std::vector<Relocation> relocations;
    Statement rows{connection_,
                   "SELECT r.id, r.piece, r.at_ms, r.person, coalesce(f.name, ''), coalesce(t.name, '')"
                   " FROM relocation r LEFT JOIN place f ON f.id = r.from_place"
                   " LEFT JOIN place t ON t.id = r.to_place WHERE r.piece = ? ORDER BY r.id",
                   piece};
    while (rows.next())
        relocations.push_back({rows.get<std::int64_t>(0), rows.get<PieceId>(1), rows.get<Moment>(2),
                               rows.get<PersonId>(3), rows.get<std::string>(4), rows.get<std::string>(5)});
    return relocations;
}

void Upkeep::record(const Inspection& inspection) {
    change(connection_,
           "INSERT INTO inspection (piece, at_ms, person, until_day, note) VALUES (?, ?, ?, ?, ?)",
           inspection.piece, inspection.at, inspection.person, inspection.until, inspection.note);
}

std::vector<Inspection> Upkeep::inspectionsOf(PieceId piece) const {
    std::vector<Inspection> inspections;
    Statement rows{connection_, INSPECTIONS "WHERE piece = ? ORDER BY id", piece};
    while (rows.next())
        inspections.push_back(inspectionOf(rows));
    return inspections;
}

std::map<PieceId, Inspection> Upkeep::lastInspections() const {
    std::map<PieceId, Inspection> last;
    Statement rows{connection_, INSPECTIONS "WHERE taken_back_ms IS NULL ORDER BY id"};
    while (rows.next())
        last.insert_or_assign(rows.get<PieceId>(0), inspectionOf(rows));
    return last;
}

bool Upkeep::takeBackInspection(PieceId piece, PersonId person, Moment at) {
    return change(connection_,
                  "UPDATE inspection SET taken_back_ms = ?, taken_back_by = ? WHERE id ="
                  " (SELECT max(id) FROM inspection WHERE piece = ? AND taken_back_ms IS NULL)",
                  at, person, piece) > 0;
}

void Upkeep::weigh(MovementId movement, std::int64_t grams) {
    change(connection_, "INSERT INTO scrap_weight (movement, grams) VALUES (?, ?)", movement, grams);
}

std::optional<std::int64_t> Upkeep::gramsOf(MovementId movement) const {
    return only<std::int64_t>(connection_, "SELECT grams FROM scrap_weight WHERE movement = ?", movement);
}

} // namespace riband::store
