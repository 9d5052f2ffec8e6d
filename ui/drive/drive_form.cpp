#include "ui/drive/drive_form.h"

#include "core/belt/said_profile.h"
#include "ui/desk/labels.h"
#include "ui/drawing/tooth.h"
#include "ui/drive/entries.h"
#include "ui/drive/pulleys_model.h"
#include "ui/look/sheet.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCompleter>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

QCompleter* profileNames(const belt::Tables& tables, QObject* parent) {
    QStringList names;
    for (const belt::Profile& profile : tables.profiles())
        names << text(profile.name);
    auto* completer = new QCompleter{names, parent};
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setCompletionMode(QCompleter::InlineCompletion); // a list would take the arrows from the belts
    return completer;
}

constexpr int labelWidth = 168;
constexpr int twoLines = 48;

QFormLayout* formIn(QWidget* box) {
    auto* form = new QFormLayout{box};
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(step);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    return form;
}

} // namespace

DriveForm::DriveForm(const belt::Tables& tables, QWidget* parent)
    : QWidget{parent}, tables_{tables}, tooth_{new ToothWidget}, stack_{new QStackedWidget},
      pulleys_{new PulleysModel{this}}, table_{new QTableView} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(step);
    column->addWidget(buildCommon());
    stack_->addWidget(buildTwo());
    stack_->addWidget(buildMany());
    column->addWidget(stack_, 1);
    setFocusProxy(fields_.at(DriveField::Profile));
    connect(pulleys_, &PulleysModel::edited, this, &DriveForm::changed);
}

void DriveForm::add(QFormLayout& form, DriveField field, const QString& name, const QString& example) {
    auto* edit = new QLineEdit;
    edit->setPlaceholderText(example);
    edit->setAccessibleName(QString{name}.remove('&'));
    fields_[field] = edit;
    auto* words = new QLabel{name};
    words->setBuddy(edit);
    words->setMinimumWidth(labelWidth); // so that the fields stand below each other
    form.addRow(words, edit);
    connect(edit, &QLineEdit::textChanged, this, [this] {
        if (!quiet_) emit changed();
    });
}

QWidget* DriveForm::buildCommon() {
    auto* box = new QWidget;
    QFormLayout& form = *formIn(box);
    tooth_->setFixedHeight(56);
    form.addRow(tooth_);
    add(form, DriveField::Profile, tr("&Profile"), tr("H5M; none: diameters"));
    fields_.at(DriveField::Profile)->setCompleter(profileNames(tables_, this));
    add(form, DriveField::Width, tr("&Width or ribs"), tr("any"));
    return box;
}

QWidget* DriveForm::buildTwo() {
    auto* box = new QWidget;
    QFormLayout& form = *formIn(box);
    add(form, DriveField::First, tr("&First pulley, drives"), tr("22, or 70 mm"));
    add(form, DriveField::Second, tr("&Second pulley"), tr("44, or 140 mm"));
    add(form, DriveField::Centre, tr("&Distance of the centres"), tr("300"));
    add(form, DriveField::Range, tr("Can be se&t by"), tr("10, or -5 +10"));
    add(form, DriveField::Belt, tr("Or a &belt that is known"), tr("770, or 154 teeth"));
    form.addRow(label(tr("What it carries, if that is asked"), "remark"));
    add(form, DriveField::Power, tr("P&ower or torque"), tr("1.5 kW, or 10 Nm"));
    add(form, DriveField::Speed, tr("T&urns in a minute"), tr("1450"));
    add(form, DriveField::Service, tr("Ser&vice factor"), tr("1"));
    return box;
}

QWidget* DriveForm::buildMany() {
    table_->setModel(pulleys_);
    table_->setAccessibleName(tr("Pulleys in the order in which the belt comes to them"));
    QHeaderView& heads = *table_->horizontalHeader();
    heads.setSectionResizeMode(QHeaderView::Stretch);
    heads.setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    heads.setFixedHeight(twoLines);
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->setTabKeyNavigation(false);
    table_->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                            QAbstractItemView::EditKeyPressed);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table_, 1);
    auto* keys =
        label(tr("x goes right, y up. Type over a cell; Space sets a mark. Ctrl+Delete removes a pulley, "
                 "Alt+Up and Alt+Down change the order."),
              "small");
    keys->setWordWrap(true);
    column->addWidget(keys);
    auto* below = new QWidget;
    QFormLayout& form = *formIn(below);
    add(form, DriveField::Reach, tr("S&et on and back by"), tr("10, or -5 +10"));
    add(form, DriveField::Along, tr("Alon&g, degrees from x"), tr("0"));
    column->addWidget(below);
    return box;
}

QString DriveForm::typed(DriveField field) const { return fields_.at(field)->text(); }

void DriveForm::put(DriveField field, const QString& words) { fields_.at(field)->setText(words); }

bool DriveForm::isMany() const { return stack_->currentIndex() == 1; }

void DriveForm::setMany(bool many) {
    stack_->setCurrentIndex(many ? 1 : 0);
    if (many && pulleys_->rowCount() == 1 && !typed(DriveField::First).isEmpty())
        pulleys_->setRows({{QStringLiteral("0"), QStringLiteral("0"), typed(DriveField::First)},
                           {typed(DriveField::Centre), QStringLiteral("0"), typed(DriveField::Second)}});
    emit changed();
}

TwoQuestion DriveForm::two() const {
    return {typed(DriveField::Profile), typed(DriveField::First), typed(DriveField::Second),
            typed(DriveField::Centre),  typed(DriveField::Range), typed(DriveField::Belt),
            typed(DriveField::Width),   typed(DriveField::Power), typed(DriveField::Speed),
            typed(DriveField::Service)};
}

ManyQuestion DriveForm::many() const {
    return {typed(DriveField::Profile), typed(DriveField::Width), pulleys_->rows(),
            pulleys_->mover(),          typed(DriveField::Along), typed(DriveField::Reach)};
}

void DriveForm::putBelt(const belt::Reading& reading) {
    quiet_ = true;
    put(DriveField::Profile, text(reading.belt.profile));
    put(DriveField::Belt, text(belt::designation(reading.belt).substr(reading.belt.profile.size() + 1)));
    if (reading.width) put(DriveField::Width, shownNumber(*reading.width));
    put(DriveField::Centre, {});
    put(DriveField::Range, {});
    quiet_ = false;
    emit changed();
}

void DriveForm::clear() {
    quiet_ = true;
    for (const auto& [field, edit] : fields_)
        edit->clear();
    quiet_ = false;
    pulleys_->setRows({});
    setFocus();
}

void DriveForm::show(const DriveAnswer& answer) {
    for (const auto& [field, edit] : fields_)
        setSheetProperty(*edit, "wrong",
                         answer.wrong && field == answer.field ? QStringLiteral("true")
                                                               : QStringLiteral("false"));
    pulleys_->mark(answer.row);
    const auto may = belt::profilesSaid(typed(DriveField::Profile).toStdString(), tables_);
    tooth_->show(may.size() == 1 ? may.front() : nullptr);
}

void DriveForm::goTo(DriveField field, int row) {
    const auto at = fields_.find(field);
    if (at != fields_.end()) {
        at->second->setFocus();
        at->second->selectAll();
    } else {
        table_->setFocus();
        table_->setCurrentIndex(pulleys_->index(row < 0 ? 0 : row, 0));
    }
}

void DriveForm::focusFirstEmpty() {
    for (const DriveField field :
         {DriveField::Profile, DriveField::First, DriveField::Second, DriveField::Centre}) {
        if (isMany() && field != DriveField::Profile) return table_->setFocus();
        if (typed(field).isEmpty()) return fields_.at(field)->setFocus();
    }
    setFocus();
}

void DriveForm::removePulley() {
    if (isMany()) pulleys_->removeRow(table_->currentIndex().row());
}

void DriveForm::movePulley(int by) {
    const QModelIndex at = table_->currentIndex();
    if (isMany() && pulleys_->moveRow(at.row(), by))
        table_->setCurrentIndex(pulleys_->index(at.row() + by, at.column()));
}

} // namespace riband::ui
