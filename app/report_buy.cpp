#include "app/console.h"
#include "app/open_shop.h"
#include "app/report.h"
#include "core/measure/csv.h"
#include "core/measure/text.h"
#include "core/shop/demand.h"
#include "core/shop/people.h"
#include "ui/papers/papers.h"
#include "ui/papers/purchase_paper.h"
#include "ui/words/buying_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QSaveFile>

#include <cstdio>

namespace riband::app {

namespace {

using ui::Words;

std::optional<Money> budgetOf(const Options& options, const Currency& currency) {
    if (!options.has("budget")) return std::nullopt;
    const auto budget = readMoney(options.value("budget").toStdString(), currency);
    if (!budget) throw BadInput(Words::tr("--budget: %1").arg(ui::say(budget.reason())));
    if (*budget < Money::minor(0)) throw BadInput(Words::tr("--budget must not be negative."));
    return *budget;
}

void writeCsv(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) {
    std::string table;
    for (const auto& row : ui::purchaseTable(list, outlook))
        for (const std::string& field : row)
            table += csvField(field) + (&field == &row.back() ? "\r\n" : ",");
    if (std::fwrite(table.data(), 1, table.size(), stdout) != table.size() || std::fflush(stdout) != 0)
        throw BadInput(Words::tr("The table could not be written to its end."));
}

/// Whole or not at all.
void writePdf(const QString& name, const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) {
    const QByteArray pdf = ui::pdfOf(ui::ticketSize(outlook.settings), [&](QPagedPaintDevice& device) {
        ui::paintPurchaseList(device, list, outlook);
    });
    QSaveFile file{name};
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size() || !file.commit())
        throw BadInput(Words::tr("%1 can't be written: %2.").arg(name, file.errorString()));
}

void printLine(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook) {
    const Currency& currency = outlook.settings.prices.currency;
    const QString name = ui::text(outlook.belts[line.belt].belt.designation);
    QString head = QStringLiteral("%1: %2").arg(name, ui::verdictOf(line));
    if (line.sleeves > 0) {
        head += QStringLiteral(" %1 × %2").arg(line.sleeves).arg(ui::shown(line.width));
        if (line.costKnown()) head += QStringLiteral(" = %1").arg(ui::shown(line.cost(), currency));
    }
    print(head);
    for (const QString& why : ui::whyOf(line, outlook))
        print(QStringLiteral("    ") + why);
}

void printList(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) {
    const Currency& currency = outlook.settings.prices.currency;
    int enough = 0;
    for (const shop::PurchaseLine& line : list.lines) {
        const bool quiet = line.advice.keeping == foresight::Keeping::Keep
                               ? line.wanted == 0
                               : outlook.belts[line.belt].here() == 0;
        quiet ? static_cast<void>(++enough) : printLine(line, outlook);
    }
    print(Words::tr("In all %1 %2; of %3 belts there is nothing to do.")
              .arg(ui::shown(list.cost, currency), ui::text(std::string{currency.code()}))
              .arg(enough));
}

} // namespace

Exit reportBuy(const Options& options) {
    const OpenShop open(options.needed("shop"), store::Connection::Mode::ReadOnly, options.value("person"));
    if (options.has("person")) shop::demandRole(open.shop(), store::Role::Owner); // else: whose file it is
    const shop::BuyingOutlook outlook = shop::lookAtBuying(open.shop());
    const shop::PurchaseList list =
        shop::purchaseList(outlook, budgetOf(options, outlook.settings.prices.currency));
    if (options.has("pdf")) writePdf(options.value("pdf"), list, outlook);
    if (options.json())
        printJson(jsonOf(list, outlook));
    else if (options.has("csv"))
        writeCsv(list, outlook);
    else if (!options.has("pdf"))
        printList(list, outlook);
    return Exit::Done;
}

} // namespace riband::app
