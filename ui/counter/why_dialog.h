#pragma once

#include "core/store/advices.h"

#include <QDialog>

class QLineEdit;
class QListWidget;

namespace riband::ui {

/// Why another way than suggested: a digit is enough, words of one's own may be added.
class WhyDialog final : public QDialog {
    Q_OBJECT
public:
    explicit WhyDialog(QWidget* parent = nullptr);
    store::OverrideKey key() const;
    QString words() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void pick(int row);
    void ownWords();
    QListWidget* keys_;
    QLineEdit* words_;
    bool chosen_ = false; ///< a reason was chosen by hand
};

} // namespace riband::ui
