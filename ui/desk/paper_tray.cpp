#include "ui/desk/paper_tray.h"

#include "core/shop/delivery_time.h"
#include "ui/desk/print.h"
#include "ui/papers/purchase_paper.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QPdfWriter>

#include <map>

namespace riband::ui {

namespace {

struct TrayWords {
    Q_DECLARE_TR_FUNCTIONS(TrayWords)
};

const store::OrderLine* lineOf(const store::Order& order, store::LineId id) {
    for (const auto& line : order.lines)
        if (line.id == id) return &line;
    return nullptr;
}

/// "PJ 1194, 6 ribs: 4F2-T, 4F3-K", one entry a line of the order.
std::vector<std::string> shelfLines(const shop::Shop& shop, const store::Ticket& ticket,
                                    const store::Order& order) {
    std::map<store::LineId, QStringList> codes;
    for (const auto& [piece, line] : ticket.taken)
        codes[line] << text(store::Pieces{shop.connection}.at(piece).code);
    std::vector<std::string> lines;
    for (const auto& [id, list] : codes) {
        const store::OrderLine* line = lineOf(order, id);
        if (!line) continue;
        const std::string belt = store::Catalogue{shop.connection}.at(line->belt).designation;
        lines.push_back(TrayWords::tr("%1, %2: %3", "belt, width, codes on the shelf")
                            .arg(text(belt), shown(line->extent), list.join(QStringLiteral(", ")))
                            .toStdString());
    }
    return lines;
}

/// A ticket for the shelf has no order: nobody waits, and no line is to be named.
store::Order noOrder(const store::Ticket& ticket) {
    return {.id = store::OrderId{0},
            .code = "",
            .state = store::OrderState::Open,
            .customer = std::nullopt,
            .customerName = "",
            .person = store::PersonId{0},
            .made = ticket.made,
            .due = std::nullopt,
            .note = "",
            .lines = {}};
}

} // namespace

TicketPaper PaperTray::ticketPaper(store::TicketId id) const {
    const shop::Shop& shop = session_.shop();
    const store::Ticket ticket = store::Tickets{shop.connection}.at(id);
    const store::Order order =
        ticket.order ? store::Orders{shop.connection}.at(*ticket.order) : noOrder(ticket);
    return {ticket, order, shop::mountingsOf(shop, id), shelfLines(shop, ticket, order)};
}

OrderPaper PaperTray::orderPaper(store::OrderId id) const {
    OrderPaper paper{store::Orders{session_.shop().connection}.at(id), {}};
    for (const auto& line : paper.order.lines)
        paper.designations.push_back(store::Catalogue{session_.shop().connection}.at(line.belt).designation);
    if (paper.order.state == store::OrderState::Quoted)
        paper.deliveryDays = shop::deliveryDays(session_.shop(), paper.order);
    return paper;
}

QString PaperTray::keep(const QString& name, const QPageSize& size, const Paint& paint) const {
    QDir{}.mkpath(session_.papersFolder());
    const QString file = QDir{session_.papersFolder()}.filePath(name + QStringLiteral(".pdf"));
    QPdfWriter writer{file};
    prepare(writer, size);
    paint(writer);
    if (!QFileInfo::exists(file))
        throw store::StoreError{store::StoreError::Kind::ReadOnly, file.toStdString(), "paper not written"};
    return QDir::toNativeSeparators(file);
}

QString PaperTray::ticket(store::TicketId id) const {
    const TicketPaper paper = ticketPaper(id);
    return keep(QStringLiteral("ticket-") + text(paper.ticket.code), ticketSize(session_.settings()),
                [&](QPagedPaintDevice& device) {
                    paintTicket(device, paper, session_.settings(), session_.tables());
                });
}

QString PaperTray::order(store::OrderId id) const {
    const OrderPaper paper = orderPaper(id);
    return keep(QStringLiteral("order-") + text(paper.order.code), ticketSize(session_.settings()),
                [&](QPagedPaintDevice& device) { paintOrder(device, paper, session_.settings()); });
}

Label PaperTray::labelOf(const store::StockPiece& piece) const {
    const store::StockedBelt belt = store::Catalogue{session_.shop().connection}.at(piece.belt);
    if (piece.kind != cutting::PieceKind::Ready)
        return RemnantLabel{piece.code, belt.designation, piece.extent, piece.place, piece.born()};
    const Width wide = piece.extent.unit() == Unit::Rib ? Width::micrometres(0) : piece.extent.width();
    const auto tolerance = session_.tables().widthTolerance(belt.belt, wide);
    return BeltLabel{piece.code,
                     belt::printed(belt.belt, piece.extent, session_.tables()),
                     belt.designation,
                     piece.extent,
                     tolerance ? shown(*tolerance).toStdString() : std::string{},
                     {},
                     {}};
}

QString PaperTray::keepLabels(const QString& name, const std::vector<Label>& labels) const {
    if (labels.empty()) return {};
    return keep(name, labelSize(session_.settings()),
                [&](QPagedPaintDevice& device) { paintLabels(device, labels, session_.settings()); });
}

std::vector<Label> PaperTray::labelsOf(const std::vector<store::PieceId>& pieces) const {
    std::vector<Label> labels;
    for (const auto id : pieces)
        labels.push_back(labelOf(store::Pieces{session_.shop().connection}.at(id)));
    return labels;
}

std::vector<Label> PaperTray::labelsOf(const std::vector<store::Place>& places) const {
    std::map<store::PlaceId, std::string> names;
    for (const store::Place& place : store::Places{session_.shop().connection}.all())
        names.emplace(place.id, place.name);
    std::vector<Label> labels;
    for (const store::Place& place : places) {
        std::string note;
        if (place.fixedFor)
            note = store::Catalogue{session_.shop().connection}.at(*place.fixedFor).designation;
        else if (place.parent)
            note = TrayWords::tr("in %1", "a larger place").arg(text(names.at(*place.parent))).toStdString();
        labels.push_back(PlaceLabel{place.name, note});
    }
    return labels;
}

QString PaperTray::labels(const std::vector<store::PieceId>& pieces) const {
    if (pieces.empty()) return {};
    const auto code = [&](store::PieceId id) {
        return text(store::Pieces{session_.shop().connection}.at(id).code);
    };
    const QString name = pieces.size() > 1
                             ? QStringLiteral("label-%1-to-%2").arg(code(pieces.front()), code(pieces.back()))
                             : QStringLiteral("label-") + code(pieces.front());
    return keepLabels(name, labelsOf(pieces));
}

QString PaperTray::placeLabels(const std::vector<store::Place>& places) const {
    return keepLabels(QStringLiteral("places-") + text(printDate(session_.today())), labelsOf(places));
}

QString PaperTray::beltLabels(const shop::BenchMounting& mounting) const {
    std::vector<Label> labels;
    for (const auto& cut : mounting.mounting.cuts) {
        if (!cut.line) continue;
        const auto* allowed = mounting.toleranceOf(cut.extent);
        const auto tolerance = allowed ? shown(*allowed).toStdString() : std::string{};
        labels.push_back(
            BeltLabel{mounting.order, belt::printed(mounting.belt.belt, cut.extent, session_.tables()),
                      mounting.belt.designation, cut.extent, tolerance, mounting.order, mounting.customer});
    }
    return keepLabels(QStringLiteral("belt-%1-%2").arg(text(mounting.ticket), text(mounting.piece.code)),
                      labels);
}

QString PaperTray::monthReport(const MonthReport& report) const {
    const QString name =
        QStringLiteral("report-%1-to-%2")
            .arg(text(printDate(dayOf(report.now.period.from))),
                 text(printDate(dayOf(report.now.period.until - std::chrono::milliseconds{1}))));
    return keep(name, ticketSize(session_.settings()),
                [&](QPagedPaintDevice& device) { paintMonthReport(device, report, session_.settings()); });
}

QString PaperTray::purchaseList(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) const {
    return keep(QStringLiteral("purchase-") + text(printDate(outlook.today)), ticketSize(session_.settings()),
                [&](QPagedPaintDevice& device) { paintPurchaseList(device, list, outlook); });
}

bool PaperTray::print(const QPageSize& size, const Paint& paint, QWidget* at) {
    return printPaper(size, paint, at);
}

bool PaperTray::print(const std::vector<Label>& labels, QWidget* at) const {
    return !labels.empty() &&
           print(
               labelSize(session_.settings()),
               [&](QPagedPaintDevice& device) { paintLabels(device, labels, session_.settings()); }, at);
}

bool PaperTray::printLabels(const std::vector<store::PieceId>& pieces, QWidget* at) const {
    return print(labelsOf(pieces), at);
}

bool PaperTray::printPlaceLabels(const std::vector<store::Place>& places, QWidget* at) const {
    return print(labelsOf(places), at);
}

bool PaperTray::printTicket(store::TicketId id, QWidget* at) const {
    const TicketPaper paper = ticketPaper(id);
    return print(
        ticketSize(session_.settings()),
        [&](QPagedPaintDevice& device) {
            paintTicket(device, paper, session_.settings(), session_.tables());
        },
        at);
}

bool PaperTray::printOrder(store::OrderId id, QWidget* at) const {
    const OrderPaper paper = orderPaper(id);
    return print(
        ticketSize(session_.settings()),
        [&](QPagedPaintDevice& device) { paintOrder(device, paper, session_.settings()); }, at);
}

bool PaperTray::printPurchaseList(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook,
                                  QWidget* at) const {
    return print(
        ticketSize(session_.settings()),
        [&](QPagedPaintDevice& device) { paintPurchaseList(device, list, outlook); }, at);
}

} // namespace riband::ui
