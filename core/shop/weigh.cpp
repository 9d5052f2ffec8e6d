#include "core/shop/weigh.h"

#include "core/foresight/advisor.h"
#include "core/shop/shelf_fill.h"

#include <algorithm>
#include <cmath>

namespace riband::shop {

namespace {

using cutting::PieceKind;
using foresight::Size;

constexpr double ordersToUse =
    25; // as in the advisor: a piece that lives for so many orders is as good as new

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
        foresight::Setting now = setting();
        now.rackLimit = std::max(now.rackLimit, stock_.count + 1); // what lies there is not thrown away now
        foresight::Chooser chooser{now, foresight::Layer::LookAhead,
                                   foresight::Advisor::usualFor(now.shelf).lookAhead};
        const auto seed = foresight::Dice::of(now.seed, outlook_.past.orders.size()).next();
        const auto choice = chooser.choose(future_.table, future_.outlook, stock_, asked_, true, seed,
                                           static_cast<int>(sleeves_.size()));
        return waysOf(choice, chooser.rule(), most);
    }

private:
    const foresight::Setting& setting() const { return outlook_.past.setting; }
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
                            [&](const Way& each) { return each.plan.mountings == way.plan.mountings; }))
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

    cutting::Plan emptyPlan() const {
        const Extent none = Extent::none(problem().rules.unit());
        return {taken_, {}, {}, none, none, none, none};
    }

    void mount(cutting::Plan& plan, std::size_t piece, int part, std::vector<std::int64_t>& left) const {
        const cutting::Rules& rules = problem().rules;
        cutting::Mounting mounting{
            piece, {}, problem().pieces[piece].extent - rules.trim, cutting::Rest::Nothing};
        for (std::size_t item = 0; item < asked_.items().size(); ++item) {
            std::int64_t belts = asked_.belts(part, static_cast<int>(item));
            for (std::size_t line = 0; line < left.size() && belts > 0; ++line) {
                if (problem().lines[line].extent.count() != asked_.items()[item].width) continue;
                const std::int64_t some = std::min(belts, left[line]);
                if (some == 0) continue;
                mounting.cuts.push_back({line, some});
                mounting.left = mounting.left - (problem().lines[line].extent + rules.kerf) * some;
                left[line] -= some;
                belts -= some;
            }
        }
        std::stable_sort(mounting.cuts.begin(), mounting.cuts.end(), [&](const auto& a, const auto& b) {
            return problem().lines[a.line].extent < problem().lines[b.line].extent;
        });
        if (!mounting.left.isNone())
            mounting.rest = mounting.left < rules.stub ? cutting::Rest::Scrap : cutting::Rest::Remnant;
        plan.mountings.push_back(std::move(mounting));
    }

    /// The sums of a plan, as cutting::check demands them.
    void finishFigures(Way& way) const {
        cutting::Plan& plan = way.plan;
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
        Way byTable = way;
        priceWay(outlook_, future_.table, byTable);
        way.worthLeft = byTable.worthLeft;
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

} // namespace riband::shop
