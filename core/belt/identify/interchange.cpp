#include "core/belt/identify/interchange.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <stdexcept>

namespace riband::belt::identify {
namespace {

using Verdict = Interchange::Verdict;

/// "ISO 5296:2012 / ISO 5296-1:1989 / ARPM IP-24".
std::vector<std::string> standardsOf(const Profile& profile) {
    std::vector<std::string> standards;
    const std::string& text = profile.standardInFull;
    constexpr std::string_view mark = " / ";
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(mark, at), text.size());
        standards.push_back(text.substr(at, end - at));
        at = end + mark.size();
    }
    return standards;
}

const std::string& toothOf(const Profile& profile) {
    return profile.base.empty() ? profile.name : profile.base;
}

/// As Tables::lookAlikes: XL (5.08) and T5 (5.0) differ by 1.6 %.
bool nearlySamePitch(const Profile& first, const Profile& second) {
    const auto p = first.pitch.inNanometres(), q = second.pitch.inNanometres();
    return std::llabs(p - q) * 40 <= std::max(p, q);
}

Verdict verdictOn(const Profile& first, const Profile& second) {
    if (first.name == second.name) return Verdict::Same;
    if (toothOf(first) == toothOf(second)) return Verdict::SameTooth;
    if (first.ribbed() != second.ribbed()) return Verdict::Never;
    if (first.pitch == second.pitch) return Verdict::SamePitchNo;
    return nearlySamePitch(first, second) ? Verdict::NearlyPitchNo : Verdict::Never;
}

double difference(const std::optional<double>& first, const std::optional<double>& second) {
    return first && second ? *second - *first : 0;
}

const Profile& known(const std::string& name, const Tables& tables) {
    const Profile* profile = tables.profile(name);
    if (!profile) throw std::invalid_argument("no profile is called " + name);
    return *profile;
}

} // namespace

Interchange interchange(const Profile& first, const Profile& second) {
    const Verdict verdict = verdictOn(first, second);
    return {verdict, second.pitch.inMillimetres() - first.pitch.inMillimetres(),
            difference(first.form.height, second.form.height),
            difference(first.form.total, second.form.total),
            verdict == Verdict::Same ? standardsOf(first) : std::vector<std::string>{}};
}

Interchange interchange(const Belt& first, const Belt& second, const Tables& tables) {
    Interchange answer = interchange(known(first.profile, tables), known(second.profile, tables));
    if (answer.verdict == Verdict::Same && first.length != second.length) {
        answer.verdict = Verdict::OtherLength;
        answer.standards.clear();
    }
    return answer;
}

} // namespace riband::belt::identify
