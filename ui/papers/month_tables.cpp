#include "ui/papers/month_tables.h"

#include "ui/papers/paper_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using shop::Sees;
using shop::WasteRow;

constexpr std::size_t mostBelts = 14, mostStock = 12, mostMargin = 12, mostBelow = 8;

QString percent(const std::optional<double>& share) {
    return share ? shownPercent(*share) : QStringLiteral("–");
}

QString unitName(Unit unit) {
    return unit == Unit::Rib ? PaperWords::tr("Ribbed belts") : PaperWords::tr("Toothed belts");
}

bool hasMoved(const MonthReport::Span& span, Unit unit) {
    const auto at = span.moved.find(unit);
    return at != span.moved.end() && (at->second.width.used() != 0 || at->second.width.bought != 0);
}

/// A line of the comparison: what one of its spans says.
struct Figure {
    QString name;
    std::function<QString(const MonthReport::Span&)> words;
};

shop::Moved movedOf(const MonthReport::Span& span, Unit unit) {
    const auto at = span.moved.find(unit);
    return at == span.moved.end() ? shop::Moved{} : at->second;
}

std::int64_t moneyOf(const MonthReport::Span& span,
                     const std::function<std::int64_t(const shop::Balance<std::int64_t>&)>& figure) {
    std::int64_t sum = 0;
    for (const auto& [unit, moved] : span.moved)
        sum += figure(moved.money);
    return sum;
}

void addWidths(std::vector<Figure>& figures, Unit unit) {
    figures.push_back({PaperWords::tr("%1: sold").arg(unitName(unit)), [unit](const MonthReport::Span& span) {
                           return shownSum(unit, movedOf(span, unit).width.sold);
                       }});
    figures.push_back({PaperWords::tr("%1: lost").arg(unitName(unit)), [unit](const MonthReport::Span& span) {
                           return shownSum(unit, movedOf(span, unit).width.lost());
                       }});
    figures.push_back(
        {PaperWords::tr("%1: sold of used").arg(unitName(unit)),
         [unit](const MonthReport::Span& span) { return percent(movedOf(span, unit).width.yield()); }});
}

void addMoney(std::vector<Figure>& figures, const Currency& currency) {
    const auto minor = [currency](std::int64_t amount) { return shownSum(Money::minor(amount), currency); };
    figures.push_back({PaperWords::tr("Sold for, without tax"), [currency](const MonthReport::Span& span) {
                           return shownSum(span.sales.revenue, currency);
                       }});
    figures.push_back(
        {PaperWords::tr("Margin over the width's cost"), [currency](const MonthReport::Span& span) {
             return span.sales.costKnown() ? shownSum(span.sales.margin(), currency)
                                           : PaperWords::tr("cost unknown");
         }});
    figures.push_back({PaperWords::tr("Cost of what was bought"), [minor](const MonthReport::Span& span) {
                           return minor(moneyOf(span, [](const auto& money) { return money.bought; }));
                       }});
    figures.push_back({PaperWords::tr("Cost of what was lost"), [minor](const MonthReport::Span& span) {
                           return minor(moneyOf(span, [](const auto& money) { return money.lost(); }));
                       }});
}

} // namespace

PaperTable comparison(const MonthReport& report, const Currency& currency) {
    const MonthReport::Span* const spans[] = {&report.now, &report.before, &report.yearBefore};
    const QString names[] = {PaperWords::tr("This period"), PaperWords::tr("The period before"),
                             PaperWords::tr("The same days a year earlier")};
    PaperTable table{{{QString{}, 25}}, {}};
    for (std::size_t i = 0; i < std::size(spans); ++i)
        table.columns.push_back({names[i] + QLatin1Char('\n') + shownDays(spans[i]->period), 24, true});
    table.tallHead = true;
    std::vector<Figure> figures;
    for (const Unit unit : {Unit::Micrometre, Unit::Rib})
        if (std::any_of(std::begin(spans), std::end(spans),
                        [unit](const auto* span) { return hasMoved(*span, unit); }))
            addWidths(figures, unit);
    if (report.sees == Sees::Cost) addMoney(figures, currency);
    for (const Figure& figure : figures) {
        PaperTable::Row& row = table.rows.emplace_back(PaperTable::Row{{figure.name}});
        for (const auto* span : spans)
            row.cells << (span->told == shop::Told::Nothing ? QStringLiteral("–") : figure.words(*span));
    }
    return table;
}

namespace {

/// The equation of the book, one line a figure: it must hold to the micrometre and the cent.
class Equation {
public:
    Equation(const std::vector<WasteRow>& rows, const Currency& currency, Sees sees)
        : rows_{rows}, currency_{currency}, sees_{sees} {
        table_.columns.push_back({QString{}, 26});
        for (const WasteRow& row : rows_) {
            table_.columns.push_back({unitName(row.unit), 24, true});
            if (sees_ == Sees::Cost) table_.columns.push_back({PaperWords::tr("Cost"), 16, true});
        }
        if (hasSum()) table_.columns.push_back({PaperWords::tr("Cost together"), 18, true});
    }

    PaperTable whole() && {
        using Width = shop::Balance<std::int64_t>;
        for (const auto& figure : shop::figures<std::int64_t>) {
            const bool in = figure.value == &Width::opening || figure.value == &Width::bought ||
                            figure.value == &Width::found;
            if (figure.value == &Width::sold)
                add(
                    PaperWords::tr("To account for"), [](const Width& balance) { return balance.in(); },
                    true);
            const auto value = [&figure](const Width& balance) { return balance.*figure.value; };
            if (in || figure.value == &Width::closing || isAnywhere(value))
                add(columnWord(figure.name), value);
        }
        add(
            PaperWords::tr("Accounted for"), [](const Width& balance) { return balance.out(); }, true);
        return std::move(table_);
    }

private:
    bool hasSum() const { return sees_ == Sees::Cost && rows_.size() > 1; }

    template <class Value>
    bool isAnywhere(const Value& value) const {
        return std::any_of(rows_.begin(), rows_.end(), [&](const WasteRow& row) {
            return value(row.width) != 0 || value(row.money) != 0;
        });
    }

    template <class Value>
    void add(const QString& name, const Value& value, bool sum = false) {
        PaperTable::Row line{{name}, sum};
        std::int64_t together = 0;
        for (const WasteRow& row : rows_) {
            line.cells << shownSum(row.unit, value(row.width));
            if (sees_ == Sees::Cost) line.cells << shownSum(Money::minor(value(row.money)), currency_);
            together += value(row.money);
        }
        if (hasSum()) line.cells << shownSum(Money::minor(together), currency_);
        table_.rows.push_back(line);
    }

    const std::vector<WasteRow>& rows_;
    const Currency& currency_;
    Sees sees_;
    PaperTable table_;
};

QString others(std::size_t count) { return PaperWords::tr("others: %1").arg(count); }

} // namespace

PaperTable equation(const MonthReport& report, const Currency& currency) {
    return Equation{report.all, currency, report.sees}.whole();
}

PaperTable beltsTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Belt"), 4},
                      {PaperWords::tr("Bought"), 2, true},
                      {PaperWords::tr("Sold"), 2, true},
                      {PaperWords::tr("Lost"), 2, true},
                      {PaperWords::tr("Sold, %"), 2, true},
                      {PaperWords::tr("before"), 2, true},
                      {PaperWords::tr("a year ago"), 2, true}},
                     {}};
    const bool cost = report.sees == Sees::Cost;
    if (cost) table.columns.push_back({PaperWords::tr("Cost lost"), 2, true});
    std::int64_t rest = 0, all = 0;
    std::size_t left = 0;
    const auto then = [](const std::optional<shop::ComparedRow::Then>& earlier) {
        return percent(earlier ? earlier->width.yield() : std::nullopt);
    };
    for (const shop::ComparedRow& compared : report.belts.groups.front()) {
        const WasteRow& row = compared.now;
        if (row.width.used() == 0) continue;
        all += row.money.lost();
        if (table.rows.size() == mostBelts) {
            rest += row.money.lost();
            ++left;
            continue;
        }
        PaperTable::Row line{{text(row.group), shownSum(row.unit, row.width.bought),
                              shownSum(row.unit, row.width.sold), shownSum(row.unit, row.width.lost()),
                              percent(row.width.yield()), then(compared.before), then(compared.yearBefore)}};
        if (cost) line.cells << shownSum(Money::minor(row.money.lost()), currency);
        table.rows.push_back(line);
    }
    const auto add = [&](const QString& name, std::int64_t money, bool sum) {
        PaperTable::Row line{{name}, sum};
        line.cells.resize(table.columns.size() - (cost ? 1 : 0));
        if (cost) line.cells << shownSum(Money::minor(money), currency);
        table.rows.push_back(line);
    };
    if (left > 0) add(others(left), rest, false);
    if (cost && !table.rows.empty()) add(PaperWords::tr("Together"), all, true);
    return table;
}

PaperTable agesTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Days since it was made"), 5}, {PaperWords::tr("Pieces"), 3, true}},
                     {}};
    if (report.sees == Sees::Cost) table.columns.push_back({PaperWords::tr("Cost"), 4, true});
    std::int64_t pieces = 0;
    for (const shop::AgeRow& age : report.stock.ages) {
        const QString name = age.belowDays
                                 ? PaperWords::tr("%1 to %2").arg(age.fromDays).arg(*age.belowDays - 1)
                                 : PaperWords::tr("%1 and more").arg(age.fromDays);
        PaperTable::Row line{{name, QString::number(age.pieces)}};
        if (report.sees == Sees::Cost) line.cells << shownSum(age.cost, currency);
        table.rows.push_back(line);
        pieces += age.pieces;
    }
    PaperTable::Row sum{{PaperWords::tr("Together"), QString::number(pieces)}, true};
    if (report.sees == Sees::Cost) sum.cells << shownSum(report.stock.cost, currency);
    table.rows.push_back(sum);
    return table;
}

PaperTable coversTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Days that it lasts"), 5}, {PaperWords::tr("Belts"), 2, true}}, {}};
    if (report.sees == Sees::Cost) {
        table.columns.push_back({PaperWords::tr("Cost"), 4, true});
        table.columns.push_back({PaperWords::tr("Worth"), 4, true});
    }
    for (const shop::CoverRow& cover : report.stock.covers) {
        const QString name = !cover.fromDays ? PaperWords::tr("none sold in a year")
                             : cover.belowDays
                                 ? PaperWords::tr("%1 to %2").arg(*cover.fromDays).arg(*cover.belowDays - 1)
                                 : PaperWords::tr("%1 and more").arg(*cover.fromDays);
        PaperTable::Row& line =
            table.rows.emplace_back(PaperTable::Row{{name, QString::number(cover.belts)}});
        if (report.sees == Sees::Cost)
            line.cells << shownSum(cover.cost, currency) << shownSum(cover.worth, currency);
    }
    return table;
}

PaperTable clearTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Belt"), 4},
                      {PaperWords::tr("On rack and shelf"), 2, true},
                      {PaperWords::tr("Sold in a year"), 2, true},
                      {PaperWords::tr("Lasts, days"), 2, true}},
                     {}};
    const bool cost = report.sees == Sees::Cost;
    if (cost) {
        table.columns.push_back({PaperWords::tr("Cost"), 2, true});
        table.columns.push_back({PaperWords::tr("Worth"), 2, true});
    }
    struct {
        Money cost = Money::minor(0), worth = Money::minor(0);
        std::size_t belts = 0;
    } rest, all;
    const auto count = [](auto& sum, const shop::StockRow& row) {
        sum.cost = sum.cost + row.cost;
        sum.worth = sum.worth + row.worth.value_or(Money::minor(0));
        ++sum.belts;
    };
    for (const shop::StockRow& row : report.stock.belts) {
        if (row.pace != shop::StockRow::Pace::Dead && row.pace != shop::StockRow::Pace::Slow) continue;
        count(all, row);
        if (table.rows.size() == mostStock) {
            count(rest, row);
            continue;
        }
        PaperTable::Row line{{text(row.designation), shownSum(row.unit, row.width),
                              shownSum(row.unit, row.soldInYear),
                              row.coverDays ? QString::number(*row.coverDays) : QStringLiteral("–")}};
        if (cost)
            line.cells << shownSum(row.cost, currency)
                       << (row.worth ? shownSum(*row.worth, currency) : QStringLiteral("–"));
        table.rows.push_back(line);
    }
    const auto add = [&](const QString& name, const auto& sum, bool strong) {
        PaperTable::Row line{{name, QString{}, QString{}, QString{}}, strong};
        if (cost) line.cells << shownSum(sum.cost, currency) << shownSum(sum.worth, currency);
        table.rows.push_back(line);
    };
    if (rest.belts > 0) add(others(rest.belts), rest, false);
    if (cost && !table.rows.empty()) add(PaperWords::tr("Together"), all, true);
    return table;
}

namespace {

QStringList marginCells(const QString& name, const shop::MarginRow& row, const Currency& currency) {
    const auto share = row.share();
    return {name, shownSum(row.sale.revenue, currency),
            row.sale.costKnown() ? shownSum(row.margin(), currency) : PaperWords::tr("cost unknown"),
            share ? shownTenths(static_cast<double>(share->count()) / 10) : QString{}};
}

} // namespace

PaperTable marginTable(const std::vector<shop::MarginRow>& rows, const QString& name,
                       const Currency& currency) {
    PaperTable table{{{name, 10},
                      {PaperWords::tr("Sold for"), 6, true},
                      {PaperWords::tr("Margin"), 6, true},
                      {PaperWords::tr("%"), 3, true}},
                     {}};
    shop::MarginRow rest, all;
    std::size_t left = 0;
    const auto count = [](shop::MarginRow& sum, const shop::MarginRow& row) {
        sum.sale.revenue = sum.sale.revenue + row.sale.revenue;
        sum.sale.cost = sum.sale.cost + row.sale.cost;
        sum.sale.uncosted = sum.sale.uncosted + row.sale.uncosted;
    };
    for (auto row = rows.rbegin(); row != rows.rend(); ++row) {
        count(all, *row);
        if (table.rows.size() < mostMargin) {
            table.rows.push_back({marginCells(
                row->name.empty() ? PaperWords::tr("walk-ins") : text(row->name), *row, currency)});
            continue;
        }
        count(rest, *row);
        ++left;
    }
    if (left > 0) table.rows.push_back({marginCells(others(left), rest, currency)});
    if (!table.rows.empty())
        table.rows.push_back({marginCells(PaperWords::tr("Together"), all, currency), true});
    return table;
}

PaperTable belowTable(const MonthReport& report, const Currency& currency) {
    PaperTable table{{{PaperWords::tr("Order"), 4},
                      {PaperWords::tr("Day"), 5},
                      {PaperWords::tr("Customer"), 7},
                      {PaperWords::tr("Sold for"), 4, true},
                      {PaperWords::tr("Cost"), 4, true}},
                     {}};
    const auto& below = report.margin.below;
    for (const store::BelowCost& line : below) {
        if (table.rows.size() == mostBelow) break;
        table.rows.push_back({{text(line.order), shown(dayOf(line.at)),
                               line.customer.empty() ? PaperWords::tr("walk-in") : text(line.customer),
                               shownSum(line.revenue, currency), shownSum(line.cost, currency)}});
    }
    if (below.size() > mostBelow)
        table.rows.push_back(
            {{others(below.size() - mostBelow), QString{}, QString{}, QString{}, QString{}}});
    if (below.empty())
        table.rows.push_back({{PaperWords::tr("none"), QString{}, QString{}, QString{}, QString{}}});
    return table;
}

} // namespace riband::ui
