#include "tests/core/cutting/brute_force.h"

#include <algorithm>
#include <numeric>

namespace riband::cutting::testing {

namespace {

struct Trial {
    explicit Trial(const Problem& p) : problem{p} {
        for (const Line& line : p.lines)
            wanted.push_back(line.quantity);
        for (const Piece& piece : p.pieces) {
            rank.push_back(std::count_if(p.pieces.begin(), p.pieces.end(),
                                         [&](const Piece& other) { return other.code < piece.code; }));
        }
        takeReadyBelts();
    }

    void takeReadyBelts() {
        for (const Piece& piece : problem.pieces) {
            if (piece.kind != PieceKind::Ready) continue;
            for (std::size_t line = 0; line < wanted.size(); ++line)
                if (wanted[line] > 0 && problem.lines[line].extent == piece.extent) {
                    --wanted[line];
                    now[0] += piece.extent.count();
                    break;
                }
        }
    }

    /// Pieces from `piece` on are still to be decided.
    void tryFrom(std::size_t piece) {
        if (piece == problem.pieces.size()) {
            if (better(now, best)) best = now;
            return;
        }
        tryFrom(piece + 1); // leave it on the rack
        if (problem.pieces[piece].kind != PieceKind::Ready) choose(piece, 0, {});
    }

    /// Every choice of belts of the lines from `line` on.
    void choose(std::size_t piece, std::size_t line, std::vector<std::int64_t> belts) {
        if (line == wanted.size()) {
            mount(piece, belts);
            return;
        }
        for (std::int64_t n = 0; n <= wanted[line]; ++n) {
            std::vector<std::int64_t> more = belts;
            for (std::int64_t i = 0; i < n; ++i)
                more.push_back(problem.lines[line].extent.count());
            wanted[line] -= n;
            choose(piece, line + 1, more);
            wanted[line] += n;
        }
    }

    void mount(std::size_t piece, std::vector<std::int64_t> belts) {
        if (belts.empty()) return;
        std::sort(belts.begin(), belts.end());
        const Rules& rules = problem.rules;
        std::int64_t held = problem.pieces[piece].extent.count() - rules.trim.count();
        for (const std::int64_t belt : belts) {
            if (held < rules.stub.count() || held < belt) return;
            held -= belt + rules.kerf.count();
        }
        // The blade's kerf may not eat into what must still be held with the last belt.
        if (held < rules.end.count() || held + belts.back() < rules.stub.count()) return;
        const Best before = now;
        const Piece& p = problem.pieces[piece];
        now[0] += std::accumulate(belts.begin(), belts.end(), std::int64_t{0});
        now[1] += value(p.extent.count()) - value(held) + problem.mountingCost.count();
        now[2] += p.kind == PieceKind::Sleeve;
        now[3] += 1;
        now[4] += p.born.time_since_epoch().count();
        now[5] += rank[piece];
        tryFrom(piece + 1);
        now = before;
    }

    std::int64_t value(std::int64_t extent) const {
        return extent < problem.rules.stub.count() ? 0 : problem.worth->of(extent);
    }

    static bool better(const Best& a, const Best& b) {
        if (a[0] != b[0]) return a[0] > b[0];
        return a < b;
    }

    const Problem& problem;
    std::vector<std::int64_t> wanted, rank;
    Best now{};
    Best best{-1};
};

} // namespace

Best bruteForce(const Problem& problem) {
    Trial trial{problem};
    trial.tryFrom(0);
    return trial.best;
}

} // namespace riband::cutting::testing
