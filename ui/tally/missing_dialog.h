#pragma once

#include "ui/desk/session.h"

#include <QDialog>

namespace riband::ui {

/// The place is said to be done, and pieces of it were not seen: asks before they are missing. What is
/// scanned meanwhile is meant for the count: it closes the question with No.
class MissingDialog final : public QDialog {
    Q_OBJECT
public:
    MissingDialog(Session& session, const QString& place, const std::vector<store::StockPiece>& unseen,
                  QWidget* parent);
    /// What somebody began to scan or type instead of an answer.
    const QString& begun() const { return begun_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    QString begun_;
};

} // namespace riband::ui
