#pragma once

#include "core/shop/cut.h"
#include "core/shop/queries.h"

#include <QDialog>

#include <vector>

class QLabel;
class QLineEdit;
class QSpinBox;

namespace riband::ui {

class FieldWords;

/// What was spoiled, what is good, and how wide the piece is now.
class MiscutDialog final : public QDialog {
    Q_OBJECT
public:
    explicit MiscutDialog(const shop::BenchMounting& mounting, QWidget* parent = nullptr);
    shop::Miscut miscut() const;
    void accept() override;

private:
    void buildView();
    void expectLeft();
    void compare();
    std::optional<Extent> expected() const;
    std::optional<Extent> typed(const QLineEdit& field) const;
    const shop::BenchMounting mounting_;
    std::vector<QSpinBox*> good_;
    QLineEdit *spoiled_, *left_, *note_;
    FieldWords* wrong_;
    QLabel* difference_;
};

} // namespace riband::ui
