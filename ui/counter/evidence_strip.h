#pragma once

#include "ui/counter/evidence.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace riband::ui {

/// Beside the words: the profile of the customer's pulley and a length by tape, and what they say of the belt
/// that is wanted. Out of sight until it is asked for, or has something to say.
class EvidenceStrip final : public QWidget {
    Q_OBJECT
public:
    explicit EvidenceStrip(const belt::Tables& tables, QWidget* parent = nullptr);
    /// Opens the fields and puts the focus there.
    void enter();
    void show(const Evidence& evidence, const std::vector<Evidence::Finding>& findings);
    void clear();
    QString pulley() const;
    QString tape() const;

signals:
    void changed();
    void left(); ///< Enter or Escape: back to the line

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QLineEdit *pulley_, *tape_;
    QWidget* fields_;
    QLabel *bad_, *good_;
    bool clearing_ = false;
};

} // namespace riband::ui
