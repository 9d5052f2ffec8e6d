#include "ui/desk/completion.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace riband::ui {

namespace {

class EnterGoesOn final : public QObject {
public:
    EnterGoesOn(QLineEdit& field, QAbstractItemView& list) : QObject{&list}, field_{field}, list_{list} {
        list.installEventFilter(this); // after the completer's: it sees the keys first
    }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() != QEvent::KeyPress || list_.currentIndex().isValid()) return false;
        const auto* key = static_cast<const QKeyEvent*>(event);
        if (key->key() != Qt::Key_Return && key->key() != Qt::Key_Enter) return false;
        list_.hide();
        QKeyEvent again{key->type(), key->key(), key->modifiers(), key->text()};
        QCoreApplication::sendEvent(&field_, &again);
        return true;
    }

private:
    QLineEdit& field_;
    QAbstractItemView& list_;
};

} // namespace

void offerBelow(QLineEdit& field, QCompleter* completer) {
    field.setCompleter(completer);
    new EnterGoesOn{field, *completer->popup()};
}

} // namespace riband::ui
