#include "core/shop/stock.h"
#include "tests/ui/desk_fixture.h"
#include "ui/desk/page.h"
#include "ui/rack/life_model.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_page.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLineEdit>
#include <QTest>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

QLineEdit& field(QDialog& dialog, const char* name) {
    auto* found = dialog.findChild<QLineEdit*>(QString::fromLatin1(name));
    REQUIRE(found != nullptr);
    return *found;
}

void goToTheRack(DeskWindow& desk) { desk.press(Qt::Key_3, Qt::ControlModifier); }

std::vector<std::string> shownBelts(const RackFilter& filter) {
    std::vector<std::string> belts;
    for (int row = 0; row < filter.rowCount(); ++row)
        belts.push_back(filter.index(row, RackModel::BeltColumn).data().toString().toStdString());
    return belts;
}

} // namespace

TEST_CASE("The rack is found by any words, and sorted as people count", "[rack]") {
    DeskShop shop;
    shop.piece("T10 960", mm(100));
    shop.piece("T5 500", mm(100));
    RackModel model;
    QAbstractItemModelTester tester{&model, Strict};
    RackFilter filter{&model};
    model.setPieces(shop::rack(shop.session().shop()), shop.session().today());
    REQUIRE(filter.rowCount() == 9);

    SECTION("T5 comes before T10, 960 before 1250, of one belt the widest first") {
        filter.setWords("t");
        filter.sort(RackModel::BeltColumn);
        filter.setWords("b3-2 sleeve t");
        const auto belts = shownBelts(filter);
        const auto at = [&](const char* belt) {
            return std::find(belts.begin(), belts.end(), belt) - belts.begin();
        };
        CHECK(at("T5 500") < at("T10 960"));
        CHECK(at("T10 960") < at("T10 1250"));
    }
    SECTION("the trade's word offcut finds the remnants") {
        filter.setWords("offcut h8m");
        CHECK(filter.rowCount() == 2);
        filter.setWords("remnant");
        CHECK(filter.rowCount() == 2);
    }
    SECTION("a code is found with and without its dash") {
        const std::string code = model.row(0).piece.code;
        filter.setWords(QString::fromStdString(code));
        CHECK(filter.rowCount() == 1);
        filter.setWords(QString::fromStdString(code).remove('-').toLower());
        CHECK(filter.rowCount() == 1);
    }
    SECTION("every word must be there") {
        filter.setWords("h8m t10");
        CHECK(filter.rowCount() == 0);
        filter.setWords("");
        CHECK(filter.rowCount() == 9);
    }
    SECTION("widths sort as widths, not as words: 101 mm after 60 ribs would be the same in words") {
        filter.setWords("h8m");
        filter.sort(RackModel::WidthColumn);
        CHECK(filter.index(0, RackModel::WidthColumn).data().toString() == "101 mm");
        CHECK(filter.index(1, RackModel::WidthColumn).data().toString() == "128.5 mm");
        CHECK(filter.index(2, RackModel::WidthColumn).data().toString() == "470 mm");
    }
    SECTION("and it can be emptied") {
        model.setPieces({}, shop.session().today());
        CHECK(filter.rowCount() == 0);
    }
}

TEST_CASE("The life of a piece tells what came, what went, and where", "[rack]") {
    DeskShop shop;
    const auto piece = shop.piece("T10 960", mm(100));
    shop::scrap(shop.session().shop(), piece, mm(40), store::ScrapReason::Damaged, "torn");
    LifeModel model;
    QAbstractItemModelTester tester{&model, Strict};
    model.setLife(piece, Unit::Micrometre, shop::lifeOf(shop.session().shop(), piece));
    REQUIRE(model.rowCount() == 2);
    CHECK(model.index(0, LifeModel::AfterColumn).data().toString() == "100 mm");
    CHECK(model.index(1, LifeModel::ChangeColumn).data().toString() == QString::fromUtf8("−40 mm"));
    CHECK(model.index(1, LifeModel::AfterColumn).data().toString() == "60 mm");
    CHECK(model.index(1, LifeModel::WhereColumn).data().toString().contains("torn"));
    model.clear();
    CHECK(model.rowCount() == 0);
}

TEST_CASE("Goods in, a move and a scrap go by keys", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);

    SECTION("goods in: two sleeves of a belt that is new to the shop") {
        desk.answering([](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "belt"), "S8M 960");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "400");
            QTest::keyClicks(&field(dialog, "cost"), "61.50");
            QTest::keyClicks(&field(dialog, "place"), "C1-1");
            QTest::keyClick(&field(dialog, "place"), Qt::Key_Return);
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("S8M 960"));
        REQUIRE(belt);
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 1);
        CHECK(pieces.front().extent == mm(400));
        CHECK(pieces.front().cost == Money::minor(6150));
        CHECK(pieces.front().place == "C1-1");
    }
    SECTION("typing finds, F6 moves what was found") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        desk.answering([](QDialog& dialog) {
            field(dialog, "place").selectAll();
            QTest::keyClicks(&field(dialog, "place"), "A9-9");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F6);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).front().place == "A9-9");
    }
    SECTION("a scrap asks for the reason and books it") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        desk.answering([](QDialog& dialog) {
            field(dialog, "extent").selectAll();
            QTest::keyClicks(&field(dialog, "extent"), "50");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).front().extent == mm(200));
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
