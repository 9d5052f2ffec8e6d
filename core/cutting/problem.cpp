#include "core/cutting/problem.h"

#include <algorithm>
#include <numeric>
#include <set>
#include <stdexcept>

namespace riband::cutting {

namespace {

// Far above any shop, and low enough that no sum of the planner leaves 64 bits.
constexpr std::int64_t mostExtent = 100'000'000; // 100 m in µm
constexpr std::int64_t mostBelts = 1'000'000;
constexpr std::size_t mostPieces = 100'000;
constexpr std::size_t mostLines = 20'000;
constexpr std::int64_t mostWorth = 1'000'000'000;

void require(bool holds, const char* rule) {
    if (!holds) throw std::invalid_argument{rule};
}

bool usable(Extent extent, Unit unit) { return extent.unit() == unit && extent.count() <= mostExtent; }

void requireRules(const Rules& rules) {
    for (const Extent extent : {rules.trim, rules.kerf, rules.end, rules.stub})
        require(usable(extent, rules.unit()), "the rules of a cutter are in one unit and under 100 m");
}

void requirePieces(const std::vector<Piece>& pieces, Unit unit) {
    require(pieces.size() <= mostPieces, "more pieces of one belt than can be planned");
    std::set<std::string> codes;
    for (const Piece& piece : pieces) {
        require(usable(piece.extent, unit), "a piece is in the unit of its belt and under 100 m");
        require(codes.insert(piece.code).second, "each piece has its own code");
    }
}

void requireLines(const std::vector<Line>& lines, Unit unit) {
    require(lines.size() <= mostLines, "more lines of one belt than can be planned");
    std::set<std::string> ids;
    std::int64_t belts = 0;
    for (const Line& line : lines) {
        require(usable(line.extent, unit), "a line is in the unit of its belt and under 100 m");
        require(!line.extent.isNone(), "a line asks for some width");
        require(line.quantity > 0, "a line asks for at least one belt");
        require(line.quantity <= mostBelts && (belts += line.quantity) <= mostBelts,
                "more belts than can be planned");
        require(ids.insert(line.id).second, "each line has its own id");
    }
}

class Plain final : public Worth {
public:
    explicit Plain(std::int64_t stub) : stub_{stub} {}
    std::int64_t of(std::int64_t extent) const override { return extent < stub_ ? 0 : extent; }
    std::int64_t grain(std::int64_t widths) const override { return widths; }

private:
    std::int64_t stub_;
};

class Steps final : public Worth {
public:
    Steps(std::int64_t stub, std::vector<Point> points) : stub_{stub}, points_{std::move(points)} {
        for (std::size_t i = 0; i < points_.size(); ++i) {
            require(points_[i].worth >= 0 && points_[i].worth <= mostWorth,
                    "a worth is not negative and under 10^9");
            require(i == 0 || points_[i - 1].extent < points_[i].extent, "points of worth go upwards");
            require(i == 0 || points_[i - 1].worth <= points_[i].worth, "worth never falls with width");
        }
    }
    std::int64_t of(std::int64_t extent) const override {
        if (extent < stub_) return 0;
        const auto above = std::upper_bound(points_.begin(), points_.end(), extent,
                                            [](std::int64_t e, const Point& p) { return e < p.extent; });
        return above == points_.begin() ? 0 : std::prev(above)->worth;
    }
    std::int64_t grain(std::int64_t) const override {
        std::int64_t common = 0;
        for (const Point& point : points_)
            common = std::gcd(common, point.worth);
        return std::max<std::int64_t>(common, 1);
    }

private:
    std::int64_t stub_;
    std::vector<Point> points_;
};

Extent inUnit(Extent cost, Unit unit) {
    if (cost.isNone()) return Extent::none(unit);
    require(usable(cost, unit), "the cost of a mounting is in the unit of the belt and under 100 m");
    return cost;
}

} // namespace

Rules Rules::usual(Unit unit) {
    if (unit == Unit::Rib) return {Ribs{1}, Ribs{0}, Ribs{1}, Ribs{3}};
    return {Width::micrometres(2500), Width::millimetres(0), Width::millimetres(5), Width::millimetres(15)};
}

Extent Rules::reserve(Extent widest) const {
    const Extent held = widest < stub ? stub - widest : Extent::none(unit());
    return std::max(end, held);
}

std::shared_ptr<const Worth> Worth::plain(Extent stub) { return std::make_shared<Plain>(stub.count()); }

std::shared_ptr<const Worth> Worth::steps(Extent stub, std::vector<Point> points) {
    return std::make_shared<Steps>(stub.count(), std::move(points));
}

Problem::Problem(Rules theRules, std::vector<Piece> thePieces, std::vector<Line> theLines,
                 std::shared_ptr<const Worth> theWorth, Extent theMountingCost)
    : rules{theRules}, pieces{std::move(thePieces)}, lines{std::move(theLines)},
      worth{theWorth ? std::move(theWorth) : Worth::plain(theRules.stub)},
      mountingCost{inUnit(theMountingCost, theRules.unit())} {
    requireRules(rules);
    requirePieces(pieces, rules.unit());
    requireLines(lines, rules.unit());
}

} // namespace riband::cutting
