// What may have happened, from figures alone.
#include "core/shop/counting/explain.h"
#include "core/shop/counting/slip.h"
#include "core/shop/counting/verdict.h"
#include "tests/catch.h"

using namespace riband;
using namespace riband::shop::counting;
using store::Explanation;
using store::Method;

namespace {

constexpr store::BeltId belt{1};

Difference differs(std::int64_t book, std::int64_t measured, std::int64_t piece = 1) {
    return {.kind = Difference::Kind::Differs,
            .count = store::CountId{1},
            .scan = store::ScanId{piece},
            .piece = store::PieceId{piece},
            .belt = belt,
            .unit = Unit::Micrometre,
            .book = book,
            .measured = measured,
            .gap = measured - book,
            .tolerance = 300};
}

Difference missing(std::int64_t book, std::int64_t piece) {
    Difference d = differs(book, 0, piece);
    d.kind = Difference::Kind::Missing;
    d.scan.reset();
    d.tolerance = 0;
    return d;
}

Difference find(std::int64_t measured, std::int64_t scan) {
    Difference d = differs(0, measured, scan);
    d.kind = Difference::Kind::Find;
    d.piece.reset();
    return d;
}

Evidence nothingKnown() { return {cutting::Rules::usual(Unit::Micrometre), {}, {}, {}, {}, {}, {}}; }

} // namespace

TEST_CASE("Within the tolerance of its method a measurement is believed, beyond it a second one is",
          "[count]") {
    const store::CountRules rules;
    const auto mm = Unit::Micrometre;
    CHECK(verdictOf({{0, Method::Tape}}, rules, mm) == Verdict::Agrees);
    CHECK(verdictOf({{-300, Method::Calliper}}, rules, mm) == Verdict::Within);
    CHECK(verdictOf({{-301, Method::Calliper}}, rules, mm) == Verdict::Again);
    CHECK(verdictOf({{-301, Method::Tape}}, rules, mm) == Verdict::Within);
    CHECK(verdictOf({{4'900, Method::Eye}}, rules, mm) == Verdict::Within);
    CHECK(verdictOf({{-4'000, Method::Calliper}, {-4'200, Method::Calliper}}, rules, mm) == Verdict::Differs);
    CHECK(verdictOf({{-4'000, Method::Calliper}, {-4'400, Method::Calliper}}, rules, mm) == Verdict::Again);
    CHECK(verdictOf({{-4'000, Method::Tape}, {-4'900, Method::Calliper}}, rules, mm) == Verdict::Differs);
    CHECK(verdictOf({{-4'000, Method::Calliper}, {100, Method::Calliper}}, rules, mm) == Verdict::Within);
    CHECK(verdictOf({{-1, Method::Eye}}, rules, Unit::Rib) == Verdict::Again); // ribs are counted
    CHECK(verdictOf({{-1, Method::Eye}, {-1, Method::Calliper}}, rules, Unit::Rib) == Verdict::Differs);
}

TEST_CASE("Two neighbouring digits in the wrong order are found as people write them", "[count]") {
    CHECK(transpositionsOf(62'400, Unit::Micrometre) == std::vector<std::int64_t>{26'400, 64'200});
    CHECK(transpositionsOf(62'450, Unit::Micrometre) == std::vector<std::int64_t>{26'450, 64'250, 62'540});
    CHECK(transpositionsOf(62'451, Unit::Micrometre).empty());
    CHECK(transpositionsOf(12, Unit::Rib) == std::vector<std::int64_t>{21});
    CHECK(transpositionsOf(20, Unit::Rib).empty()); // 02 is no figure
    CHECK(transpositionsOf(0, Unit::Rib).empty());
}

TEST_CASE("Each thing that can happen is proposed first where it fits", "[count]") {
    Evidence e = nothingKnown();
    const auto first = [&](const Difference& d) { return explain(d, e).front(); };

    SECTION("30 mm and a trim are missing, and a mounting of the piece for that is still planned") {
        e.planned = {{store::MountingId{7}, store::PieceId{1}, 2'500, 30'000}};
        const Proposal proposal = first(differs(100'000, 67'400));
        CHECK(proposal.what == Explanation::CutNotRecorded);
        CHECK(proposal.mounting == store::MountingId{7});
        CHECK(proposal.unexplained == -100);
        CHECK(proposal.likelihood > 0.9);
    }
    SECTION("the mounting was planned on another piece") {
        e.planned = {{store::MountingId{7}, store::PieceId{2}, 2'500, 30'000}};
        CHECK(first(differs(100'000, 67'500)).what == Explanation::CutFromOther);
        CHECK(first(differs(100'000, 70'000)).withTrim == false);
    }
    SECTION("a line of an order is on no ticket") {
        e.lines = {{store::LineId{4}, 30'000, 2}};
        CHECK(first(differs(100'000, 37'500)).belts == 2);
        CHECK(first(differs(100'000, 37'500)).what == Explanation::LineNotTicketed);
    }
    SECTION("a trim and a listed width, and nobody wrote it down") {
        e.listed = {20'000, 30'000};
        const Proposal proposal = first(differs(100'000, 57'500));
        CHECK(proposal.what == Explanation::SaleWithoutOrder);
        CHECK(proposal.belts == 2);
        CHECK(proposal.each == 20'000);
    }
    SECTION("one piece is short by what another is long") {
        e.others = {differs(100'000, 83'300), differs(50'000, 66'700, 2)};
        CHECK(first(e.others[0]).what == Explanation::Swapped);
        CHECK(first(e.others[0]).other == e.others[1]);
        CHECK(first(e.others[1]).other == e.others[0]);
    }
    SECTION("each of the two may be measured wrong by its own tolerance") {
        e.others = {differs(100'000, 79'750), differs(50'000, 69'750, 2)}; // −20.25 and +19.75
        CHECK(first(e.others[0]).what == Explanation::Swapped);
        e.others = {differs(100'000, 79'600), differs(50'000, 69'750, 2)}; // 0.65 apart
        CHECK(first(e.others[0]).what != Explanation::Swapped);
    }
    SECTION("digits changed places") {
        CHECK(first(differs(64'200, 62'400)).what == Explanation::Transposed);
    }
    SECTION("a trim was not booked, an edge was straightened") {
        CHECK(first(differs(64'000, 61'500)).what == Explanation::TrimForgotten);
        CHECK(first(differs(64'000, 59'600)).what == Explanation::EdgeWaste);
    }
    SECTION("a find is the missing piece of its width") {
        e.others = {missing(62'000, 5), missing(90'000, 6), find(61'900, 9)};
        CHECK(first(e.others[2]).what == Explanation::LostLabel);
        CHECK(first(e.others[2]).other == e.others[0]);
        CHECK(first(e.others[0]).other == e.others[2]);
        CHECK(first(e.others[1]).what == Explanation::Unexplained);
    }
    SECTION("what nobody can explain stays unexplained") {
        const auto all = explain(differs(100'000, 51'117), e);
        REQUIRE(all.size() == 1);
        CHECK(all.front().what == Explanation::Unexplained);
        CHECK(all.front().unexplained == -48'883);
        CHECK(all.front().likelihood == 1);
        CHECK(first(find(33'000, 9)).what == Explanation::Found);
    }
    SECTION("it was cut before the scan and recorded after it") {
        e.bookedSince = {32'500};
        CHECK(first(differs(100'000, 67'500)).what == Explanation::BookedLate);
    }
}

TEST_CASE("The likelihoods of all proposals sum to one", "[count]") {
    Evidence e = nothingKnown();
    e.listed = {10'000, 20'000, 30'000};
    e.planned = {{store::MountingId{7}, store::PieceId{1}, 2'500, 30'000},
                 {store::MountingId{8}, store::PieceId{2}, 2'500, 30'000}};
    e.lines = {{store::LineId{4}, 30'000, 1}};
    double sum = 0;
    const auto all = explain(differs(100'000, 67'500), e);
    CHECK(all.size() >= 4);
    for (const Proposal& proposal : all)
        sum += proposal.likelihood;
    CHECK(sum == Approx(1));
    CHECK(all.front().what == Explanation::CutNotRecorded);
}

TEST_CASE("Ribs are explained by whole ribs only", "[count]") {
    Evidence e{cutting::Rules::usual(Unit::Rib), {6}, {}, {}, {}, {}, {}};
    Difference d = differs(60, 53);
    d.unit = Unit::Rib;
    d.tolerance = 0;
    CHECK(explain(d, e).front().what == Explanation::SaleWithoutOrder); // 1 trim and 6
    d.measured = 54;
    d.gap = -6;
    CHECK(explain(d, e).front().what == Explanation::Unexplained);
}
