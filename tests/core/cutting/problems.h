#pragma once

#include "core/cutting/planner.h"
#include "tests/catch.h"

#include <cmath>

/// Short ways to write problems in tests.
namespace riband::cutting::testing {

inline Extent mm(double millimetres) {
    return Width::micrometres(static_cast<std::int64_t>(std::llround(millimetres * 1000)));
}
inline Date day(int number) { return Date{std::chrono::days{20'000 + number}}; }

inline Piece sleeve(std::string code, double width = 400, int born = 0) {
    return {std::move(code), PieceKind::Sleeve, mm(width), day(born)};
}
inline Piece remnant(std::string code, double width, int born = 0) {
    return {std::move(code), PieceKind::Remnant, mm(width), day(born)};
}
inline Piece ready(std::string code, double width, int born = 0) {
    return {std::move(code), PieceKind::Ready, mm(width), day(born)};
}
inline Line line(std::string id, double width, std::int64_t quantity = 1) {
    return {std::move(id), mm(width), quantity};
}
inline Problem toothed(std::vector<Piece> pieces, std::vector<Line> lines) {
    return {Rules::usual(Unit::Micrometre), std::move(pieces), std::move(lines)};
}
inline Problem ribbed(std::vector<Piece> pieces, std::vector<Line> lines) {
    return {Rules::usual(Unit::Rib), std::move(pieces), std::move(lines)};
}

/// Plans, and holds every plan that is told of on the way to the rules.
inline Plan checkedPlan(const Problem& problem) {
    Limits limits;
    limits.better = [&](const Plan& plan) { CHECK(check(problem, plan) == std::vector<std::string>{}); };
    Plan result = plan(problem, limits);
    CHECK(check(problem, result) == std::vector<std::string>{});
    return result;
}

} // namespace riband::cutting::testing
