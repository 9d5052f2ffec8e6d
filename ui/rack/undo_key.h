#pragma once

#include <QKeyEvent>
#include <QLineEdit>

namespace riband::ui {

/// A field would take Ctrl+Z for the words in it: behind this it goes to the act that has it on it, and to
/// nothing while that can't be done.
class UndoKey final : public QObject {
public:
    explicit UndoKey(QLineEdit* field) : QObject{field} { field->installEventFilter(this); }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() != QEvent::ShortcutOverride && event->type() != QEvent::KeyPress) return false;
        if (!static_cast<QKeyEvent*>(event)->matches(QKeySequence::Undo)) return false;
        event->ignore();
        return true;
    }
};

} // namespace riband::ui
