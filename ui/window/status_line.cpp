#include "ui/window/status_line.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>

namespace riband::ui {

StatusLine::StatusLine(QWidget* parent)
    : QWidget{parent}, book_{label({}, "ok")}, rest_{label({}, "remark")},
      keys_{label(tr("F1 help on this page · Ctrl+U who acts · F11 light or dark"), "remark")} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    row->addWidget(book_);
    row->addWidget(rest_, 1);
    row->addWidget(keys_);
    book_->setFont(Look::font(TextSize::Remark, QFont::DemiBold));
    for (QLabel* words : {book_, rest_, keys_})
        words->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

QString StatusLine::words() const { return book_->text() + QLatin1Char(' ') + rest_->text(); }

void StatusLine::showChecking() {
    setSheetProperty(*book_, "role", QStringLiteral("remark"));
    book_->setText(tr("Ledger is being checked …"));
    rest_->clear();
}

void StatusLine::show(const store::Verification& verification) {
    if (!verification.finished) return;
    setSheetProperty(*book_, "role", verification.agrees() ? QStringLiteral("ok") : QStringLiteral("danger"));
    if (verification.agrees()) {
        book_->setText(tr("Ledger balanced"));
        rest_->setText(tr("· %Ln pieces on the rack", nullptr, static_cast<int>(verification.onRack)) +
                       tr(" · %Ln movements", nullptr, static_cast<int>(verification.movements)));
        return;
    }
    book_->setText(tr("The ledger disagrees in %n places", nullptr,
                      static_cast<int>(verification.disagreements.size())));
    rest_->setText(QStringLiteral("· ") + say(verification.disagreements.front()));
    setToolTip(rest_->text());
}

void StatusLine::showFailure(const QString& words) {
    setSheetProperty(*book_, "role", QStringLiteral("danger"));
    book_->setText(tr("The ledger could not be checked"));
    rest_->setText(QStringLiteral("· ") + words);
}

} // namespace riband::ui
