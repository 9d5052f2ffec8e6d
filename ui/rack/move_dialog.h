#pragma once

#include <QDialog>

#include <string>
#include <vector>

class QLineEdit;

namespace riband::ui {

/// Where a piece goes.
class MoveDialog final : public QDialog {
    Q_OBJECT
public:
    MoveDialog(const QString& piece, const std::string& place, const std::vector<std::string>& places,
               QWidget* parent = nullptr);
    std::string place() const;

private:
    QLineEdit* place_;
};

} // namespace riband::ui
