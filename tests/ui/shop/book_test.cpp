// The file of the shop: backed up and checked.
#include "core/store/verify.h"
#include "tests/ui/shop/on_the_shop_page.h"
#include "ui/desk/page.h"

#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>

namespace riband::ui {

TEST_CASE("A backup is made by keys while the shop is open, and is a whole shop", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    auto* parts = desk.window().current()->findChild<QListWidget*>();
    parts->setCurrentRow(parts->count() - 1);
    const QString target = shop.file() + ".backup.riband";
    desk.answering([&](QDialog& dialog) {
        auto* files = qobject_cast<QFileDialog*>(&dialog);
        REQUIRE(files != nullptr);
        files->findChild<QLineEdit*>()->setText(
            target); // selectFile leaves a field alone that is being typed in
        QMetaObject::invokeMethod(files, "accept");
    });
    desk.press(Qt::Key_F8);
    desk.settle();
    REQUIRE(QFileInfo::exists(target));
    store::Connection copy{target.toStdString(), store::Connection::Mode::ReadOnly};
    const auto found = store::verify(copy);
    CHECK(found.agrees());
    CHECK(found.pieces == 7);
}

TEST_CASE("The book is checked on demand", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    auto* parts = desk.window().current()->findChild<QListWidget*>();
    parts->setCurrentRow(parts->count() - 1);
    desk.press(Qt::Key_F5);
    desk.settle();
    bool said = false;
    for (const auto* label : desk.window().current()->findChildren<QLabel*>())
        said = said || label->text().startsWith("All agrees: 7 pieces");
    CHECK(said);
}

} // namespace riband::ui
