#include "tests/ui/desk_fixture.h"
#include "ui/bench/bench_page.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/counter_page.h"
#include "ui/desk/page.h"
#include "ui/look/key_button.h"
#include "ui/rack/rack_page.h"

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPixmap>
#include <QTest>
#include <QTimer>

namespace riband::ui {

namespace {

/// Kept in the build folder, for people to look at.
void keepPicture(DeskWindow& desk, const QString& name) {
    const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
    folder.mkpath(".");
    desk.settle();
    CHECK(desk.window().grab().save(folder.filePath(name + ".png")));
}

/// Every button on the page shows all of its words.
void checkNothingIsCut(DeskWindow& desk) {
    for (const auto* button : desk.window().findChildren<KeyButton*>()) {
        if (!button->isVisible()) continue;
        INFO(button->text().toStdString());
        CHECK(button->width() >= button->sizeHint().width());
        CHECK(button->height() >= 38);
    }
}

struct Scene {
    const char* name;
    const char* typed;
};

} // namespace

TEST_CASE("At the counter no scene cuts the words of a button, light or dark, small or large", "[window]") {
    const Scene scene = GENERATE(
        Scene{"empty", ""}, Scene{"plain", "3 x H8M 1200 30"}, Scene{"question", "3 x 8m 1200 30"},
        Scene{"width", "H8M 1200"}, Scene{"fault", "H8M 1203 30"}, Scene{"nothing-here", "H8M 960 50"},
        Scene{"shelf", "PJ 1194 6"}, Scene{"ribbed", "4 x PJ 1194 5"}, Scene{"odd-width", "T10 1250 27"},
        Scene{"not-listed", "XL 416 037"}, Scene{"too-many", "9 x H8M 1200 85"}, Scene{"nonsense", "hello"},
        Scene{"finish", "H8M 960 30"});
    DeskShop shop;
    if (scene.name == std::string{"finish"}) shop.piece("H8M 960", mm(59), cutting::PieceKind::Remnant);
    DeskWindow desk{shop};
    desk.type(QString::fromLatin1(scene.typed));
    for (const QSize size : {QSize{1366, 768}, QSize{1920, 1080}}) {
        desk.window().resize(size);
        desk.settle();
        CHECK(desk.window().size() == size); // nothing pushes the window wider
        checkNothingIsCut(desk);
        keepPicture(desk, QStringLiteral("%1-%2").arg(QString::fromLatin1(scene.name)).arg(size.width()));
    }
    Look::apply(*qApp, Shade::Dark);
    desk.window().resize(1366, 768);
    keepPicture(desk, QStringLiteral("%1-dark").arg(QString::fromLatin1(scene.name)));
    Look::apply(*qApp, Shade::Light);
}

TEST_CASE("The form fills the line, and the line the form", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("2 x T10 1250 25");
    desk.press(Qt::Key_F4);
    auto* width = [&] {
        for (auto* edit : desk.counter().findChildren<QLineEdit*>())
            if (edit->accessibleName() == "Width or ribs") return edit;
        return static_cast<QLineEdit*>(nullptr);
    }();
    REQUIRE(width != nullptr);
    CHECK(width->text() == "25");
    keepPicture(desk, "pick");
    width->setFocus();
    width->selectAll();
    desk.press(Qt::Key_3);
    desk.press(Qt::Key_2);
    REQUIRE(desk.counter().inquiry().wanted());
    CHECK(desk.counter().inquiry().wanted()->extent == mm(32));
    CHECK(desk.counter().inquiry().wanted()->quantity == 2);
    desk.press(Qt::Key_Return);
    CHECK(desk.counter().line().hasFocus());
}

TEST_CASE("A long order, the Bench, the Rack and the Shop cut no words either", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    for (const char* line : {"2 x T10 1250 25", "PJ 1194 6", "2 x H8M 1200 30", "XL 414 037"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_Return);
    }
    desk.type("H8M 1200 20");
    CHECK(desk.window().size() == QSize(1366, 768)); // a small screen has no more
    keepPicture(desk, "long-order");
    checkNothingIsCut(desk);
    desk.press(Qt::Key_F9);
    for (std::size_t page = 1; page < desk.window().pages().size(); ++page) {
        desk.window().open(desk.window().pages()[page]);
        keepPicture(desk, desk.window().pages()[page]->objectName());
        checkNothingIsCut(desk);
    }
    auto* parts = desk.window().pages().back()->findChild<QListWidget*>();
    for (int row = 0; row < parts->count(); ++row) {
        parts->setCurrentRow(row);
        keepPicture(desk, QStringLiteral("shop-%1").arg(row));
        checkNothingIsCut(desk);
    }
}

/// All that F1 says while the dialog is open; nothing if it says nothing.
QString helpOver(QDialog& dialog) {
    QString said;
    QTimer look;
    look.setInterval(5);
    QObject::connect(&look, &QTimer::timeout, &look, [&] {
        auto* help = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!help || help == &dialog) return;
        for (const auto* words : help->findChildren<QLabel*>())
            said += words->text() + QLatin1Char('\n');
        help->reject();
    });
    look.start();
    QTest::keyClick(&dialog, Qt::Key_F1);
    return said;
}

TEST_CASE("Every dialog opens by its key, is drawn whole and explained by F1", "[window]") {
    DeskShop shop;
    DeskWindow desk{shop};
    const auto keep = [](const QString& name) {
        return [name](QDialog& dialog) {
            QApplication::processEvents();
            const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
            CHECK(dialog.grab().save(folder.filePath("dialog-" + name + ".png")));
            for (const auto* button : dialog.findChildren<KeyButton*>()) {
                INFO(button->text().toStdString());
                CHECK(button->width() >= button->sizeHint().width());
            }
            if (name != QLatin1String("help")) {
                INFO(name.toStdString());
                CHECK_FALSE(dialog.whatsThis().isEmpty());
                CHECK(helpOver(dialog).contains(dialog.whatsThis()));
            }
            dialog.reject();
        };
    };
    const auto open = [&](const QString& name, Qt::Key key,
                          Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        bool shown = false;
        desk.answering([&shown, look = keep(name)](QDialog& dialog) {
            shown = true;
            look(dialog);
        });
        desk.press(key, modifiers);
        INFO(name.toStdString());
        CHECK(shown);
    };
    desk.type("2 x T10 1250 25");
    desk.press(Qt::Key_F8);
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    open("help", Qt::Key_F1);
    open("customer", Qt::Key_F10);
    open("parked", Qt::Key_F7, Qt::ShiftModifier);
    desk.press(Qt::Key_2, Qt::ControlModifier);
    open("record", Qt::Key_F9);
    open("miscut", Qt::Key_F6);
    open("order", Qt::Key_F4);
    open("orders", Qt::Key_F5);
    open("together", Qt::Key_F8);
    desk.press(Qt::Key_3, Qt::ControlModifier);
    open("move", Qt::Key_F6);
    open("scrap", Qt::Key_Delete, Qt::ControlModifier);
    open("receive", Qt::Key_F8);
    open("expected", Qt::Key_F8, Qt::ShiftModifier);
    open("divide", Qt::Key_T, Qt::ControlModifier);
    open("family", Qt::Key_F9);
    open("ageing", Qt::Key_F10);
    open("take-over", Qt::Key_O, Qt::ControlModifier);
}

} // namespace riband::ui
