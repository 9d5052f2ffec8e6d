#include "tests/core/belt/identify/every_belt.h"

#include <algorithm>
#include <cstdio>

namespace riband::belt::identify {
namespace {

constexpr int mostQuestions = 8;
constexpr int run = 20, ribs = 5;

int longestRun(const Hand::Held& held) { return std::min(run, static_cast<int>(held.belt.teeth) / 2); }

Sample atOnce(Hand& hand, const Hand::Held& held) {
    Sample sample;
    sample.shape = seenShape(*held.profile);
    if (held.profile->ribbed()) {
        sample.measured = {hand.measure(held, Measure::RibsOver, ribs), hand.measure(held, Measure::Outside)};
    } else {
        sample.measured = {hand.measure(held, Measure::PitchOver, longestRun(held)),
                           hand.measure(held, Measure::Teeth)};
    }
    sample.measured.push_back(hand.measure(held, Measure::Thickness));
    return sample;
}

/// Of a short loop not so many teeth lie flat.
int reachable(const Next& next, const Hand::Held& held) {
    return next.what == Measure::PitchOver ? std::min(next.over, static_cast<int>(held.belt.teeth) / 2)
                                           : next.over;
}

/// Teeth can't be measured where there are ribs, nor a distance over more teeth than was measured already.
bool canMeasure(const Next& next, const Hand::Held& held, const Sample& sample) {
    const bool ribbed = held.profile->ribbed();
    switch (next.what) {
    case Measure::PitchOver:
        return !ribbed && reachable(next, held) > pitchesTaken(sample);
    case Measure::Teeth:
    case Measure::ToothHeight:
    case Measure::ToothRoot:
        return !ribbed;
    case Measure::RibsOver:
        return ribbed;
    case Measure::Outside:
    case Measure::Thickness:
        return true;
    default:
        return false;
    }
}

/// What can always be had, and tells a length.
Measure lengthAnyhow(const Hand::Held& held) {
    return held.profile->ribbed() ? Measure::Outside : Measure::Teeth;
}

/// The talk at the counter. Who can't measure what is asked tells the length instead, once.
Sample asAsked(Hand& hand, const Hand::Held& held) {
    Sample sample;
    sample.shape = seenShape(*held.profile);
    for (int question = 1; question < mostQuestions; ++question) {
        const Identification answer = identify(sample, listsOnly());
        if (!answer.next) break;
        if (canMeasure(*answer.next, held, sample))
            sample.measured.push_back(hand.measure(held, answer.next->what, reachable(*answer.next, held)));
        else if (!sample.find(lengthAnyhow(held)))
            sample.measured.push_back(hand.measure(held, lengthAnyhow(held)));
        else
            break;
    }
    return sample;
}

bool isIt(const Candidate& candidate, const Profile& profile, Length length) {
    return candidate.belt && candidate.profile == &profile && candidate.belt->length == length;
}

void book(const Identification& answer, const Profile& profile, Length length, Row& row) {
    const auto& candidates = answer.candidates;
    const bool first = isIt(candidates.front(), profile, length);
    row.belts += 1;
    row.first += first;
    row.stated += std::any_of(candidates.begin(), candidates.end(),
                              [&](const Candidate& each) { return isIt(each, profile, length); });
    row.settled += answer.settled;
    row.settledWrongly += answer.settled && !first;
    row.set += static_cast<int>(candidates.size());
    if (candidates.front().profile != &profile) row.takenFor[candidates.front().profile->name] += 1;
}

Row measureAll(const Profile& profile, Talk talk, Hand& hand, std::size_t each) {
    Row row{profile.name};
    const auto& lengths = listsOnly().tables().lengths(profile.name);
    for (std::size_t i = 0; i < lengths.size(); i += each) {
        const double wear = hand.even() < .5 ? 0 : hand.even();
        const auto held = hand.pickUp(profile, lengths[i], wear);
        const Sample sample = talk == Talk::AtOnce ? atOnce(hand, held) : asAsked(hand, held);
        row.questions += static_cast<int>(sample.measured.size()) + (sample.shape ? 1 : 0);
        Wishes all;
        all.most = 1000; // the whole stated set
        book(identify(sample, listsOnly(), all), profile, lengths[i].length, row);
    }
    return row;
}

std::string takenFor(const Row& row) {
    std::string text;
    for (const auto& [profile, times] : row.takenFor)
        text += (text.empty() ? "" : ", ") + profile + " " + std::to_string(times);
    return text;
}

std::string line(const Row& row) {
    char text[400];
    std::snprintf(text, sizeof text, "| %s | %d | %d | %d | %d | %d | %.1f | %.1f | %s |\n",
                  row.profile.c_str(), row.belts, row.first, row.stated, row.settled, row.settledWrongly,
                  static_cast<double>(row.set) / row.belts, static_cast<double>(row.questions) / row.belts,
                  takenFor(row).c_str());
    return text;
}

} // namespace

std::vector<Row> measureEveryBelt(Talk talk, Hand hand, std::size_t each) {
    std::vector<Row> rows;
    for (const Profile& profile : listsOnly().tables().profiles())
        if (!profile.doubleSided && !listsOnly().tables().lengths(profile.name).empty())
            rows.push_back(measureAll(profile, talk, hand, each));
    return rows;
}

Row sumOf(const std::vector<Row>& rows) {
    Row sum{"all"};
    for (const Row& row : rows) {
        sum.belts += row.belts;
        sum.first += row.first;
        sum.stated += row.stated;
        sum.settled += row.settled;
        sum.settledWrongly += row.settledWrongly;
        sum.set += row.set;
        sum.questions += row.questions;
    }
    return sum;
}

std::string asTable(const std::vector<Row>& rows) {
    std::string text = "| profile | belts | first | first or in the stated set | settled | settled wrongly | "
                       "belts in the set | measures | taken for |\n"
                       "| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n";
    for (const Row& row : rows)
        text += line(row);
    return text + line(sumOf(rows));
}

} // namespace riband::belt::identify
