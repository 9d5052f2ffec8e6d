#include "app/commands.h"
#include "app/json.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/sheet_file.h"
#include "app/table_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QJsonArray>
#include <QJsonObject>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {QStringLiteral("receive"),
            Words::tr(
                "Books a delivery: all rows of the table, or nothing if one is bad. “-” is standard input."),
            {{QStringLiteral("CSV"), Words::tr("the table")}},
            {{"shop", Words::tr("The shop."), "FILE"},
             {"supplier", Words::tr("Whose delivery it is."), "NAME"},
             {"reference", Words::tr("Number of the delivery note."), "TEXT"},
             {"freight", Words::tr("What came on top of the goods; spread over the sleeves by their cost."),
              "MONEY"},
             {"expected", Words::tr("Number of the expected delivery that it belongs to."), "NUMBER"},
             {"preview", Words::tr("Only says what would be booked.")},
             {"column", Words::tr("What a column holds, such as “Artikel=belt”; “Remark=” leaves it out."),
              "HEAD=FIELD"},
             {"unit", Words::tr("mm, cm or in, for widths that tell none."), "UNIT"},
             {"person", Words::tr("Initials of who does it; else the first of the shop."), "INITIALS"}}};
}

Money freightOf(const Options& options, const shop::Shop& shop) {
    if (!options.has("freight")) return Money::minor(0);
    const auto money = readMoney(options.value("freight").toStdString(),
                                 store::Settings{shop.connection}.read().prices.currency);
    if (!money) throw BadInput(QStringLiteral("--freight: ") + ui::say(money.reason()));
    return *money;
}

std::optional<store::ExpectedId> expectedOf(const Options& options) {
    if (!options.has("expected")) return std::nullopt;
    bool whole = false;
    const qlonglong number = options.value("expected").toLongLong(&whole);
    if (!whole || number < 1) throw BadInput(Words::tr("--expected: a whole number from 1 on is needed."));
    return store::ExpectedId{number};
}

/// What would be booked, a row each.
QJsonArray rowsOf(const shop::Sheet& sheet) {
    QJsonArray rows;
    for (const shop::SheetRow& row : sheet.rows) {
        const Extent extent = row.delivery.extent;
        rows << QJsonObject{{"line", static_cast<qint64>(row.line)},
                            {"belt", textValue(belt::designation(row.delivery.belt))},
                            {"sleeves", row.delivery.sleeves},
                            {keyOf("width", extent.unit()), inUnit(extent)},
                            {"kind", textValue(wordFor(row.delivery.kind))},
                            {"kind_guessed", row.kindGuessed},
                            {"cost_known", row.delivery.costEach > Money::minor(0)},
                            {"new_belt", row.newBelt}};
    }
    return rows;
}

void printPreview(const shop::Sheet& sheet) {
    for (const shop::SheetRow& row : sheet.rows)
        print(Words::tr("line %1: %2 of %3, %4 wide%5%6%7")
                  .arg(row.line)
                  .arg(row.delivery.sleeves)
                  .arg(ui::text(belt::designation(row.delivery.belt)), ui::shown(row.delivery.extent),
                       row.kindGuessed && row.delivery.kind == cutting::PieceKind::Remnant
                           ? Words::tr(" (by its width a remnant)")
                           : QString{},
                       row.delivery.costEach == Money::minor(0)
                           ? Words::tr(" (no cost: it will be in no margin)")
                           : QString{},
                       row.newBelt ? Words::tr(" (a belt new to the shop)") : QString{}));
}

QJsonArray codesOf(const shop::Shop& shop, const std::vector<store::PieceId>& pieces) {
    QJsonArray codes;
    for (const store::PieceId piece : pieces)
        codes << textValue(store::Pieces{shop.connection}.at(piece).code);
    return codes;
}

QJsonArray mislabelledOf(const shop::Shop& shop, store::DeliveryId delivery) {
    QJsonArray rows;
    for (const shop::Mislabelled& wrong : shop::mislabelled(shop, delivery))
        rows << QJsonObject{{"piece", textValue(wrong.piece.code)},
                            {"belt", textValue(wrong.belt)},
                            {keyOf("came", wrong.came.unit()), inUnit(wrong.came)},
                            {keyOf("labelled", wrong.came.unit()), inUnit(wrong.labelled)}};
    return rows;
}

void printBooked(const shop::Shop& shop, const shop::Received& received, const QJsonArray& codes) {
    QStringList list;
    for (const auto& code : codes)
        list << code.toString();
    print(Words::tr("Booked: %1.").arg(list.join(QStringLiteral(", "))));
    const Currency currency = store::Settings{shop.connection}.read().prices.currency;
    for (const shop::Mislabelled& wrong : shop::mislabelled(shop, received.delivery))
        print(Words::tr("Tell the supplier: %1 (%2) is %3 wide, its label says %4; worth %5.")
                  .arg(ui::text(wrong.piece.code), ui::text(wrong.belt), ui::shown(wrong.came),
                       ui::shown(wrong.labelled), ui::shown(wrong.missing, currency)));
}

} // namespace

Exit receive(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const bool preview = options.has("preview");
    OpenShop open(options.needed("shop"),
                  preview ? store::Connection::Mode::ReadOnly : store::Connection::Mode::Open,
                  options.value("person"));
    const shop::Sheet sheet = readSpreadsheet(open.shop(), options.positional(0),
                                              {options.values("column"), options.value("unit")}, {});
    const shop::GoodsIn goods{options.value("supplier").toStdString(),
                              options.value("reference").toStdString(), freightOf(options, open.shop()),
                              expectedOf(options), sheet.deliveries()};
    if (preview) {
        options.json() ? printJson(QJsonObject{{"rows", rowsOf(sheet)}}) : printPreview(sheet);
        return Exit::Done;
    }
    const shop::Received received = shop::receiveGoods(open.shop(), goods);
    const QJsonArray codes = codesOf(open.shop(), received.pieces);
    if (options.json())
        printJson(QJsonObject{{"delivery", static_cast<qint64>(received.delivery.value())},
                              {"pieces", codes},
                              {"mislabelled", mislabelledOf(open.shop(), received.delivery)}});
    else
        printBooked(open.shop(), received, codes);
    return Exit::Done;
}

} // namespace riband::app
