#pragma once

#include "core/shop/buying/purchase.h"
#include "core/store/places.h"
#include "ui/desk/session.h"
#include "ui/papers/month_report.h"
#include "ui/papers/papers.h"

class QPagedPaintDevice;
class QWidget;

namespace riband::ui {

/// Makes the papers of the shop: each is kept as a PDF in the papers folder; a person prints by the usual
/// dialog. Throws StoreError (ReadOnly) if a file can't be written.
class PaperTray {
public:
    explicit PaperTray(Session& session) : session_{session} {}

    /// The file that was written, as one would name it to a person.
    QString ticket(store::TicketId ticket) const;
    QString order(store::OrderId order) const;
    /// Labels of pieces, remnants and ready belts with their own code, all in one file. "" if there are none.
    QString labels(const std::vector<store::PieceId>& pieces) const;
    /// Labels of places, to be stuck to the shelf.
    QString placeLabels(const std::vector<store::Place>& places) const;
    /// Labels for the customer's belts of a mounting, one page a belt.
    QString beltLabels(const shop::BenchMounting& mounting) const;

    QString monthReport(const MonthReport& report) const;
    QString purchaseList(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) const;

    /// False if the person left the dialog.
    bool printTicket(store::TicketId ticket, QWidget* at) const;
    bool printOrder(store::OrderId order, QWidget* at) const;
    bool printLabels(const std::vector<store::PieceId>& pieces, QWidget* at) const;
    bool printPlaceLabels(const std::vector<store::Place>& places, QWidget* at) const;
    bool printPurchaseList(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook,
                           QWidget* at) const;

private:
    using Paint = std::function<void(QPagedPaintDevice&)>;
    TicketPaper ticketPaper(store::TicketId ticket) const;
    OrderPaper orderPaper(store::OrderId order) const;
    Label labelOf(const store::StockPiece& piece) const;
    std::vector<Label> labelsOf(const std::vector<store::PieceId>& pieces) const;
    std::vector<Label> labelsOf(const std::vector<store::Place>& places) const;
    bool print(const std::vector<Label>& labels, QWidget* at) const;
    QString keepLabels(const QString& name, const std::vector<Label>& labels) const;
    QString keep(const QString& name, const QPageSize& size, const Paint& paint) const;
    static bool print(const QPageSize& size, const Paint& paint, QWidget* at);
    Session& session_;
};

} // namespace riband::ui
