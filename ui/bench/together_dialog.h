#pragma once

#include "ui/bench/together_model.h"
#include "ui/desk/reading.h"

#include <QDialog>

#include <atomic>
#include <memory>

class QCheckBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace riband::ui {

/// Open orders that wait for the same belt, planned as one: what it would save, taken by one key. The
/// planning is done by another thread and stops when the dialog is closed.
class TogetherDialog final : public QDialog {
    Q_OBJECT
public:
    explicit TogetherDialog(Session& session, QWidget* parent = nullptr);
    ~TogetherDialog() override;
    bool searching() const { return stop_ != nullptr; }
    int rows() const { return model_->rowCount(); }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildView();
    shop::ForShelf wanted() const;
    void look();
    void enter();
    void take(std::vector<TogetherModel::Row> rows);
    void cutTogether();

    Session& session_;
    Reading* reading_;
    TogetherModel* model_;
    QTableView* table_;
    QCheckBox* shelf_;
    QLabel* words_;
    QProgressBar* progress_;
    QPushButton* accept_ = nullptr;
    bool enterSleeps_ = false; ///< after a belt was planned, until another one is chosen by hand
    std::shared_ptr<std::atomic_bool> stop_; ///< of the search that is under way
};

} // namespace riband::ui
