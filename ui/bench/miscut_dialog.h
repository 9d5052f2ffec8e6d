#pragma once

#include "core/shop/cut.h"
#include "core/shop/queries.h"

#include <QDialog>

#include <vector>

class QLineEdit;
class QPushButton;
class QSpinBox;

namespace riband::ui {

/// What was spoiled, what is good, and how wide the piece is now.
class MiscutDialog final : public QDialog {
    Q_OBJECT
public:
    explicit MiscutDialog(const shop::BenchMounting& mounting, QWidget* parent = nullptr);
    shop::Miscut miscut() const;

private:
    void buildView();
    void check();
    void expectLeft();
    std::optional<Extent> typed(const QLineEdit& field) const;
    const shop::BenchMounting mounting_;
    std::vector<QSpinBox*> good_;
    QLineEdit *spoiled_, *left_, *note_;
    QPushButton* record_ = nullptr;
};

} // namespace riband::ui
