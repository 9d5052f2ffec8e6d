#include "core/shop/offers.h"
#include "core/shop/reason.h"
#include "tests/catch.h"

namespace riband::shop {

namespace {

using cutting::PieceKind;
using Kind = Reason::Kind;

constexpr Date march{std::chrono::year{2026} / 3 / 1};

Extent mm(std::int64_t millimetres) { return Width::millimetres(millimetres); }
Extent um(std::int64_t micrometres) { return Width::micrometres(micrometres); }

/// The usual rules, 20 mm the narrowest listed width: a rest under 2.5 + 20 + 5 = 27.5 mm is dead.
cutting::Problem problem(std::vector<cutting::Piece> pieces, std::vector<cutting::Line> lines) {
    const cutting::Rules rules = cutting::Rules::usual(Unit::Micrometre);
    return {rules, std::move(pieces), std::move(lines), usableWorth(rules, {mm(20), mm(30), mm(50)}), mm(4)};
}

cutting::Piece remnant(const char* code, Extent extent, int daysOld = 0) {
    return {code, PieceKind::Remnant, extent, march - std::chrono::days{daysOld}};
}

cutting::Piece sleeve(const char* code, Extent extent) { return {code, PieceKind::Sleeve, extent, march}; }

Reason reasonFor(const cutting::Problem& p, std::size_t piece, std::int64_t belts) {
    cutting::Plan plan = cutting::bestFit(p);
    const Extent used = p.rules.trim + p.lines.front().extent * belts;
    plan.mountings = {{piece, {{0, belts}}, p.pieces[piece].extent - used, cutting::Rest::Remnant}};
    plan.taken.clear();
    plan.unserved.clear();
    return reasonOf(p, plan);
}

void checkReason(const Reason& reason, Kind kind, Extent figure, const std::string& other = "") {
    CHECK(static_cast<int>(reason.kind) == static_cast<int>(kind));
    CHECK(reason.figure == figure);
    CHECK(reason.other == other);
}

} // namespace

TEST_CASE("What can never give a listed width again is worth nothing", "[suggest]") {
    const auto worth = usableWorth(cutting::Rules::usual(Unit::Micrometre), {mm(50), mm(20)});
    CHECK(worth->of(27'499) == 0);
    CHECK(worth->of(27'500) == 27'500);
    SECTION("Without listed widths the stub is the limit") {
        const auto plain = usableWorth(cutting::Rules::usual(Unit::Micrometre), {});
        CHECK(plain->of(14'999) == 0);
        CHECK(plain->of(15'000) == 15'000);
    }
    SECTION("A narrow listed width needs what must stay on the shaft: 2.5 + 6 + 9") {
        const auto narrow = usableWorth(cutting::Rules::usual(Unit::Micrometre), {mm(6)});
        CHECK(narrow->of(17'499) == 0);
        CHECK(narrow->of(17'500) == 17'500);
    }
}

TEST_CASE("A piece that is used up says what little is thrown away", "[suggest]") {
    // 105 - 2.5 - 3 x 30 = 12.5 beside a sleeve of 400.
    const auto p = problem({remnant("A", mm(105)), sleeve("S", mm(400))}, {{"1", mm(30), 3}});
    checkReason(reasonFor(p, 0, 3), Kind::Finishes, um(12'500));
}

TEST_CASE("A plan that spares a dead rest names the piece and the rest", "[suggest]") {
    // 41.5 would leave 9; 150 leaves 117.5.
    const auto p = problem({remnant("A", um(41'500)), remnant("B", mm(150))}, {{"1", mm(30), 1}});
    checkReason(reasonFor(p, 1, 1), Kind::AvoidsDead, mm(9), "A");
}

TEST_CASE("The smallest that fits says what it leaves", "[suggest]") {
    const auto p = problem({remnant("A", mm(80)), remnant("B", mm(150))}, {{"1", mm(30), 1}});
    checkReason(reasonFor(p, 0, 1), Kind::SmallestThatFits, um(47'500));
}

TEST_CASE("An older piece taken before a smaller one says so", "[suggest]") {
    const auto p = problem({remnant("A", mm(80)), remnant("B", mm(150), 90)}, {{"1", mm(30), 1}});
    checkReason(reasonFor(p, 1, 1), Kind::Oldest, um(117'500), "A");
}

TEST_CASE("A wider piece of the same age keeps the smaller one whole", "[suggest]") {
    const auto p = problem({remnant("A", mm(80)), remnant("B", mm(150))}, {{"1", mm(30), 1}});
    checkReason(reasonFor(p, 1, 1), Kind::KeepsWider, um(117'500), "A");
}

TEST_CASE("The only piece that can give the belts says so", "[suggest]") {
    const auto p = problem({remnant("A", mm(30)), remnant("B", mm(150))}, {{"1", mm(30), 1}});
    checkReason(reasonFor(p, 1, 1), Kind::OnlyPiece, um(117'500));
}

TEST_CASE("A sleeve is opened because no remnant is wide enough", "[suggest]") {
    const auto p =
        problem({remnant("A", mm(30)), sleeve("S", mm(400)), sleeve("T", mm(400))}, {{"1", mm(30), 1}});
    checkReason(reasonFor(p, 1, 1), Kind::NewSleeve, um(367'500));
}

TEST_CASE("Ready belts on the shelf need no cutting", "[suggest]") {
    const auto p =
        problem({{"R", PieceKind::Ready, mm(30), march}, sleeve("S", mm(400))}, {{"1", mm(30), 1}});
    const Reason reason = reasonOf(p, cutting::plan(p));
    CHECK(reason.kind == Kind::FromShelf);
    CHECK(reason.count == 1);
}

TEST_CASE("Several mountings say how many, and that no piece could do it alone", "[suggest]") {
    // 3 x 30 = 90: neither 80 nor 60 takes it all; together 2 and 1.
    const auto p = problem({remnant("A", mm(80)), remnant("B", mm(60))}, {{"1", mm(30), 3}});
    const Reason reason = reasonOf(p, cutting::plan(p));
    CHECK(reason.kind == Kind::SeveralPieces);
    CHECK(reason.count == 2);
}

TEST_CASE("Several mountings of which all rests are dead finish their pieces, and say how much is lost",
          "[suggest]") {
    // A leaves 6, B leaves 7.5: dead. S would take all three.
    const auto p =
        problem({remnant("A", um(68'500)), remnant("B", mm(40)), sleeve("S", mm(400))}, {{"1", mm(30), 3}});
    cutting::Plan plan = cutting::bestFit(p);
    plan.unserved.clear();
    plan.mountings = {{0, {{0, 2}}, mm(6), cutting::Rest::Scrap},
                      {1, {{0, 1}}, um(7'500), cutting::Rest::Scrap}};
    const Reason reason = reasonOf(p, plan);
    checkReason(reason, Kind::Finishes, um(13'500));
    CHECK(reason.count == 2);
    SECTION("where one of the rests lives nothing is finished: the piece that would do alone is named") {
        plan.mountings[1].left = mm(40);
        checkReason(reasonOf(p, plan), Kind::SeveralPieces, mm(6), "S");
    }
    SECTION("a rest that can be held, but of which nothing listed can be cut, is lost all the same") {
        plan.mountings[1] = {1, {{0, 1}}, mm(20), cutting::Rest::Remnant};
        checkReason(reasonOf(p, plan), Kind::Finishes, mm(26));
    }
}

TEST_CASE("A new sleeve that is used up says so", "[suggest]") {
    const auto p = problem({sleeve("S", mm(100))}, {{"1", mm(85), 1}});
    checkReason(reasonFor(p, 0, 1), Kind::Finishes, um(12'500));
}

TEST_CASE("What can't be given is counted", "[suggest]") {
    const auto p = problem({remnant("A", mm(80))}, {{"1", mm(30), 5}});
    const Reason reason = reasonOf(p, cutting::plan(p));
    CHECK(reason.kind == Kind::Unserved);
    CHECK(reason.count == 3);
}

} // namespace riband::shop
