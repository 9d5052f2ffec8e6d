#pragma once

#include "ui/shop/settings_part.h"

#include <vector>

class QAction;
class QCheckBox;
class QComboBox;
class QFormLayout;
class QTableView;

namespace riband::ui {

class Entry;
class ShaftsModel;

/// The cutters of the shop: which is the usual one, what each is made for, and its shafts. One is edited at a
/// time; while a figure of it is wrong the others can't be turned to.
class CutterPart final : public SettingsPart {
    Q_OBJECT
public:
    explicit CutterPart(QWidget* parent = nullptr);
    QString title() const override { return tr("Cutters and shafts"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;

private:
    void buildView();
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, void (CutterPart::*does)());
    QFormLayout* form();
    bool isFree(const std::string& name) const; ///< no name, or that of another cutter, is none
    void addCutter();
    void removeCutter();
    void makeUsual();
    void addShaft();
    void removeShaft();
    void turnTo(int cutter);
    void showNames();
    void showCurrent();
    void keep(); ///< what is typed, if it is right
    store::ShopCutter& current() { return cutters_[static_cast<std::size_t>(at_)]; }

    std::vector<store::ShopCutter> cutters_{store::ShopCutter{}};
    int at_ = 0;
    QComboBox* which_;
    Entry *name_, *gap_;
    QCheckBox *steel_, *aramid_, *polyurethane_;
    ShaftsModel* shafts_;
    QTableView* table_;
    QAction *add_ = nullptr, *remove_ = nullptr, *usual_ = nullptr;
};

} // namespace riband::ui
