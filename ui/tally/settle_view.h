#pragma once

#include "core/shop/counting/settle.h"
#include "ui/desk/list_file.h"
#include "ui/desk/session.h"

#include <QWidget>

class QLabel;
class QListWidget;

namespace riband::ui {

/// What counting found and nobody has settled: the differences on the left, the most valuable first, what may
/// have happened on the right, the likeliest first.
class SettleView final : public QWidget {
    Q_OBJECT
public:
    explicit SettleView(Session& session, QWidget* parent = nullptr);
    void refresh();
    int waiting() const { return static_cast<int>(findings_.size()); }
    QListWidget& list() { return *list_; }
    /// The differences, each with what most likely happened.
    ListRows rows() const;
    /// Marks the proposal with this number, from 1.
    void mark(int number);
    /// Accepts the marked proposal. False if nothing was settled.
    bool accept();
    /// Takes back what was settled last on this page.
    bool takeBack();
    bool canTakeBack() const { return last_.has_value(); }

private:
    QWidget* buildRight();
    void showFinding();
    const shop::Finding* current() const;
    void follow(const shop::Settled& settled);

    Session& session_;
    std::vector<shop::Finding> findings_;
    std::optional<store::SettlementId> last_;
    QListWidget *list_, *proposals_;
    QLabel *count_, *head_, *what_, *facts_;
};

} // namespace riband::ui
