#include "ui/desk/paper_tray.h"

#include "core/shop/delivery_time.h"
#include "core/shop/whose.h"
#include "ui/desk/print.h"
#include "ui/papers/purchase_paper.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QPdfWriter>

#include <algorithm>
#include <map>
#include <set>

namespace riband::ui {

namespace {

struct TrayWords {
    Q_DECLARE_TR_FUNCTIONS(TrayWords)
};

/// "013-S at C1-2"
QString whereOf(const store::StockPiece& piece) {
    return piece.place.empty()
               ? text(piece.code)
               : TrayWords::tr("%1 at %2", "code, place").arg(text(piece.code), text(piece.place));
}

/// "PJ 1194, 6 ribs: 4F2-T at C1-2, 4F3-K at C1-2", one entry a line of the orders; whose, if there are
/// several.
std::vector<std::string> shelfLines(const shop::Shop& shop, const store::Ticket& ticket,
                                    const std::vector<store::Order>& orders) {
    std::map<store::LineId, QStringList> codes;
    for (const auto& [piece, line] : ticket.taken)
        codes[line] << whereOf(store::Pieces{shop.connection}.at(piece));
    std::vector<std::string> lines;
    for (const store::Order& order : orders)
        for (const store::OrderLine& line : order.lines) {
            const auto found = codes.find(line.id);
            if (found == codes.end()) continue;
            const std::string belt = store::Catalogue{shop.connection}.at(line.belt).designation;
            const QString what =
                TrayWords::tr("%1, %2: %3", "belt, width, codes on the shelf")
                    .arg(text(belt), shown(line.extent), found->second.join(QStringLiteral(", ")));
            lines.push_back(
                (orders.size() > 1 ? text(order.code) + QLatin1Char(' ') + what : what).toStdString());
        }
    return lines;
}

/// What is void is cut by nobody; of a ticket that is void as a whole it is shown what it was.
std::vector<shop::BenchMounting> toBeCut(std::vector<shop::BenchMounting> mountings) {
    const auto isVoid = [](const shop::BenchMounting& each) {
        return each.mounting.state == store::MountingState::Void;
    };
    if (!std::all_of(mountings.begin(), mountings.end(), isVoid)) std::erase_if(mountings, isVoid);
    return mountings;
}

/// Those whose belts the ticket cuts or fetches, the longest waiting first.
std::vector<store::Order> ordersOf(const shop::Shop& shop, const store::Ticket& ticket,
                                   const std::vector<shop::BenchMounting>& mountings) {
    const store::Orders orders{shop.connection};
    std::set<store::OrderId> ids;
    for (const auto& mounting : mountings)
        for (const auto& cut : mounting.mounting.cuts)
            if (cut.line) ids.insert(orders.orderOf(*cut.line));
    for (const auto& [piece, line] : ticket.taken)
        ids.insert(orders.orderOf(line));
    if (ids.empty() && ticket.order) ids.insert(*ticket.order);
    std::vector<store::Order> all;
    for (const store::OrderId id : ids)
        all.push_back(orders.at(id));
    return all;
}

/// Belts of the order lie with it, and all of them were ready on the shelf.
bool allFromShelf(const shop::Shop& shop, const store::Order& order) {
    std::int64_t belts = 0;
    for (const store::OrderLine& line : order.lines) {
        if (line.cut != line.quantity - line.cancelled) return false;
        belts += line.cut;
        for (const auto& recorded : store::Ledger{shop.connection}.ofLine(line.id))
            if (recorded.movement.about().act == store::Act::Cut ||
                recorded.movement.about().act == store::Act::Miscut)
                return false;
    }
    return belts > 0;
}

} // namespace

TicketPaper PaperTray::ticketPaper(store::TicketId id) const {
    const shop::Shop& shop = session_.shop();
    const store::Ticket ticket = store::Tickets{shop.connection}.at(id);
    const auto mountings = toBeCut(shop::mountingsOf(shop, id));
    const std::vector<store::Order> orders = ordersOf(shop, ticket, mountings);
    return {ticket, orders, mountings, shelfLines(shop, ticket, orders)};
}

OrderPaper PaperTray::orderPaper(store::OrderId id) const {
    OrderPaper paper{store::Orders{session_.shop().connection}.at(id), {}};
    for (const auto& line : paper.order.lines)
        paper.designations.push_back(store::Catalogue{session_.shop().connection}.at(line.belt).designation);
    paper.allFromShelf = allFromShelf(session_.shop(), paper.order);
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
    const auto& cuts = mounting.mounting.cuts;
    const auto whose = shop::whoseAre(session_.shop(), {mounting}).front();
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (!cuts[i].line) continue;
        const auto* allowed = mounting.toleranceOf(cuts[i].extent);
        const BeltLabel label{whose.cuts[i].order,
                              belt::printed(mounting.belt.belt, cuts[i].extent, session_.tables()),
                              mounting.belt.designation,
                              cuts[i].extent,
                              allowed ? shown(*allowed).toStdString() : std::string{},
                              whose.cuts[i].order,
                              whose.cuts[i].customer};
        labels.insert(labels.end(), static_cast<std::size_t>(cuts[i].count), label);
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
