#pragma once

#include <QDialog>

namespace riband::ui {

class Page;

/// What the page is for, and every key that works on it, read from its actions.
class HelpDialog final : public QDialog {
    Q_OBJECT
public:
    HelpDialog(const Page& page, const QList<QAction*>& everywhere, QWidget* parent = nullptr);
};

} // namespace riband::ui
