#include "ui/review/read_part.h"

#include "ui/desk/labels.h"
#include "ui/desk/long_work.h"
#include "ui/look/key_button.h"
#include "ui/review/movements_dialog.h"
#include "ui/review/report_table_model.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QProgressBar>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

ReadPart::ReadPart(Session& session, About about, QWidget* parent)
    : ReviewPart{parent}, session_{session}, about_{std::move(about)}, reading_{new Reading{session, this}},
      behind_{new Reading{session, this}}, work_{new LongWork{session, this}}, headline_{label({}, "part")},
      remarks_{label({}, "remark")}, stack_{new QStackedWidget}, figures_{new QTableView},
      model_{new ReportTableModel{this}} {
    headline_->setWordWrap(true);
    remarks_->setWordWrap(true);
    stack_->addWidget(buildPictures());
    stack_->addWidget(buildFigures());
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3 * step);
    column->addWidget(headline_);
    column->addWidget(stack_, 1);
    column->addWidget(remarks_);
    if (about_.think) column->addWidget(buildLonger());
    if (about_.compare) column->addWidget(buildComparison());
}

bool ReadPart::settled() const { return !reading_->running() && !behind_->running() && !work_->running(); }

QWidget* ReadPart::buildLonger() {
    think_ = new QAction{about_.more, this};
    think_->setShortcut(Qt::Key_F5);
    connect(think_, &QAction::triggered, this, &ReadPart::think);
    stop_ = new QAction{tr("Stop"), this};
    stop_->setShortcut(Qt::Key_Escape);
    stop_->setEnabled(false);
    connect(stop_, &QAction::triggered, this, [this] {
        work_->stop();
        headline_->setText(tr("Stopped."));
    });
    addActions({think_, stop_});
    progress_ = new QProgressBar;
    progress_->setAccessibleName(about_.more);
    progress_->setTextVisible(false);
    progress_->setFixedHeight(3 * step);
    progress_->setVisible(false);
    connect(work_, &LongWork::progress, this, [this](int percent) {
        progress_->setValue(percent);
        progress_->setVisible(true);
        stop_->setEnabled(true);
    });
    connect(work_, &LongWork::ended, this, [this] {
        progress_->setVisible(false);
        stop_->setEnabled(false);
    });
    auto* row = new QWidget;
    auto* line = new QHBoxLayout{row};
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(3 * step);
    line->addWidget(new KeyButton{think_});
    line->addWidget(new KeyButton{stop_});
    line->addWidget(progress_, 1);
    line->addStretch();
    return row;
}

QWidget* ReadPart::buildComparison() {
    compare_ = new QAction{tr("Beside earlier periods"), this};
    compare_->setShortcut(Qt::Key_F7);
    compare_->setCheckable(true);
    connect(compare_, &QAction::toggled, this, [this] { show(period_); });
    addAction(compare_);
    auto* row = new QWidget;
    auto* line = new QHBoxLayout{row};
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(new KeyButton{compare_});
    line->addStretch();
    return row;
}

void ReadPart::think() {
    headline_->setText(tr("Replaying …"));
    work_->start(
        [think = about_.think, period = period_](const shop::Shop& shop, const foresight::Work& work) {
            return think(shop, period, work);
        },
        [this](ReportView view) { showView(std::move(view)); });
}

QWidget* ReadPart::buildPictures() {
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setAccessibleName(tr("Pictures of %1").arg(about_.title));
    auto* inside = new QWidget;
    charts_ = new QVBoxLayout{inside};
    // At once as high as its charts: until the scroll area asked for that, they lay over each other.
    charts_->setSizeConstraint(QLayout::SetMinimumSize);
    charts_->setContentsMargins(0, 0, 4 * step, 0);
    charts_->setSpacing(4 * step);
    scroll->setWidget(inside);
    return scroll;
}

QWidget* ReadPart::buildFigures() {
    figures_->setModel(model_);
    figures_->setAccessibleName(tr("Figures of %1").arg(about_.title));
    figures_->setSelectionMode(QAbstractItemView::SingleSelection);
    figures_->setShowGrid(false);
    figures_->setTabKeyNavigation(false);
    figures_->verticalHeader()->hide();
    figures_->verticalHeader()->setDefaultSectionSize(34);
    figures_->horizontalHeader()->setHighlightSections(false);
    connect(figures_, &QTableView::activated, this, [this] { drill(); });
    return figures_;
}

void ReadPart::show(const shop::Period& period) {
    period_ = period;
    if (work_->running()) work_->stop(); // it was about another period
    behind_->drop();
    headline_->setText(tr("Reading …"));
    const auto read = compare_ && compare_->isChecked() ? about_.compare : about_.read;
    reading_->start([read, period](const shop::Shop& shop) { return read(shop, period); },
                    [this](ReportView view) { showView(std::move(view)); });
}

void ReadPart::forget() {
    reading_->drop();
    behind_->drop();
    showView({});
}

void ReadPart::showView(ReportView view) {
    view_ = std::move(view);
    headline_->setText(view_.headline);
    remarks_->setText(view_.remarks.join(QLatin1Char('\n')));
    while (QLayoutItem* item = charts_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const ReportView::Chart& chart : view_.charts) {
        auto* widget = new ChartWidget{about_.title};
        widget->show(chart.paint, chart.words, chart.height);
        widget->setMaximumHeight(2 * chart.height);
        charts_->addWidget(widget);
    }
    charts_->addStretch();
    model_->setTable(view_.table);
    figures_->resizeColumnsToContents();
    figures_->setCurrentIndex(model_->index(0, 0));
}

void ReadPart::showFigures(bool figures) {
    stack_->setCurrentIndex(figures ? 1 : 0);
    if (figures && isVisible()) figures_->setFocus();
}

void ReadPart::drill() {
    const QModelIndex index = figures_->currentIndex();
    if (!index.isValid()) return;
    const std::string& column = view_.table.columns[static_cast<std::size_t>(index.column())];
    const bool isFigure = model_->isFigure(index.column());
    const bool isEmpty = isFigure && index.data().toString().isEmpty();
    const ReadBasis read =
        view_.behind && !isEmpty ? view_.behind(static_cast<std::size_t>(index.row()), column) : ReadBasis{};
    if (!read) return session_.tell(tr("Nothing stands behind this: it was not reckoned from the book."));
    const QString row = model_->nameOf(index.row());
    const QString name = isFigure
                             ? tr("%1, %2", "row, column")
                                   .arg(row, model_->headerData(index.column(), Qt::Horizontal).toString())
                             : row;
    behind_->start(read, [this, name, isFigure](shop::Basis basis) {
        MovementsDialog{name, isFigure, std::move(basis), this}.exec();
    });
}

} // namespace riband::ui
