#include "app/import.h"

#include "app/plan_files.h"
#include "core/shop/kept.h"
#include "core/shop/limits.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>
#include <sstream>

namespace riband::app {

namespace {

using ui::Words;
constexpr std::int64_t mostDays = 1000;

/// Puts what a row says over the entry; an empty field leaves what is there.
class Row {
public:
    Row(TableFile& file, const CsvTable::Row& row, const Currency& currency)
        : file_{file}, row_{row}, currency_{currency} {}

    void over(store::StockedBelt& entry) {
        takeText("body", entry.body);
        takeText("cord", entry.cord);
        take("price", entry.price,
             [this](const std::string& text) { return readWidthPrice(text, currency_); });
        take("sleeve_cost", entry.sleeveCost,
             [this](const std::string& text) { return readMoney(text, currency_); });
        const bool ribbed = entry.unit == Unit::Rib;
        refuseFilled(ribbed ? "sleeve_mm" : "sleeve_ribs");
        take(ribbed ? "sleeve_ribs" : "sleeve_mm", entry.newSleeve,
             [&entry](const std::string& text) { return readExtent(text, entry.unit); });
        if (entry.newSleeve > shop::widestPiece(entry.unit))
            file_.fault(row_, ribbed ? "sleeve_ribs" : "sleeve_mm", ui::say(TextFault::TooLarge));
        if (has("delivery_days"))
            entry.deliveryDays = static_cast<int>(file_.count(row_, "delivery_days", mostDays).value_or(1));
        if (has("listed")) entry.listed = listed(entry.unit);
        if (entry.sleeveCost < Money::minor(0))
            file_.fault(row_, "sleeve_cost", ui::say(TextFault::Negative));
    }

private:
    bool has(std::string_view column) const { return !file_.field(row_, column).empty(); }
    void takeText(std::string_view column, std::string& into) {
        if (has(column)) into = file_.field(row_, column);
    }
    template <class T, class Reader>
    void take(std::string_view column, T& into, Reader read) {
        if (!has(column)) return;
        if (const auto got = file_.quantity<T>(row_, column, read)) into = *got;
    }
    void refuseFilled(std::string_view column) {
        if (has(column))
            file_.fault(row_, column, Words::tr("This belt is not measured so; leave it empty."));
    }
    /// "20 30 50": rising, each once.
    std::vector<Extent> listed(Unit unit) {
        std::vector<Extent> extents;
        std::istringstream words(file_.field(row_, "listed"));
        for (std::string word; words >> word;) {
            const auto extent = readExtent(word, unit);
            if (extent && !extent->isNone())
                extents.push_back(*extent);
            else
                file_.fault(row_, "listed", Words::tr("“%1” is no width.").arg(ui::text(word)));
        }
        std::sort(extents.begin(), extents.end());
        extents.erase(std::unique(extents.begin(), extents.end()), extents.end());
        return extents;
    }
    TableFile& file_;
    const CsvTable::Row& row_;
    const Currency& currency_;
};

std::vector<store::StockedBelt> entriesOf(TableFile& file, const shop::Shop& shop, const Currency& currency) {
    std::vector<store::StockedBelt> entries;
    for (const auto& row : file.rows()) {
        const auto belt = beltOf(file, row, *shop.tables);
        if (!belt) continue;
        const bool again =
            std::any_of(entries.begin(), entries.end(), [&](const auto& e) { return e.belt == *belt; });
        if (again) file.fault(row, "belt", Words::tr("This belt stands in the table already."));
        entries.push_back(shop::entryOf(shop, *belt));
        Row(file, row, currency).over(entries.back());
    }
    file.refuseFaults();
    return entries;
}

/// An entry new to the shop has no number yet.
void write(store::Connection& connection, const std::vector<store::StockedBelt>& entries) {
    store::Catalogue catalogue{connection};
    for (const store::StockedBelt& entry : entries)
        catalogue.find(entry.belt) ? catalogue.change(entry) : static_cast<void>(catalogue.add(entry));
}

} // namespace

QJsonObject importBelts(const shop::Shop& shop, const QString& csv) {
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    TableFile file(csv, {"belt"});
    file.refuseOthers({"belt", "body", "cord", "price", "sleeve_mm", "sleeve_ribs", "sleeve_cost",
                       "delivery_days", "listed"});
    store::Transaction transaction{shop.connection};
    const auto entries = entriesOf(file, shop, currency);
    write(shop.connection, entries);
    transaction.commit();
    return {{"rows", static_cast<qint64>(entries.size())}};
}

} // namespace riband::app
