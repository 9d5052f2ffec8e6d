#pragma once

#include "tests/ui/desk_fixture.h"

#include <QLineEdit>
#include <QSpinBox>
#include <QTest>

namespace riband::ui {

inline QLineEdit& fieldNamed(QWidget& page, const QString& name) {
    for (auto* field : page.findChildren<QLineEdit*>())
        if (field->accessibleName() == name) return *field;
    FAIL("no field " << name.toStdString());
    throw 0;
}

inline QSpinBox& spinNamed(QWidget& page, const QString& name) {
    for (auto* field : page.findChildren<QSpinBox*>())
        if (field->accessibleName() == name) return *field;
    FAIL("no field " << name.toStdString());
    throw 0;
}

inline void write(QLineEdit& field, const QString& words) {
    field.selectAll();
    QTest::keyClicks(&field, words);
}

} // namespace riband::ui
