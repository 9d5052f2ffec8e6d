#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDate>
#include <QDateTime>
#include <QLocale>

// The core prints exactly and with a point; only the decimal sign is the screen's.

namespace riband::ui {

namespace {

QString local(const std::string& exact) {
    return text(exact).replace(QLatin1Char('.'), QLocale().decimalPoint());
}

} // namespace

QString shownNumber(Extent extent) { return local(printCount(extent)); }

QString shown(Extent extent) {
    if (extent.unit() == Unit::Micrometre) return Words::tr("%1 mm").arg(shownNumber(extent));
    if (extent.count() == 1) return Words::tr("1 rib");
    return Words::tr("%n ribs", nullptr, static_cast<int>(extent.count()));
}

QString shown(Length length) { return Words::tr("%1 mm").arg(local(printMillimetres(length))); }

QString shown(Money money, const Currency& currency) { return local(printMoney(money, currency)); }

QString shown(Moment moment) {
    const auto at = QDateTime::fromMSecsSinceEpoch(moment.time_since_epoch().count());
    return QLocale().language() == QLocale::C ? at.toString(QStringLiteral("yyyy-MM-dd HH:mm"))
                                              : QLocale{}.toString(at, QLocale::ShortFormat);
}

QString shown(Date date) {
    const std::chrono::year_month_day day{date};
    const QDate shownDay(static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                         static_cast<int>(static_cast<unsigned>(day.day())));
    return QLocale().language() == QLocale::C ? shownDay.toString(Qt::ISODate)
                                              : QLocale().toString(shownDay, QLocale::ShortFormat);
}

QString shown(const belt::WidthTolerance& tolerance) {
    const QString plus = local(printMillimetres(tolerance.plus));
    const QString minus = local(printMillimetres(tolerance.minus));
    return QStringLiteral("+%1 -%2").arg(plus, minus);
}

} // namespace riband::ui
