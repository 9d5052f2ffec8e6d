#pragma once

#include "ui/desk/stock_reader.h"
#include "ui/drive/answer.h"

#include <QDialog>

class QLabel;
class QTableView;

namespace riband::ui {

class DriveBeltsModel;
class DriveForm;
class RouteWidget;

/// The helper Drive: pulleys and distance to the belts that exist, what is here first. It opens over any
/// page, keeps what was typed while it is closed, and ends in a belt for the Counter's line.
class DriveDialog final : public QDialog {
    Q_OBJECT
public:
    explicit DriveDialog(Session& session, QWidget* parent = nullptr);
    /// Comes to the front. `said`: the belt on the Counter's line; nullptr if none is clear there.
    void bring(const belt::Reading* said);
    const DriveAnswer& answer() const { return answer_; }
    /// What is here is read.
    bool settled() const { return !stock_.busy(); }

signals:
    void sent(const riband::belt::Reading& reading);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QWidget* buildFound();
    QWidget* buildBelow();
    QAction* act(const QString& name, const QKeySequence& key, const std::function<void()>& does);
    void buildActions();
    void beginReading();
    void work();
    void stockIsRead();
    void showAnswer();
    void showPicture();
    void choose(int by);
    void select(int row);
    void enter();
    Session& session_;
    DriveAnswer answer_;
    StockReader stock_;
    std::optional<belt::Belt> from_;   ///< that the Counter's line last brought
    std::optional<belt::Belt> chosen_; ///< by a person; else the best of the list is meant
    bool entered_ = false;             ///< Enter was pressed before it was known what is here
    std::int64_t quantity_ = 1;
    DriveForm* form_;
    RouteWidget* picture_;
    QLabel *open_, *exact_, *warnings_, *notes_;
    DriveBeltsModel* belts_;
    QTableView* table_;
    QAction *more_ = nullptr, *fresh_ = nullptr, *remove_ = nullptr;
};

} // namespace riband::ui
