#include "core/foresight/hindsight.h"

#include <cmath>
#include <glpk.h>
#include <memory>
#include <numeric>

namespace riband::foresight {

namespace {

constexpr Size mostCells = 4000; // of a sleeve: 0.1 mm for 400 mm where no coarser grid is exact
constexpr int mostPartsOfAnOrder = 256;
constexpr std::size_t mostKinds = 350;
constexpr int patternsARound = 12;

/// The widest grid on which every size is exact, or the finest that we can pay for: sizes are rounded down
/// then, so the bound stays a bound.
Size cellFor(const Setting& setting, const std::map<Size, std::int64_t>& asked) {
    Size common = std::gcd(setting.rules.trim, setting.sleeve - setting.rules.end);
    for (const auto& [width, count] : asked)
        common = std::gcd(common, width + setting.rules.kerf);
    return std::max({common, setting.sleeve / mostCells, Size{1}});
}

struct ProblemEnder {
    void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
};
using LinearProgramme = std::unique_ptr<glp_prob, ProblemEnder>;

void addColumn(glp_prob* lp, double cost, const std::vector<std::pair<int, double>>& entries) {
    const int column = glp_add_cols(lp, 1);
    std::vector<int> rows{0};
    std::vector<double> values{0};
    for (const auto& [row, value] : entries) {
        rows.push_back(row + 1);
        values.push_back(value);
    }
    glp_set_obj_coef(lp, column, cost);
    glp_set_col_bnds(lp, column, GLP_LO, 0, 0);
    glp_set_mat_col(lp, column, static_cast<int>(entries.size()), rows.data(), values.data());
}

bool optimise(glp_prob* lp) {
    glp_smcp how;
    glp_init_smcp(&how);
    how.msg_lev = GLP_MSG_OFF;
    how.it_lim = 20000;
    return glp_simplex(lp, &how) == 0 && glp_get_status(lp) == GLP_OPT;
}

} // namespace

Hindsight::Hindsight(const Setting& setting, const std::vector<Order>& orders, int rounds)
    : setting_{setting} {
    for (const auto& order : orders)
        for (const auto& line : order.lines)
            asked_[line.width] += line.quantity;
    cell_ = cellFor(setting_, asked_);
    makeRows(orders);
    table_.assign(static_cast<std::size_t>((setting_.sleeve - setting_.rules.end) / cell_) + 1, 0.0);
    chosen_.assign(table_.size(), -1);
    solve(rounds);
}

void Hindsight::makeRows(const std::vector<Order>& orders) {
    // Orders alike are one kind. Where nearly all differ, odd widths are first rounded down more and more.
    std::map<std::vector<std::pair<Size, int>>, int> kinds;
    for (Size step = 1;; step = step == 1 ? std::max<Size>(2, setting_.sleeve / 1600) : step * 2) {
        kinds.clear();
        for (const auto& order : orders) {
            std::vector<std::pair<Size, int>> kind;
            for (const auto& line : order.lines)
                kind.emplace_back(line.width, line.quantity);
            for (auto& [width, quantity] : kind)
                if (std::find(setting_.listed.begin(), setting_.listed.end(), width) == setting_.listed.end())
                    width = std::max<Size>(1, width / step * step);
            std::sort(kind.begin(), kind.end());
            ++kinds[kind];
        }
        if (kinds.size() <= mostKinds || step > setting_.sleeve / 50) break;
    }
    for (const auto& [kind, count] : kinds) {
        std::vector<int> rows;
        std::vector<Line> lines;
        for (const auto& [width, quantity] : kind) {
            rows.push_back(static_cast<int>(rows_.size()));
            rows_.push_back({width, static_cast<double>(count) * quantity, 0});
            lines.push_back({width, quantity});
        }
        makeLumps(rows, lines);
    }
}

void Hindsight::makeLumps(const std::vector<int>& rows, const std::vector<Line>& lines) {
    const auto& rules = setting_.rules;
    double parts = 1, belts = 0;
    for (const auto& line : lines) {
        parts *= line.quantity + 1;
        belts += line.quantity;
    }
    const auto capacity = std::int64_t{setting_.sleeve} - rules.end;
    if (parts > mostPartsOfAnOrder) {
        // Too many parts to list. Each belt bears its share of one trim: no part can be smaller than that.
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const double size = lines[i].width + rules.kerf + rules.trim / belts;
            lumps_.push_back({std::max<Size>(1, static_cast<Size>(size / cell_)), {{rows[i], 1}}});
        }
        return;
    }
    std::vector<int> count(lines.size(), 0);
    for (;;) {
        std::size_t at = 0;
        while (at < lines.size() && count[at] == lines[at].quantity)
            count[at++] = 0;
        if (at == lines.size()) return;
        ++count[at];
        Lump lump{0, {}};
        std::int64_t size = rules.trim;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            size += std::int64_t{count[i]} * (lines[i].width + rules.kerf);
            if (count[i] > 0) lump.belts.emplace_back(rows[i], count[i]);
        }
        if (size > capacity) continue;
        lump.size = std::max<Size>(1, static_cast<Size>(size / cell_));
        lumps_.push_back(std::move(lump));
    }
}

double Hindsight::price(const Lump& lump) const {
    double sum = 0;
    for (const auto& [row, count] : lump.belts)
        sum += rows_[static_cast<std::size_t>(row)].dual * count;
    return sum;
}

void Hindsight::fillTable() {
    struct Item {
        std::size_t size;
        double worth;
        int lump;
    };
    std::map<Size, Item> bestOfSize; // of lumps of one size only the dearest can be in a best pattern
    for (std::size_t i = 0; i < lumps_.size(); ++i) {
        const Item item{static_cast<std::size_t>(lumps_[i].size), price(lumps_[i]), static_cast<int>(i)};
        if (item.worth <= 0) continue;
        const auto [at, fresh] = bestOfSize.try_emplace(lumps_[i].size, item);
        if (!fresh && at->second.worth < item.worth) at->second = item;
    }
    std::vector<Item> items; // a narrower lump that is worth as much always does as well
    for (const auto& [size, item] : bestOfSize)
        if (items.empty() || item.worth > items.back().worth) items.push_back(item);
    for (std::size_t r = 0; r < table_.size(); ++r) {
        table_[r] = r > 0 ? table_[r - 1] : 0;
        chosen_[r] = -1;
        for (const auto& item : items) {
            if (item.size > r) break;
            const double worth = item.worth + table_[r - item.size];
            if (worth > table_[r] + 1e-12) {
                table_[r] = worth;
                chosen_[r] = item.lump;
            }
        }
    }
}

std::vector<std::pair<int, double>> Hindsight::patternFor(int capacity, const Lump* first) const {
    std::map<int, double> belts;
    const auto add = [&](const Lump& lump) {
        for (const auto& [row, count] : lump.belts)
            belts[row] += count;
    };
    std::size_t r = static_cast<std::size_t>(capacity);
    if (first) {
        add(*first);
        r -= static_cast<std::size_t>(first->size);
    }
    while (r > 0) {
        const int lump = chosen_[r];
        if (lump < 0) {
            --r;
            continue;
        }
        add(lumps_[static_cast<std::size_t>(lump)]);
        r -= static_cast<std::size_t>(lumps_[static_cast<std::size_t>(lump)].size);
    }
    return {belts.begin(), belts.end()};
}

void Hindsight::solve(int rounds) {
    if (rows_.empty()) {
        converged_ = true;
        return;
    }
    const int capacity = static_cast<int>(table_.size()) - 1;
    const double sleeve = setting_.sleeve;
    LinearProgramme lp{glp_create_prob()};
    glp_set_obj_dir(lp.get(), GLP_MIN);
    glp_add_rows(lp.get(), static_cast<int>(rows_.size()));
    for (std::size_t i = 0; i < rows_.size(); ++i)
        glp_set_row_bnds(lp.get(), static_cast<int>(i) + 1, GLP_LO, rows_[i].belts, 0);
    std::vector<bool> covered(rows_.size(), false);
    for (const auto& lump : lumps_) { // to begin with: each lump as often as it fits
        const auto times = static_cast<double>(capacity / lump.size);
        std::vector<std::pair<int, double>> belts;
        for (const auto& [row, count] : lump.belts) {
            belts.emplace_back(row, count * times);
            covered[static_cast<std::size_t>(row)] = true;
        }
        addColumn(lp.get(), sleeve, belts);
    }
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (!covered[i]) throw std::invalid_argument("a belt is too wide for any sleeve");

    std::vector<double> bestDuals(rows_.size(), 0.0);
    for (rounds_ = 0; rounds_ < rounds && optimise(lp.get()); ++rounds_) {
        for (std::size_t i = 0; i < rows_.size(); ++i)
            rows_[i].dual = std::max(0.0, glp_get_row_dual(lp.get(), static_cast<int>(i) + 1));
        fillTable();
        // Farley: prices shrunk until no pattern is worth more than a sleeve give a bound at any moment.
        const double shrink = std::min(1.0, sleeve / table_.back());
        if (const double bound = shrink * dualValue(); bound > bound_) {
            bound_ = bound;
            for (std::size_t i = 0; i < rows_.size(); ++i)
                bestDuals[i] = rows_[i].dual * shrink;
        }
        if (table_.back() <= sleeve * (1 + 1e-7)) {
            converged_ = true;
            break;
        }
        addColumn(lp.get(), sleeve, patternFor(capacity, nullptr));
        // More patterns a round, fewer rounds: the next best ones that begin with some other lump, never
        // many.
        std::vector<std::pair<double, std::size_t>> begins;
        for (std::size_t i = 0; i < lumps_.size(); ++i)
            begins.emplace_back(
                price(lumps_[i]) + table_[static_cast<std::size_t>(capacity - lumps_[i].size)], i);
        std::sort(begins.rbegin(), begins.rend());
        double last = table_.back() - 1e-9;
        int more = patternsARound;
        for (const auto& [worth, lump] : begins) {
            if (more == 0 || worth <= sleeve * (1 + 1e-6)) break;
            if (worth >= last) continue; // most likely the pattern just made
            addColumn(lp.get(), sleeve, patternFor(capacity, &lumps_[lump]));
            last = worth - 1e-9;
            --more;
        }
    }
    for (std::size_t i = 0; i < rows_.size(); ++i)
        rows_[i].dual = bestDuals[i];
    fillTable();
}

double Hindsight::dualValue() const {
    double sum = 0;
    for (const auto& row : rows_)
        sum += row.dual * row.belts;
    return sum;
}

double Hindsight::worthOfRemnant(Size width) const {
    const auto cells = (width - setting_.rules.end) / cell_;
    if (cells <= 0) return 0;
    return table_[std::min(static_cast<std::size_t>(cells), table_.size() - 1)];
}

double Hindsight::worthOfReady(const std::map<Size, int>& shelf) const {
    double worth = 0;
    for (const auto& [width, count] : shelf) {
        const auto asked = asked_.find(width);
        if (asked == asked_.end()) continue;
        worth +=
            static_cast<double>(width) * static_cast<double>(std::min<std::int64_t>(count, asked->second));
    }
    return worth;
}

} // namespace riband::foresight
