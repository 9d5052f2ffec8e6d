#include "tests/catch.h"

#include "resources/table_texts.h"
#include "ui/words/drive_words.h"

#include <stdexcept>

using namespace riband;
using namespace riband::belt::drive;
using ui::say;

namespace {

const belt::Tables& tables() {
    static const auto all = [] {
        const auto loaded = belt::Tables::load(tableTexts());
        if (!loaded) throw std::runtime_error(loaded.reason().what);
        return *loaded;
    }();
    return *all;
}

TwoPulleys twoOf(const char* name, int first, int second) {
    const belt::Profile& profile = *tables().profile(name);
    return {&profile, pulleyOf(profile, Teeth{first}), pulleyOf(profile, Teeth{second})};
}

} // namespace

TEST_CASE("A length that is at least so much is never rounded down", "[words][drive]") {
    // 66 teeth of 5 mm: 330 / (2 pi) = 52.5211 mm.
    const TwoPulleys drive = twoOf("H5M", 22, 44);
    const QString words = say(atDistance(drive, 50).reason(), drive);
    CHECK(words.contains("At a centre distance of 50.00 mm the pulleys overlap"));
    CHECK(words.contains("The least is 52.53 mm"));
    CHECK(say(withLength(drive, 200).reason(), drive).contains("275.94 mm, 56 teeth."));
}

TEST_CASE("A belt is told with its distance, how far off that is, and whether it is here", "[words][drive]") {
    const belt::Belt here{"H5M", Teeth{150}, Length::millimetres(750), "steel cord"};
    const auto choices =
        beltsFor(twoOf("H5M", 22, 44), {300, Range{10, 10}}, tables(), {{here, Width::millimetres(120)}});
    CHECK(ui::describe(choices->belts[0]) ==
          "H5M 750, 150 teeth: at 291.97 mm, 8.03 mm nearer, ratio 2:1, arcs 173.1° and "
          "186.9°, 10 teeth in mesh, here, up to 120 mm wide (steel cord)");
    CHECK(ui::describe(choices->belts[1]).contains("301.99 mm, 1.99 mm farther"));
    CHECK(ui::describe(choices->belts.back()).endsWith("more than the drive can be set"));
}

TEST_CASE("What a belt carries from memory is said to be so, and all else is left to its maker",
          "[words][drive]") {
    const TwoPulleys h = twoOf("H", 24, 48);
    const Run run = *atDistance(h, 400);
    const Duty duty{5.5, 1450, 2.5};
    const auto carried = carry(h, run, duty, Width::micrometres(50'800), tables());
    const QString words = ui::describe(pullOf(h, duty), carried).join(' ');
    CHECK(words.contains("Too narrow."));
    CHECK(words.contains("from memory"));
    CHECK(words.contains("belt maker's data"));
    CHECK(ui::describe(pullOf(h, duty), std::nullopt).join(' ').contains("belt maker's data alone"));
    // Nobody is told that 99.6 % is all: shares are rounded up.
    CHECK(words.contains("143 %")); // 13.75 / 9.6346 = 1.427
}

TEST_CASE("Pulleys of a layout are counted from one", "[words][drive]") {
    CHECK(say(RouteFault{RouteFault::Kind::Overlap, 0, 2, 1.001}) ==
          "Pulleys 1 and 3 overlap: they must be at least 1.01 mm farther apart.");
    CHECK(say(RouteFault{RouteFault::Kind::NotTouched, 1, 1, 4.5}).contains("Pulley 2"));
    CHECK(ui::describe(Contact{{}, {}, 3.14159265358979, 0, true, 12.0, -2.5}, 2) ==
          "pulley 2: arc 180.0°, 2.5 turns for one of the first, the other way round, 12 teeth in mesh");
}

TEST_CASE("Every remark and every fault of a route has its words", "[words][drive]") {
    using Kind = Remark::Kind;
    for (const Kind kind : {Kind::FewTeeth, Kind::PulleyUnderSmallest, Kind::TooClose, Kind::VeryFar,
                            Kind::NoWholeTeeth, Kind::LooksLikeOutside})
        CHECK_FALSE(say(Remark{kind, 1, Teeth{12}}, twoOf("T5", 10, 10)).isEmpty());
    using Route = RouteFault::Kind;
    for (const Route kind : {Route::TooFew, Route::Overlap, Route::NotTouched, Route::ThroughPulley,
                             Route::Crossed, Route::Impossible})
        CHECK_FALSE(say(RouteFault{kind}).isEmpty());
    CHECK(ui::driveCautions().join(' ').contains("Lock the machine out"));
}
