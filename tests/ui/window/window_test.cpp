#include "tests/ui/desk_fixture.h"
#include "ui/bench/bench_page.h"
#include "ui/counter/counter_page.h"
#include "ui/desk/page.h"
#include "ui/rack/rack_page.h"
#include "ui/window/scanner.h"
#include "ui/window/status_line.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QTest>

namespace riband::ui {

namespace {

/// Parts of Qt's own widgets, named by the widget that they belong to.
bool isInner(const QWidget& widget) {
    const QWidget* parent = widget.parentWidget();
    return qobject_cast<const QAbstractSpinBox*>(parent) || qobject_cast<const QComboBox*>(parent) ||
           QString{widget.metaObject()->className()}.startsWith("QComboBox") ||
           widget.objectName().startsWith("qt_") || qobject_cast<const QScrollBar*>(&widget);
}

std::vector<std::string> namelessControls(const QWidget& root) {
    std::vector<std::string> nameless;
    for (const auto* widget : root.findChildren<QWidget*>()) {
        const bool focusable = widget->focusPolicy() != Qt::NoFocus && !widget->focusProxy();
        if (!focusable || isInner(*widget) || !widget->accessibleName().isEmpty()) continue;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        if (button && !button->text().isEmpty()) continue; // its text is its name
        nameless.push_back(widget->metaObject()->className());
    }
    return nameless;
}

QString codeOf(DeskShop& shop, const std::string& belt) {
    const auto stocked = store::Catalogue{shop.connection()}.find(shop.belt(belt));
    return QString::fromStdString(store::Pieces{shop.connection()}.ofBelt(stocked->id).front().code);
}

/// As a scanner does: a character every five milliseconds, then Enter.
void scanInto(QWidget& field, const QString& code) {
    quint64 struck = 1000;
    const auto strike = [&](int key, const QString& text) {
        QKeyEvent event{QEvent::KeyPress, key, Qt::NoModifier, text};
        event.setTimestamp(struck += 5);
        QApplication::sendEvent(&field, &event);
    };
    for (const QChar character : code)
        strike(character.unicode(), character);
    strike(Qt::Key_Return, QStringLiteral("\r"));
}

} // namespace

TEST_CASE("Every control has a name for those who can't see it, every act a key", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    CHECK(namelessControls(desk.window()) == std::vector<std::string>{});
    for (const auto* action : desk.window().findChildren<QAction*>()) {
        if (action->isSeparator() || qobject_cast<QLineEdit*>(action->parent())) continue;
        INFO(action->text().toStdString());
        CHECK_FALSE(action->shortcut().isEmpty());
    }
}

TEST_CASE("No key does two things on one page", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    for (Page* page : desk.window().pages()) {
        std::map<std::string, std::string> taken;
        auto actions = desk.window().actions() + page->actions();
        for (const QAction* action : actions) {
            const std::string key = action->shortcut().toString().toStdString();
            INFO(key << ": " << taken[key] << " and " << action->text().toStdString());
            CHECK(taken[key].empty());
            taken[key] = action->text().toStdString();
        }
    }
}

TEST_CASE("What is typed while no field has the focus goes to the line", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.counter().setFocus();
    desk.counter().line().clearFocus();
    desk.press(Qt::Key_H);
    CHECK(desk.counter().line().text() == "h");
    CHECK(desk.counter().line().hasFocus());
}

TEST_CASE("A code that is scanned opens what it names, on whatever page", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};

    SECTION("on the Counter's line a piece opens the Rack") {
        desk.type(codeOf(shop, "XL 414"));
        desk.press(Qt::Key_Return);
        CHECK(desk.window().current() == &desk.window().rack());
        CHECK(desk.counter().line().text().isEmpty());
    }
    SECTION("into a field of the Rack: the field is as it was before") {
        desk.window().open(&desk.window().rack());
        auto* field = desk.window().rack().findChild<QLineEdit*>();
        field->setFocus();
        field->setText("t10");
        scanInto(*field, codeOf(shop, "XL 414"));
        CHECK(QTest::qWaitFor([&] { return field->text().isEmpty(); }, 60'000)); // the piece is no T10
    }
    SECTION("a ticket opens the Bench") {
        desk.type("3 x H8M 1200 30");
        desk.press(Qt::Key_F9);
        const auto order = shop.orders(store::OrderState::Open).front();
        const auto ticket = store::Tickets{shop.connection()}.ofOrder(order.id).front();
        desk.type(QString::fromStdString(ticket.code));
        desk.press(Qt::Key_Return);
        CHECK(desk.window().current() == &desk.window().bench());
    }
}

TEST_CASE("A scanner is told from a person by its speed", "[window]") {
    qint64 now = 1000;
    QString opened;
    Scanner scanner{[&](const QString& code) {
                        opened = code;
                        return true;
                    },
                    [&] { return now; }};
    QLineEdit field;
    field.installEventFilter(&scanner);
    const auto type = [&](const QString& words, qint64 gap) {
        for (const QChar letter : words) {
            now += gap;
            QTest::keyClick(&field, letter.toLatin1());
        }
        now += gap;
        QTest::keyClick(&field, Qt::Key_Return);
    };
    SECTION("5 ms between characters is a scanner") {
        now += 500;
        type("7K2-M", 5);
        CHECK(opened == "7K2-M");
    }
    SECTION("150 ms is a fast typist") {
        type("7K2-M", 150);
        CHECK(opened.isEmpty());
    }
    SECTION("three characters are no code") {
        now += 500;
        type("7K2", 5);
        CHECK(opened.isEmpty());
    }
}

TEST_CASE("F11 goes from light to dark and back, and it is remembered", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    REQUIRE(Look::currentShade() == Shade::Light);
    desk.press(Qt::Key_F11);
    CHECK(Look::currentShade() == Shade::Dark);
    CHECK(rememberedShade() == Shade::Dark);
    desk.press(Qt::Key_F11);
    CHECK(Look::currentShade() == Shade::Light);
    CHECK(rememberedShade() == Shade::Light);
}

TEST_CASE("The status line says that the ledger is balanced", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.settle();
    CHECK(desk.window().status().words().contains("Ledger balanced"));
}

} // namespace riband::ui
