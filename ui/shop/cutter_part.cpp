#include "ui/shop/cutter_part.h"

#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/shop/entry.h"
#include "ui/shop/shafts_model.h"
#include "ui/words/tr.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

CutterPart::CutterPart(QWidget* parent)
    : SettingsPart{parent}, which_{new QComboBox}, name_{new Entry{
                                                       tr("&Name of the cutter"),
                                                       [this](const auto& typed) { return isFree(typed); },
                                                       tr("Give a name that no other cutter has.")}},
      gap_{new Entry{tr("&Gap between sleeve and edge of the shaft"),
                     [](const auto& typed) {
                         const auto read = readWidth(typed);
                         return read && *read <= Width::millimetres(500);
                     },
                     tr("Type a width in mm from 0 to 500, for example 10.")}},
      steel_{new QCheckBox{tr("Made for &steel cord")}}, aramid_{new QCheckBox{tr("Made for &aramid cord")}},
      polyurethane_{new QCheckBox{tr("Made for &polyurethane")}}, shafts_{new ShaftsModel{this}},
      table_{new QTableView} {
    buildActions();
    buildView();
    connect(which_, &QComboBox::activated, this, &CutterPart::turnTo);
    for (Entry* entry : {name_, gap_})
        connect(entry, &QLineEdit::textEdited, this, &CutterPart::keep);
    for (QCheckBox* box : {steel_, aramid_, polyurethane_})
        connect(box, &QCheckBox::clicked, this, &CutterPart::keep);
    connect(shafts_, &ShaftsModel::edited, this, &CutterPart::keep);
    showCurrent();
}

QAction* CutterPart::act(const QString& name, const QKeySequence& key, void (CutterPart::*does)()) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void CutterPart::buildActions() {
    add_ = act(tr("Add a cutter"), Qt::CTRL | Qt::SHIFT | Qt::Key_N, &CutterPart::addCutter);
    remove_ =
        act(tr("Take the cutter out"), Qt::CTRL | Qt::SHIFT | Qt::Key_Delete, &CutterPart::removeCutter);
    usual_ = act(tr("Make it the usual one"), Qt::CTRL | Qt::SHIFT | Qt::Key_U, &CutterPart::makeUsual);
}

QFormLayout* CutterPart::form() {
    auto* form = new QFormLayout;
    which_->setAccessibleName(tr("Cutter"));
    form->addRow(tr("&Cutter"), which_);
    name_->addTo(*form);
    gap_->addTo(*form, tr("mm"));
    for (QCheckBox* box : {steel_, aramid_, polyurethane_})
        form->addRow(QString{}, box);
    return form;
}

void CutterPart::buildView() {
    table_->setModel(shafts_);
    table_->setAccessibleName(tr("Shafts of the cutter"));
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->setTabKeyNavigation(false);
    const auto rowOf = [](std::initializer_list<QAction*> actions) {
        auto* row = new QHBoxLayout;
        for (QAction* action : actions)
            row->addWidget(new KeyButton{action});
        row->addStretch();
        return row;
    };
    auto* column = new QVBoxLayout{this};
    column->addLayout(form());
    column->addLayout(rowOf({add_, usual_, remove_}));
    column->addWidget(
        label(tr("Shafts, all figures in mm: diameters, width that a sleeve may lie on, centres. "
                 "F2 edits a figure."),
              "remark"));
    column->addWidget(table_, 1);
    column->addLayout(
        rowOf({act(tr("Add a shaft"), Qt::CTRL | Qt::Key_N, &CutterPart::addShaft),
               act(tr("Remove the shaft"), Qt::CTRL | Qt::Key_Delete, &CutterPart::removeShaft)}));
}

bool CutterPart::isFree(const std::string& name) const {
    for (std::size_t i = 0; i < cutters_.size(); ++i)
        if (static_cast<int>(i) != at_ && cutters_[i].cutter.name == name) return false;
    return !name.empty();
}

void CutterPart::addShaft() { shafts_->add(); }
void CutterPart::removeShaft() { shafts_->remove(table_->currentIndex().row()); }

void CutterPart::addCutter() {
    store::ShopCutter added;
    for (std::size_t number = cutters_.size() + 1;; ++number) {
        added.cutter.name = tr("Cutter %1").arg(number).toStdString();
        at_ = -1; // no cutter: every name of one is taken
        if (isFree(added.cutter.name)) break;
    }
    cutters_.push_back(added);
    turnTo(static_cast<int>(cutters_.size()) - 1);
    emit edited();
    name_->setFocus();
    name_->selectAll();
}

void CutterPart::removeCutter() {
    cutters_.erase(cutters_.begin() + at_);
    turnTo(std::max(at_ - 1, 0));
    emit edited();
}

void CutterPart::makeUsual() {
    std::rotate(cutters_.begin(), cutters_.begin() + at_, cutters_.begin() + at_ + 1);
    turnTo(0);
    emit edited();
}

void CutterPart::turnTo(int cutter) {
    at_ = cutter;
    showCurrent();
}

void CutterPart::showNames() {
    const QSignalBlocker quiet{which_};
    which_->clear();
    for (std::size_t i = 0; i < cutters_.size(); ++i) {
        const QString name = text(cutters_[i].cutter.name);
        which_->addItem(i == 0 && cutters_.size() > 1 ? tr("%1 (the usual one)").arg(name) : name);
    }
    which_->setCurrentIndex(at_);
}

void CutterPart::showCurrent() {
    const cutting::Cutter cutter = current().cutter;
    name_->setText(text(cutter.name));
    gap_->setText(QString::number(cutter.gap));
    steel_->setChecked(cutter.cutsSteelCord);
    aramid_->setChecked(cutter.cutsAramidCord);
    polyurethane_->setChecked(cutter.cutsPolyurethane);
    shafts_->setShafts(cutter.shafts);
    showNames();
    which_->setEnabled(true);
    add_->setEnabled(true);
    remove_->setEnabled(cutters_.size() > 1);
    usual_->setEnabled(at_ > 0);
}

void CutterPart::keep() {
    const bool right = name_->isRight() && gap_->isRight();
    if (right) {
        current().cutter = {name_->typed(),
                            shafts_->shafts(),
                            steel_->isChecked(),
                            aramid_->isChecked(),
                            polyurethane_->isChecked(),
                            static_cast<double>(readWidth(gap_->typed())->inMicrometres()) / 1000};
        showNames();
    }
    which_->setEnabled(right);
    add_->setEnabled(right);
    remove_->setEnabled(right && cutters_.size() > 1);
    usual_->setEnabled(right && at_ > 0);
    emit edited();
}

void CutterPart::show(const store::ShopSettings& settings) {
    cutters_ = settings.cutters;
    turnTo(std::min(at_, static_cast<int>(cutters_.size()) - 1));
}

bool CutterPart::write(store::ShopSettings& settings) const {
    if (!name_->isRight() || !gap_->isRight()) return false;
    settings.cutters = cutters_;
    return true;
}

} // namespace riband::ui
