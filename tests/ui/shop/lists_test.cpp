// Belts, places and shafts.
#include "core/store/places.h"
#include "tests/ui/shop/on_the_shop_page.h"
#include "ui/desk/page.h"
#include "ui/shop/belts_model.h"
#include "ui/shop/shafts_model.h"
#include "ui/window/toast.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QTreeWidget>

namespace riband::ui {

namespace {
constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;
} // namespace

TEST_CASE("The list of belts is saved as a table with plain figures", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    auto* parts = desk.window().current()->findChild<QListWidget*>();
    for (int row = 0; row < parts->count(); ++row)
        if (parts->item(row)->text() == "Belts and widths") parts->setCurrentRow(row);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    const QStringList files = QDir{shop.papers()}.entryList({"belts-*.csv"});
    REQUIRE(files.size() == 1);
    QFile file{QDir{shop.papers()}.filePath(files.front())};
    REQUIRE(file.open(QIODevice::ReadOnly));
    const QString head = QString::fromUtf8(file.readLine());
    CHECK(head.contains("New sleeve (mm),New sleeve (ribs)"));
    CHECK(head.contains("Delivery (days)"));
}

TEST_CASE("A place gets its level, its belt and its reach by keys, and a label", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    QWidget& page = *desk.window().current();
    auto* parts = page.findChild<QListWidget*>();
    for (int row = 0; row < parts->count(); ++row)
        if (parts->item(row)->text() == "Places") parts->setCurrentRow(row);
    const auto place = [&](const char* name) { return store::Places{shop.connection()}.byName(name); };
    const auto answer = [](QDialog& dialog, const char* name, const QString& words) {
        auto* field = dialog.findChild<QLineEdit*>(QString::fromLatin1(name));
        REQUIRE(field != nullptr);
        write(*field, words);
    };
    auto& tree = *page.findChild<QTreeWidget*>();
    REQUIRE(tree.topLevelItemCount() > 0);
    REQUIRE(place("B3-2"));

    desk.answering([&](QDialog& dialog) {
        answer(dialog, "name", "B3-2"); // there is one
        dialog.accept();
        CHECK(dialog.isVisible());
        answer(dialog, "name", "B3");
        dialog.findChild<QComboBox*>("level")->setCurrentIndex(1);
        dialog.accept();
    });
    desk.press(Qt::Key_N, Qt::ControlModifier);
    REQUIRE(place("B3"));
    CHECK(place("B3")->level == store::PlaceLevel::Bay);
    CHECK(place("B3-2")->parent == place("B3")->id);

    tree.setCurrentItem(tree.findItems("B3-2", Qt::MatchExactly | Qt::MatchRecursive).front());
    desk.answering([&](QDialog& dialog) {
        answer(dialog, "parent", "nowhere at all");
        dialog.accept();
        CHECK(dialog.isVisible());
        answer(dialog, "parent", "B3");
        answer(dialog, "belt", "H8M 1200");
        dialog.findChild<QCheckBox*>("front")->setChecked(true);
        dialog.accept();
    });
    desk.press(Qt::Key_F2);
    CHECK(place("B3-2")->front);
    CHECK(place("B3-2")->fixedFor == store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"))->id);

    desk.press(Qt::Key_F7);
    CHECK(QDir{shop.papers()}.entryList({"places-*.pdf"}).size() == 1);
    desk.press(Qt::Key_Delete, Qt::ControlModifier); // pieces lie there
    CHECK(place("B3-2"));
    CHECK(desk.window().toast().words().contains("Pieces lie there"));
}

TEST_CASE("The Shop page's models keep the rules of models", "[shop]") {
    DeskShop shop;
    SECTION("shafts: a figure that is none is not taken") {
        ShaftsModel model;
        QAbstractItemModelTester tester{&model, Strict};
        model.setShafts({{"thin", 30, 30, 520, 60, 900}});
        const auto usable = model.index(0, ShaftsModel::UsableColumn);
        CHECK_FALSE(model.setData(usable, "wide", Qt::EditRole));
        CHECK_FALSE(model.setData(usable, "-3", Qt::EditRole));
        CHECK(model.setData(usable, "480,5", Qt::EditRole));
        CHECK(model.shafts().front().usable == 480.5);
        model.add();
        CHECK(model.rowCount() == 2);
        model.remove(0);
        CHECK(model.rowCount() == 1);
    }
    SECTION("belts") {
        BeltsModel model;
        QAbstractItemModelTester tester{&model, Strict};
        auto belts = store::Catalogue{shop.connection()}.all();
        model.setBelts(belts, Currency{"EUR", 2});
        REQUIRE(model.rowCount() == 4);
        belts[0].price = WidthPrice::thousandths(51'000);
        model.change(0, belts[0]);
        CHECK(model.index(0, BeltsModel::PriceColumn).data().toString() == "0.51 a mm");
        model.setBelts({}, Currency{"EUR", 2});
        CHECK(model.rowCount() == 0);
    }
}

} // namespace riband::ui
