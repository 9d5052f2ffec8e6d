#include "ui/desk/field_words.h"

#include "tests/catch.h"
#include "tests/ui/desk_fixture.h"
#include "ui/desk/unsaved.h"

#include <QApplication>
#include <QLineEdit>
#include <QMessageBox>
#include <QTest>
#include <QTimer>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

QString wrongUnlessSix(const QString& typed) {
    return typed == QStringLiteral("6") ? QString{} : QStringLiteral("Type 6.");
}

/// Two fields, of which the second may stay empty.
struct Form {
    Form() {
        ribs.setAccessibleName(QStringLiteral("Ribs"));
        more.setAccessibleName(QStringLiteral("More"));
        words.watch(ribs, wrongUnlessSix);
        words.watch(more, orEmpty(wrongUnlessSix));
        auto* column = new QVBoxLayout{&dialog};
        for (QWidget* each : std::initializer_list<QWidget*>{&ribs, &more, &words})
            column->addWidget(each);
        dialog.show();
        dialog.activateWindow();
        QApplication::processEvents();
    }
    QDialog dialog;
    QLineEdit ribs{&dialog}, more{&dialog};
    FieldWords words{&dialog};
};

} // namespace

TEST_CASE("What is expected of a wrong field is said, in words and to a screen reader", "[desk]") {
    Form form;
    CHECK_FALSE(form.words.isVisible());
    CHECK_FALSE(form.words.right()); // the first is empty, but nobody wants to go on yet
    QTest::keyClicks(&form.more, "abc");
    CHECK(form.words.isVisible());
    CHECK(form.words.text() == "More: Type 6.");
    CHECK(form.more.accessibleDescription() == "Type 6.");
    CHECK(form.more.property("wrong").toString() == "true");
    CHECK(form.ribs.property("wrong").toString() == "false");
    form.more.clear();
    CHECK_FALSE(form.words.isVisible());
    CHECK(form.more.accessibleDescription().isEmpty());
}

TEST_CASE("Who goes on with a wrong field is told, and has the keys in it", "[desk]") {
    Form form;
    form.more.setFocus();
    CHECK_FALSE(form.words.demand());
    CHECK(form.words.text() == "Ribs: Type 6.");
    CHECK(QApplication::focusWidget() == &form.ribs);
    QTest::keyClicks(&form.ribs, "6");
    CHECK(form.words.text().isEmpty());
    CHECK(form.words.demand());
    CHECK(form.words.right());
    form.ribs.clear();
    CHECK(form.words.isVisible());
    form.words.begin(); // the next line
    CHECK_FALSE(form.words.isVisible());
}

TEST_CASE("A field that can't be typed in is not judged", "[desk]") {
    Form form;
    form.ribs.setEnabled(false);
    CHECK(form.words.demand());
}

TEST_CASE("What was typed is thrown away only by who says so", "[desk]") {
    QDialog form;
    form.setWindowTitle(QStringLiteral("A form"));
    const auto answer = [&](Qt::Key key, Qt::KeyboardModifiers modifiers) {
        QTimer::singleShot(0, [key, modifiers] {
            QWidget* ask = QApplication::activeModalWidget();
            REQUIRE(qobject_cast<QMessageBox*>(ask));
            CHECK(qobject_cast<QMessageBox*>(ask)->text() == "2 lines.");
            ask->activateWindow();
            QApplication::processEvents();
            QTest::keyClick(ask, key, modifiers);
        });
        return mayThrowAway(form, QStringLiteral("2 lines."));
    };
    CHECK_FALSE(answer(Qt::Key_Escape, Qt::NoModifier));
    CHECK_FALSE(answer(Qt::Key_Return, Qt::NoModifier));
    CHECK(answer(Qt::Key_T, Qt::AltModifier));
}

} // namespace riband::ui
