#include "core/belt/tables.h"

#include "core/belt/load.h"

#include <algorithm>

namespace riband::belt {
namespace {

bool within(const SleeveRule& rule, Length length) {
    return (!rule.lengthOver || length > *rule.lengthOver) &&
           (!rule.lengthUpTo || length <= *rule.lengthUpTo);
}

} // namespace

Tables::Tables(std::unique_ptr<Data> data) : data_{std::move(data)} {}
Tables::~Tables() = default;

Outcome<std::shared_ptr<const Tables>, TableFault> Tables::load(const TableTexts& texts) {
    auto data = std::make_unique<Data>();
    try {
        loadProfiles(texts, *data);
        loadWidths(texts, *data);
        loadLengths(texts, *data);
        loadTolerances(texts, *data);
        loadSleeves(texts, *data);
        loadShelfLife(texts, *data);
        loadPulls(texts, *data);
        loadTradeWords(texts, *data);
    } catch (const TableFault& fault) {
        return fault;
    }
    return std::shared_ptr<const Tables>{new Tables{std::move(data)}};
}

const std::vector<Profile>& Tables::profiles() const { return data_->profiles; }

const Profile* Tables::profile(std::string_view name) const {
    const auto at = data_->byName.find(name);
    return at == data_->byName.end() ? nullptr : &data_->profiles[at->second];
}

const std::vector<StandardWidth>& Tables::widths(std::string_view profile) const {
    static const std::vector<StandardWidth> none;
    const auto* rows = data_->findBase(profile);
    return rows ? rows->widths : none;
}

const std::vector<MadeLength>& Tables::lengths(std::string_view profile) const {
    static const std::vector<MadeLength> none;
    const auto* rows = data_->findBase(profile);
    return rows ? rows->lengths : none;
}

const ReferencePull* Tables::referencePull(std::string_view profile) const {
    const auto* rows = data_->find(profile);
    return rows && rows->pull ? &*rows->pull : nullptr;
}

const MadeLength* Tables::made(std::string_view profile, Length length) const {
    const auto& all = lengths(profile);
    const auto at = std::lower_bound(all.begin(), all.end(), length,
                                     [](const MadeLength& a, Length b) { return a.length < b; });
    return at != all.end() && at->length == length ? &*at : nullptr;
}

std::vector<const MadeLength*> Tables::coded(std::string_view profile, std::string_view code) const {
    std::vector<const MadeLength*> found;
    const auto* rows = data_->findBase(profile);
    if (!rows) return found;
    const auto at = rows->byCode.find(std::string{code});
    if (at == rows->byCode.end()) return found;
    for (const auto index : at->second)
        found.push_back(&rows->lengths[index]);
    return found;
}

std::vector<const MadeLength*> Tables::around(std::string_view profile, Length length) const {
    std::vector<const MadeLength*> found;
    const auto& all = lengths(profile);
    const auto longer = std::upper_bound(all.begin(), all.end(), length,
                                         [](Length a, const MadeLength& b) { return a < b.length; });
    if (longer != all.begin()) found.push_back(&*std::prev(longer));
    if (longer != all.end()) found.push_back(&*longer);
    return found;
}

Extent Tables::usualSleeve(const Belt& belt) const {
    const auto* rows = data_->find(belt.profile);
    if (!rows) return Extent::none(Unit::Micrometre);
    for (const auto& rule : rows->sleeves)
        if (rule.usual && within(rule, belt.length)) return rule.extent;
    return widestSleeve(belt.profile);
}

std::vector<Extent> Tables::sleeves(const Belt& belt) const {
    std::vector<Extent> widths;
    if (const auto* rows = data_->find(belt.profile))
        for (const auto& rule : rows->sleeves)
            if (within(rule, belt.length)) widths.push_back(rule.extent);
    std::sort(widths.begin(), widths.end());
    widths.erase(std::unique(widths.begin(), widths.end()), widths.end());
    return widths;
}

Extent Tables::widestSleeve(std::string_view profile) const {
    const auto* rows = data_->find(profile);
    if (!rows) return Extent::none(Unit::Micrometre);
    return std::max_element(rows->sleeves.begin(), rows->sleeves.end(),
                            [](const SleeveRule& a, const SleeveRule& b) { return a.extent < b.extent; })
        ->extent;
}

std::vector<const Profile*> Tables::lookAlikes(std::string_view profile) const {
    std::vector<const Profile*> found;
    const auto* rows = data_->find(profile);
    if (!rows) return found;
    for (const auto index : rows->lookAlikes)
        found.push_back(&data_->profiles[index]);
    return found;
}

Tables::ShelfLife Tables::shelfLife(std::string_view profile) const {
    for (const auto& [body, life] : data_->lives) // the name of a body stands for itself
        if (profile == body) return life;
    const Profile* known = Tables::profile(profile);
    // "rubber or polyurethane": the usual body is named first.
    for (const auto& [body, life] : data_->lives)
        if (known && known->body.starts_with(body)) return life;
    const auto shorter = [](const BodyLife& a, const BodyLife& b) { return a.life.years < b.life.years; };
    return std::min_element(data_->lives.begin(), data_->lives.end(), shorter)->life;
}

const TradeWord* Tables::tradeWord(std::string_view word) const {
    const auto at = data_->words.find(word);
    return at == data_->words.end() ? nullptr : &at->second;
}

} // namespace riband::belt
