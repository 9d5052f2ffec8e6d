#include "core/foresight/advisor.h"

#include <stdexcept>

namespace riband::foresight {

namespace {

constexpr std::uint64_t fitDice = 77;
constexpr double ordersToUse = 25; // a remnant that lives for so many orders more is as good as a fresh one

Setting checked(Setting setting) {
    if (const auto fault = setting.fault(); !fault.empty()) throw std::invalid_argument(fault);
    setting.tidy();
    return setting;
}

} // namespace

Advisor::Advisor(Setting setting, Knobs knobs)
    : setting_{checked(std::move(setting))}, knobs_{knobs}, outlook_{setting_},
      fit_{setting_, knobs.fit, Dice::of(setting_.seed, fitDice)}, chooser_{setting_, knobs.layer,
                                                                            knobs.lookAhead} {
    fit_.run(outlook_, Fit::firstRounds);
}

Advisor::~Advisor() = default;

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
    fit_.setTargets(outlook_);
    refresh(order.day);
    Answer answer;
    // Belts for the shelf come from the last part alone: what is taken must have lain there before.
    const auto all = weighable(setting_, order.lines);
    for (const auto& asked : all)
        serve(asked, order.day, &asked == &all.back(), answer);
    fit_.advance(outlook_, knobs_.unitsAnAnswer);
    return answer;
}

void Advisor::serve(const Asked& asked, double day, bool mayFill, Answer& answer) {
    const Choice choice = chooser_.choose(table(), outlook_, stock_, asked, mayFill,
                                          Dice::of(setting_.seed, decisions_ + 1).next());
    decisions_ += choice.judged ? 1 : 0;
    answer.why = choice.why;
    book(asked, choice.ways[choice.best], day, answer);
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
    chooser_.rule().apply(table(), stock_, asked, way, &rests);
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
