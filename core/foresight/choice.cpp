#include "core/foresight/choice.h"

namespace riband::foresight {

namespace {

constexpr Worth hardlyMatters = 500; // µm: no departure from the smallest that fits for less, nor for
                                     // less than the standard error
constexpr Worth hardlyMattersInRibs = 0.15;
constexpr std::size_t mostWhole = 9;  // tried beside the smallest and a new sleeve
constexpr std::size_t mostSplits = 8; // orders of several belts may be shared out in many ways

/// Whatever the order of the mountings.
bool sameWay(const Way& a, const Way& b) {
    return a.take == b.take && a.fills == b.fills &&
           std::is_permutation(a.shares.begin(), a.shares.end(), b.shares.begin(), b.shares.end());
}

/// Its place, new or not.
std::size_t addWay(std::vector<Way>& ways, const Way& way) {
    for (std::size_t i = 0; i < ways.size(); ++i)
        if (sameWay(ways[i], way)) return i;
    ways.push_back(way);
    return ways.size() - 1;
}

/// At most so many that are not among the ways yet.
void addCheapest(std::vector<Way>& ways, std::vector<Way>& more, std::size_t most) {
    std::stable_sort(more.begin(), more.end(), [](const Way& a, const Way& b) { return a.cost < b.cost; });
    const std::size_t full = ways.size() + most;
    for (const Way& way : more)
        if (ways.size() < full) addWay(ways, way);
}

/// Places of the remnants by size; of two alike the less fresh one.
std::map<Size, int> remnantsBySize(const Stock& stock) {
    std::map<Size, int> sizes;
    for (int i = 0; i < stock.count; ++i) {
        const auto& remnant = stock.remnants[static_cast<std::size_t>(i)];
        const auto [at, isNew] = sizes.try_emplace(remnant.size, i);
        if (!isNew && stock.remnants[static_cast<std::size_t>(at->second)].fresh > remnant.fresh)
            at->second = i;
    }
    return sizes;
}

std::int64_t sleevesOf(const Way& way) {
    return std::count_if(way.shares.begin(), way.shares.end(),
                         [](const Share& share) { return share.remnant < 0; });
}

/// A sleeve is not opened for what hardly matters while a begun piece gives the same in as few mountings: a
/// person could not understand that, and what is begun takes up the rack.
std::size_t begunInstead(const Choice& choice, Worth matters) {
    const Way& best = choice.ways[choice.best];
    std::optional<std::size_t> begun;
    for (std::size_t i = 0; i < choice.ways.size(); ++i) {
        const Way& way = choice.ways[i];
        if (sleevesOf(way) >= sleevesOf(best) || way.shares.size() > best.shares.size()) continue;
        if (choice.extra[i] - choice.extra[choice.best] >= matters) continue;
        if (!begun || choice.extra[i] < choice.extra[*begun]) begun = i;
    }
    return begun.value_or(choice.best);
}

/// Only what the sleeves that are there can give stays.
void keepPossible(Choice& choice, std::int64_t mostSleeves) {
    std::vector<Way> possible;
    std::optional<std::size_t> smallest;
    for (std::size_t i = 0; i < choice.ways.size(); ++i) {
        if (sleevesOf(choice.ways[i]) > mostSleeves) continue;
        if (choice.smallest == i) smallest = possible.size();
        possible.push_back(choice.ways[i]);
    }
    choice.ways = std::move(possible);
    choice.smallest = smallest;
}

} // namespace

Chooser::Chooser(const Setting& setting, Layer layer, LookAhead::Knobs knobs)
    : setting_{setting}, layer_{layer}, rule_{setting}, lookAhead_{setting, knobs} {}

Choice Chooser::choose(const WorthTable& table, const Outlook& outlook, const Stock& stock,
                       const Asked& asked, bool mayFill, std::uint64_t seed, int mostSleeves) {
    Choice choice;
    choice.ways.resize(1);
    rule_.choose(table, stock, asked, choice.ways[0]);
    addWhole(table, stock, asked, choice);
    if (asked.parts() > 2 && layer_ == Layer::LookAhead) addSplits(table, stock, asked, choice);
    for (auto& way : choice.ways)
        way.fills = mayFill;
    keepPossible(choice, mostSleeves);
    if (choice.ways.empty()) return choice;
    const Worth saved = judge(table, outlook, stock, asked, seed, choice);
    choice.why = reasonOf(table, stock, asked, choice, saved);
    return choice;
}

/// The smallest that fits, a new sleeve, and what else is cheap by the table.
void Chooser::addWhole(const WorthTable& table, const Stock& stock, const Asked& asked, Choice& choice) {
    std::vector<Way> whole;
    Way way;
    for (const auto& [size, i] : remnantsBySize(stock))
        if (rule_.wholeFrom(table, stock, asked, i, way)) whole.push_back(way);
    if (rule_.wholeFrom(table, stock, asked, -1, way)) whole.push_back(way);
    if (whole.empty()) return;
    choice.smallest = addWay(choice.ways, whole.front());
    addWay(choice.ways, whole.back());
    addCheapest(choice.ways, whole, mostWhole);
}

/// Any part from any piece, the others where they are cheapest: not only as much as a piece can give, since
/// a belt less may leave a rest that another width uses up.
void Chooser::addSplits(const WorthTable& table, const Stock& stock, const Asked& asked, Choice& choice) {
    std::vector<Way> splits;
    for (const auto& [size, i] : remnantsBySize(stock))
        rule_.addParts(table, stock, asked, i, splits);
    rule_.addParts(table, stock, asked, -1, splits);
    const auto sleeves = std::max<std::int64_t>(1, sleevesOf(choice.ways[0]));
    std::erase_if(splits, [&](const Way& way) { return sleevesOf(way) > sleeves; }); // one would do
    addCheapest(choice.ways, splits, mostSplits);
}

/// Sets the best and the extra costs; gives what it saves against the smallest that fits.
Worth Chooser::judge(const WorthTable& table, const Outlook& outlook, const Stock& stock, const Asked& asked,
                     std::uint64_t seed, Choice& choice) {
    const bool fromShelf = choice.ways[0].shares.empty();
    const Worth least = choice.ways[0].cost;
    if (choice.ways.size() == 1 || fromShelf || layer_ == Layer::Price) {
        for (const Way& way : choice.ways)
            choice.extra.push_back(way.cost - least);
        const bool compares = choice.smallest && !fromShelf && layer_ == Layer::Price;
        return compares ? choice.extra[*choice.smallest] : 0;
    }
    auto verdict = lookAhead_.judge(table, outlook, stock, asked, choice.ways, seed);
    choice.judged = true;
    choice.best = verdict.best;
    choice.extra = std::move(verdict.cost);
    const Worth matters = setting_.ribs ? hardlyMattersInRibs : hardlyMatters;
    const Worth saved = choice.smallest ? choice.extra[*choice.smallest] : 0;
    if (choice.smallest && saved < matters) choice.best = *choice.smallest;
    choice.best = begunInstead(choice, matters);
    const Worth given = choice.extra[choice.best];
    for (Worth& extra : choice.extra)
        extra = std::max(0.0, extra - given);
    return saved;
}

Size Chooser::leftOf(const Stock& stock, const Asked& asked, const Share& share) const {
    const Size size =
        share.remnant < 0 ? setting_.sleeve : stock.remnants[static_cast<std::size_t>(share.remnant)].size;
    return size - setting_.rules.trim - asked.size(share.part);
}

Reason Chooser::reasonOf(const WorthTable& table, const Stock& stock, const Asked& asked,
                         const Choice& choice, Worth saved) const {
    using Kind = Reason::Kind;
    const auto& way = choice.ways[choice.best];
    if (way.shares.empty()) return {Kind::FromShelf, 0};
    if (choice.ways.size() == 1) return {Kind::OnlyWay, 0};
    const Size left = leftOf(stock, asked, way.shares[0]);
    if (choice.best == choice.smallest) return {Kind::SmallestThatFits, left};
    if (way.shares.size() == 1 && table.of(left) <= 0) return {Kind::FinishesPiece, left};
    if (!choice.smallest) return {Kind::OnlyWay, 0};
    const Size dead = leftOf(stock, asked, choice.ways[*choice.smallest].shares[0]);
    if (table.of(dead) <= 0) return {Kind::AvoidsDeadEnd, dead};
    const Size unit = setting_.ribs ? 1 : 100; // an expectation is told to 0.1 mm
    const auto figure = static_cast<Size>(saved / unit + 0.5) * unit;
    if (saved < setting_.rules.trim) return {Kind::AboutTheSame, figure};
    return {Kind::WorthMore, figure};
}

} // namespace riband::foresight
