#pragma once

#include "core/shop/queries.h"
#include "core/store/settings.h"

#include <QBuffer>
#include <QByteArray>
#include <QPageSize>
#include <QPdfWriter>
#include <QString>

#include <variant>
#include <vector>

class QPainter;

namespace riband::ui {

/// The papers: each paints on any paged device (printer or PDF) and says how many pages it made. They show
/// what they are given and read nothing.

struct TicketPaper {
    store::Ticket ticket;
    std::vector<store::Order> orders; ///< all whose belts it cuts or fetches; none: for the shelf
    std::vector<shop::BenchMounting> mountings;
    std::vector<std::string> fromShelf; ///< "PJ 1194, 6 ribs: codes, each with its place"
};
int paintTicket(QPagedPaintDevice& device, const TicketPaper& paper, const store::ShopSettings& shop,
                const belt::Tables& tables);

/// A belt for the customer, or a ready belt for the shelf.
struct BeltLabel {
    std::string code;        ///< bar code: the order, or the ready belt's own
    std::string printedForm; ///< belt::printed
    std::string designation;
    Extent width;
    std::string tolerance;
    std::string order;
    std::string customer;
};
int paintBeltLabel(QPagedPaintDevice& device, const BeltLabel& label, const store::ShopSettings& shop);

struct RemnantLabel {
    std::string code;
    std::string designation;
    Extent extent;
    std::string place;
    Date born;
};
int paintRemnantLabel(QPagedPaintDevice& device, const RemnantLabel& label, const store::ShopSettings& shop);

/// What is stuck to a shelf: its name, to be read from afar and to be scanned, and a word on what goes there.
struct PlaceLabel {
    std::string name;
    std::string note; ///< "shelf in B3"; "" none
};

/// Many labels, on a roll a page each, on sheets from the upper left corner on (ShopSettings::labels): a
/// device must not be painted on twice. Gives the pages.
using Label = std::variant<BeltLabel, RemnantLabel, PlaceLabel>;
int paintLabels(QPagedPaintDevice& device, const std::vector<Label>& labels, const store::ShopSettings& shop);

/// Confirmation or quote for the customer: no cost prices.
struct OrderPaper {
    store::Order order;
    std::vector<std::string> designations; ///< one a line
    std::vector<int> deliveryDays{};       ///< one a line of a quote, 0: it is here; else empty
    bool allFromShelf = false;             ///< ready belts, nothing was cut for it
};
int paintOrder(QPagedPaintDevice& device, const OrderPaper& paper, const store::ShopSettings& shop);

/// A Code 128 symbol (ISO/IEC 15417:2007) by zint, module by module: true is a bar. Empty if the text can't
/// be coded.
std::vector<bool> code128(const std::string& text);
/// Paints it with its quiet zones; modules are whole device dots. Returns the width used.
double paintCode128(QPainter& painter, const QRectF& area, const std::string& text);

/// Sets page, margins and resolution: 600 dots an inch, labels 203 as their printers have.
void prepare(QPdfWriter& writer, const QPageSize& size);

/// A PDF made by one of the papers: `paint` is called with the device. `size` is that of the page.
template <class Paint>
QByteArray pdfOf(const QPageSize& size, Paint&& paint) {
    QByteArray bytes;
    QBuffer buffer{&bytes};
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer{&buffer};
        prepare(writer, size);
        paint(static_cast<QPagedPaintDevice&>(writer));
    }
    return bytes;
}

QPageSize ticketSize(const store::ShopSettings& shop); ///< A4 or Letter by the shop's setting
QPageSize labelSize(const store::ShopSettings& shop);  ///< of a label of the roll, or of a sheet of labels

} // namespace riband::ui
