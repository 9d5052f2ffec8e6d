#include "ui/drawing/fates.h"

#include "core/measure/text.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDate>
#include <QLocale>

#include <algorithm>

namespace riband::ui {

namespace {

using Part = BandPicture::Part;
using Width = shop::Balance<std::int64_t>;

Part partOf(std::int64_t Width::*value) {
    if (value == &Width::sold) return Part::Belt;
    if (value == &Width::ready) return Part::ShelfBelt;
    return value == &Width::trim ? Part::Trim : Part::Lost;
}

/// Everything but what came in and what stayed.
bool isFate(std::int64_t Width::*value) {
    return value != &Width::opening && value != &Width::bought && value != &Width::found &&
           value != &Width::closing;
}

/// What was sold from the shelf left the rack before the period.
QString headOf(const shop::WasteRow& row) {
    if (row.width.ready < 0)
        return row.unit == Unit::Rib ? Words::tr("Of 100 ribs that left rack and shelf")
                                     : Words::tr("Of 100 mm that left rack and shelf");
    return row.unit == Unit::Rib ? Words::tr("Of 100 ribs that left the rack")
                                 : Words::tr("Of 100 mm that left the rack");
}

} // namespace

FlowPicture flowOf(const shop::WasteRow& row, const std::function<QString(Money)>& money) {
    FlowPicture picture;
    picture.head = headOf(row);
    const std::int64_t gone = row.width.used() + std::max<std::int64_t>(row.width.ready, 0);
    for (const auto& figure : shop::figures<std::int64_t>) {
        const std::int64_t count = row.width.*figure.value;
        if (!isFate(figure.value) || count == 0) continue;
        if (figure.value == &Width::ready && count < 0) { // more was sold from the shelf than was cut for it
            picture.streams.push_back({Words::tr("From the shelf"), 0, Part::ShelfBelt,
                                       Words::tr("%1 of it").arg(shownSum(row.unit, -count))});
            continue;
        }
        QString words;
        if (gone > 0)
            words = shownTenths(100 * static_cast<double>(count) / static_cast<double>(gone)) +
                    QStringLiteral("   ");
        words += shownSum(row.unit, count);
        if (money) words += QStringLiteral("   ") + money(Money::minor(row.money.*figure.value));
        picture.streams.push_back({columnWord(figure.name),
                                   static_cast<double>(std::max<std::int64_t>(count, 0)),
                                   partOf(figure.value), words});
    }
    return picture;
}

TrendPicture trendOf(const std::vector<shop::TrendPoint>& points, Unit unit) {
    TrendPicture picture;
    for (const shop::TrendPoint& point : points) {
        if (picture.points.empty() && !point.lost) continue; // before the shop began
        const QDate month =
            QDate::fromString(QString::fromStdString(printDate(dayOf(point.month.from))), Qt::ISODate);
        picture.points.push_back({QLocale{}.toString(month, QStringLiteral("MMM yy")), point.lost, point.low,
                                  point.high, point.news()});
    }
    picture.head = unit == Unit::Rib ? Words::tr("Ribbed belts: lost of what was used")
                                     : Words::tr("Toothed belts: lost of what was used");
    picture.none = Words::tr("no sales");
    picture.figure = [](double share) { return shownPercent(share); };
    return picture;
}

} // namespace riband::ui
