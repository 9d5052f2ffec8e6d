#include "core/shop/weigh.h"

#include "core/foresight/advisor.h"
#include "core/shop/shelf_fill.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using foresight::Size;

constexpr double ordersToUse =
    25; // as in the advisor: a piece that lives for so many orders is as good as new

constexpr std::int32_t firstRest = 1000; ///< rests of the mountings so far are named from here, negative

/// The problem as foresight sees it, and back.
class Desk {
public:
    Desk(const Outlook& outlook, const Future& future) : outlook_{outlook}, future_{future} {
        takeReady();
        addStock();
        addLines();
    }

    std::vector<Way> ways(std::size_t most) {
        if (lines_.empty()) return {};
        const auto all = foresight::weighable(setting(), lines_);
        if (all.size() != 1) return {};
        asked_ = all.front();
        auto chooser = newChooser();
        const auto choice = chooser.choose(future_.table, future_.outlook, stock_, asked_, true, seed(),
                                           static_cast<int>(sleeves_.size()));
        return waysOf(choice, chooser.rule(), most);
    }

    std::optional<JointWay> together(const std::vector<cutting::Plan>& plans) {
        if (lines_.empty()) return std::nullopt;
        const auto groups = foresight::weighable(setting(), lines_);
        return groups.size() == 1 ? judged(groups.front(), plans) : byTable(groups, plans);
    }

private:
    const foresight::Setting& setting() const { return outlook_.past.setting; }
    /// What lies there is not thrown away now.
    foresight::Setting settingNow() const {
        foresight::Setting now = setting();
        now.rackLimit = std::max(now.rackLimit, stock_.count + 1);
        return now;
    }
    foresight::Chooser newChooser() const { return {settingNow(), foresight::Layer::LookAhead}; }
    std::uint64_t seed() const {
        return foresight::Dice::of(setting().seed, outlook_.past.orders.size()).next();
    }
    const cutting::Problem& problem() const { return outlook_.problem; }

    void takeReady() {
        for (const cutting::Line& line : problem().lines)
            wanted_.push_back(line.quantity);
        for (std::size_t i = 0; i < problem().pieces.size(); ++i) {
            if (problem().pieces[i].kind != PieceKind::Ready) continue;
            for (std::size_t line = 0; line < wanted_.size(); ++line) {
                if (wanted_[line] == 0 || problem().lines[line].extent != problem().pieces[i].extent)
                    continue;
                taken_.push_back({i, line});
                --wanted_[line];
                break;
            }
        }
    }

    /// Sleeves of the usual width are new ones, oldest first; all else is weighed as it is. Of more remnants
    /// than can be weighed, those of a width that is there already go first, then the widest but one.
    void addStock() {
        stock_ = shelfStock(outlook_, emptyPlan());
        std::vector<std::size_t> remnants;
        for (std::size_t i = 0; i < problem().pieces.size(); ++i) {
            const cutting::Piece& piece = problem().pieces[i];
            if (piece.kind == PieceKind::Ready) continue;
            if (piece.kind == PieceKind::Sleeve && piece.extent.count() == setting().sleeve)
                sleeves_.push_back(i);
            else
                remnants.push_back(i);
        }
        for (const std::size_t i : fewEnough(std::move(remnants)))
            addRemnant(i);
    }

    std::vector<std::size_t> fewEnough(std::vector<std::size_t> remnants) const {
        if (remnants.size() <= foresight::mostRemnants) return remnants;
        const auto size = [&](std::size_t i) { return problem().pieces[i].extent; };
        std::stable_sort(remnants.begin(), remnants.end(),
                         [&](std::size_t a, std::size_t b) { return size(a) < size(b); });
        const auto alike = [&](std::size_t a, std::size_t b) { return size(a) == size(b); };
        remnants.erase(std::unique(remnants.begin(), remnants.end(), alike), remnants.end());
        if (remnants.size() > foresight::mostRemnants)
            remnants.erase(remnants.begin() + foresight::mostRemnants - 1, remnants.end() - 1);
        return remnants;
    }

    void addRemnant(std::size_t piece) {
        const auto& stocked = problem().pieces[piece];
        const double age = static_cast<double>((outlook_.today - stocked.born).count());
        const double ordersADay = future_.outlook.ordersPerYear() / setting().daysPerYear;
        const double fresh = (setting().ageLimitDays - age) * ordersADay / ordersToUse;
        stock_.add({static_cast<Size>(stocked.extent.count()),
                    static_cast<float>(std::clamp(fresh, 0.0, 1.0)), static_cast<std::int32_t>(piece)});
    }

    void addLines() {
        for (std::size_t i = 0; i < wanted_.size(); ++i) {
            if (wanted_[i] == 0) continue;
            const auto width = static_cast<Size>(problem().lines[i].extent.count());
            const auto same = std::find_if(lines_.begin(), lines_.end(),
                                           [&](const auto& line) { return line.width == width; });
            if (same != lines_.end())
                same->quantity += static_cast<int>(wanted_[i]);
            else
                lines_.push_back({width, static_cast<int>(wanted_[i])});
        }
    }

    struct Outcome {
        std::map<std::size_t, Extent> lefts; ///< of each piece
        std::multiset<Extent> forShelf;
        friend bool operator==(const Outcome&, const Outcome&) = default;
    };
    /// Which of two pieces gives the order's belts and which the shelf's is no difference to anybody.
    Outcome comesTo(const Way& way) const {
        Outcome outcome;
        for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
            outcome.lefts.emplace(way.plan.mountings[i].piece, way.left(i, outlook_.problem.rules));
            outcome.forShelf.insert(way.forShelf[i].begin(), way.forShelf[i].end());
        }
        return outcome;
    }

    std::vector<Way> waysOf(const foresight::Choice& choice, foresight::PriceRule& rule, std::size_t most) {
        std::vector<std::pair<double, std::size_t>> order;
        for (std::size_t i = 0; i < choice.ways.size(); ++i)
            if (i != choice.best && !choice.ways[i].shares.empty()) order.emplace_back(choice.extra[i], i);
        std::stable_sort(order.begin(), order.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        std::vector<Way> ways;
        if (choice.ways.empty()) return ways;
        ways.push_back(wayOf(choice.ways[choice.best], rule));
        for (const auto& [extra, i] : order) {
            if (ways.size() == most) break;
            Way way = wayOf(choice.ways[i], rule);
            if (std::any_of(ways.begin(), ways.end(),
                            [&](const Way& each) { return comesTo(each) == comesTo(way); }))
                continue;
            way.extra = static_cast<std::int64_t>(std::llround(extra));
            way.cost = ways.front().cost + extra;
            ways.push_back(std::move(way));
        }
        return ways;
    }

    Way wayOf(const foresight::Way& from, foresight::PriceRule& rule) {
        foresight::Stock after = stock_;
        std::vector<foresight::Fill::Choice> rests;
        rule.apply(future_.table, after, asked_, from, &rests);
        Way way{emptyPlan(), {}, 0, {}, from.cost, 0};
        auto left = wanted_;
        std::size_t sleeve = 0;
        for (std::size_t k = 0; k < from.shares.size(); ++k) {
            const auto& share = from.shares[k];
            const std::size_t piece =
                share.remnant < 0
                    ? sleeves_[sleeve++]
                    : static_cast<std::size_t>(stock_.remnants[static_cast<std::size_t>(share.remnant)].name);
            mount(way.plan, piece, share.part, left);
            way.forShelf.push_back(widthsOf(setting(), rests[k]));
        }
        finishFigures(way);
        return way;
    }

    /// Each on the same futures.
    std::optional<JointWay> judged(const foresight::Asked& all, const std::vector<cutting::Plan>& plans) {
        asked_ = all;
        auto chooser = newChooser();
        const auto choice = chooser.choose(future_.table, future_.outlook, stock_, asked_, true, seed(),
                                           static_cast<int>(sleeves_.size()));
        std::vector<foresight::Way> ways;
        if (!choice.ways.empty()) ways.push_back(choice.ways[choice.best]);
        for (const cutting::Plan& plan : plans)
            if (auto way = seenByForesight(plan)) ways.push_back(std::move(*way));
        if (ways.empty()) return std::nullopt;
        foresight::LookAhead lookAhead{settingNow(), foresight::LookAhead::Knobs{}};
        const auto verdict = lookAhead.judge(future_.table, future_.outlook, stock_, asked_, ways, seed());
        JointWay joint{wayOf(ways[verdict.best], chooser.rule()), true};
        priceWay(outlook_, future_.table, joint.way);
        return joint;
    }

    /// Nothing if the plan leaves something unserved or takes a piece that is not weighed.
    std::optional<foresight::Way> seenByForesight(const cutting::Plan& plan) const {
        foresight::Way way;
        int all = 0;
        for (const cutting::Mounting& mounting : plan.mountings) {
            const auto source = sourceOf(mounting.piece);
            if (!source) return std::nullopt;
            const int part = partOf(mounting);
            way.shares.push_back({*source, part});
            all += part;
        }
        if (all != asked_.parts() - 1) return std::nullopt;
        return way;
    }

    /// Its place in the stock, -1 for a new sleeve.
    std::optional<int> sourceOf(std::size_t piece) const {
        if (std::find(sleeves_.begin(), sleeves_.end(), piece) != sleeves_.end()) return -1;
        for (int i = 0; i < stock_.count; ++i)
            if (stock_.remnants[static_cast<std::size_t>(i)].name == static_cast<std::int32_t>(piece))
                return i;
        return std::nullopt;
    }

    int partOf(const cutting::Mounting& mounting) const {
        int part = 0;
        for (std::size_t item = 0; item < asked_.items().size(); ++item)
            for (const cutting::Cut& cut : mounting.cuts)
                if (problem().lines[cut.line].extent.count() == asked_.items()[item].width)
                    part += asked_.stride(static_cast<int>(item)) * static_cast<int>(cut.count);
        return part;
    }

    std::optional<JointWay> byTable(const std::vector<foresight::Asked>& groups,
                                    const std::vector<cutting::Plan>& plans) {
        std::optional<JointWay> best;
        const auto offer = [&](cutting::Plan plan) {
            if (!plan.unserved.empty()) return;
            Way way{std::move(plan), {}};
            fillShelf(outlook_, future_.table, way);
            if (!best || way.cost < best->way.cost) best = JointWay{std::move(way)};
        };
        for (const cutting::Plan& plan : plans)
            offer(plan);
        if (auto plan = groupByGroup(groups)) offer(std::move(*plan));
        return best;
    }

    /// Each group as `weigh` would cut it after those before.
    std::optional<cutting::Plan> groupByGroup(const std::vector<foresight::Asked>& groups) {
        auto chooser = newChooser();
        Groups so{stock_, emptyPlan(), wanted_, 0};
        for (const foresight::Asked& group : groups) {
            asked_ = group;
            const auto choice = chooser.choose(future_.table, future_.outlook, so.stock, asked_, false,
                                               seed(), static_cast<int>(sleeves_.size() - so.sleeves));
            if (choice.ways.empty()) return std::nullopt;
            const foresight::Way& way = choice.ways[choice.best];
            const auto mountingOf = mountGroup(so, way);
            chooser.rule().apply(future_.table, so.stock, asked_, way);
            for (int i = 0; i < so.stock.count; ++i)
                if (auto& name = so.stock.remnants[static_cast<std::size_t>(i)].name;
                    name < 0 && name > -firstRest)
                    name = -firstRest - mountingOf[static_cast<std::size_t>(-name - 1)];
        }
        for (cutting::Mounting& mounting : so.plan.mountings)
            endMounting(mounting);
        addFigures(so.plan);
        return so.plan;
    }

    /// The groups that are planned so far.
    struct Groups {
        foresight::Stock stock; ///< rests by firstRest and the number of the mounting that leaves them
        cutting::Plan plan;
        std::vector<std::int64_t> left;
        std::size_t sleeves; ///< opened
    };

    /// The number of the mounting that gives each share: what is cut from a rest is cut in the mounting that
    /// would have left it.
    std::vector<std::int32_t> mountGroup(Groups& so, const foresight::Way& way) {
        std::vector<std::int32_t> mountingOf;
        for (const foresight::Share& share : way.shares) {
            const auto name = share.remnant < 0
                                  ? static_cast<std::int32_t>(sleeves_[so.sleeves++])
                                  : so.stock.remnants[static_cast<std::size_t>(share.remnant)].name;
            mountingOf.push_back(name < 0 ? -name - firstRest
                                          : static_cast<std::int32_t>(so.plan.mountings.size()));
            if (name >= 0) so.plan.mountings.push_back(mountingOn(static_cast<std::size_t>(name)));
            addCuts(so.plan.mountings[static_cast<std::size_t>(mountingOf.back())], share.part, so.left);
        }
        return mountingOf;
    }

    cutting::Plan emptyPlan() const {
        const Extent none = Extent::none(problem().rules.unit());
        return {taken_, {}, {}, none, none, none, none};
    }

    cutting::Mounting mountingOn(std::size_t piece) const {
        return {piece, {}, problem().pieces[piece].extent - problem().rules.trim, cutting::Rest::Nothing};
    }

    void mount(cutting::Plan& plan, std::size_t piece, int part, std::vector<std::int64_t>& left) const {
        cutting::Mounting mounting = mountingOn(piece);
        addCuts(mounting, part, left);
        endMounting(mounting);
        plan.mountings.push_back(std::move(mounting));
    }

    void addCuts(cutting::Mounting& mounting, int part, std::vector<std::int64_t>& left) const {
        const cutting::Rules& rules = problem().rules;
        for (std::size_t item = 0; item < asked_.items().size(); ++item) {
            std::int64_t belts = asked_.belts(part, static_cast<int>(item));
            for (std::size_t line = 0; line < left.size() && belts > 0; ++line) {
                if (problem().lines[line].extent.count() != asked_.items()[item].width) continue;
                const std::int64_t some = std::min(belts, left[line]);
                if (some == 0) continue;
                const auto same = std::find_if(mounting.cuts.begin(), mounting.cuts.end(),
                                               [&](const cutting::Cut& cut) { return cut.line == line; });
                if (same == mounting.cuts.end())
                    mounting.cuts.push_back({line, some});
                else
                    same->count += some;
                mounting.left = mounting.left - (problem().lines[line].extent + rules.kerf) * some;
                left[line] -= some;
                belts -= some;
            }
        }
    }

    void endMounting(cutting::Mounting& mounting) const {
        std::stable_sort(mounting.cuts.begin(), mounting.cuts.end(), [&](const auto& a, const auto& b) {
            return problem().lines[a.line].extent < problem().lines[b.line].extent;
        });
        if (!mounting.left.isNone())
            mounting.rest =
                mounting.left < problem().rules.stub ? cutting::Rest::Scrap : cutting::Rest::Remnant;
    }

    void finishFigures(Way& way) const {
        addFigures(way.plan);
        Way byTable = way;
        priceWay(outlook_, future_.table, byTable);
        way.worthLeft = byTable.worthLeft;
    }

    /// The sums of a plan, as cutting::check demands them.
    void addFigures(cutting::Plan& plan) const {
        const cutting::Rules& rules = problem().rules;
        const auto worth = [&](Extent extent) {
            return extent < rules.stub ? 0 : problem().worth->of(extent.count());
        };
        for (const cutting::Taken& taken : plan.taken)
            plan.sold = plan.sold + problem().pieces[taken.piece].extent;
        for (const cutting::Mounting& mounting : plan.mountings) {
            const cutting::Piece& piece = problem().pieces[mounting.piece];
            plan.trim = plan.trim + rules.trim;
            for (const cutting::Cut& cut : mounting.cuts) {
                plan.sold = plan.sold + problem().lines[cut.line].extent * cut.count;
                plan.kerf = plan.kerf + rules.kerf * cut.count;
            }
            if (mounting.rest == cutting::Rest::Scrap) plan.scrapped = plan.scrapped + mounting.left;
            plan.newSleeves += piece.kind == PieceKind::Sleeve ? 1 : 0;
            plan.worthSpent += worth(piece.extent) - worth(mounting.left) + problem().mountingCost.count();
        }
    }

    const Outlook& outlook_;
    const Future& future_;
    std::vector<std::int64_t> wanted_; ///< belts of each line that are to be cut
    std::vector<cutting::Taken> taken_;
    foresight::Stock stock_; ///< remnants are named by their place in the problem
    std::vector<std::size_t> sleeves_;
    std::vector<foresight::Line> lines_;
    foresight::Asked asked_;
};

} // namespace

std::vector<Way> weigh(const Outlook& outlook, const Future& future, std::size_t most) {
    return Desk{outlook, future}.ways(most);
}

std::optional<JointWay> weighTogether(const Outlook& outlook, const Future& future,
                                      const std::vector<cutting::Plan>& plans) {
    return Desk{outlook, future}.together(plans);
}

/// The worth table for the planner, to whole units.
std::shared_ptr<const cutting::Worth> curveOf(const foresight::WorthTable& table, Extent stub) {
    std::vector<cutting::Worth::Point> points;
    for (std::size_t cell = 0; cell < table.piece.size(); ++cell)
        points.push_back({static_cast<std::int64_t>(cell) * table.grid.cell(),
                          static_cast<std::int64_t>(std::max(0.0F, table.piece[cell]))});
    for (std::size_t i = 1; i < points.size(); ++i)
        points[i].worth = std::max(points[i].worth, points[i - 1].worth);
    return cutting::Worth::steps(stub, std::move(points));
}

} // namespace riband::shop
