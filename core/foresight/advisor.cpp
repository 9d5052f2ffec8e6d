#include "core/foresight/advisor.h"

#include <stdexcept>

namespace riband::foresight {

namespace {

constexpr int firstRounds = 4;
constexpr double ordersToUse = 25;   // a remnant that lives for so many orders more is as good as a fresh one
constexpr Worth hardlyMatters = 500; // µm: no departure from the smallest that fits for less
constexpr Worth hardlyMattersInRibs = 0.15;
constexpr std::size_t mostWhole = 9;  // tried beside the smallest and a new sleeve
constexpr std::size_t mostSplits = 5; // orders of several belts may be shared out in many ways
constexpr auto nothing = std::size_t(-1);

Setting checked(Setting setting) {
    if (const auto fault = setting.fault(); !fault.empty()) throw std::invalid_argument(fault);
    setting.tidy();
    return setting;
}

bool sameWay(const Way& a, const Way& b) {
    if (a.take != b.take || a.fills != b.fills || a.shares.size() != b.shares.size()) return false;
    for (std::size_t i = 0; i < a.shares.size(); ++i)
        if (a.shares[i].remnant != b.shares[i].remnant || a.shares[i].part != b.shares[i].part) return false;
    return true;
}

/// Its place, new or not.
std::size_t addWay(std::vector<Way>& ways, const Way& way) {
    for (std::size_t i = 0; i < ways.size(); ++i)
        if (sameWay(ways[i], way)) return i;
    ways.push_back(way);
    return ways.size() - 1;
}

void addCheapest(std::vector<Way>& ways, std::vector<Way>& more, std::size_t most) {
    std::stable_sort(more.begin(), more.end(), [](const Way& a, const Way& b) { return a.cost < b.cost; });
    for (std::size_t i = 0; i < std::min(more.size(), most); ++i)
        addWay(ways, more[i]);
}

} // namespace

Advisor::Knobs Advisor::usualFor(Shelf shelf) {
    Knobs knobs;
    if (shelf == Shelf::None) return knobs;
    knobs.lookAhead = {8, 32, 256, 4000, 1};
    knobs.unitsAnAnswer = 200;
    return knobs;
}

Advisor::Advisor(Setting setting) : Advisor(setting, usualFor(setting.shelf)) {}

Advisor::Advisor(Setting setting, Knobs knobs)
    : setting_{checked(std::move(setting))}, knobs_{knobs}, outlook_{setting_}, rule_{setting_},
      lookAhead_{setting_, knobs.lookAhead} {
    firstFit();
}

Advisor::~Advisor() = default;

void Advisor::firstFit() {
    for (const double competition : knobs_.competitions) {
        auto knobs = knobs_.fit;
        knobs.competition = competition;
        auto fit = std::make_unique<Fit>(setting_, knobs, Dice::of(setting_.seed, 77));
        fit->run(outlook_, firstRounds);
        if (!fit_ || fit->costOfLastRound() < fit_->costOfLastRound()) fit_ = std::move(fit);
    }
}

void Advisor::expire(double day) {
    for (int i = stock_.count - 1; i >= 0; --i) {
        const auto key = stock_.remnants[static_cast<std::size_t>(i)].name;
        if (day - opened_.at(key).day <= setting_.ageLimitDays) continue;
        opened_.erase(key);
        stock_.remove(i);
    }
}

void Advisor::refresh(double day) {
    const double ordersADay = outlook_.ordersPerYear() / setting_.daysPerYear;
    for (int i = 0; i < stock_.count; ++i) {
        auto& remnant = stock_.remnants[static_cast<std::size_t>(i)];
        const double daysLeft = setting_.ageLimitDays - (day - opened_.at(remnant.name).day);
        remnant.fresh = static_cast<float>(std::clamp(daysLeft * ordersADay / ordersToUse, 0.0, 1.0));
    }
}

Answer Advisor::answer(const Order& order) {
    for (const auto& line : order.lines)
        if (line.width + setting_.rules.kerf + setting_.rules.trim + setting_.rules.reserve(line.width) >
            setting_.sleeve)
            throw std::invalid_argument("a belt is too wide for any sleeve");
    expire(order.day);
    outlook_.learn(order);
    refresh(order.day);
    Answer answer;
    // Belts for the shelf come from the last part alone: what is taken must have lain there before.
    const auto all = weighable(setting_, order.lines);
    for (const auto& asked : all)
        serve(asked, order.day, &asked == &all.back(), answer);
    fit_->advance(outlook_, knobs_.unitsAnAnswer);
    return answer;
}

/// Places of the remnants by size; of two alike the less fresh one.
std::map<Size, int> Advisor::remnantsBySize() const {
    std::map<Size, int> sizes;
    for (int i = 0; i < stock_.count; ++i) {
        const auto& remnant = stock_.remnants[static_cast<std::size_t>(i)];
        const auto [at, isNew] = sizes.try_emplace(remnant.size, i);
        if (!isNew && stock_.remnants[static_cast<std::size_t>(at->second)].fresh > remnant.fresh)
            at->second = i;
    }
    return sizes;
}

/// The price rule's way first, then the smallest that fits, a new sleeve, and what else is cheap by the
/// table.
std::vector<Way> Advisor::waysFor(const Asked& asked, std::size_t& smallest) {
    std::vector<Way> ways(1), whole, splits;
    rule_.choose(table(), stock_, asked, ways[0]);
    const auto sizes = remnantsBySize();
    Way way;
    for (const auto& [size, i] : sizes)
        if (rule_.wholeFrom(table(), stock_, asked, i, way)) whole.push_back(way);
    if (rule_.wholeFrom(table(), stock_, asked, -1, way)) whole.push_back(way);
    smallest = nothing;
    if (!whole.empty()) {
        smallest = addWay(ways, whole.front());
        addWay(ways, whole.back());
        addCheapest(ways, whole, mostWhole);
    }
    if (asked.parts() > 2 && knobs_.layer == Layer::LookAhead) {
        for (const auto& [size, i] : sizes)
            if (rule_.mostFrom(table(), stock_, asked, i, way)) splits.push_back(way);
        addCheapest(ways, splits, mostSplits);
    }
    return ways;
}

void Advisor::serve(const Asked& asked, double day, bool mayFill, Answer& answer) {
    std::size_t smallest = nothing;
    auto ways = waysFor(asked, smallest);
    for (auto& way : ways)
        way.fills = mayFill;
    Worth saved = 0;
    const std::size_t best = chosen(ways, smallest, asked, saved);
    answer.why = reasonFor(asked, ways, best, smallest, saved);
    book(asked, ways[best], day, answer);
}

std::size_t Advisor::chosen(const std::vector<Way>& ways, std::size_t smallest, const Asked& asked,
                            Worth& saved) {
    const bool fromShelf = ways[0].shares.empty();
    if (ways.size() == 1 || fromShelf) return 0;
    if (knobs_.layer == Layer::Price) {
        if (smallest != nothing) saved = ways[smallest].cost - ways[0].cost;
        return 0;
    }
    const auto verdict = lookAhead_.judge(table(), outlook_, stock_, asked, ways,
                                          Dice::of(setting_.seed, ++decisions_).next());
    if (smallest == nothing) return verdict.best;
    saved = verdict.cost[smallest];
    return saved < (setting_.ribs ? hardlyMattersInRibs : hardlyMatters) ? smallest : verdict.best;
}

Size Advisor::leftOf(const Asked& asked, const Share& share) const {
    const Size size =
        share.remnant < 0 ? setting_.sleeve : stock_.remnants[static_cast<std::size_t>(share.remnant)].size;
    return size - setting_.rules.trim - asked.size(share.part);
}

Reason Advisor::reasonFor(const Asked& asked, const std::vector<Way>& ways, std::size_t best,
                          std::size_t smallest, Worth saved) const {
    using Kind = Reason::Kind;
    const auto& way = ways[best];
    if (way.shares.empty()) return {Kind::FromShelf, 0};
    if (ways.size() == 1) return {Kind::OnlyWay, 0};
    if (best == smallest) return {Kind::SmallestThatFits, leftOf(asked, way.shares[0])};
    const Size left = leftOf(asked, way.shares[0]);
    if (way.shares.size() == 1 && table().of(left) <= 0) return {Kind::FinishesPiece, left};
    if (smallest == nothing) return {Kind::OnlyWay, 0};
    const Size dead = leftOf(asked, ways[smallest].shares[0]);
    if (table().of(dead) <= 0) return {Kind::AvoidsDeadEnd, dead};
    const Size unit = setting_.ribs ? 1 : 100; // an expectation is told to 0.1 mm
    const auto figure = static_cast<Size>(saved / unit + 0.5) * unit;
    if (saved < setting_.rules.trim) return {Kind::AboutTheSame, figure};
    return {Kind::WorthMore, figure};
}

Mounting Advisor::mountingOf(const Asked& asked, const Share& share, const Fill::Choice& rest) {
    Mounting mounting;
    mounting.opensSleeve = share.remnant < 0;
    for (std::size_t i = 0; i < asked.items().size(); ++i)
        if (const int belts = asked.belts(share.part, static_cast<int>(i)); belts > 0)
            mounting.cuts.push_back({asked.items()[i].width, belts, For::Order});
    for (std::size_t l = 0; l < mostReady; ++l)
        if (rest.cut[l] > 0) mounting.cuts.push_back({setting_.listed[l], rest.cut[l], For::Shelf});
    mounting.left = rest.left;
    return mounting;
}

void Advisor::book(const Asked& asked, const Way& way, double day, Answer& answer) {
    const Stock before = stock_;
    std::vector<Fill::Choice> rests;
    rule_.apply(table(), stock_, asked, way, &rests);
    for (std::size_t i = 0; i < asked.items().size(); ++i)
        if (way.take[i] > 0) answer.take.push_back({asked.items()[i].width, way.take[i]});
    std::map<std::int32_t, Opened> mounted;
    for (std::size_t k = 0; k < way.shares.size(); ++k) {
        auto mounting = mountingOf(asked, way.shares[k], rests[k]);
        Opened source{0, day};
        if (mounting.opensSleeve) {
            source.name = nextName_++;
        } else {
            const auto key = before.remnants[static_cast<std::size_t>(way.shares[k].remnant)].name;
            source = opened_.at(key);
            opened_.erase(key);
        }
        mounting.piece = source.name;
        for (int i = 0; i < stock_.count; ++i) {
            auto& remnant = stock_.remnants[static_cast<std::size_t>(i)];
            if (remnant.name != -static_cast<std::int32_t>(k) - 1) continue;
            remnant.name = nextKey_++;
            mounting.keepAs = nextName_++;
            opened_[remnant.name] = {*mounting.keepAs, source.day};
        }
        answer.mountings.push_back(std::move(mounting));
    }
    std::map<std::int32_t, Opened> kept; // what is not in the stock any more was dropped
    for (int i = 0; i < stock_.count; ++i)
        kept.insert(*opened_.find(stock_.remnants[static_cast<std::size_t>(i)].name));
    for (const auto& [key, opened] : opened_)
        if (!kept.contains(key)) answer.scrap.push_back(opened.name);
    opened_ = std::move(kept);
}

} // namespace riband::foresight
