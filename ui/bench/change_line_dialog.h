#pragma once

#include "core/store/orders.h"

#include <QDialog>

#include <functional>

class QLabel;
class QLineEdit;
class QSpinBox;

namespace riband::ui {

class FieldWords;

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
    bool same() const;
    QString wrongWidth(const QString& typed) const;
    void say(const QString& words, const char* role);

    Extent before_, widest_;
    std::int64_t belts_;
    Objection objection_;
    QLineEdit* width_;
    QSpinBox* quantity_;
    FieldWords* wrong_;
    QLabel* words_; ///< what the change means, or why it can't be
};

} // namespace riband::ui
