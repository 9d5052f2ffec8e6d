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

using Key = QPair<QKeySequence, QString>;

/// What can be pressed now: the actions of the place and of what it shows in front.
QList<Key> keysIn(const QWidget& place) {
    QList<Key> keys;
    const auto add = [&](const QKeySequence& key, const QString& does) {
        const Key found{key, QString{does}.remove('&')};
        if (!key.isEmpty() && !does.isEmpty() && !keys.contains(found)) keys << found;
    };
    for (const QAction* action : place.findChildren<QAction*>()) {
        const auto* owner = qobject_cast<const QWidget*>(action->parent());
        if (owner && owner->isVisible()) add(action->shortcut(), action->text());
    }
    for (const auto* button : place.findChildren<KeyButton*>())
        if (button->isVisible()) add(button->shownKey(), button->text());
    return keys;
}

QList<Key> keysOf(const QList<QAction*>& actions) {
    QList<Key> keys;
    for (const QAction* action : actions)
        if (!action->shortcut().isEmpty())
            keys << Key{action->shortcut(), QString{action->text()}.remove('&')};
    return keys;
}

QWidget* listed(const QList<Key>& keys) {
    auto* box = new QWidget;
    auto* grid = new QGridLayout{box};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(6 * step);
    grid->setColumnStretch(1, 1);
    for (int row = 0; row < keys.size(); ++row) {
        grid->addWidget(label(keyName(keys[row].first), "strong"), row, 0);
        grid->addWidget(label(keys[row].second), row, 1);
    }
    return box;
}

} // namespace

HelpDialog::HelpDialog(const Page& page, const QList<QAction*>& everywhere, QWidget* parent)
    : QDialog{parent} {
    build(page.title(), page.help(),
          {{tr("On this page"), listed(keysIn(page))}, {tr("Everywhere"), listed(keysOf(everywhere))}});
}

HelpDialog::HelpDialog(QDialog& dialog) : QDialog{&dialog} {
    QList<Key> keys = keysIn(dialog);
    keys << Key{Qt::Key_Escape, tr("Back")};
    build(dialog.windowTitle(), dialog.whatsThis(), {{tr("Here"), listed(keys)}});
}

void HelpDialog::build(const QString& title, const QString& said,
                       const QList<QPair<QString, QWidget*>>& parts) {
    setWindowTitle(tr("Help: %1").arg(title));
    resize(620, 640);
    auto* words = label(said);
    words->setWordWrap(true);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout{inside};
    column->setSpacing(3 * step);
    column->addWidget(words);
    for (const auto& [name, keys] : parts) {
        column->addWidget(label(name, "part"));
        column->addWidget(keys);
    }
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
