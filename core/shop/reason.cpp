#include "core/shop/reason.h"

#include "core/foresight/kept_for.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using Kind = Reason::Kind;

/// All belts that are cut, as if in one mounting.
struct Need {
    Extent width;  ///< trim, kerfs and belts
    Extent widest; ///< of the belts
};

Need needOf(const cutting::Problem& problem, const cutting::Plan& plan) {
    Need need{problem.rules.trim, Extent::none(problem.rules.unit())};
    for (const cutting::Mounting& mounting : plan.mountings)
        for (const cutting::Cut& cut : mounting.cuts) {
            const Extent belt = problem.lines[cut.line].extent;
            need.width = need.width + (belt + problem.rules.kerf) * cut.count;
            need.widest = std::max(need.widest, belt);
        }
    return need;
}

/// The pieces, but for the plan's own first, that could give everything alone; the smallest first.
std::vector<cutting::Piece> rivalsOf(const cutting::Problem& problem, const cutting::Plan& plan) {
    const Need need = needOf(problem, plan);
    const Extent least = need.width + problem.rules.reserve(need.widest);
    std::vector<cutting::Piece> rivals;
    for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
        const cutting::Piece& piece = problem.pieces[i];
        if (i != plan.mountings.front().piece && piece.kind != PieceKind::Ready && piece.extent >= least)
            rivals.push_back(piece);
    }
    std::sort(rivals.begin(), rivals.end(), [](const cutting::Piece& a, const cutting::Piece& b) {
        return a.extent != b.extent ? a.extent < b.extent : a.born < b.born;
    });
    return rivals;
}

bool isDead(const cutting::Problem& problem, Extent left) { return problem.worth->of(left.count()) == 0; }

bool hasRemnant(const std::vector<cutting::Piece>& pieces) {
    return std::any_of(pieces.begin(), pieces.end(),
                       [](const cutting::Piece& piece) { return piece.kind == PieceKind::Remnant; });
}

Reason besideRival(const cutting::Problem& problem, const cutting::Mounting& mounting,
                   const cutting::Piece& rival) {
    const cutting::Piece& chosen = problem.pieces[mounting.piece];
    const Extent left = mounting.left;
    const Extent rivalLeft = rival.extent - (chosen.extent - left);
    if (chosen.extent < rival.extent) return {Kind::SmallestThatFits, left, ""};
    if (isDead(problem, rivalLeft)) return {Kind::AvoidsDead, rivalLeft, rival.code};
    if (chosen.born < rival.born) return {Kind::Oldest, left, rival.code};
    if (chosen.extent == rival.extent) return {Kind::SmallestThatFits, left, ""};
    return {Kind::KeepsWider, left, rival.code};
}

Reason ofOneMounting(const cutting::Problem& problem, const cutting::Plan& plan) {
    const cutting::Mounting& mounting = plan.mountings.front();
    const std::vector<cutting::Piece> rivals = rivalsOf(problem, plan);
    const bool sleeve = problem.pieces[mounting.piece].kind == PieceKind::Sleeve;
    if (isDead(problem, mounting.left)) return {Kind::Finishes, mounting.left, ""};
    if (sleeve && !hasRemnant(rivals)) return {Kind::NewSleeve, mounting.left, ""};
    if (rivals.empty()) return {Kind::OnlyPiece, mounting.left, ""};
    return besideRival(problem, mounting, rivals.front());
}

/// What the mountings of a plan leave.
std::vector<Extent> leftsOf(const cutting::Plan& plan) {
    std::vector<Extent> lefts;
    for (const cutting::Mounting& mounting : plan.mountings)
        lefts.push_back(mounting.left);
    return lefts;
}

/// And after their belts for the shelf.
std::vector<Extent> leftsOf(const cutting::Problem& problem, const Way& way) {
    std::vector<Extent> lefts;
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i)
        lefts.push_back(way.left(i, problem.rules));
    return lefts;
}

/// The smallest piece that would give everything in one mounting.
std::optional<std::string> oneForAll(const cutting::Problem& problem, const cutting::Plan& plan) {
    const Need need = needOf(problem, plan);
    const Extent least = need.width + problem.rules.reserve(need.widest);
    const cutting::Piece* smallest = nullptr;
    for (const cutting::Piece& piece : problem.pieces)
        if (piece.kind != PieceKind::Ready && piece.extent >= least &&
            (!smallest || piece.extent < smallest->extent))
            smallest = &piece;
    return smallest ? std::optional{smallest->code} : std::nullopt;
}

/// Several mountings although one would do: they use up what is of no more use, or are cheaper.
Reason ofSeveral(const cutting::Problem& problem, const cutting::Plan& plan,
                 const std::vector<Extent>& lefts) {
    Extent dead = Extent::none(problem.rules.unit());
    bool lives = false;
    for (const Extent left : lefts) {
        lives = lives || !isDead(problem, left);
        if (isDead(problem, left)) dead = dead + left;
    }
    const auto count = static_cast<std::int64_t>(lefts.size());
    const auto one = oneForAll(problem, plan);
    if (!one) return {Kind::SeveralPieces, dead, "", count};
    if (lives) return {Kind::SeveralPieces, dead, *one, count};
    return {Kind::Finishes, dead, "", count};
}

std::int64_t beltsMissing(const cutting::Plan& plan) {
    std::int64_t belts = 0;
    for (const cutting::Unserved& unserved : plan.unserved)
        belts += unserved.count;
    return belts;
}

/// What it is expected to cost to take the other piece instead; nothing if that was not weighed.
std::optional<std::int64_t> costOfTaking(const std::string& code, const cutting::Problem& problem,
                                         const std::vector<Way>& all) {
    for (const Way& way : all)
        if (way.plan.mountings.size() == 1 && problem.pieces[way.plan.mountings.front().piece].code == code)
            return way.extra;
    return std::nullopt;
}

std::optional<Reason::Kept> keptFor(const Outlook& outlook, const Future& learned, const std::string& code) {
    const auto& pieces = outlook.problem.pieces;
    const auto piece = std::find_if(pieces.begin(), pieces.end(),
                                    [&](const cutting::Piece& each) { return each.code == code; });
    if (piece == pieces.end()) return std::nullopt;
    const auto kept = foresight::keptFor(outlook.past.setting, learned.table, learned.outlook,
                                         static_cast<foresight::Size>(piece->extent.count()));
    if (!kept) return std::nullopt;
    return Reason::Kept{Extent::of(outlook.belt.unit, kept->line.width), kept->line.quantity,
                        static_cast<int>(std::lround(100 * kept->share))};
}

/// Then a piece that is kept for just such belts is no reason.
bool cutsForShelf(const Way& way, Extent belt) {
    return std::any_of(way.forShelf.begin(), way.forShelf.end(), [&](const std::vector<Extent>& belts) {
        return std::find(belts.begin(), belts.end(), belt) != belts.end();
    });
}

/// What is expected is told to a tenth of a millimetre.
std::int64_t expectation(Unit unit, std::int64_t count) {
    constexpr std::int64_t grain = 100;
    return unit == Unit::Rib ? count : (count + grain / 2) / grain * grain;
}

/// A smaller piece stays although it would do.
Reason spares(const Outlook& outlook, const Future& learned, const Way& way, Reason reason,
              const std::vector<Way>& all) {
    const auto saved = costOfTaking(reason.other, outlook.problem, all);
    if (!saved) return reason;
    if (*saved < outlook.problem.rules.trim.count()) {
        reason.kind = Kind::AboutTheSame;
        return reason;
    }
    const auto kept = keptFor(outlook, learned, reason.other);
    if (!kept || cutsForShelf(way, kept->extent)) return reason;
    reason.keptFor = kept;
    reason.kind = Kind::KeepsFor;
    reason.figure = Extent::of(outlook.belt.unit, expectation(outlook.belt.unit, *saved));
    return reason;
}

bool saysWhatStays(Kind kind) {
    return kind == Kind::Finishes || kind == Kind::SmallestThatFits || kind == Kind::OnlyPiece ||
           kind == Kind::KeepsWider || kind == Kind::Oldest || kind == Kind::NewSleeve;
}

/// The one mounting cuts belts for the shelf as well: what stays is what they leave, if it can stay.
Reason afterShelf(const Outlook& outlook, const Way& way, Reason reason) {
    if (!saysWhatStays(reason.kind)) return reason;
    const Extent left = way.left(0, outlook.problem.rules);
    const auto belts = static_cast<std::int64_t>(way.forShelf.front().size());
    if (isDead(outlook.problem, left)) return {Kind::FinishesForShelf, left, "", belts, {}};
    reason.figure = left;
    reason.count = belts;
    return reason;
}

} // namespace

bool goesBack(const cutting::Problem& problem, Extent left) {
    return left >= problem.rules.stub && !isDead(problem, left);
}

Reason reasonOf(const cutting::Problem& problem, const cutting::Plan& plan) {
    const Extent none = Extent::none(problem.rules.unit());
    if (!plan.unserved.empty()) return {Kind::Unserved, none, "", beltsMissing(plan), {}};
    if (plan.mountings.empty())
        return {Kind::FromShelf, none, "", static_cast<std::int64_t>(plan.taken.size())};
    return plan.mountings.size() > 1 ? ofSeveral(problem, plan, leftsOf(plan)) : ofOneMounting(problem, plan);
}

Reason reasonOf(const Outlook& outlook, const Future* learned, const Way& way, const std::vector<Way>& all) {
    Reason reason = reasonOf(outlook.problem, way.plan);
    if (!way.plan.unserved.empty()) return reason;
    if (way.fillsShelf())
        reason = way.plan.mountings.size() == 1
                     ? afterShelf(outlook, way, reason)
                     : ofSeveral(outlook.problem, way.plan, leftsOf(outlook.problem, way));
    if (learned && reason.kind == Kind::KeepsWider) return spares(outlook, *learned, way, reason, all);
    return reason;
}

} // namespace riband::shop
