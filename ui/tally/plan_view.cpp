#include "ui/tally/plan_view.h"

#include "core/shop/counting/today.h"
#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/count_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

using shop::counting::PieceTask;
using shop::counting::PlaceTask;

namespace {
constexpr int leastMinutes = 5, mostMinutes = 8 * 60;
constexpr int FarText = 20; ///< it is read from the rack
} // namespace

PlanView::PlanView(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, reading_{new Reading{session, this}}, minutes_{new QSpinBox},
      list_{new QListWidget}, sum_{label({}, "remark")} {
    list_->setAccessibleName(tr("What to count"));
    list_->setFocusPolicy(Qt::NoFocus); // the arrows come from the line
    list_->setWordWrap(true);
    list_->setProperty("rows", "two");
    sum_->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(buildHead());
    column->addWidget(list_, 1);
    column->addWidget(sum_);
    connect(list_, &QListWidget::currentRowChanged, this, &PlanView::marked);
    connect(list_, &QListWidget::itemDoubleClicked, this, &PlanView::wanted);
}

QWidget* PlanView::buildHead() {
    minutes_->setRange(leastMinutes, mostMinutes);
    minutes_->setSingleStep(5);
    minutes_->setKeyboardTracking(false);
    minutes_->setAccessibleName(tr("Minutes for counting"));
    auto* name = label(tr("&Minutes"));
    name->setTextFormat(Qt::PlainText);
    name->setBuddy(minutes_);
    auto* box = new QWidget;
    auto* row = new QHBoxLayout{box};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(2 * step);
    row->addWidget(label(tr("What to count today"), "part"), 1);
    row->addWidget(name);
    row->addWidget(minutes_);
    connect(minutes_, &QSpinBox::valueChanged, this, [this] {
        told_ = true;
        readPlan();
    });
    connect(minutes_, &QSpinBox::editingFinished, this, [this] {
        if (minutes_->hasFocus()) emit left(); // by Enter
    });
    return box;
}

void PlanView::refresh() {
    if (!told_) {
        const QSignalBlocker quiet{minutes_};
        minutes_->setValue(session_.settings().counting.minutesADay);
    }
    readPlan();
}

void PlanView::readPlan() {
    const int minutes = minutes_->value();
    reading_->start(
        [minutes](const shop::Shop& shop) { return shop::countToday(shop, minutes); },
        [this](const std::vector<PlaceTask>& plan) { session_.attempt([&] { showPlan(plan); }); });
}

void PlanView::add(Row row, const QString& words) {
    rows_.push_back(std::move(row));
    auto* item = new QListWidgetItem{words, list_};
    QFont font = list_->font();
    font.setPixelSize(FarText);
    item->setFont(font);
}

/// Counts that somebody has left, to be taken up again; another person may be at it.
void PlanView::listOpen() {
    store::Connection& connection = session_.shop().connection;
    for (const store::Count& open : store::Counts{connection}.open())
        add({open.place, open.id}, tr("%1 · going on\nbegun %2 by %3", "place, day, initials")
                                       .arg(text(open.place), shown(dayOf(open.started)),
                                            text(store::People{connection}.at(open.person).initials)));
}

void PlanView::showPlan(const std::vector<PlaceTask>& plan) {
    const std::optional<std::string> before = place();
    {
        const QSignalBlocker quiet{list_};
        rows_.clear();
        list_->clear();
        listOpen();
        for (const PlaceTask& task : plan)
            add({task.place, {}, task.why},
                session_.reaches(store::Role::Owner) && task.value > Money::minor(0)
                    ? say(task) + tr(" · worth %1").arg(shown(task.value, session_.currency()))
                    : say(task));
        const auto same =
            std::find_if(rows_.begin(), rows_.end(), [&](const Row& row) { return row.place == before; });
        list_->setCurrentRow(rows_.empty()         ? -1
                             : same == rows_.end() ? 0
                                                   : static_cast<int>(same - rows_.begin()));
    }
    sum_->setText(sumOf(plan));
    emit marked();
}

QString PlanView::sumOf(const std::vector<PlaceTask>& plan) const {
    int pieces = 0, seconds = 0;
    for (const PlaceTask& task : plan) {
        pieces += task.pieces;
        seconds += task.seconds;
    }
    if (plan.empty())
        return rows_.empty() ? tr("Nothing is to be counted: no piece lies at a place.")
                             : tr("Nothing else is to be counted.");
    if (seconds > 60 * minutes_->value())
        return tr("No place can be counted in %1 minutes; this one gains most. A count can be left and taken "
                  "up again.")
            .arg(minutes_->value());
    return tr("Pieces: %1, in about %2 of %3 minutes. Enter alone starts the marked place.")
        .arg(pieces)
        .arg((seconds + 59) / 60)
        .arg(minutes_->value());
}

const PlanView::Row* PlanView::current() const {
    const int row = list_->currentRow();
    return row < 0 || row >= static_cast<int>(rows_.size()) ? nullptr : &rows_[static_cast<std::size_t>(row)];
}

std::optional<std::string> PlanView::place() const {
    const Row* row = current();
    return row ? std::optional{row->place} : std::nullopt;
}

std::optional<store::CountId> PlanView::openCount() const {
    const Row* row = current();
    return row ? row->open : std::nullopt;
}

const std::vector<PieceTask>& PlanView::why() const {
    static const std::vector<PieceTask> none;
    const Row* row = current();
    return row ? row->why : none;
}

ListRows PlanView::list() const {
    ListRows list{QStringLiteral("to-count"), {tr("Place"), tr("What"), tr("Pieces")}};
    for (std::size_t row = 0; row < rows_.size(); ++row) {
        const QString words = list_->item(static_cast<int>(row))->text();
        list.rows.push_back({text(rows_[row].place), words.section(QLatin1Char('\n'), 1),
                             rows_[row].open ? QString{} : QString::number(rows_[row].why.size())});
    }
    return list;
}

void PlanView::mark(int by) {
    if (list_->count() > 0) list_->setCurrentRow(std::clamp(list_->currentRow() + by, 0, list_->count() - 1));
}

} // namespace riband::ui
