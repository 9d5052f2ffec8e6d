#pragma once

#include "core/shop/cut.h"
#include "core/shop/queries.h"

#include <QDialog>

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace riband::ui {

class FieldWords;

/// What was really cut: the rest as measured, whether it is kept, and where.
class RecordDialog final : public QDialog {
    Q_OBJECT
public:
    RecordDialog(const shop::BenchMounting& mounting, const std::vector<std::string>& places,
                 QWidget* parent = nullptr);
    shop::CutRecord record() const;
    void accept() override;

private:
    void buildView(const std::vector<std::string>& places);
    void connectAll();
    void expect();
    void compare();
    std::optional<Extent> typedRest() const;
    std::vector<shop::CutRecord::ForShelf> forShelf() const;
    Extent expected() const;

    const shop::BenchMounting mounting_;
    QLineEdit *rest_, *place_, *shelfWidth_;
    QSpinBox* shelfCount_;
    std::vector<QSpinBox*> ofShelf_; ///< belts cut of each width that the ticket has for the shelf
    QCheckBox* keep_;
    FieldWords* wrong_;
    QLabel* difference_;
};

} // namespace riband::ui
