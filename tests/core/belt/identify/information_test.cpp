#include "tests/catch.h"

#include "core/belt/identify/next.h"
#include "tests/core/belt/identify/counter.h"

#include <cmath>

using namespace riband::belt::identify;

namespace {

/// Of one answer: a reading drawn, and what chance a reading has.
class Draw {
public:
    Draw(const Measurement& measurement, const Answer& answer, const Sample& sample)
        : error_{measurement.error}, condition_{sample.condition} {
        if (tellsLength(measurement.what))
            way_ = *lengthReading(measurement.what, answer.sizes->figures, answer.sizes->profile->ribbed(),
                                  answer.belt);
        else
            way_ = readingsOf(measurement, *answer.sizes, sample).ways.front();
    }
    double reading(Hand& hand) const {
        double wear = 0;
        if (condition_ == Condition::Used || (condition_ == Condition::Unknown && hand.even() < .5))
            wear = hand.even();
        return hand.normal(way_.atNew + way_.perWear * wear, std::hypot(way_.spread, error_));
    }
    /// Wear summed in a hundred even steps, not by the nodes under test.
    double chance(double reading) const {
        const double spread = std::hypot(way_.spread, error_);
        const auto at = [&](double wear) {
            const double z = (reading - way_.atNew - way_.perWear * wear) / spread;
            return std::exp(-z * z / 2) / spread;
        };
        if (condition_ == Condition::New) return at(0);
        double used = 0;
        for (int i = 0; i < 100; ++i)
            used += at((i + .5) / 100) / 100;
        return condition_ == Condition::Used ? used : (at(0) + used) / 2;
    }

private:
    Way way_{};
    double error_;
    Condition condition_;
};

/// Information by brute force: draw an answer, draw its reading, weigh all answers again, see what is left
/// open.
Information simulated(const Inquiry& inquiry, const Sample& sample, const Measurement& measurement,
                      int draws) {
    std::vector<Draw> each;
    double before = 0;
    for (const Answer& answer : inquiry.answers) {
        each.emplace_back(measurement, answer, sample);
        before -= answer.probability * std::log2(answer.probability);
    }
    Hand hand{11};
    double left = 0, certainty = 0;
    for (int draw = 0; draw < draws; ++draw) {
        double pick = hand.even();
        std::size_t truth = 0;
        while (truth + 1 < inquiry.answers.size() && pick >= inquiry.answers[truth].probability)
            pick -= inquiry.answers[truth++].probability;
        const double reading = each[truth].reading(hand);
        std::vector<double> after;
        double sum = 0, most = 0;
        for (std::size_t i = 0; i < each.size(); ++i)
            sum += after.emplace_back(inquiry.answers[i].probability * each[i].chance(reading));
        for (const double p : after) {
            if (p > 0) left -= p / sum * std::log2(p / sum) / draws;
            most = std::max(most, p / sum);
        }
        certainty += most / draws;
    }
    return {before - left, certainty};
}

Inquiry among(const std::vector<std::pair<const char*, double>>& profiles) {
    Inquiry inquiry{{}, false};
    for (const auto& [name, probability] : profiles)
        inquiry.answers.push_back({probability, &sizesOf(name), {0, 0}});
    return inquiry;
}

} // namespace

TEST_CASE("Two answers two deviations apart are worth 0.4859 bits", "[identify]") {
    // The capacity of the binary-input Gaussian channel at 0 dB (known from coding theory: 0.4859), and the
    // share that a threshold in the middle gets right, the normal distribution at 1: 0.84134.
    const Information information =
        informationOf({{.5, Outlook::Normal{-1, 1}}, {.5, Outlook::Normal{1, 1}}});
    CHECK(information.bits == Approx(.4859).margin(.0002));
    CHECK(information.certainty == Approx(.84134).margin(.001));
}

TEST_CASE("Answers far apart give their whole entropy, answers alike give nothing", "[identify]") {
    const auto far = informationOf({{.25, Outlook::Normal{0, 1}}, {.75, Outlook::Normal{100, 1}}});
    CHECK(far.bits == Approx(.811278).margin(1e-4)); // -1/4 log2 1/4 - 3/4 log2 3/4
    CHECK(far.certainty == Approx(1));
    const auto alike = informationOf({{.25, Outlook::Normal{5, 1}}, {.75, Outlook::Normal{5, 1}}});
    CHECK(alike.bits == Approx(0).margin(1e-9));
    CHECK(alike.certainty == Approx(.75));
}

TEST_CASE("A reading sharper than any grid still tells all", "[identify]") {
    const auto information =
        informationOf({{.5, Outlook::Normal{0, 1e-9}}, {.5, Outlook::Normal{1000, 1e-9}}});
    CHECK(information.bits == Approx(1));
    CHECK(information.certainty == Approx(1));
}

TEST_CASE("That a measure can't be taken is an outcome, too", "[identify]") {
    const auto information =
        informationOf({{.5, std::nullopt}, {.25, Outlook::Normal{0, 1}}, {.25, Outlook::Normal{0, 1}}});
    CHECK(information.bits == Approx(1));
}

TEST_CASE("A word that is said rightly nine times of ten of two is worth 0.531 bits", "[identify]") {
    // The binary symmetric channel: 1 - H(0.1) = 1 - 0.468996.
    const auto information = informationOf(std::vector<double>{.5, .5}, {{.9, .1}, {.1, .9}});
    CHECK(information.bits == Approx(.531004).margin(1e-6));
    CHECK(information.certainty == Approx(.9));
}

TEST_CASE("Expected information is what brute force finds", "[identify]") {
    const Inquiry inquiry = GENERATE(among({{"T5", .4}, {"XL", .5}, {"AT5", .1}}),
                                     among({{"H8M", .55}, {"S8M", .25}, {"R8M", .1}, {"G8M", .1}}),
                                     among({{"L", .5}, {"m3", .3}, {"T10", .2}}));
    const Sample sample{
        {}, SeenShape::Trapezoid, GENERATE(Condition::New, Condition::Used, Condition::Unknown)};
    double best = 0, bestSimulated = 0, ofBestSimulated = 0;
    for (const Measurement& each : mayFollow(inquiry, sample, Errors{})) {
        if (each.what == Measure::RibsOver) continue; // none of these has ribs
        const Information found = informationOf(inquiry, sample, each);
        const Information brute = simulated(inquiry, sample, each, 20'000);
        INFO(static_cast<int>(each.what) << " over " << each.over);
        // 20 000 draws are good to about 0.01; wear is taken as normal with its spread, which costs up to
        // 0.02.
        CHECK(found.bits == Approx(brute.bits).margin(.03));
        CHECK(found.certainty == Approx(brute.certainty).margin(.02));
        if (found.bits > best) {
            best = found.bits;
            ofBestSimulated = brute.bits;
        }
        bestSimulated = std::max(bestSimulated, brute.bits);
    }
    CHECK(ofBestSimulated >= bestSimulated - .03); // the choice is the best by brute force, too
}

TEST_CASE("Counting teeth is weighed as counting: brute force over whole numbers agrees", "[identify]") {
    Inquiry inquiry{{}, true};
    const Sizes& t5 = sizesOf("T5");
    for (const double teeth : {99., 100., 101., 104.})
        inquiry.answers.push_back({.25, &t5, {5 * teeth, teeth}});
    const Measurement count{Measure::Teeth, 0, Errors{}.of(Measure::Teeth)};
    // One of 99, 100, 101, 104; one off once in fifty: the counts that can be mistaken, by hand.
    const double right = 1 / (1 + 2 * std::exp(-.5 / (.33 * .33))), off = (1 - right) / 2;
    const auto h = [](double p) { return p > 0 ? -p * std::log2(p) : 0; };
    double all = 0; // H(count) - H(count | teeth)
    for (const double p : {off / 4, (right + off) / 4, (right + 2 * off) / 4, (right + off) / 4, off / 4,
                           off / 4, right / 4, off / 4})
        all += h(p);
    const double given = h(right) + 2 * h(off);
    CHECK(informationOf(inquiry, Sample{}, count).bits == Approx(all - given).margin(.002));
}

TEST_CASE("T5 or XL: over 10 teeth a rule can't tell, over 20 it can, more is not asked for", "[identify]") {
    const Inquiry inquiry = among({{"T5", .5}, {"XL", .5}});
    const auto next = nextMeasure(inquiry, {{over(10, 50.4)}, SeenShape::Trapezoid}, Errors{}, .9);
    REQUIRE(next);
    CHECK(next->what == Measure::PitchOver);
    CHECK(next->over == 20);
    SECTION("a calliper can over 10") {
        Errors calliper;
        calliper.set(Measure::PitchOver, .1);
        CHECK(nextMeasure(inquiry, {{}, SeenShape::Trapezoid}, calliper, .9)->over == 10);
    }
}

TEST_CASE("Nothing is asked for that was measured, nor what would tell nothing", "[identify]") {
    const Inquiry alike = among({{"T5", 1}});
    CHECK_FALSE(nextMeasure(alike, {{}, SeenShape::Trapezoid}, Errors{}, .9));
    for (const Measurement& each : mayFollow(among({{"T5", .5}, {"XL", .5}}),
                                             {{over(20, 100), read(Measure::Thickness, 2.2)}}, Errors{})) {
        CHECK(each.what != Measure::Thickness);
        CHECK_FALSE(tellsLength(each.what)); // only the profile is asked for
        if (each.what == Measure::PitchOver) CHECK(each.over > 20);
    }
}
