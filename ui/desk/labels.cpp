#include "ui/desk/labels.h"

namespace riband::ui {

QLabel* label(const QString& words, const char* role, QWidget* parent) {
    auto* made = new QLabel{words, parent};
    made->setTextFormat(Qt::PlainText);
    made->setProperty("role", QString::fromLatin1(role));
    return made;
}

QFrame* surface(const char* name, QWidget* parent) {
    auto* made = new QFrame{parent};
    made->setProperty("surface", QString::fromLatin1(name));
    return made;
}

} // namespace riband::ui
