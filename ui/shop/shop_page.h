#pragma once

#include "ui/desk/page.h"
#include "ui/desk/session.h"

#include <vector>

class QAction;
class QListWidget;
class QStackedWidget;

namespace riband::ui {

class BeltsPart;
class PeoplePart;
class PlacesPart;
class SettingsPart;

/// The shop's own ways: names, prices, rules, cutter, belts, places, people, and its book.
class ShopPage final : public Page {
    Q_OBJECT
public:
    explicit ShopPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Shop"); }
    store::Role least() const override { return store::Role::Owner; }
    QString help() const override;
    void refresh() override;

private:
    void buildParts();
    enum class Fills { Top, All };
    void addPart(const QString& title, QWidget* part, Fills fills);
    void buildActions();
    void buildView();
    void showSettings();
    void save();
    void revert();
    void setEdited(bool edited);

    Session& session_;
    QListWidget* titles_;
    QStackedWidget* stack_;
    std::vector<SettingsPart*> settings_;
    BeltsPart* belts_ = nullptr;
    PlacesPart* places_ = nullptr;
    PeoplePart* people_ = nullptr;
    QAction *save_ = nullptr, *revert_ = nullptr;
    bool edited_ = false;
};

} // namespace riband::ui
