#include "ui/bench/bench_page.h"

#include "core/measure/code.h"
#include "ui/bench/bench_model.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>

// What the Bench does with a code that is scanned or typed: it chooses what waits.

namespace riband::ui {

void BenchPage::showTicket(store::TicketId ticket) {
    session_.attempt([&] { chooseByCode(store::Tickets{session_.shop().connection}.at(ticket).code); });
}

/// What is typed or scanned on this page is a code: there is nothing else to type.
void BenchPage::typed(const QString& words) {
    code_->setFocus();
    code_->insert(words);
}

bool BenchPage::eventFilter(QObject* watched, QEvent* event) {
    if (watched != code_ || event->type() != QEvent::KeyPress) return Page::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Escape) code_->clear();
    if (key->key() != Qt::Key_Escape && key->key() != Qt::Key_Up && key->key() != Qt::Key_Down) return false;
    list_->setFocus();
    if (key->key() != Qt::Key_Escape) QCoreApplication::sendEvent(list_, event);
    return true;
}

/// It chooses, and never records: whoever scans the piece has not cut it yet.
void BenchPage::takeCode() {
    const QString typed = code_->text().trimmed();
    code_->clear();
    list_->setFocus();
    enterSleeps_ = true;
    if (typed.isEmpty()) return;
    session_.attempt([&] {
        const auto code = Code::read(typed.toStdString());
        const shop::Scanned found = shop::scan(session_.shop(), typed.toStdString());
        if (code && found.any()) return chooseByCode(code->text());
        session_.warn(
            tr("No piece, ticket or order is called %1. Scan its label again, or type its code.").arg(typed));
    });
}

void BenchPage::chooseByCode(const std::string& code) {
    const int row = model_->rowOfCode(code, list_->currentIndex().row());
    if (row >= 0) {
        const QModelIndex chosen = model_->index(row, 0);
        list_->setCurrentIndex(chosen);
        list_->scrollTo(chosen);
        session_.tell(tr("Chosen: %1. F9 records it when it is cut.").arg(chosen.data().toString()));
    } else
        session_.warn(notWaiting(shop::scan(session_.shop(), code), text(code)));
    enterSleeps_ = true;
}

QString BenchPage::notWaiting(const shop::Scanned& found, const QString& code) const {
    if (found.ticket) return tr("Nothing of ticket %1 waits to be cut.").arg(code);
    if (found.order) return tr("Nothing of order %1 waits to be cut.").arg(code);
    return tr("%1 is none of the pieces that wait to be cut. Put it back; the Rack (Ctrl+3) says what it is.")
        .arg(code);
}

} // namespace riband::ui
