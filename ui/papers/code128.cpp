#include "ui/papers/papers.h"

#include <QPainter>
#include <zint.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace riband::ui {
namespace {

constexpr int quietModules = 10;    ///< each side, ISO/IEC 15417:2007
constexpr double widestModule = .5; ///< mm; wider helps no reader and wastes the label

using Symbol = std::unique_ptr<zint_symbol, decltype(&ZBarcode_Delete)>;

bool isSet(const zint_symbol& symbol, int module) {
    return (symbol.encoded_data[0][module >> 3] >> (module & 7)) & 1;
}

} // namespace

std::vector<bool> code128(const std::string& text) {
    Symbol symbol{ZBarcode_Create(), &ZBarcode_Delete};
    if (!symbol || text.empty()) return {};
    symbol->symbology = BARCODE_CODE128;
    const auto* bytes = reinterpret_cast<const unsigned char*>(text.data());
    if (ZBarcode_Encode(symbol.get(), bytes, static_cast<int>(text.size())) >= ZINT_ERROR) return {};
    std::vector<bool> modules;
    for (int i = 0; i < symbol->width; ++i)
        modules.push_back(isSet(*symbol, i));
    return modules;
}

double paintCode128(QPainter& painter, const QRectF& area, const std::string& text) {
    const std::vector<bool> modules = code128(text);
    if (modules.empty()) return 0;
    // Bars are laid out in dots of the device, so that a thermal printer sets whole dots and no reader sees
    // two widths where the standard has one.
    const QTransform toDots = painter.deviceTransform();
    const double dots = toDots.m11(), dotsPerMm = painter.device()->logicalDpiX() / 25.4;
    const int all = static_cast<int>(modules.size()) + 2 * quietModules;
    const int fits = static_cast<int>(std::floor(area.width() * dots / all + 1e-9));
    const int most = std::max(1, static_cast<int>(std::lround(widestModule * dotsPerMm)));
    const int module = std::min(fits, most);
    if (module < 1) return 0;
    const QRectF box = toDots.mapRect(area);
    const double left = std::round(box.left() + (box.width() - module * all) / 2) + module * quietModules;
    painter.save();
    painter.setWorldTransform(toDots.inverted() * painter.worldTransform(), false);
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (std::size_t i = 0; i < modules.size();) {
        std::size_t end = i;
        while (end < modules.size() && modules[end] == modules[i])
            ++end;
        const QRectF bar(left + static_cast<double>(i) * module, box.top(),
                         static_cast<double>(end - i) * module, box.height());
        if (modules[i]) painter.fillRect(bar, Qt::black);
        i = end;
    }
    painter.restore();
    return module * all / dots;
}

} // namespace riband::ui
