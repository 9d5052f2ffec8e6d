// Which movements stand behind a figure of the waste report, and what they come to.
#include "core/measure/text.h"
#include "core/shop/reports/basis.h"

#include <algorithm>
#include <array>

namespace riband::shop {

namespace {

using store::Account;
using store::Flow;

constexpr std::array lostAccounts{Account::Trim, Account::Kerf, Account::End, Account::Scrap,
                                  Account::Difference};

/// A figure by the name of the width in it: "cost_trim" counts like "trim".
std::string widthName(const std::string& name) { return name.starts_with("cost_") ? name.substr(5) : name; }

bool isOfRack(const std::string& figure) { return figure == "opening" || figure == "closing"; }

/// One account that a figure counts; of lost and used there are more.
struct Counted {
    const char* name;
    Account account;
    std::optional<store::ScrapReason> reason{};
};
constexpr Counted counted[] = {{"bought", Account::Bought},
                               {"found", Account::Found},
                               {"sold", Account::Sold},
                               {"ready", Account::Ready},
                               {"shelf", Account::Ready},
                               {"trim", Account::Trim},
                               {"kerf", Account::Kerf},
                               {"end", Account::End},
                               {"stub", Account::Scrap, store::ScrapReason::Stub},
                               {"miscut", Account::Scrap, store::ScrapReason::Miscut},
                               {"damaged", Account::Scrap, store::ScrapReason::Damaged},
                               {"aged", Account::Scrap, store::ScrapReason::Aged},
                               {"difference", Account::Difference}};

std::vector<Account> accountsOf(const std::string& figure) {
    for (const Counted& each : counted)
        if (figure == each.name) return {each.account};
    std::vector<Account> accounts;
    if (figure == "lost" || figure == "lost_m2" || figure == "lost_kg" || figure == "lost_share_percent")
        accounts.assign(lostAccounts.begin(), lostAccounts.end());
    if (figure == "yield_percent" || figure == "used" || figure == "used_m2" || figure == "lost_percent" ||
        figure == "cuts") {
        accounts.assign(lostAccounts.begin(), lostAccounts.end());
        accounts.push_back(Account::Sold);
    }
    return accounts;
}

std::optional<store::ScrapReason> reasonOf(const std::string& figure) {
    for (const Counted& each : counted)
        if (figure == each.name) return each.reason;
    return std::nullopt;
}

bool isFigure(const std::string& figure) { return isOfRack(figure) || !accountsOf(figure).empty(); }

/// Of those of the line, if it has its own, the ones that the figure counts.
std::optional<std::vector<Account>> common(const std::vector<Account>& line,
                                           const std::vector<Account>& figure) {
    if (line.empty() || figure.empty()) return line.empty() ? figure : line;
    std::vector<Account> both;
    for (const Account account : line)
        if (std::count(figure.begin(), figure.end(), account) > 0) both.push_back(account);
    return both.empty() ? std::nullopt : std::optional{both};
}

/// The rack before or after: what was moved from the beginning on.
store::Behind rackBehind(store::Behind row, const std::string& figure) {
    row.until = figure == "opening" ? row.from : row.until;
    row.from = Moment{};
    if (!row.place && row.accounts.empty()) row.accounts = {Account::Rack}; // pieces lie elsewhere now
    return row;
}

/// How postings of an account count in a figure. A cause's rack is what it took from it.
std::int64_t signIn(const std::string& figure, Account account) {
    if (isOfRack(figure)) return account == Account::Rack ? 1 : -1;
    return account == Account::Bought || account == Account::Found ? -1 : 1;
}

class Sum {
public:
    Sum(const Shop& shop, const store::Behind& what, const std::string& name, const Currency& currency)
        : shop_{shop}, unit_{what.unit.value_or(Unit::Micrometre)}, name_{name}, figure_{widthName(name)},
          currency_{currency}, isOne_{!what.accounts.empty() && isFigure(figure_) &&
                                      figure_ != "lost_share_percent" &&
                                      !(what.place && (isOfRack(figure_) || figure_ == "shelf"))} {}

    bool isOne() const { return isOne_; }
    /// In the simplest unit: width, or money where the figure is money.
    std::string simple(const std::vector<Flow>& flows) const {
        std::int64_t width = 0;
        Money cost = Money::minor(0);
        for (const Flow& flow : flows) {
            const std::int64_t sign = signIn(figure_, flow.account);
            width += sign * flow.within;
            cost = cost + flow.costWithin * sign;
        }
        return name_ != figure_ ? printMoney(cost, currency_) : amountOf(unit_, width);
    }
    std::string whole(const store::Evidence& found) const {
        if (figure_ == "cuts") return std::to_string(found.movements);
        if (unit().empty() || unit() == wordFor(unit_) || name_ != figure_) return simple(found.sums);
        const WasteRow row = rowOf(shop_, unit_, found.sums);
        if (figure_ == "lost_percent")
            return row.width.used() > 0 ? percentOf(static_cast<double>(row.width.lost()) /
                                                    static_cast<double>(row.width.used()))
                                        : "";
        const ReportTable table = tableOf(std::vector{row}, currency_, Sees::WidthOnly);
        const auto at = std::find(table.columns.begin(), table.columns.end(), figure_);
        return table.rows.front()[static_cast<std::size_t>(at - table.columns.begin())];
    }
    std::string unit() const {
        if (name_ != figure_) return std::string{currency_.code()};
        if (figure_ == "cuts") return "";
        if (figure_.ends_with("_m2")) return "m²";
        if (figure_.ends_with("_kg")) return "kg";
        return figure_.ends_with("_percent") ? "%" : wordFor(unit_);
    }

private:
    const Shop& shop_;
    Unit unit_;
    std::string name_, figure_;
    const Currency& currency_;
    bool isOne_;
};

} // namespace

std::optional<store::Behind> behindFigure(const store::Behind& row, const std::string& name) {
    const std::string figure = widthName(name);
    if (isOfRack(figure)) return rackBehind(row, figure);
    store::Behind behind = row;
    const auto accounts = common(row.accounts, accountsOf(figure));
    if (!accounts) return std::nullopt;
    behind.accounts = *accounts;
    if (const auto reason = reasonOf(figure)) {
        if (row.reason && row.reason != reason) return std::nullopt;
        behind.reason = reason;
    }
    if (figure == "shelf") behind.from = Moment{};
    return behind;
}

Moves movesBehind(const Shop& shop, const store::Behind& what, const std::string& figure,
                  const Currency& currency, std::size_t most) {
    const store::Evidence found = store::Flows{shop.connection}.behind(what, most);
    const Sum sum{shop, what, figure, currency};
    const store::Ledger ledger{shop.connection};
    Moves moves;
    for (const auto& line : found.newest)
        moves.newest.push_back({ledger.at(line.movement), sum.isOne() ? sum.simple(line.flows) : ""});
    moves.basis.all = found.movements;
    if (!sum.isOne()) return moves;
    moves.basis.sum = sum.whole(found);
    moves.basis.unit = sum.unit();
    return moves;
}

} // namespace riband::shop
