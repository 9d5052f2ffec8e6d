#pragma once

#include "tests/ui/desk_fixture.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

namespace riband::ui {

inline QLineEdit& field(QDialog& dialog, const char* name) {
    auto* found = dialog.findChild<QLineEdit*>(QString::fromLatin1(name));
    REQUIRE(found != nullptr);
    return *found;
}

/// What a form says to be expected in a field that holds something else.
inline QString saidWrong(QDialog& dialog) {
    QStringList said;
    const auto all = dialog.findChildren<QLabel*>(QStringLiteral("fieldWords"));
    REQUIRE_FALSE(all.isEmpty());
    for (const QLabel* words : all)
        if (words->isVisible()) said << words->text();
    return said.join(QLatin1Char('\n'));
}

/// The keys of a dialog act as soon as its window is the active one.
inline void answering(DeskWindow& desk, const std::function<void(QDialog&)>& answer) {
    desk.answering([answer](QDialog& dialog) {
        dialog.activateWindow();
        QApplication::processEvents();
        answer(dialog);
    });
}

inline void goToTheRack(DeskWindow& desk) { desk.press(Qt::Key_3, Qt::ControlModifier); }

} // namespace riband::ui
