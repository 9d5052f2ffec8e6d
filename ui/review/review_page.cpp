#include "ui/review/review_page.h"

#include "core/measure/text.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/papers/month_report.h"
#include "ui/review/buy_part.h"
#include "ui/review/period_bar.h"
#include "ui/review/read_part.h"
#include "ui/review/what_if_part.h"

#include <QAction>
#include <QDir>
#include <QHBoxLayout>
#include <QListWidget>
#include <QSaveFile>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int TitlesWidth = 240;
constexpr int TitleHeight = 37; // all of them are seen on the smallest screen
} // namespace

ReviewPage::ReviewPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, period_{new PeriodBar{session.today()}}, titles_{new QListWidget},
      stack_{new QStackedWidget}, month_{new Reading{session, this}} {
    setObjectName(QStringLiteral("review"));
    buildParts();
    buildActions();
    buildView();
    connect(titles_, &QListWidget::currentRowChanged, this, &ReviewPage::showPart);
    connect(period_, &PeriodBar::changed, this, &ReviewPage::showPart);
    connect(&session_, &Session::personChanged, this, &ReviewPage::forget);
}

void ReviewPage::addPart(ReviewPart* part) {
    parts_.push_back(part);
    titles_->addItem(part->title());
    titles_->item(titles_->count() - 1)->setSizeHint({0, TitleHeight});
    stack_->addWidget(part);
}

void ReviewPage::buildParts() {
    const auto add = [this](ReadPart::About about) { addPart(new ReadPart{session_, std::move(about)}); };
    add({tr("Where the width went"), QStringLiteral("waste"), false, flowView});
    add({tr("Belts by waste"),
         QStringLiteral("waste-by-belt"),
         false,
         paretoView,
         {},
         nullptr,
         comparedBelts});
    add({tr("Profiles, people, cutters"),
         QStringLiteral("waste-by-group"),
         false,
         groupsView,
         {},
         nullptr,
         comparedGroups});
    add({tr("News or chance"), QStringLiteral("trend"), false, trendView});
    add({tr("Suggested and taken"), QStringLiteral("overrides"), false, overridesView, tr("Replay both ways"),
         playedView});
    add({tr("Had and reachable"), QStringLiteral("hindsight"), false, hindsightView});
    addPart(new BuyPart{session_});
    addPart(new WhatIfPart{session_});
    add({tr("Dead and slow stock"), QStringLiteral("stock"), false, stockView});
    add({tr("Found by counting"), QStringLiteral("shrinkage"), false, shrinkageView});
    add({tr("How right the book is"), QStringLiteral("accuracy"), false, accuracyView});
    add({tr("Margin"), QStringLiteral("margin"), true, marginView});
    add({tr("Close of the day"), QStringLiteral("day"), true, dayView});
}

void ReviewPage::buildActions() {
    figures_ = new QAction{tr("Figures"), this};
    figures_->setShortcut(Qt::Key_F4);
    figures_->setCheckable(true);
    connect(figures_, &QAction::toggled, this, [this](bool figures) {
        if (part()) part()->showFigures(figures);
    });
    csv_ = new QAction{tr("Save as CSV"), this};
    csv_->setShortcut(Qt::CTRL | Qt::Key_E);
    connect(csv_, &QAction::triggered, this, &ReviewPage::saveCsv);
    pdf_ = new QAction{tr("Report as PDF"), this};
    pdf_->setShortcut(QKeySequence::Print);
    connect(pdf_, &QAction::triggered, this, &ReviewPage::makePdf);
    addActions({figures_, csv_, pdf_});
    addActions(period_->acts());
}

void ReviewPage::buildView() {
    titles_->setAccessibleName(tr("Reports"));
    auto* left = new QVBoxLayout;
    left->setSpacing(2 * step);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(titles_, 1);
    left->addWidget(new KeyButton{figures_});
    left->addWidget(new KeyButton{csv_});
    report_ = new KeyButton{pdf_};
    left->addWidget(report_);
    auto* side = new QWidget;
    side->setFixedWidth(TitlesWidth);
    side->setLayout(left);
    auto* right = new QVBoxLayout;
    right->setSpacing(4 * step);
    right->addWidget(period_);
    right->addWidget(stack_, 1);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(side);
    row->addLayout(right, 1);
}

QString ReviewPage::help() const {
    return tr(
        "Where the width and its money went in a day, week, month, quarter or year, and whether a change is "
        "more than chance. F4 turns from the picture to its figures; Enter on a figure shows what it is "
        "made of: movements, pieces, order lines, decisions. F7 puts belts, people and places beside the "
        "period before and the same days a year earlier. The owner's parts What to buy and What if reckon "
        "with the sales so far: F5 starts, "
        "Escape "
        "stops. Costs, margins and takings are shown to the owner alone.");
}

ReviewPart* ReviewPage::part() const { return static_cast<ReviewPart*>(stack_->currentWidget()); }

bool ReviewPage::settled() const { return !month_->running() && (!part() || part()->settled()); }

void ReviewPage::showRights() {
    const bool owner = shop::seenBy(session_.shop()) == shop::Sees::Cost;
    for (std::size_t i = 0; i < parts_.size(); ++i)
        titles_->item(static_cast<int>(i))->setHidden(parts_[i]->onlyForOwner() && !owner);
    if (titles_->currentRow() < 0 || titles_->currentItem()->isHidden()) {
        const QSignalBlocker quiet{titles_};
        titles_->setCurrentRow(0);
    }
}

/// What was read for one person is not shown to another.
void ReviewPage::forget() {
    for (ReviewPart* part : parts_)
        part->forget();
    if (isVisible()) refresh();
}

void ReviewPage::refresh() {
    session_.attempt([this] {
        showRights();
        showPart();
    });
}

void ReviewPage::showPart() {
    stack_->setCurrentIndex(std::max(0, titles_->currentRow()));
    figures_->setEnabled(part()->hasPicture());
    report_->setRank(part()->hasPicture() ? KeyButton::Rank::Likely : KeyButton::Rank::Plain);
    period_->setVisible(part()->isOfPeriod());
    part()->showFigures(figures_->isChecked());
    part()->show(period_->period());
}

/// Beside the papers, under the name of report and period.
void ReviewPage::saveCsv() {
    const shop::ReportTable table = part()->table();
    if (table.columns.empty()) return session_.warn(tr("There are no figures to save yet."));
    QDir{}.mkpath(session_.papersFolder());
    const QString name = QDir{session_.papersFolder()}.filePath(
        QStringLiteral("%1-%2.csv")
            .arg(part()->fileName(), QString::fromStdString(printDate(period_->firstDay()))));
    const std::string text = shop::csvOf(table);
    QSaveFile file{name};
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), static_cast<qint64>(text.size())) < 0 ||
        !file.commit())
        return session_.warn(tr("%1 can't be written: %2.").arg(name, file.errorString()));
    session_.tell(tr("Saved as %1").arg(name));
}

/// Read in a worker; painted here, since a page or two take no time.
void ReviewPage::makePdf() {
    const auto read = [period = period_->period()](const shop::Shop& shop) {
        return gatherMonth(shop, period, shop::seenBy(shop));
    };
    month_->start(read, [this](const MonthReport& report) {
        session_.attempt(
            [&] { session_.tell(tr("The report is in %1.").arg(PaperTray{session_}.monthReport(report))); });
    });
}

} // namespace riband::ui
