#pragma once

#include "core/store/orders.h"

#include <QDialog>

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace riband::ui {

/// Another width or quantity for a line of a booked order; no belts means: not this line.
class ChangeLineDialog final : public QDialog {
    Q_OBJECT
public:
    /// `objection`: why this can't be, in words; empty if it can.
    using Objection = std::function<QString(Extent, std::int64_t)>;
    /// `widest`: no belt can be wider; none: not known.
    ChangeLineDialog(const store::OrderLine& line, const QString& belt, Extent widest, Objection objection,
                     QWidget* parent = nullptr);
    Extent extent() const;
    std::int64_t quantity() const;

    void accept() override;

private:
    void buildView();
    void check();
    std::optional<Extent> typed() const;
    /// What keeps the change from being made, or what it means; `wrong`: it can't be.
    struct Words {
        QString words;
        bool wrong;
    };
    Words wordsOn(std::optional<Extent> typed) const;
    void say(const Words& words);

    Extent before_, widest_;
    std::int64_t belts_;
    Objection objection_;
    QLineEdit* width_;
    QSpinBox* quantity_;
    QLabel* words_;
    QPushButton* change_ = nullptr;
};

} // namespace riband::ui
