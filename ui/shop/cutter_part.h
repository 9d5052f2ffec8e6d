#pragma once

#include "ui/shop/settings_part.h"

class QCheckBox;
class QLineEdit;
class QTableView;

namespace riband::ui {

class Entry;
class ShaftsModel;

/// The cutter: what it is made for, and its shafts.
class CutterPart final : public SettingsPart {
    Q_OBJECT
public:
    explicit CutterPart(QWidget* parent = nullptr);
    QString title() const override { return tr("Cutter and shafts"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;

private:
    void buildView();
    QLineEdit* name_;
    Entry* gap_;
    QCheckBox *steel_, *aramid_, *polyurethane_;
    ShaftsModel* shafts_;
    QTableView* table_;
};

} // namespace riband::ui
