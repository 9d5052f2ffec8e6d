#include "ui/drive/drive_dialog.h"

#include "core/belt/said_profile.h"
#include "ui/desk/labels.h"
#include "ui/drive/drive_belts_model.h"
#include "ui/drive/drive_form.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"
#include "ui/words/drive_words.h"

#include <QAction>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int formWidth = 390;
constexpr int notesHeight = 84;
constexpr int margin = 12 * step; // the page stays in sight behind it

QLabel* wrapped(const char* role) {
    auto* words = label({}, role);
    words->setWordWrap(true);
    return words;
}

} // namespace

DriveDialog::DriveDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, stock_{session}, form_{new DriveForm{session.tables()}},
      picture_{new RouteWidget}, open_{wrapped("warn")}, exact_{wrapped("strong")}, warnings_{wrapped(
                                                                                        "warn")},
      notes_{wrapped("remark")}, belts_{new DriveBeltsModel{this}}, table_{new QTableView} {
    setWindowTitle(tr("Drive"));
    setWhatsThis(tr("Two pulleys and the distance between their shafts, and what they have to carry: the "
                    "belts that fit stand at the right, what is here first. One figure may stay open. Enter "
                    "puts the chosen belt on the Counter's line. The belt maker's data decides what a drive "
                    "really carries."));
    setObjectName(QStringLiteral("drive"));
    buildActions();
    form_->setFixedWidth(formWidth);
    auto* row = new QHBoxLayout;
    row->setSpacing(6 * step);
    row->addWidget(form_);
    row->addWidget(buildFound(), 1);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(5 * step, 4 * step, 5 * step, 4 * step);
    column->setSpacing(3 * step);
    column->addLayout(row, 1);
    column->addWidget(buildBelow());
    connect(form_, &DriveForm::changed, this, &DriveDialog::work);
    connect(&stock_, &StockReader::read, this, &DriveDialog::stockIsRead);
    connect(&session_, &Session::changed, this, [this] {
        if (isVisible()) work();
    });
    work();
}

QWidget* DriveDialog::buildFound() {
    table_->setModel(belts_);
    table_->setAccessibleName(tr("Belts that exist"));
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setMinimumHeight(4 * pressHeight);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &DriveDialog::showPicture);
    connect(table_, &QTableView::clicked, this,
            [this](const QModelIndex& at) { chosen_ = belts_->belt(at.row()).belt; });
    connect(table_, &QTableView::doubleClicked, this, &DriveDialog::enter);
    auto* told = new QWidget;
    auto* lines = new QVBoxLayout{told};
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(step);
    for (QLabel* words : {warnings_, notes_})
        lines->addWidget(words);
    lines->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setAccessibleName(tr("Remarks on the drive"));
    scroll->setWidgetResizable(true);
    scroll->setFixedHeight(notesHeight);
    scroll->setWidget(told);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * step);
    column->addWidget(open_);
    column->addWidget(picture_, 3);
    column->addWidget(exact_);
    column->addWidget(table_, 2);
    column->addWidget(scroll);
    return box;
}

/// The cautions stand there always, whatever was found.
QWidget* DriveDialog::buildBelow() {
    auto* box = surface("advice");
    auto* row = new QHBoxLayout{box};
    row->setSpacing(2 * step);
    auto* cautions = wrapped("small");
    cautions->setText(driveCautions().join(QLatin1Char(' ')));
    row->addWidget(cautions, 1);
    for (QAction* action : {more_, fresh_})
        row->addWidget(new KeyButton{action});
    auto* close = new KeyButton{tr("Close"), {}};
    close->setShownKey(Qt::Key_Escape);
    connect(close, &KeyButton::clicked, this, &QDialog::reject);
    row->addWidget(close);
    auto* send = new KeyButton{tr("To the Counter"), {}, KeyButton::Rank::Likely};
    send->setShownKey(Qt::Key_Return);
    connect(send, &KeyButton::clicked, this, &DriveDialog::enter);
    row->addWidget(send);
    return box;
}

QAction* DriveDialog::act(const QString& name, const QKeySequence& key, const std::function<void()>& does) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void DriveDialog::buildActions() {
    more_ = act(tr("More than two pulleys"), Qt::Key_F4, [this] {
        form_->setMany(!form_->isMany());
        more_->setText(form_->isMany() ? tr("Only two pulleys") : tr("More than two pulleys"));
        form_->focusFirstEmpty();
    });
    fresh_ = act(tr("Another drive"), Qt::CTRL | Qt::Key_N, [this] {
        chosen_.reset();
        form_->clear();
    });
    remove_ = act(tr("Remove the pulley"), Qt::CTRL | Qt::Key_Delete, [this] { form_->removePulley(); });
    act(tr("The pulley comes earlier"), Qt::ALT | Qt::Key_Up, [this] { form_->movePulley(-1); });
    act(tr("The pulley comes later"), Qt::ALT | Qt::Key_Down, [this] { form_->movePulley(1); });
}

void DriveDialog::bring(const belt::Reading* said) {
    stock_.forget();
    chosen_.reset();
    quantity_ = said ? said->quantity : 1;
    if (said && from_ != said->belt) {
        from_ = said->belt;
        form_->putBelt(*said);
    } else
        work();
    if (parentWidget()) resize(parentWidget()->size() - QSize{margin, margin});
    open();
    form_->focusFirstEmpty();
}

/// As soon as the profile is known, so that what is here is known when the rest is typed.
void DriveDialog::beginReading() {
    const QString profile = form_->isMany() ? form_->many().profile : form_->two().profile;
    const auto may = belt::profilesSaid(profile.toStdString(), session_.tables());
    if (may.size() == 1) stock_.of(may.front()->name);
}

void DriveDialog::work() {
    entered_ = false;
    beginReading();
    const auto stock = [this](const std::string& profile) { return stock_.of(profile); };
    answer_ = form_->isMany() ? answerTo(form_->many(), session_.tables(), stock)
                              : answerTo(form_->two(), session_.tables(), stock);
    form_->show(answer_);
    showAnswer();
}

void DriveDialog::stockIsRead() {
    const bool entered = entered_;
    work();
    if (entered && isVisible()) enter();
}

/// The belt that a person chose stays so while it is still among them.
void DriveDialog::showAnswer() {
    const auto say = [](QLabel& words, const QString& text) {
        words.setText(text);
        words.setVisible(!text.isEmpty());
    };
    setSheetProperty(*open_, "role", answer_.wrong ? "warn" : "strong");
    say(*open_, answer_.open);
    say(*exact_, answer_.exact);
    say(*warnings_, answer_.warnings.join(QLatin1Char('\n')));
    say(*notes_, answer_.notes.join(QLatin1Char('\n')));
    belts_->setBelts(answer_.headings, answer_.belts);
    table_->setVisible(!answer_.belts.empty());
    const int row = chosen_ ? belts_->rowOf(*chosen_) : -1;
    if (belts_->rowCount() > 0) select(std::max(row, 0));
    showPicture();
}

void DriveDialog::showPicture() {
    const QModelIndex current = table_->currentIndex();
    if (current.isValid())
        picture_->show(belts_->belt(current.row()).picture);
    else if (answer_.picture)
        picture_->show(*answer_.picture);
    else
        picture_->clear();
}

void DriveDialog::choose(int by) {
    const int row = table_->currentIndex().isValid() ? table_->currentIndex().row() + by : 0;
    if (row < 0 || row >= belts_->rowCount()) return;
    chosen_ = belts_->belt(row).belt;
    select(row);
}

void DriveDialog::select(int row) {
    table_->selectionModel()->setCurrentIndex(belts_->index(row, 0), QItemSelectionModel::ClearAndSelect |
                                                                         QItemSelectionModel::Rows);
}

/// Sends the belt on; while something is open it goes there instead. The best belt is known only when it is
/// known what is here: until then Enter waits.
void DriveDialog::enter() {
    const QModelIndex current = table_->currentIndex();
    if (!answer_.open.isEmpty()) return form_->goTo(answer_.field, answer_.row);
    if (!answer_.stockRead && !chosen_) {
        entered_ = true;
        return;
    }
    if (!current.isValid()) return form_->goTo(DriveField::Profile, -1);
    const belt::Reading chosen{belts_->belt(current.row()).belt, answer_.width, quantity_};
    from_ = chosen.belt; // it comes back with the line, and need not be put in again
    accept();
    emit sent(chosen);
}

void DriveDialog::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return enter();
    case Qt::Key_Up:
        return choose(-1);
    case Qt::Key_Down:
        return choose(1);
    default:
        QDialog::keyPressEvent(event);
    }
}

} // namespace riband::ui
