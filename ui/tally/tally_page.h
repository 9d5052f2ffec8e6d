#pragma once

#include "ui/desk/page.h"
#include "ui/tally/tally.h"

#include <utility>
#include <vector>

class QAction;
class QStackedWidget;

namespace riband::ui {

class CountView;
class KeyButton;
class PlanView;
class SettleView;

/// Counting the rack, place by place and blind, and settling what differs.
class TallyPage final : public Page {
    Q_OBJECT
public:
    explicit TallyPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Tally"); }
    QString help() const override;
    void refresh() override;
    void typed(const QString& text) override;
    bool wantsBelt() const override;
    void takeBelt(const QString& belt) override;
    int waiting() const override;
    store::Role least() const override { return store::Role::StockManager; }
    /// Codes that are scanned into these lines are counted or settled, not opened.
    QWidget& line();
    QWidget& settleLine();
    /// The page's own key, while it is in front already.
    void countOn();
    const Tally& tally() const { return tally_; }
    const PlanView& plan() const;

private:
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, void (TallyPage::*does)());
    QWidget* buildButtons();
    bool settling() const;
    void showActions();
    void nextMethod();
    void startPlace();
    void closePlace();
    void turn();
    void accept();
    void showSettled();
    bool mayClose();
    void focusLine();
    void saveShownList();

    Session& session_;
    Tally tally_;
    CountView* count_;
    SettleView* settle_;
    QStackedWidget* stack_;
    std::vector<std::pair<QAction*, KeyButton*>> buttons_;
    QAction *method_ = nullptr, *start_ = nullptr, *close_ = nullptr, *turn_ = nullptr, *accept_ = nullptr,
            *settled_ = nullptr, *save_ = nullptr;
};

} // namespace riband::ui
