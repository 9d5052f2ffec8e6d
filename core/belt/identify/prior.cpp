#include "core/belt/identify/prior.h"

#include <algorithm>
#include <cmath>

namespace riband::belt::identify {
namespace {

constexpr double onceListed = .5;
constexpr double doubleSidedShare = .03;
constexpr double unlistedShare = .03, unlistedLeast = 2;
constexpr double listsAsCustomers = 20, listsAsShare = .1;
constexpr std::int64_t fewestTeeth = 10, mostTeethUnlisted = 200;
constexpr Length ribbedStep = Length::millimetres(5); // finer than any tape tells a ribbed belt

/// Weights first; they become logarithms when all are there.
struct Weighed {
    std::vector<Possible> belts;
    double listed = 0;
};

void addListed(const Tables& tables, const Profile& profile, Weighed& weighed) {
    const double share = profile.doubleSided ? doubleSidedShare : 1;
    for (const MadeLength& made : tables.lengths(profile.name)) {
        const double weight = share * (onceListed + made.makers);
        weighed.belts.push_back({made.length, made.teeth ? made.teeth->count() : 0, weight, true});
        weighed.listed += weight;
    }
}

std::vector<Possible> unlistedTeeth(const Tables& tables, const Profile& profile) {
    const auto& made = tables.lengths(profile.name);
    std::int64_t most = mostTeethUnlisted;
    if (!made.empty() && made.back().teeth) most = std::max(most, made.back().teeth->count() * 21 / 20);
    std::vector<Possible> belts;
    for (std::int64_t teeth = fewestTeeth; teeth <= most; ++teeth) {
        const Length length = profile.pitch * Teeth{teeth};
        if (!tables.made(profile.name, length)) belts.push_back({length, teeth, 0, false});
    }
    return belts;
}

std::vector<Possible> unlistedRibbed(const Tables& tables, const Profile& profile) {
    std::vector<Possible> belts;
    const auto& made = tables.lengths(profile.name);
    if (made.empty()) return belts;
    const std::int64_t step = ribbedStep.inNanometres();
    const std::int64_t most = made.back().length.inNanometres() * 21 / 20;
    for (std::int64_t nm = made.front().length.inNanometres() / step * step; nm <= most; nm += step)
        if (!tables.made(profile.name, Length::nanometres(nm)))
            belts.push_back({Length::nanometres(nm), 0, 0, false});
    return belts;
}

void addUnlisted(const Tables& tables, const Profile& profile, Weighed& weighed) {
    auto belts = profile.ribbed() ? unlistedRibbed(tables, profile) : unlistedTeeth(tables, profile);
    const double least = unlistedLeast * (profile.doubleSided ? doubleSidedShare : 1);
    const double all = std::max(unlistedShare * weighed.listed, least);
    for (Possible& each : belts) {
        each.logPrior = all / static_cast<double>(belts.size());
        weighed.belts.push_back(each);
    }
}

/// Short first.
std::vector<Possible> beltsOf(const Tables& tables, const Profile& profile) {
    Weighed weighed;
    addListed(tables, profile, weighed);
    addUnlisted(tables, profile, weighed);
    std::sort(weighed.belts.begin(), weighed.belts.end(),
              [](const Possible& a, const Possible& b) { return a.length < b.length; });
    return weighed.belts;
}

Possible* find(std::vector<Possible>& belts, std::pair<std::size_t, std::size_t> range, Length length) {
    const auto begin = belts.begin() + static_cast<std::ptrdiff_t>(range.first);
    const auto end = belts.begin() + static_cast<std::ptrdiff_t>(range.second);
    const auto at = std::lower_bound(
        begin, end, length, [](const Possible& each, Length wanted) { return each.length < wanted; });
    return at != end && at->length == length ? &*at : nullptr;
}

double sumOf(const std::vector<Possible>& belts) {
    double sum = 0;
    for (const Possible& each : belts)
        sum += each.logPrior;
    return sum;
}

} // namespace

Prior::Prior(std::shared_ptr<const Tables> tables, const std::vector<Sale>& sales)
    : tables_{std::move(tables)}, sizes_{sizesOf(*tables_)} {
    for (const Profile& profile : tables_->profiles()) {
        starts_.push_back(belts_.size());
        const auto belts = beltsOf(*tables_, profile);
        belts_.insert(belts_.end(), belts.begin(), belts.end());
    }
    starts_.push_back(belts_.size());
    double customers = 0;
    for (const Sale& sale : sales)
        customers += sale.times;
    const double scale = (listsAsCustomers + listsAsShare * customers) / sumOf(belts_);
    for (Possible& each : belts_)
        each.logPrior *= scale;
    for (const Sale& sale : sales)
        for (std::size_t i = 0; i < sizes_.size(); ++i)
            if (sizes_[i].profile->name == sale.belt.profile)
                if (Possible* sold = find(belts_, rangeOf(i), sale.belt.length)) sold->logPrior += sale.times;
    const double all = sumOf(belts_);
    for (Possible& each : belts_)
        each.logPrior = std::log(each.logPrior / all);
}

std::size_t Prior::profileOf(std::size_t belt) const {
    return static_cast<std::size_t>(std::upper_bound(starts_.begin(), starts_.end(), belt) -
                                    starts_.begin()) -
           1;
}

Belt Prior::belt(std::size_t index) const {
    const Possible& each = belts_[index];
    return {sizes_[profileOf(index)].profile->name,
            each.teeth > 0 ? std::optional{Teeth{each.teeth}} : std::nullopt, each.length, ""};
}

} // namespace riband::belt::identify
