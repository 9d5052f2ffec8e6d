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
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QTableView>
#include <QVBoxLayout>

namespace riband::ui {

CutterPart::CutterPart(QWidget* parent)
    : SettingsPart{parent}, name_{new QLineEdit}, gap_{new Entry{
                                                      tr("&Gap between sleeve and edge of the shaft"),
                                                      [](const auto& typed) {
                                                          return readWidth(typed).ok();
                                                      }}},
      steel_{new QCheckBox{tr("Made for &steel cord")}}, aramid_{new QCheckBox{tr("Made for &aramid cord")}},
      polyurethane_{new QCheckBox{tr("Made for &polyurethane")}}, shafts_{new ShaftsModel{this}},
      table_{new QTableView} {
    buildView();
    connect(name_, &QLineEdit::textEdited, this, &SettingsPart::edited);
    connect(gap_, &QLineEdit::textEdited, this, &SettingsPart::edited);
    for (QCheckBox* box : {steel_, aramid_, polyurethane_})
        connect(box, &QCheckBox::toggled, this, &SettingsPart::edited);
    connect(shafts_, &ShaftsModel::edited, this, &SettingsPart::edited);
}

void CutterPart::buildView() {
    name_->setAccessibleName(tr("Name of the cutter"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Name of the cutter"), name_);
    gap_->addTo(*form, tr("mm"));
    for (QCheckBox* box : {steel_, aramid_, polyurethane_})
        form->addRow(QString{}, box);
    table_->setModel(shafts_);
    table_->setAccessibleName(tr("Shafts of the cutter"));
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setDefaultSectionSize(pressHeight);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->setTabKeyNavigation(false);
    auto* add = new QAction{tr("Add a shaft"), this};
    add->setShortcut(Qt::CTRL | Qt::Key_N);
    auto* remove = new QAction{tr("Remove the shaft"), this};
    remove->setShortcut(Qt::CTRL | Qt::Key_Delete);
    for (QAction* action : {add, remove}) {
        action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
        addAction(action);
    }
    connect(add, &QAction::triggered, shafts_, &ShaftsModel::add);
    connect(remove, &QAction::triggered, this, [this] { shafts_->remove(table_->currentIndex().row()); });
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(new KeyButton{add});
    buttons->addWidget(new KeyButton{remove});
    buttons->addStretch();
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(
        label(tr("Shafts, all figures in mm: diameters, width that a sleeve may lie on, centres. "
                 "F2 edits a figure."),
              "remark"));
    column->addWidget(table_, 1);
    column->addLayout(buttons);
}

void CutterPart::show(const store::ShopSettings& settings) {
    const cutting::Cutter& cutter = settings.cutter;
    name_->setText(text(cutter.name));
    gap_->setText(QString::number(cutter.gap));
    steel_->setChecked(cutter.cutsSteelCord);
    aramid_->setChecked(cutter.cutsAramidCord);
    polyurethane_->setChecked(cutter.cutsPolyurethane);
    shafts_->setShafts(cutter.shafts);
}

bool CutterPart::write(store::ShopSettings& settings) const {
    if (!gap_->isRight()) return false;
    settings.cutter = {name_->text().trimmed().toStdString(),
                       shafts_->shafts(),
                       steel_->isChecked(),
                       aramid_->isChecked(),
                       polyurethane_->isChecked(),
                       static_cast<double>(readWidth(gap_->typed())->inMicrometres()) / 1000};
    return true;
}

} // namespace riband::ui
