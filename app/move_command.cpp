#include "app/commands.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/table_file.h"
#include "core/shop/limits.h"
#include "core/shop/queries.h"
#include "core/shop/stock.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QJsonObject>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {
        QStringLiteral("move"),
        Words::tr("Puts pieces at their places, as scanned piece by piece: all rows of the table, or none if "
                  "one is bad. “-” is standard input."),
        {{QStringLiteral("CSV"), Words::tr("the table: piece,place")}},
        {{"shop", Words::tr("The shop."), "FILE"},
         {"person", Words::tr("Initials of who does it; else the first of the shop."), "INITIALS"}}};
}

std::optional<shop::Step> stepOf(TableFile& file, const CsvTable::Row& row, const shop::Shop& shop) {
    const std::string said = file.field(row, "piece");
    const auto piece = shop::scan(shop, said).piece;
    if (!piece)
        file.fault(row, "piece",
                   Words::tr("No piece has the code “%1”. Check the label.").arg(ui::text(said)));
    else if (piece->gone())
        file.fault(row, "piece", Words::tr("The piece %1 is used up.").arg(ui::text(piece->code)));
    else if (!shop::canBePlace(shop, file.field(row, "place")))
        file.fault(row, "place", ui::wrongPlace(file.field(row, "place")));
    else
        return shop::Step{piece->code, file.field(row, "place")};
    return std::nullopt;
}

} // namespace

Exit move(const QStringList& arguments) {
    const Options options(usage(), arguments);
    OpenShop open(options.needed("shop"), store::Connection::Mode::Open, options.value("person"));
    TableFile file(options.positional(0), {"piece", "place"});
    file.refuseOthers({"piece", "place"});
    std::vector<shop::Step> steps;
    for (const auto& row : file.rows())
        if (auto step = stepOf(file, row, open.shop())) steps.push_back(std::move(*step));
    file.refuseFaults();
    shop::moveAll(open.shop(), steps);
    if (options.json())
        printJson(QJsonObject{{"moved", static_cast<qint64>(steps.size())}});
    else
        print(Words::tr("Moves booked: %1.").arg(steps.size()));
    return Exit::Done;
}

} // namespace riband::app
