#include "ui/window/help_dialog.h"

#include "ui/desk/labels.h"
#include "ui/desk/page.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QScrollArea>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

/// The actions that can be reached now: those of the page and of what it shows in front.
QList<QAction*> actionsOf(const Page& page) {
    QList<QAction*> actions;
    for (QAction* action : page.findChildren<QAction*>()) {
        const auto* owner = qobject_cast<const QWidget*>(action->parent());
        if (owner && owner->isVisible()) actions << action;
    }
    return actions;
}

QWidget* keysOf(const QList<QAction*>& actions) {
    auto* box = new QWidget;
    auto* grid = new QGridLayout{box};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(6 * step);
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const QAction* action : actions) {
        if (action->shortcut().isEmpty()) continue;
        grid->addWidget(label(keyName(action->shortcut()), "strong"), row, 0);
        grid->addWidget(label(QString{action->text()}.remove('&')), row++, 1);
    }
    return box;
}

} // namespace

HelpDialog::HelpDialog(const Page& page, const QList<QAction*>& everywhere, QWidget* parent)
    : QDialog{parent} {
    setWindowTitle(tr("Help: %1").arg(page.title()));
    resize(620, 640);
    auto* words = label(page.help());
    words->setWordWrap(true);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout{inside};
    column->setSpacing(3 * step);
    column->addWidget(words);
    column->addWidget(label(tr("On this page"), "part"));
    column->addWidget(keysOf(actionsOf(page)));
    column->addWidget(label(tr("Everywhere"), "part"));
    column->addWidget(keysOf(everywhere));
    column->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setAccessibleName(windowTitle());
    scroll->setWidgetResizable(true);
    scroll->setWidget(inside);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Close};
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* outer = new QVBoxLayout{this};
    outer->addWidget(scroll, 1);
    outer->addWidget(buttons);
}

} // namespace riband::ui
