#include "ui/which/stock_here.h"

#include "ui/words/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace riband::ui {

namespace {

struct StockWords {
    Q_DECLARE_TR_FUNCTIONS(StockWords)
};

} // namespace

QString stockHere(const belt::Belt& belt, const StockReader::Stock& stock) {
    std::optional<Extent> widest, ready;
    for (const auto& stocked : stock) {
        if (stocked.belt.length != belt.length) continue;
        if (!stocked.widest.isNone() && (!widest || *widest < stocked.widest)) widest = stocked.widest;
        for (const Extent each : stocked.ready)
            if (!ready || *ready < each) ready = each;
    }
    QStringList parts;
    if (widest) parts << StockWords::tr("up to %1 here").arg(shown(*widest));
    if (ready) parts << StockWords::tr("%1 ready").arg(shown(*ready));
    return parts.join(QStringLiteral(", "));
}

} // namespace riband::ui
