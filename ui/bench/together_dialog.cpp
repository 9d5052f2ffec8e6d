#include "ui/bench/together_dialog.h"

#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QDeadlineTimer>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int PatienceMs = 1000; // a belt

using Rows = std::vector<TogetherModel::Row>;

Rows worthWhile(const std::vector<shop::Batch>& batches, shop::ForShelf shelf,
                const std::shared_ptr<std::atomic_bool>& stop) {
    Rows rows;
    for (const shop::Batch& batch : batches) {
        if (stop->load()) break;
        const QDeadlineTimer patience{PatienceMs};
        cutting::Limits limits;
        limits.stop = [&] { return stop->load() || patience.hasExpired(); };
        if (const auto joint = shop::joint(batch, limits, shelf)) rows.push_back({batch, *joint});
    }
    return rows;
}

} // namespace

TogetherDialog::TogetherDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, reading_{new Reading{session, this}}, model_{new TogetherModel{
                                                                                    this}},
      table_{new QTableView}, shelf_{new QCheckBox}, words_{label({}, "remark")}, progress_{
                                                                                      new QProgressBar} {
    setWindowTitle(tr("Cut together"));
    setWhatsThis(
        tr("Orders that wait for the same belt, planned as one: fewer mountings and less width, or "
           "it isn't offered. Nothing changes before it is taken. What was planned for the shelf beside "
           "them is given up; F6 plans anew what pays to be cut for it as well."));
    resize(1000, 420);
    buildView();
    look();
}

TogetherDialog::~TogetherDialog() {
    if (stop_) stop_->store(true);
}

void TogetherDialog::buildView() {
    table_->setModel(model_);
    table_->setAccessibleName(windowTitle());
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(TogetherModel::OrdersColumn, QHeaderView::Stretch);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    words_->setWordWrap(true);
    progress_->setRange(0, 0);
    progress_->setAccessibleName(tr("Planning"));
    shelf_->setText(tr("Cut belts for the shelf as well (F6)"));
    shelf_->setAccessibleName(tr("Cut belts for the shelf as well"));
    connect(shelf_, &QCheckBox::toggled, this, &TogetherDialog::look);
    connect(new QShortcut{Qt::Key_F6, this}, &QShortcut::activated, shelf_, &QCheckBox::toggle);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Close};
    accept_ = buttons->button(QDialogButtonBox::Ok);
    accept_->setText(tr("Cut these &together"));
    connect(buttons, &QDialogButtonBox::accepted, this, &TogetherDialog::cutTogether);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(table_, &QTableView::activated, this, &TogetherDialog::enter);
    connect(table_, &QTableView::pressed, this, [this] { enterSleeps_ = false; });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this] { enterSleeps_ = false; });
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(words_);
    column->addWidget(progress_);
    column->addWidget(table_, 1);
    column->addWidget(shelf_);
    column->addWidget(buttons);
}

shop::ForShelf TogetherDialog::wanted() const {
    return shelf_->isChecked() ? shop::ForShelf::AsSuggested : shop::ForShelf::None;
}

void TogetherDialog::look() {
    if (stop_) stop_->store(true);
    words_->setText(tr("Looking for what can be cut in fewer mountings …"));
    accept_->setEnabled(false);
    progress_->setVisible(true);
    const auto stop = std::make_shared<std::atomic_bool>(false);
    stop_ = stop;
    const auto find = [stop, shelf = wanted()](const shop::Shop& shop) {
        return worthWhile(shop::batches(shop), shelf, stop);
    };
    reading_->start(
        find, [this](Rows rows) { take(std::move(rows)); },
        [this] {
            take({});
            words_->setText(tr("The orders that wait could not be read. Close this and try again."));
        });
}

void TogetherDialog::take(Rows rows) {
    stop_.reset();
    progress_->setVisible(false);
    model_->setRows(std::move(rows), session_.settings().cutters.size() > 1, session_.costsIn());
    const bool any = model_->rowCount() > 0;
    const QString how =
        enterSleeps_ ? tr("That is planned. Choose the next belt and press Enter, or press the button.")
                     : tr("One mounting pays one trim, however many orders it serves. Enter plans the chosen "
                          "belt anew, on one ticket, with no more for the shelf than stands here; nothing is "
                          "cut yet.");
    words_->setText(any ? how : tr("Nothing that waits would be cut in fewer mountings."));
    accept_->setEnabled(any);
    const bool sleeps = enterSleeps_;
    if (any) table_->selectRow(0);
    enterSleeps_ = sleeps; // nobody chose this row
    table_->setFocus();
}

/// The table has answered it; the button is not to be pressed by it as well.
void TogetherDialog::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && table_->hasFocus())
        event->accept();
    else
        QDialog::keyPressEvent(event);
}

/// One Enter too many must not plan the next belt too and make its tickets void.
void TogetherDialog::enter() {
    if (!enterSleeps_) cutTogether();
}

void TogetherDialog::cutTogether() {
    if (searching() || !table_->currentIndex().isValid()) return;
    const TogetherModel::Row row = model_->row(table_->currentIndex().row());
    std::optional<shop::Ordered> done;
    if (!session_.attempt([&] { done = shop::cutTogether(session_.shop(), row.batch, wanted()); })) return;
    if (done->ticket)
        session_.attempt([&] {
            const auto mountings =
                store::Tickets{session_.shop().connection}.at(*done->ticket).mountings.size();
            const QString file = PaperTray{session_}.ticket(*done->ticket);
            session_.tell(tr("%n mountings less. The one ticket for all of them is in %1.", nullptr,
                             static_cast<int>(row.batch.mountings) - static_cast<int>(mountings))
                              .arg(file));
        });
    session_.touch();
    enterSleeps_ = true;
    look();
}

} // namespace riband::ui
