#pragma once

#include "core/shop/counting/settle.h"
#include "ui/desk/list_file.h"
#include "ui/desk/session.h"

#include <QWidget>

class QLabel;
class QLineEdit;
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
    /// A scanned code chooses its difference, a digit a proposal.
    QLineEdit& line() { return *line_; }
    /// The keys go to the line; what was refused there is typed over.
    void focusLine();
    /// The differences, each with what most likely happened.
    ListRows rows() const;
    /// Accepts the marked proposal; above the limit the owner is asked for. False if nothing was settled.
    bool accept();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QWidget* buildLeft();
    QWidget* buildRight();
    void typed(const QString& words);
    void enter();
    void choose(const QString& words);
    void say(const QString& words);
    void showFacts();
    /// Who approves: nobody where nobody has to. False if somebody has to and does not.
    bool approved(const shop::Finding& finding, const shop::counting::Proposal& proposal,
                  std::optional<store::PersonId>& by);
    void showFinding();
    void showWhetherOpen();
    const shop::Finding* current() const;
    const shop::counting::Proposal* marked() const;
    QString worthOf(const shop::Finding& finding) const;
    void follow(const shop::Settled& settled);

    Session& session_;
    std::vector<shop::Finding> findings_;
    QLineEdit* line_;
    QListWidget *list_, *proposals_;
    QLabel *asks_, *said_, *count_, *head_, *what_, *facts_, *may_, *keys_;
    int markedBefore_ = 0; ///< the proposal, before digits were typed
    bool refused_ = false; ///< what stands on the line
};

} // namespace riband::ui
