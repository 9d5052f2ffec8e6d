#include "tests/catch.h"

#include "ui/look/card_tabs.h"
#include "ui/look/figures.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"

#include <QAction>
#include <QApplication>
#include <QHBoxLayout>
#include <QSignalSpy>
#include <QTest>

using namespace riband::ui;

TEST_CASE("A button is never lower than 38 pixels, and the likely act is larger", "[look]") {
    const KeyButton plain{"Quote", QKeySequence{"F8"}};
    const KeyButton likely{"Order and ticket", QKeySequence{"F9"}, KeyButton::Rank::Likely};
    CHECK(plain.sizeHint().height() >= 38);
    CHECK(likely.sizeHint().height() > plain.sizeHint().height());
}

TEST_CASE("A button says its name and its key to those who can't see it", "[look]") {
    const KeyButton button{"&Park", QKeySequence{"F7"}};
    CHECK(button.accessibleName() == "Park");
    CHECK(button.accessibleDescription() == "F7");
}

TEST_CASE("A button of an action follows it and triggers it", "[look]") {
    QAction action{"Print"};
    action.setShortcut(QKeySequence{"Ctrl+P"});
    KeyButton button{&action};
    CHECK(button.text() == "Print");
    CHECK(button.accessibleDescription() == "Ctrl+P");
    QSignalSpy triggered{&action, &QAction::triggered};
    button.click();
    CHECK(triggered.count() == 1);
    action.setEnabled(false);
    CHECK_FALSE(button.isEnabled());
    action.setText("Print again");
    CHECK(button.accessibleName() == "Print again");
}

TEST_CASE("A button of a checkable action is checked once by a click, not back and forth", "[look]") {
    QAction action{"cut the shelf belt too"};
    action.setCheckable(true);
    KeyButton button{&action};
    button.click();
    CHECK(action.isChecked());
    CHECK(button.isChecked());
    action.setChecked(false);
    CHECK_FALSE(button.isChecked());
}

TEST_CASE("Enter and Space press the button that has the focus", "[look]") {
    KeyButton button{"Quote", QKeySequence{"F8"}};
    QSignalSpy clicked{&button, &QAbstractButton::clicked};
    QTest::keyClick(&button, Qt::Key_Return);
    QTest::keyClick(&button, Qt::Key_Space);
    CHECK(clicked.count() == 2);
}

TEST_CASE("Return is shown as the word that stands on the key", "[look]") {
    CHECK(keyName(QKeySequence{Qt::Key_Return}) == "Enter");
    CHECK(keyName(QKeySequence{Qt::Key_Enter}) == "Enter");
    CHECK(keyName(QKeySequence{"F9"}) == "F9");
}

TEST_CASE("A card says how many wait there, and makes room for the number", "[look]") {
    CardTabBar tabs;
    const int bench = tabs.addCard("Bench", QKeySequence{"Ctrl+2"});
    const int before = tabs.sizeHint().width();
    CHECK(tabs.accessibleTabName(bench) == "Bench");
    tabs.setWaiting(bench, 4);
    CHECK(tabs.accessibleTabName(bench).startsWith("Bench, 4"));
    CHECK(tabs.sizeHint().width() > before);
    tabs.setWaiting(bench, 0);
    CHECK(tabs.accessibleTabName(bench) == "Bench");
}

TEST_CASE("Figures of as many digits are equally wide", "[look]") {
    const QFont font = Look::font(TextSize::Text);
    CHECK(figuresWidth(font, "111.11") == Approx(figuresWidth(font, "888.88")));
    CHECK(figuresWidth(font, "1") < figuresWidth(font, "11"));
}
TEST_CASE("The row of cards is as wide as its cards, whoever is told that they are there", "[look]") {
    CardTabBar tabs;
    for (const char* name : {"Counter", "Bench", "Review"})
        tabs.addCard(QString::fromLatin1(name), Qt::CTRL | Qt::Key_1);
    const int alone = tabs.sizeHint().width();
    CardTabBar told;
    for (const char* name : {"Counter", "Bench", "Review"})
        told.addCard(QString::fromLatin1(name), Qt::CTRL | Qt::Key_1);
    for (int i = 0; i < 3; ++i)
        told.setCardVisible(i, true);
    CHECK(told.sizeHint().width() == alone);
}

TEST_CASE("A card that comes back has its room", "[look]") {
    QWidget box;
    auto* row = new QHBoxLayout{&box};
    auto* tabs = new CardTabBar;
    row->addWidget(tabs);
    row->addStretch();
    for (const char* name : {"Counter", "Bench", "Review"})
        tabs->addCard(QString::fromLatin1(name), Qt::CTRL | Qt::Key_1);
    tabs->setCardVisible(2, false);
    box.resize(900, 100);
    box.show();
    QApplication::processEvents();
    tabs->setCardVisible(2, true);
    QApplication::processEvents();
    CHECK(tabs->width() > tabs->tabRect(2).right());
}
