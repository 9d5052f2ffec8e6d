#include "core/shop/counting/findings.h"

#include <algorithm>
#include <set>

namespace riband::shop::counting {

namespace {

using store::Account;
using store::Act;

bool isSince(const store::RecordedMovement& recorded, const store::Scan& scan) {
    return !scan.after || recorded.id > *scan.after;
}

std::set<store::MovementId> undone(const std::vector<store::RecordedMovement>& life) {
    std::set<store::MovementId> ids;
    for (const store::RecordedMovement& recorded : life)
        if (recorded.movement.about().undoes) ids.insert(*recorded.movement.about().undoes);
    return ids;
}

/// A correction, or a cut whose rest was measured otherwise than the figures said.
bool measures(const store::Movement& movement, store::PieceId piece) {
    if (movement.about().act == Act::Correct) return true;
    if (movement.about().act == Act::Undo) return false;
    for (const store::Posting& posting : movement.postings())
        if (posting.account == Account::Difference && posting.piece == piece) return true;
    return false;
}

} // namespace

namespace {

template <class Since>
bool measured(const std::vector<store::RecordedMovement>& life, store::PieceId piece, const Since& since) {
    const std::set<store::MovementId> takenBack = undone(life);
    return std::any_of(life.begin(), life.end(), [&](const store::RecordedMovement& recorded) {
        return since(recorded) && !takenBack.contains(recorded.id) && measures(recorded.movement, piece);
    });
}

} // namespace

bool wasMeasuredSince(const std::vector<store::RecordedMovement>& life, const store::Scan& scan) {
    return measured(life, *scan.piece, [&](const auto& recorded) { return isSince(recorded, scan); });
}

bool wasMeasuredAfter(const std::vector<store::RecordedMovement>& life, store::MovementId movement,
                      store::PieceId piece) {
    return measured(life, piece, [&](const auto& recorded) { return recorded.id > movement; });
}

std::int64_t undoneSince(const std::vector<store::RecordedMovement>& life, const store::Scan& scan) {
    std::int64_t given = 0;
    for (const store::RecordedMovement& recorded : life) {
        const auto mistake = recorded.movement.about().undoes;
        if (!mistake || !isSince(recorded, scan) || !scan.after || *mistake > *scan.after) continue;
        for (const store::Posting& posting : recorded.movement.postings())
            if ((posting.account == Account::Rack || posting.account == Account::Ready) &&
                posting.piece == scan.piece)
                given += posting.amount;
    }
    return given;
}

std::vector<std::int64_t> cutsSince(const std::vector<store::RecordedMovement>& life,
                                    const store::Scan& scan) {
    const std::set<store::MovementId> takenBack = undone(life);
    std::vector<std::int64_t> cuts;
    for (const store::RecordedMovement& recorded : life) {
        const Act act = recorded.movement.about().act;
        if (!isSince(recorded, scan) || takenBack.contains(recorded.id)) continue;
        if (act != Act::Cut && act != Act::Miscut) continue;
        for (const store::Posting& posting : recorded.movement.postings())
            if (posting.account == Account::Rack && posting.piece == scan.piece)
                cuts.push_back(-posting.amount);
    }
    return cuts;
}

} // namespace riband::shop::counting
