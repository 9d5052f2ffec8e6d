#include "ui/tally/count_view.h"

#include "ui/desk/labels.h"
#include "ui/look/sheet.h"
#include "ui/tally/plan_view.h"
#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <set>

namespace riband::ui {

namespace {
constexpr int ListWidth = 380;
constexpr int mostListed = 200; // nobody reads on; the heading has the number
} // namespace

CountView::CountView(Session& session, Tally& tally, QWidget* parent)
    : QWidget{parent}, session_{session}, tally_{tally}, line_{new QLineEdit}, asks_{label({}, "head")},
      large_{label({}, "far")}, typed_{label({}, "far")}, about_{label({}, "typed")},
      said_{label({}, "typed")}, method_{label({}, "remark")}, listHead_{label({}, "part")},
      list_{new QListWidget}, plan_{new PlanView{session}}, face_{new QStackedWidget} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6 * step);
    row->addWidget(buildLeft(), 1);
    row->addWidget(buildRight());
    line_->installEventFilter(this);
    connect(line_, &QLineEdit::returnPressed, this, &CountView::enter);
    connect(line_, &QLineEdit::textChanged, typed_, &QLabel::setText);
    connect(line_, &QLineEdit::textChanged, this, [this] { refused_ = false; });
    connect(plan_, &PlanView::marked, this, [this] { session_.attempt([this] { showList(); }); });
    connect(plan_, &PlanView::wanted, this, &CountView::start);
    connect(plan_, &PlanView::left, line_, qOverload<>(&QWidget::setFocus));
    showStep();
}

QWidget* CountView::buildLeft() {
    line_->setProperty("use", "main");
    line_->setAccessibleName(tr("Scan or type"));
    said_->setWordWrap(true);
    face_->addWidget(plan_);
    face_->addWidget(buildFigures());
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(asks_);
    column->addWidget(line_);
    column->addWidget(method_);
    column->addWidget(said_);
    column->addWidget(face_, 1);
    return box;
}

/// What can be read from two metres.
QWidget* CountView::buildFigures() {
    large_->setAccessibleName(tr("What is counted"));
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addStretch(1);
    column->addWidget(large_);
    column->addWidget(about_);
    column->addWidget(typed_);
    column->addStretch(2);
    return box;
}

QWidget* CountView::buildRight() {
    list_->setAccessibleName(tr("What nobody has seen yet"));
    list_->setFocusPolicy(Qt::NoFocus);
    list_->setWordWrap(true);
    list_->setProperty("rows", "two");
    list_->setResizeMode(QListView::Adjust);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
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
    if (words.trimmed().isEmpty() && tally_.step() == Tally::Step::Place && plan_->place()) return start();
    refused_ = !tally_.enter(words);
    if (!refused_) {
        line_->clear();
        emit noted();
    }
    refresh();
    focusLine();
}

void CountView::focusLine() {
    line_->setFocus();
    if (refused_) line_->selectAll();
}

void CountView::start() {
    const auto place = plan_->place();
    if (!place || tally_.step() != Tally::Step::Place) return;
    if (tally_.take(*place)) {
        line_->clear();
        emit noted();
    }
    refresh();
    focusLine();
}

void CountView::refresh() {
    const bool planning = tally_.step() == Tally::Step::Place;
    face_->setCurrentIndex(planning ? 0 : 1);
    showStep();
    if (planning) session_.attempt([this] { plan_->refresh(); });
    session_.attempt([this] { showList(); });
    emit stepped();
}

void CountView::showStep() {
    asks_->setText(tally_.asks());
    large_->setText(tally_.large());
    about_->setText(tally_.about());
    typed_->setVisible(tally_.step() == Tally::Step::Width);
    method_->setText(tr("Measured with: %1 (F2)").arg(say(tally_.method())));
    said_->setText(tally_.said());
    said_->setVisible(!tally_.said().isEmpty());
    const auto tone = tally_.tone();
    setSheetProperty(*said_, "role",
                     tone == Tally::Tone::Good   ? QStringLiteral("saidOk")
                     : tone == Tally::Tone::Warn ? QStringLiteral("saidWarn")
                                                 : QStringLiteral("typed"));
}

void CountView::showList() {
    list_->clear();
    if (tally_.count()) {
        listUnseen(*tally_.count());
        return;
    }
    if (const auto open = plan_->openCount())
        listUnseen(*open);
    else
        listMarked();
}

/// Why the pieces of the marked place are to be counted.
void CountView::listMarked() {
    const auto place = plan_->place();
    listHead_->setText(place ? tr("Why %1", "place").arg(text(*place)) : QString{});
    const store::Pieces pieces{session_.shop().connection};
    const store::Catalogue catalogue{session_.shop().connection};
    for (const auto& task : plan_->why()) {
        if (list_->count() == mostListed) break;
        const store::StockPiece piece = pieces.at(task.piece);
        list_->addItem(tr("%1 · %2\n%3", "code, belt, why")
                           .arg(text(piece.code), text(catalogue.at(piece.belt).designation), say(task)));
    }
}

ListRows CountView::list() const {
    if (!tally_.count()) return plan_->list();
    ListRows list{QStringLiteral("not-seen"), {tr("Code"), tr("Belt"), tr("Remark")}};
    const store::Catalogue catalogue{session_.shop().connection};
    const auto add = [&](const store::StockPiece& piece, const QString& remark) {
        list.rows.push_back({text(piece.code), text(catalogue.at(piece.belt).designation), remark});
    };
    for (const store::StockPiece& piece : shop::toMeasureAgain(session_.shop(), *tally_.count()))
        add(piece, tr("measure again"));
    for (const store::StockPiece& piece : shop::notSeen(session_.shop(), *tally_.count()))
        add(piece, {});
    return list;
}

void CountView::listAgain(store::CountId count) {
    for (const store::StockPiece& piece : shop::toMeasureAgain(session_.shop(), count))
        list_->addItem(tr("%1 · measure again").arg(text(piece.code)));
}

void CountView::listUnseen(store::CountId count) {
    listAgain(count);
    const store::Catalogue catalogue{session_.shop().connection};
    const auto unseen = shop::notSeen(session_.shop(), count);
    for (const store::StockPiece& piece : unseen) {
        if (list_->count() == mostListed) break;
        list_->addItem(
            tr("%1 · %2", "code, belt").arg(text(piece.code), text(catalogue.at(piece.belt).designation)));
    }
    listHead_->setText(tr("Not seen yet: %1").arg(unseen.size()));
    if (tally_.step() != Tally::Step::Piece) return;
    about_->setText(seenWords(count, unseen.size()));
}

/// How far the count is: of what the book has here, and what lay here besides.
QString CountView::seenWords(store::CountId count, std::size_t unseen) const {
    const store::Counts counts{session_.shop().connection};
    const std::vector<store::PieceId> expected = counts.expected(count);
    const std::set<store::PieceId> ours{expected.begin(), expected.end()};
    std::set<store::PieceId> foreign;
    std::size_t finds = 0;
    for (const store::Scan& scan : counts.scansOf(count))
        if (!scan.piece)
            ++finds;
        else if (!ours.contains(*scan.piece))
            foreign.insert(*scan.piece);
    const QString seen = tr("%1 of %2 seen", "pieces").arg(expected.size() - unseen).arg(expected.size());
    if (finds + foreign.size() == 0) return seen;
    return tr("%1 · besides: %2", "how many are seen, other pieces").arg(seen).arg(finds + foreign.size());
}

bool CountView::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    return keyPressed(static_cast<QKeyEvent*>(event)->key());
}

bool CountView::keyPressed(int key) {
    const bool planning = tally_.step() == Tally::Step::Place;
    if (planning && (key == Qt::Key_Down || key == Qt::Key_Up)) {
        plan_->mark(key == Qt::Key_Down ? 1 : -1);
        return true;
    }
    if (key != Qt::Key_Escape) return false;
    if (line_->text().isEmpty()) tally_.back();
    line_->clear();
    refresh();
    return true;
}

} // namespace riband::ui
