#include "core/cutting/plan.h"

#include <algorithm>
#include <map>

// Looks at a finished plan with nothing but the rules in hand: no figure of the planner is believed, none of
// its code is used. Plain sums in the order of the plan.

namespace riband::cutting {

namespace {

class Checker {
public:
    Checker(const Problem& problem, const Plan& plan)
        : problem_{problem}, plan_{plan}, used_(problem.pieces.size(), 0), served_(problem.lines.size(), 0) {}

    std::vector<std::string> run() {
        if (!indexesExist()) return faults_;
        for (const Taken& taken : plan_.taken)
            checkTaken(taken);
        for (const Mounting& mounting : plan_.mountings)
            checkMounting(mounting);
        checkUse();
        checkServed();
        checkReadyFirst();
        checkFigures();
        return faults_;
    }

private:
    void fault(std::string text) { faults_.push_back(std::move(text)); }
    void expect(bool holds, const std::string& text) {
        if (!holds) fault(text);
    }
    const std::string& code(std::size_t piece) const { return problem_.pieces[piece].code; }
    const std::string& id(std::size_t line) const { return problem_.lines[line].id; }

    bool indexesExist() {
        const auto piece = [&](std::size_t i) { return i < problem_.pieces.size(); };
        const auto line = [&](std::size_t i) { return i < problem_.lines.size(); };
        bool all = true;
        for (const Taken& taken : plan_.taken)
            all = all && piece(taken.piece) && line(taken.line);
        for (const Unserved& unserved : plan_.unserved)
            all = all && line(unserved.line);
        for (const Mounting& mounting : plan_.mountings) {
            all = all && piece(mounting.piece);
            for (const Cut& cut : mounting.cuts)
                all = all && line(cut.line);
        }
        expect(all, "the plan names a piece or a line that is not there");
        return all;
    }

    void checkTaken(const Taken& taken) {
        const Piece& piece = problem_.pieces[taken.piece];
        expect(piece.kind == PieceKind::Ready, piece.code + " is taken as it is but no ready belt");
        expect(piece.extent == problem_.lines[taken.line].extent,
               piece.code + " is not of the width of line " + id(taken.line));
        ++used_[taken.piece];
        ++served_[taken.line];
        sold_ += piece.extent.count();
    }

    void checkMounting(const Mounting& mounting) {
        const Piece& piece = problem_.pieces[mounting.piece];
        expect(piece.kind != PieceKind::Ready, piece.code + " is a ready belt and can't be cut");
        expect(!mounting.cuts.empty(), piece.code + " is mounted for nothing");
        ++used_[mounting.piece];
        const std::int64_t gone = cutAway(mounting);
        const std::int64_t left = piece.extent.count() - gone;
        expect(mounting.left.unit() == problem_.rules.unit(), "the rest of " + piece.code + " mixes units");
        expect(mounting.left.count() == left, "the rest of " + piece.code + " is not what is left of it");
        checkRest(mounting, left);
        spent_ += worthOf(piece.extent.count()) - worthOf(left) + problem_.mountingCost.count();
        trim_ += problem_.rules.trim.count();
        if (piece.kind == PieceKind::Sleeve) ++newSleeves_;
    }

    /// Trim, belts and kerfs of a mounting; walks the cuts as the blade does.
    std::int64_t cutAway(const Mounting& mounting) {
        const std::int64_t extent = problem_.pieces[mounting.piece].extent.count();
        std::int64_t gone = problem_.rules.trim.count();
        std::int64_t last = 0;
        for (const Cut& cut : mounting.cuts) {
            const std::int64_t width = problem_.lines[cut.line].extent.count();
            expect(cut.count > 0, code(mounting.piece) + " has a cut of no belts");
            expect(width >= last, code(mounting.piece) + " is not cut narrow first, the widest last");
            last = width;
            for (std::int64_t n = 0; n < cut.count; ++n) {
                expect(extent - gone >= problem_.rules.stub.count(),
                       code(mounting.piece) + " can't be held any more when line " + id(cut.line) +
                           " is cut");
                gone += width + problem_.rules.kerf.count();
                kerf_ += problem_.rules.kerf.count();
                sold_ += width;
            }
            served_[cut.line] += cut.count;
        }
        const std::int64_t left = extent - gone;
        expect(left >= problem_.rules.end.count(), code(mounting.piece) + " has no end left");
        expect(left + last >= problem_.rules.stub.count(),
               code(mounting.piece) + " is too narrow to be held for its last belt");
        return gone;
    }

    void checkRest(const Mounting& mounting, std::int64_t left) {
        const Rest right = left <= 0                            ? Rest::Nothing
                           : left < problem_.rules.stub.count() ? Rest::Scrap
                                                                : Rest::Remnant;
        expect(mounting.rest == right, "the rest of " + code(mounting.piece) + " is not called what it is");
        if (right == Rest::Scrap) scrapped_ += left;
    }

    std::int64_t worthOf(std::int64_t extent) const {
        return extent < problem_.rules.stub.count() ? 0 : problem_.worth->of(extent);
    }

    void checkUse() {
        for (std::size_t i = 0; i < used_.size(); ++i)
            expect(used_[i] <= 1, code(i) + " is used more than once");
    }

    void checkServed() {
        std::vector<std::int64_t> missing(problem_.lines.size(), 0);
        for (const Unserved& unserved : plan_.unserved) {
            expect(unserved.count > 0, "line " + id(unserved.line) + " lacks no belts");
            expect(unserved.why == why(unserved.line),
                   "line " + id(unserved.line) + " is unserved, but why?");
            missing[unserved.line] += unserved.count;
        }
        for (std::size_t line = 0; line < missing.size(); ++line)
            expect(served_[line] + missing[line] == problem_.lines[line].quantity,
                   "line " + id(line) + " gets more or fewer belts than it asks for");
    }

    Unserved::Why why(std::size_t line) const {
        bool any = false, wide = false;
        const std::int64_t width = problem_.lines[line].extent.count();
        const Rules& rules = problem_.rules;
        for (const Piece& piece : problem_.pieces) {
            if (piece.kind == PieceKind::Ready) continue;
            any = true;
            const std::int64_t left = piece.extent.count() - rules.trim.count() - width - rules.kerf.count();
            if (left >= rules.end.count() && left + width >= rules.stub.count()) wide = true;
        }
        return !any ? Unserved::Why::NoPiece : wide ? Unserved::Why::NotEnough : Unserved::Why::TooNarrow;
    }

    /// No belt is cut, and none is missing, while a ready one of its width lies on the shelf.
    void checkReadyFirst() {
        std::map<std::int64_t, std::int64_t> asked, onShelf, taken;
        for (const Line& line : problem_.lines)
            asked[line.extent.count()] += line.quantity;
        for (const Piece& piece : problem_.pieces)
            if (piece.kind == PieceKind::Ready) ++onShelf[piece.extent.count()];
        for (const Taken& t : plan_.taken)
            ++taken[problem_.pieces[t.piece].extent.count()];
        for (const auto& [width, belts] : asked)
            expect(taken[width] == std::min(belts, onShelf[width]),
                   "ready belts of " + std::to_string(width) + " are not used first");
    }

    void checkFigures() {
        expect(plan_.sold.count() == sold_, "sold is not the width of the belts");
        expect(plan_.trim.count() == trim_, "trim is not one a mounting");
        expect(plan_.kerf.count() == kerf_, "kerf is not one a belt");
        expect(plan_.scrapped.count() == scrapped_, "scrapped is not the sum of the useless rests");
        expect(plan_.newSleeves == newSleeves_, "the new sleeves are miscounted");
        expect(plan_.worthSpent == spent_, "the worth spent is wrong");
        expect(plan_.bound <= plan_.worthSpent, "the bound is above the plan itself");
        expect(!plan_.proven || plan_.bound == plan_.worthSpent, "proven, but the bound is lower");
    }

    const Problem& problem_;
    const Plan& plan_;
    std::vector<int> used_;
    std::vector<std::int64_t> served_;
    std::int64_t sold_ = 0, trim_ = 0, kerf_ = 0, scrapped_ = 0, newSleeves_ = 0, spent_ = 0;
    std::vector<std::string> faults_;
};

} // namespace

std::vector<std::string> check(const Problem& problem, const Plan& plan) {
    return Checker{problem, plan}.run();
}

} // namespace riband::cutting
