#pragma once

#include "ui/desk/page.h"
#include "ui/desk/session.h"

#include <vector>

class QAction;
class QListWidget;
class QStackedWidget;

namespace riband::ui {

class KeyButton;
class PeriodBar;
class Reading;
class ReviewPart;

/// Where width and, for the owner, money went in a period, and what to do about it. The stock manager sees
/// the widths alone: what has nothing else is not there, and no report tells a cost.
class ReviewPage final : public Page {
    Q_OBJECT
public:
    explicit ReviewPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Review"); }
    store::Role least() const override { return store::Role::StockManager; }
    QString help() const override;
    void refresh() override;
    PeriodBar& period() { return *period_; }
    ReviewPart* part() const; ///< that stands in front; nullptr if there is none
    const std::vector<ReviewPart*>& parts() const { return parts_; }
    bool settled() const;

private:
    void buildParts();
    void addPart(ReviewPart* part);
    void buildActions();
    void buildView();
    void showPart();
    void showRights();
    void forget();
    void saveCsv();
    void makePdf();

    Session& session_;
    PeriodBar* period_;
    QListWidget* titles_;
    QStackedWidget* stack_;
    std::vector<ReviewPart*> parts_;
    QAction *figures_ = nullptr, *csv_ = nullptr, *pdf_ = nullptr;
    KeyButton* report_ = nullptr;
    Reading* month_;
};

} // namespace riband::ui
