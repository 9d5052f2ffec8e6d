#pragma once

#include <QDialog>

namespace riband::ui {

class Page;

/// What a page or a dialog is for, and every key that works there, read from its actions and buttons.
class HelpDialog final : public QDialog {
    Q_OBJECT
public:
    HelpDialog(const Page& page, const QList<QAction*>& everywhere, QWidget* parent = nullptr);
    /// Its title, its words (`whatsThis`) and its keys.
    explicit HelpDialog(QDialog& dialog);

private:
    void build(const QString& title, const QString& words, const QList<QPair<QString, QWidget*>>& parts);
};

} // namespace riband::ui
