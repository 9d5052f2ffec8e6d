#include "ui/which/screen_scale.h"

#include <QScreen>
#include <QSettings>

#include <algorithm>

namespace riband::ui::screenScale {

QString keyOf(const QScreen& screen) {
    const QSize size = screen.size();
    QString name = QStringLiteral("%1 %2 %3 %4x%5 %6")
                       .arg(screen.manufacturer(), screen.model(), screen.serialNumber())
                       .arg(size.width())
                       .arg(size.height())
                       .arg(screen.devicePixelRatio());
    if (screen.serialNumber().isEmpty()) name += QLatin1Char(' ') + screen.name();
    return QStringLiteral("screens/") + name.replace(QLatin1Char('/'), QLatin1Char('-')).simplified();
}

std::optional<double> kept(const QScreen& screen) {
    bool good = false;
    const double scale = QSettings{}.value(keyOf(screen)).toDouble(&good);
    if (!good || !(scale >= least && scale <= most)) return std::nullopt;
    return scale;
}

void keep(const QScreen& screen, double pixelsPerMillimetre) {
    QSettings{}.setValue(keyOf(screen), std::clamp(pixelsPerMillimetre, least, most));
}

double told(const QScreen& screen) { return std::clamp(screen.physicalDotsPerInchX() / 25.4, least, most); }

} // namespace riband::ui::screenScale
