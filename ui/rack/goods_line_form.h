#pragma once

#include "core/shop/expected.h"
#include "core/shop/receive.h"
#include "ui/desk/session.h"

#include <QWidget>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace riband::ui {

class FieldWords;
class WhichDialog;

/// One line of a delivery: so many like sleeves of one belt, typed, scanned off the supplier's label, or
/// both.
class GoodsLineForm final : public QWidget {
    Q_OBJECT
public:
    /// What is only expected has no batch, place or label yet.
    enum class For { Arrived, Expected };
    explicit GoodsLineForm(Session& session, For what = For::Arrived, QWidget* parent = nullptr);
    /// What is typed, if all of it is right.
    std::optional<shop::Delivery> line() const;
    /// Somebody wants the line: as `line`, but what is wrong is said. A code that is tied to no belt yet
    /// waits for its belt then.
    std::optional<shop::Delivery> demand();
    bool isEmpty() const;
    /// The lines that were entered already: two belts go to two places.
    void lieBeside(std::vector<shop::Delivery> lines);
    /// Fills it with so many sleeves that are expected.
    void show(const shop::ExpectedGoods& goods);
    /// Fills it with a line that was entered already.
    void show(const shop::Delivery& line);
    void next(); ///< empties what differs from line to line; the batch and the day stay

signals:
    void edited();

private:
    void buildView(For what);
    void addRow(QFormLayout& form, const QString& name, QWidget* field, const char* object);
    void understand();
    void identify();
    void scanned(const shop::KnownCode& known, const QString& code);
    void advise();
    void propose();
    void sayCostless();
    bool saysCost() const;
    std::optional<Money> usualCost() const;
    void check();
    void watchFields();
    QString wrongBelt(const QString& typed) const;
    QString wrongWidth(const QString& typed) const;
    std::optional<Unit> unit() const;
    std::optional<Extent> extentIn(const QLineEdit& field) const;

    Session& session_;
    QLineEdit *belt_, *width_, *labelled_, *cost_, *batch_, *made_, *place_;
    QSpinBox* count_;
    QComboBox* kind_;
    QLabel *understood_, *costless_, *advice_;
    FieldWords* wrong_;
    WhichDialog* which_ = nullptr; ///< made when it is first wanted
    std::optional<belt::Belt> known_;
    std::vector<shop::Delivery> beside_;
    bool costLeftOut_ = false; ///< it was said that the cost is empty, and Enter was pressed again
    QString code_;             ///< of the supplier, that the line is tied to
};

} // namespace riband::ui
