#pragma once

#include "ui/desk/reading.h"
#include "ui/rack/ageing_rows.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QSpinBox;
class QTableView;

namespace riband::ui {

class AgeingModel;
class KeyButton;

/// What ages out or is not worth its place, and what to do with it.
class AgeingDialog final : public QDialog {
    Q_OBJECT
public:
    explicit AgeingDialog(Session& session, QWidget* parent = nullptr);

private:
    void buildView();
    void look();
    void showRows();
    AgeingRows atPlace() const;
    void follow();
    void inspect(bool sound);
    void takeBack();
    void offer();
    void scrap();
    void save();
    std::optional<store::StockPiece> current() const;

    Session& session_;
    AgeingModel* model_;
    QTableView* table_;
    QSpinBox* months_;
    QLineEdit* place_;
    AgeingRows rows_; ///< of all places
    Reading* reading_;
    QLabel *sum_, *said_;
    KeyButton *sound_ = nullptr, *bad_ = nullptr, *offer_ = nullptr, *scrap_ = nullptr, *back_ = nullptr;
    std::vector<store::StockPiece> inspected_; ///< here, the last one last
};

} // namespace riband::ui
