#include "ui/papers/papers.h"

namespace riband::ui {

QPageSize ticketSize(const store::ShopSettings& shop) {
    return QPageSize{shop.paper == "Letter" ? QPageSize::Letter : QPageSize::A4};
}

QPageSize labelSize() { return QPageSize{QSizeF{58, 40}, QPageSize::Millimeter, "58 x 40 mm"}; }

void prepare(QPdfWriter& writer, const QPageSize& size) {
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF{});
    const bool label = size.size(QPageSize::Millimeter).height() < 100;
    writer.setResolution(label ? 203 : 600);
    writer.setCreator("Riband");
}

} // namespace riband::ui
