#include "ui/tally/count_view.h"

#include "ui/desk/labels.h"
#include "ui/look/sheet.h"
#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int ListWidth = 380;
}

CountView::CountView(Session& session, Tally& tally, QWidget* parent)
    : QWidget{parent}, session_{session}, tally_{tally}, line_{new QLineEdit}, asks_{label({}, "head")},
      large_{label({}, "far")}, typed_{label({}, "far")}, about_{label({}, "typed")}, said_{label({},
                                                                                                  "typed")},
      method_{label({}, "remark")}, listHead_{label({}, "part")}, list_{new QListWidget} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6 * step);
    row->addWidget(buildLeft(), 1);
    row->addWidget(buildRight());
    line_->installEventFilter(this);
    connect(line_, &QLineEdit::returnPressed, this, &CountView::enter);
    connect(line_, &QLineEdit::textChanged, typed_, &QLabel::setText);
    refresh();
}

QWidget* CountView::buildLeft() {
    line_->setProperty("use", "main");
    line_->setAccessibleName(tr("Scan or type"));
    said_->setWordWrap(true);
    large_->setAccessibleName(tr("What is counted"));
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(asks_);
    column->addWidget(line_);
    column->addWidget(method_);
    column->addStretch(1);
    column->addWidget(large_);
    column->addWidget(about_);
    column->addWidget(typed_);
    column->addStretch(1);
    column->addWidget(said_);
    column->addStretch(2);
    return box;
}

QWidget* CountView::buildRight() {
    list_->setAccessibleName(tr("What nobody has seen yet"));
    list_->setFocusPolicy(Qt::NoFocus);
    auto* frame = surface("sunk");
    frame->setFixedWidth(ListWidth);
    auto* column = new QVBoxLayout{frame};
    column->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    column->setSpacing(2 * step);
    column->addWidget(listHead_);
    column->addWidget(list_, 1);
    return frame;
}

void CountView::enter() {
    const QString words = line_->text();
    if (tally_.enter(words)) {
        line_->clear();
        emit noted();
    } else {
        line_->selectAll();
    }
    refresh();
}

void CountView::refresh() {
    showStep();
    session_.attempt([this] { showList(); });
}

void CountView::showStep() {
    asks_->setText(tally_.asks());
    large_->setText(tally_.large());
    about_->setText(tally_.about());
    typed_->setVisible(tally_.step() == Tally::Step::Width);
    method_->setText(tr("Measured with: %1 (F2)").arg(say(tally_.method())));
    said_->setText(tally_.said());
    const auto tone = tally_.tone();
    setSheetProperty(*said_, "role",
                     tone == Tally::Tone::Good   ? QStringLiteral("saidOk")
                     : tone == Tally::Tone::Warn ? QStringLiteral("saidWarn")
                                                 : QStringLiteral("typed"));
}

void CountView::showList() {
    list_->clear();
    tally_.count() ? listUnseen() : listOpen();
}

/// Counts that somebody has left, to be taken up again.
void CountView::listOpen() {
    const store::Counts counts{session_.shop().connection};
    for (const store::Count& open : counts.open())
        list_->addItem(tr("%1, begun %2", "place, day").arg(text(open.place), shown(dayOf(open.started))));
    listHead_->setText(list_->count() == 0 ? tr("No count is open") : tr("Open counts"));
}

void CountView::listUnseen() {
    store::Catalogue catalogue{session_.shop().connection};
    for (const store::StockPiece& piece : shop::toMeasureAgain(session_.shop(), *tally_.count()))
        list_->addItem(tr("%1 · measure again").arg(text(piece.code)));
    const int again = list_->count();
    for (const store::StockPiece& piece : shop::notSeen(session_.shop(), *tally_.count()))
        list_->addItem(
            tr("%1 · %2", "code, belt").arg(text(piece.code), text(catalogue.at(piece.belt).designation)));
    listHead_->setText(tr("Not seen yet: %1").arg(list_->count() - again));
}

bool CountView::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    if (static_cast<QKeyEvent*>(event)->key() != Qt::Key_Escape) return false;
    if (line_->text().isEmpty()) tally_.back();
    line_->clear();
    refresh();
    return true;
}

} // namespace riband::ui
