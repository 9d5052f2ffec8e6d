#include "core/belt/reading/candidate.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Fault = ReadFault::Kind;
using Remark = Reading::Remark;

constexpr std::int64_t fewestTeeth = 10; // fewer is no belt at all
const Length longest = Length::millimetres(30'000);

class ToothedReader {
public:
    ToothedReader(const Phrase& phrase, const Profile& profile, const Style& style, const Tables& tables)
        : phrase_{phrase}, profile_{profile}, style_{style}, tables_{tables} {}

    Attempt run() {
        if (phrase_.ribs) {
            keepFault(attempt_, {Fault::NotUnderstood, phrase_.ribs->said, {}, {}}, 0);
            return attempt_;
        }
        const bool lengthSaid = phrase_.teeth || phrase_.length;
        for (const Roles& roles : rolesOf(phrase_, lengthSaid, phrase_.width.has_value()))
            tryRoles(roles);
        if (attempt_.candidates.empty() && !attempt_.fault)
            keepFault(attempt_, {Fault::NoLength, {}, {}, {}}, 0);
        chooseToothed(attempt_, phrase_, profile_, tables_);
        return std::move(attempt_);
    }

private:
    const SaidNumber& open(int index) const { return phrase_.open[static_cast<std::size_t>(index)]; }

    std::optional<SaidNumber> widthOf(const Roles& roles) const {
        if (roles.width >= 0) return open(roles.width);
        return phrase_.width;
    }

    /// The number that says the length or the teeth.
    SaidNumber lengthOf(const Roles& roles) const {
        if (phrase_.teeth) return *phrase_.teeth;
        SaidNumber number = phrase_.length ? *phrase_.length : open(roles.length);
        if (style_.millimetres && number.unit == Measure::None) number.unit = Measure::Millimetre;
        return number;
    }

    std::vector<LengthRead> lengthsOf(const SaidNumber& number) const {
        if (!phrase_.teeth) return toothedLengths(number, profile_, tables_);
        const bool whole = number.whole() && !number.negative && number.wholePart() > 0;
        if (!whole || number.wholePart() > 100'000) return {};
        return {lengthOfTeeth(number.wholePart(), Basis::Count, profile_, tables_)};
    }

    /// Only with the letter S itself does a number in front say tenths.
    bool isFirst(const Roles& roles) const {
        if (phrase_.mention.kind == Mention::Kind::BarePitch) return false;
        return roles.width >= 0 && static_cast<std::size_t>(roles.width) < phrase_.before &&
               (roles.length < 0 || roles.width < roles.length);
    }

    void tryRoles(const Roles& roles) {
        const SaidNumber number = lengthOf(roles);
        std::vector<LengthRead> lengths;
        for (const LengthRead& read : lengthsOf(number))
            if (read.teeth->count() >= fewestTeeth && read.length <= longest) lengths.push_back(read);
        const auto width = widthOf(roles);
        std::vector<WidthRead> widths;
        if (width) widths = widthsOf(*width, roles);
        const bool widthFits = !width || fitsSleeve(widths);
        if (lengths.empty())
            return keepFault(attempt_, lengthFault(number), faultScore(roles, {}, widthFits));
        if (!widthFits)
            return keepFault(attempt_, widthFault(*width, widths), faultScore(roles, lengths, false));
        const auto quantity = quantityOf(phrase_, roles);
        if (!quantity) return keepFault(attempt_, quantity.reason(), 5);
        for (const LengthRead& length : lengths) {
            if (!width) add(roles, length, std::nullopt, *quantity);
            for (const WidthRead& read : widths)
                if (inSleeve(read)) add(roles, length, read, *quantity);
        }
    }

    std::vector<WidthRead> widthsOf(const SaidNumber& number, const Roles& roles) const {
        const bool bareMillimetres = style_.millimetres && number.isBare() && number.millionths > 0;
        if (bareMillimetres) return {{.width = Width::millimetres(number.wholePart()), .plausible = true}};
        return saidWidths(number, profile_, isFirst(roles), tables_);
    }

    bool inSleeve(const WidthRead& read) const {
        return read.width.inMicrometres() > 0 && Extent{read.width} <= tables_.widestSleeve(profile_.name);
    }
    bool fitsSleeve(const std::vector<WidthRead>& widths) const {
        return std::any_of(widths.begin(), widths.end(),
                           [&](const WidthRead& read) { return inSleeve(read); });
    }

    /// The likeliest way to read an impossible text: one part of it right, the longer number the length
    /// unless the other is a length that is made.
    int faultScore(const Roles& roles, const std::vector<LengthRead>& lengths, bool widthRight) const {
        const bool made =
            std::any_of(lengths.begin(), lengths.end(), [](const LengthRead& read) { return read.listed; });
        const bool longer = roles.length >= 0 && roles.width >= 0 &&
                            open(roles.length).millionths > open(roles.width).millionths;
        return (lengths.empty() ? 0 : 2) + (made ? 2 : 0) + (widthRight ? 2 : 0) + (longer ? 1 : 0) -
               (roles.quantity >= 0 ? 1 : 0);
    }

    ReadFault lengthFault(const SaidNumber& number) const {
        const auto reads = lengthsOf(number);
        if (isOnlyAWidth(number)) return {Fault::NoLength, number.said, {}, {}};
        if (!reads.empty() || number.millionths == 0 || number.negative || phrase_.teeth)
            return {Fault::LengthImpossible, number.said, {}, {}};
        return {
            Fault::LengthNotMultiple, number.said, nearestMade(profile_, meantLength(number), tables_), {}};
    }

    /// "XL 25" and "T5 10": the one number is a width that is sold, so the length is missing.
    bool isOnlyAWidth(const SaidNumber& number) const {
        if (phrase_.open.size() != 1 || phrase_.width || phrase_.length || phrase_.teeth) return false;
        const auto widths = saidWidths(number, profile_, false, tables_);
        return std::any_of(widths.begin(), widths.end(), [](const WidthRead& read) { return read.listed; });
    }

    /// The length that an impossible number stands for, to find what is near it.
    Length meantLength(const SaidNumber& number) const {
        const bool code = profile_.family == Family::InchTrapezoidal && number.unit == Measure::None;
        return code ? Length::nanometres(number.millionths * 254 / 100) : number.millimetres();
    }

    ReadFault widthFault(const SaidNumber& number, const std::vector<WidthRead>& widths) const {
        const bool none = widths.empty() || number.millionths == 0 || number.negative;
        if (none) return {Fault::WidthNotPositive, number.said, {}, {}};
        return {Fault::WidthOverSleeve, number.said, {}, tables_.widestSleeve(profile_.name)};
    }

    void add(const Roles& roles, const LengthRead& length, std::optional<WidthRead> width,
             std::int64_t quantity) {
        Candidate candidate{{.belt = {profile_.name, length.teeth, length.length, phrase_.construction}}};
        candidate.roles = roles;
        candidate.basis = length.basis;
        Reading& reading = candidate.reading;
        reading.quantity = quantity;
        reading.doubleSided = profile_.doubleSided;
        reading.said = lengthOf(roles).said;
        remarkOn(reading, length);
        candidate.score = length.listed ? 4 : length.teeth->count() >= usualTeeth ? 2 : 1;
        if (width) takeWidth(candidate, *width, widthOf(roles)->said);
        const bool anyOrder = profile_.family == Family::MetricTrapezoidal;
        if (!anyOrder && roles.length >= 0 && roles.width > roles.length) ++candidate.score;
        attempt_.candidates.push_back(std::move(candidate));
    }

    void remarkOn(Reading& reading, const LengthRead& length) const {
        if (length.remark) reading.remarks.push_back(*length.remark);
        if (length.teeth->count() < usualTeeth) reading.remarks.push_back(Remark::ShortForBelt);
        if (length.listed || tables_.lengths(profile_.name).empty()) return;
        reading.remarks.push_back(Remark::LengthNotListed);
        reading.nearestMade = nearestMade(profile_, length.length, tables_);
    }

    /// "300 H 10" may be ten ribs: then 10 is no width that was meant for the toothed belt.
    void takeWidth(Candidate& candidate, const WidthRead& width, const std::string& said) const {
        if (style_.ribbedToo && !width.listed) return;
        candidate.reading.width = Extent{width.width};
        candidate.widthListed = width.listed;
        candidate.widthByCode = width.byCode;
        candidate.plausible = width.plausible;
        candidate.score += width.listed ? 3 : width.plausible ? 1 : -2;
        if (!width.fromLabel) return;
        candidate.reading.remarks.push_back(Remark::WidthFromLabel);
        candidate.reading.saidWidth = said;
    }

    const Phrase& phrase_;
    const Profile& profile_;
    const Style& style_;
    const Tables& tables_;
    Attempt attempt_;
};

} // namespace

Attempt readToothed(const Phrase& phrase, const Profile& profile, const Style& style, const Tables& tables) {
    return ToothedReader{phrase, profile, style, tables}.run();
}

} // namespace riband::belt::reading
