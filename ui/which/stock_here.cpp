#include "ui/which/stock_here.h"

#include "core/shop/cuttable.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace riband::ui {

namespace {

struct StockWords {
    Q_DECLARE_TR_FUNCTIONS(StockWords)
};

} // namespace

const std::vector<belt::drive::Stocked>& StockHere::ofProfile(const std::string& profile) {
    const auto at = known_.find(profile);
    if (at != known_.end()) return at->second;
    std::vector<belt::drive::Stocked> found;
    session_.attempt([&] { found = shop::cuttable(session_.shop(), profile); });
    return known_.emplace(profile, std::move(found)).first->second;
}

QString StockHere::of(const belt::Belt& belt) {
    std::optional<Extent> widest, ready;
    for (const auto& stocked : ofProfile(belt.profile)) {
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
