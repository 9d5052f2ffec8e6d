#include "ui/papers/papers.h"

namespace riband::ui {

QPageSize ticketSize(const store::ShopSettings& shop) {
    return QPageSize{shop.paper == "Letter" ? QPageSize::Letter : QPageSize::A4};
}

QPageSize labelSize(const store::ShopSettings& shop) {
    const store::LabelStock& stock = shop.labels;
    if (stock.sheet) return ticketSize(shop);
    const auto mm = [](Width width) { return static_cast<double>(width.inMicrometres()) / 1000; };
    return QPageSize{QSizeF{mm(stock.width), mm(stock.height)}, QPageSize::Millimeter, "label",
                     QPageSize::ExactMatch};
}

void prepare(QPdfWriter& writer, const QPageSize& size) {
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF{});
    const bool label = size.size(QPageSize::Millimeter).height() < 100;
    writer.setResolution(label ? 203 : 600);
    writer.setCreator("Riband");
}

} // namespace riband::ui
