#pragma once

#include "ui/desk/session.h"
#include "ui/papers/papers.h"

class QPagedPaintDevice;
class QWidget;

namespace riband::ui {

/// Makes the papers of the shop: each is kept as a PDF in the papers folder, and printed where a printer is
/// set up and the shop wants it.
class PaperTray {
public:
    explicit PaperTray(Session& session) : session_{session} {}

    /// The file that was written. Throws StoreError (ReadOnly, Full) if it could not be.
    QString ticket(store::TicketId ticket) const;
    QString order(store::OrderId order) const;
    /// Labels of pieces and ready belts; one file for all, one page each. "" if there are none.
    QString labels(const std::vector<store::PieceId>& pieces) const;
    /// Labels for the belts of a mounting that was cut.
    QString beltLabels(const shop::BenchMounting& mounting) const;
    /// Asks for a printer by the usual dialog; false if the person left it.
    bool printTicket(store::TicketId ticket, QWidget* at) const;

private:
    TicketPaper ticketPaper(store::TicketId ticket) const;
    QString keep(const QString& name, const QPageSize& size,
                 const std::function<void(QPagedPaintDevice&)>& paint) const;
    void paintLabel(QPagedPaintDevice& device, const store::StockPiece& piece) const;
    Session& session_;
};

} // namespace riband::ui
