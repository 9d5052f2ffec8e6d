#include "tests/catch.h"

#include "resources/table_texts.h"
#include "ui/words/identify_words.h"

#include <stdexcept>

using namespace riband;
using namespace riband::belt::identify;
using ui::say;

namespace {

const Prior& prior() {
    static const Prior lists = [] {
        const auto tables = belt::Tables::load(tableTexts());
        if (!tables) throw std::runtime_error(tables.reason().what);
        return Prior{*tables};
    }();
    return lists;
}

QString why(const Sample& sample) { return ui::why(identify(sample, prior()), sample); }

Measurement read(Measure what, double value, int over = 0) { return {what, value, Errors{}.of(what), over}; }

QString between(const char* first, const char* second) {
    const auto& tables = prior().tables();
    return say(interchange(*tables.profile(first), *tables.profile(second)), first, second);
}

} // namespace

TEST_CASE("What can't be told apart is said with its figures and what would tell", "[words][identify]") {
    const QString words = why({{read(Measure::PitchOver, 50.4, 10)}, SeenShape::Trapezoid});
    CHECK(words.contains("It may be XL (51 %)"));
    CHECK(words.contains("Over 10 teeth XL and T5 differ by 0.8 mm; over 20 by 1.6 mm: measure 20."));
}

TEST_CASE("A reading that is off is said with what it is off, and from what", "[words][identify]") {
    const QString words = why({{read(Measure::PitchOver, 60, 10)}});
    CHECK(words == "The distance over 10 teeth is 60 mm, which is 2.83 mm less than the 62.83 mm of m2. "
                   "Measure again.");
}

TEST_CASE("A belt that is in no list is said to be in none", "[words][identify]") {
    const Sample sample{{read(Measure::PitchOver, 250, 50), read(Measure::Teeth, 633),
                         read(Measure::Outside, 3168), read(Measure::Thickness, 2.2)},
                        SeenShape::Trapezoid};
    CHECK(identify(sample, prior()).settled);
    CHECK(why(sample).contains("in no maker's list"));
}

TEST_CASE("Why look-alikes don't interchange is said with what they differ in", "[words][identify]") {
    CHECK(between("H8M", "S8M") ==
          "H8M and S8M have the same pitch but never interchange: the tooth is 0.33 mm "
          "lower, the belt is 0.7 mm thinner.");
    CHECK(between("T5", "XL") ==
          "T5 and XL never interchange: over 10 teeth they are 0.8 mm apart, over 20 1.6 mm.");
    CHECK(between("L", "L").contains("dimensionally the same"));
    CHECK(between("L", "L").contains("ARPM IP-24"));
}

TEST_CASE("Every measure, shape, verdict and fault has words", "[words][identify]") {
    for (std::size_t i = 0; i < measureCount; ++i) {
        const auto what = static_cast<Measure>(i);
        CHECK_FALSE(ui::nameOf(what, 20).isEmpty());
        CHECK_FALSE(ui::shownReading(what, 20).isEmpty());
    }
    for (std::size_t i = 0; i < shapeCount; ++i)
        CHECK_FALSE(say(static_cast<SeenShape>(i)).isEmpty());
    using Kind = SampleFault::Kind;
    for (const Kind kind : {Kind::Nothing, Kind::NotPositive, Kind::TooLarge, Kind::NotWhole, Kind::TooFew})
        CHECK_FALSE(say(SampleFault{kind, Measure::Teeth}).isEmpty());
    const Prior& lists = prior();
    for (const belt::Profile& first : lists.tables().profiles())
        for (const belt::Profile& second : lists.tables().profiles())
            CHECK_FALSE(say(interchange(first, second), "A", "B").isEmpty());
    // All that may ever be asked next.
    const Inquiry inquiry{{{1, &lists.sizes().front(), {100, 50}}}, true};
    for (const Measurement& each : mayFollow(inquiry, {{read(Measure::Outside, 1200)}}, Errors{}))
        CHECK_FALSE(say(Next{each.what, each.over, {1, 1}}).isEmpty());
}
