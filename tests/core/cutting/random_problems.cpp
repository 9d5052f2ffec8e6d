#include "tests/core/cutting/random_problems.h"

#include <algorithm>
#include <set>

namespace riband::cutting::testing {

namespace {

Rules rulesOf(const Mix& mix, Dice& dice) {
    Rules rules = Rules::usual(mix.unit);
    if (mix.mostKerf > 0)
        rules.kerf = Extent::of(mix.unit, dice.multiple(mix.unit == Unit::Rib ? 1 : 100, 0, mix.mostKerf));
    return rules;
}

std::vector<Piece> piecesOf(const Mix& mix, Dice& dice, const std::vector<Line>& lines) {
    std::vector<Piece> pieces;
    const auto add = [&](PieceKind kind, std::int64_t extent) {
        // Codes in no order of age or width.
        const std::string code = std::to_string(dice.number(0, 9)) + "-" + std::to_string(pieces.size());
        pieces.push_back(
            {code, kind, Extent::of(mix.unit, extent), Date{std::chrono::days{20'000 + dice.number(0, 5)}}});
    };
    const std::int64_t sleeves = dice.number(0, mix.sleeves), remnants = dice.number(0, mix.remnants);
    for (std::int64_t i = 0; i < sleeves; ++i)
        add(PieceKind::Sleeve, mix.sleeve);
    for (std::int64_t i = 0; i < remnants; ++i)
        add(PieceKind::Remnant, dice.multiple(mix.widthStep, mix.narrowestPiece, mix.sleeve));
    const std::int64_t ready = dice.number(0, mix.ready);
    for (std::int64_t i = 0; i < ready; ++i)
        add(PieceKind::Ready,
            lines[static_cast<std::size_t>(dice.number(0, static_cast<std::int64_t>(lines.size()) - 1))]
                .extent.count());
    return pieces;
}

std::vector<Line> linesOf(const Mix& mix, Dice& dice) {
    std::vector<Line> lines;
    const std::int64_t count = dice.number(1, mix.lines);
    for (std::int64_t i = 0; i < count; ++i)
        lines.push_back({std::to_string(i + 1),
                         Extent::of(mix.unit, dice.multiple(mix.widthStep, mix.narrowest, mix.widest)),
                         dice.number(1, mix.mostBelts)});
    return lines;
}

std::shared_ptr<const Worth> worthOf(const Mix& mix, const Rules& rules, Dice& dice) {
    if (mix.worthSteps == 0) return nullptr;
    std::set<std::int64_t> at, worths;
    for (int i = 0; i < mix.worthSteps; ++i) {
        at.insert(dice.multiple(mix.widthStep, 0, mix.sleeve));
        worths.insert(dice.multiple(mix.widthStep, 0, mix.sleeve));
    }
    std::vector<Worth::Point> points;
    auto worth = worths.begin();
    for (const std::int64_t extent : at)
        if (worth != worths.end()) points.push_back({extent, *worth++});
    return Worth::steps(rules.stub, points);
}

} // namespace

Problem randomProblem(const Mix& mix, std::uint64_t seed) {
    Dice dice{seed};
    const Rules rules = rulesOf(mix, dice);
    std::vector<Line> lines = linesOf(mix, dice);
    std::vector<Piece> pieces = piecesOf(mix, dice, lines);
    auto worth = worthOf(mix, rules, dice);
    const Extent cost =
        Extent::of(mix.unit, mix.mostMountingCost == 0 ? 0 : dice.number(0, mix.mostMountingCost));
    return {rules, std::move(pieces), std::move(lines), std::move(worth), cost};
}

Mix smallMix(std::uint64_t seed) {
    Mix mix;
    if (seed % 5 == 4) {
        mix.unit = Unit::Rib;
        mix.widthStep = 1;
        mix.narrowest = 1;
        mix.widest = 20;
        mix.narrowestPiece = 2;
        mix.sleeve = 60;
    } else if (seed % 5 == 3) {
        mix.widthStep = 1; // any micrometre
    } else if (seed % 5 == 2) {
        mix.sleeve = 150'000; // scarce: much goes unserved
    }
    const bool ribs = mix.unit == Unit::Rib;
    if (seed % 3 == 1) mix.mostKerf = ribs ? 1 : 2'000;
    if (seed % 4 == 1) mix.mostMountingCost = ribs ? 3 : 5'000;
    if (seed % 2 == 1) mix.worthSteps = 1 + static_cast<int>(seed % 7);
    return mix;
}

} // namespace riband::cutting::testing
