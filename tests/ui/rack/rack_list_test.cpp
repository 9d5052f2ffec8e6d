// What the list of the rack finds, shows and sorts by.
#include "core/measure/code.h"
#include "core/shop/learn.h"
#include "core/shop/stock.h"
#include "core/store/search.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/rack/life_model.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_page.h"
#include "ui/rack/rack_words.h"

#include <QAbstractItemModelTester>
#include <QTableView>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

std::vector<std::string> shownBelts(const RackFilter& filter) {
    std::vector<std::string> belts;
    for (int row = 0; row < filter.rowCount(); ++row)
        belts.push_back(filter.index(row, RackModel::BeltColumn).data().toString().toStdString());
    return belts;
}

void learn(DeskShop& shop, const char* designation) {
    const shop::Shop& open = shop.session().shop();
    const auto belt = store::Catalogue{open.connection}.find(shop.belt(designation)).value().id;
    const auto table = shop::learn(shop::lessonOf(open, belt), [](double) { return true; });
    REQUIRE(table);
    shop::keepWorth(open, belt, *table);
}

QString cell(const RackFilter& filter, int row, RackModel::Column column) {
    return filter.index(row, column).data().toString();
}

int rowOfWidth(const RackFilter& filter, const char* width) {
    for (int row = 0; row < filter.rowCount(); ++row)
        if (cell(filter, row, RackModel::WidthColumn) == QLatin1String(width)) return row;
    FAIL("no piece of " << width);
    return -1;
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
    const auto find = [&](const char* typed) {
        const auto words = searchWordsOf(QString::fromLatin1(typed));
        filter.setFound(words.empty() ? std::nullopt
                                      : std::optional{store::findPieces(shop.connection(), words)});
    };

    SECTION("T5 comes before T10, 960 before 1250, of one belt the widest first") {
        find("t");
        filter.sort(RackModel::BeltColumn);
        find("b3-2 sleeve t");
        const auto belts = shownBelts(filter);
        const auto at = [&](const char* belt) {
            return std::find(belts.begin(), belts.end(), belt) - belts.begin();
        };
        CHECK(at("T5 500") < at("T10 960"));
        CHECK(at("T10 960") < at("T10 1250"));
    }
    SECTION("the trade's word offcut finds the remnants") {
        find("offcut h8m");
        CHECK(filter.rowCount() == 2);
        find("remnant");
        CHECK(filter.rowCount() == 2);
    }
    SECTION("a code is found with and without its dash") {
        const std::string code = model.row(0).piece.code;
        find(code.c_str());
        CHECK(filter.rowCount() == 1);
        find(QString::fromStdString(code).remove('-').toLower().toLatin1().constData());
        CHECK(filter.rowCount() == 1);
    }
    SECTION("every word must be there") {
        find("h8m t10");
        CHECK(filter.rowCount() == 0);
        find("");
        CHECK(filter.rowCount() == 9);
    }
    SECTION("widths sort as widths, not as words: 101 mm after 60 ribs would be the same in words") {
        find("h8m");
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

TEST_CASE("The life tells what a scrap weighed", "[rack]") {
    DeskShop shop;
    const auto piece = shop.piece("T10 960", mm(100));
    const auto thrown =
        shop::scrap(shop.session().shop(), piece, mm(40), store::ScrapReason::Damaged, "", 120);
    PieceUpkeep upkeep;
    upkeep.grams.emplace(thrown, 120);
    LifeModel model;
    model.setLife(piece, Unit::Micrometre, shop::lifeOf(shop.session().shop(), piece), upkeep);
    CHECK(model.index(1, LifeModel::WhereColumn).data().toString().contains("120 g"));
}

TEST_CASE("Codes, widths, kinds and places are never cut, however long", "[rack]") {
    DeskShop shop;
    const auto piece = shop.piece("T10 960", um(444'444));
    shop::move(shop.session().shop(), piece, "Back room R92-33");
    DeskWindow desk{shop};
    goToTheRack(desk);
    auto& table = *desk.window().rack().findChild<QTableView*>("pieces");
    for (int column :
         {RackModel::CodeColumn, RackModel::WidthColumn, RackModel::KindColumn, RackModel::PlaceColumn})
        for (int row = 0; row < table.model()->rowCount(); ++row) {
            const QModelIndex at = table.model()->index(row, column);
            INFO(at.data().toString().toStdString());
            CHECK(table.columnWidth(column) >= table.sizeHintForIndex(at).width());
        }
}

TEST_CASE("The life of one sleeve of a delivery tells nothing of its sisters", "[rack]") {
    DeskShop shop;
    const auto pieces = shop::receive(shop.session().shop(),
                                      {{.belt = shop.belt("T10 960"), .sleeves = 3, .extent = mm(380)}});
    LifeModel model;
    model.setLife(pieces[1], Unit::Micrometre, shop::lifeOf(shop.session().shop(), pieces[1]));
    REQUIRE(model.rowCount() == 1);
    CHECK(model.index(0, LifeModel::WhereColumn).data().toString() == "bought 380 mm");
    const auto apart = shop::split(shop.session().shop(), pieces[1], mm(100), "");
    model.setLife(apart, Unit::Micrometre, shop::lifeOf(shop.session().shop(), apart));
    CHECK(model.index(0, LifeModel::WhereColumn).data().toString() ==
          "rack 100 mm"); // of the one it was cut from
}

TEST_CASE("An act that stays says what to do instead", "[rack]") {
    using Why = shop::Refusal::Why;
    const auto why = [](store::Act act, Why reason, const char* detail) {
        return whyItStays(act, shop::Refusal{reason, detail});
    };
    std::int64_t piece = 5, order = 5;
    const std::string pieceCode = Code::next(CodeKind::Piece, piece).text();
    const std::string orderCode = Code::next(CodeKind::Order, order).text();
    CHECK(why(store::Act::Cut, Why::AlreadyDone, pieceCode.c_str()).contains("undo it first"));
    CHECK(why(store::Act::Cut, Why::AlreadyDone, orderCode.c_str()).contains("count the piece"));
    CHECK(why(store::Act::TakeReady, Why::ActStays, "7").contains("scan the order"));
    CHECK(why(store::Act::Correct, Why::ActStays, "7").contains("Tally"));
    CHECK(why(store::Act::Receive, Why::PieceReserved, "T4T-S").contains("Cut or cancel that first"));
}

TEST_CASE("The list of the rack tells what each piece is worth and what it is kept for", "[rack]") {
    DeskShop shop;
    shop.piece("H8M 1200", mm(22), cutting::PieceKind::Remnant);
    learn(shop, "H8M 1200");
    DeskWindow desk{shop};
    goToTheRack(desk);
    RackPage& rack = desk.window().rack();
    auto& filter = *rack.findChild<RackFilter*>();
    auto& table = *rack.findChild<QTableView*>(QStringLiteral("pieces"));
    const auto weighed = [&] { return filter.rowCount() > 0 && rack.weighed(); };
    REQUIRE(QTest::qWaitFor(weighed, 60'000));

    SECTION("by the belt's worth table, and nothing where there is none") {
        CHECK(cell(filter, rowOfWidth(filter, "22 mm"), RackModel::WorthColumn) == "0 mm");
        CHECK(cell(filter, rowOfWidth(filter, "22 mm"), RackModel::KeptColumn).isEmpty());
        CHECK(cell(filter, rowOfWidth(filter, "101 mm"), RackModel::WorthColumn).endsWith(" mm"));
        CHECK_FALSE(cell(filter, rowOfWidth(filter, "101 mm"), RackModel::KeptColumn).isEmpty());
        CHECK(cell(filter, rowOfWidth(filter, "380 mm"), RackModel::WorthColumn).isEmpty()); // T10 1250
    }
    SECTION("and by keys: the least worth first") {
        desk.press(Qt::Key_F5);
        REQUIRE(QTest::qWaitFor(weighed, 60'000));
        CHECK(filter.sortColumn() == RackModel::WorthColumn);
        CHECK(cell(filter, 0, RackModel::WorthColumn) == "0 mm");
        CHECK(QApplication::focusWidget()->accessibleName() == "Find pieces"); // one types on
        for (int turn = 0; turn < 5; ++turn)
            desk.press(Qt::Key_F5);
        CHECK(filter.sortColumn() == RackModel::BeltColumn);
    }
    SECTION("sorted by it, the widths count and not the words") {
        table.sortByColumn(RackModel::WorthColumn, Qt::DescendingOrder);
        CHECK(cell(filter, 0, RackModel::WidthColumn) == "470 mm");
        CHECK(cell(filter, 1, RackModel::WidthColumn) == "128.5 mm");
        CHECK(cell(filter, 2, RackModel::WidthColumn) == "101 mm");
        CHECK(cell(filter, 3, RackModel::WidthColumn) == "22 mm");
    }
    SECTION("rows sorted by it find their place when a table has come") {
        table.sortByColumn(RackModel::WorthColumn, Qt::DescendingOrder);
        CHECK(rowOfWidth(filter, "380 mm") > 3);
        learn(shop, "T10 1250");
        emit shop.session().worthLearned(
            store::Catalogue{shop.connection()}.find(shop.belt("T10 1250")).value().id);
        REQUIRE(QTest::qWaitFor(weighed, 60'000));
        CHECK(rowOfWidth(filter, "380 mm") == 1);
    }
}

TEST_CASE("A worth that was found stays as long as the piece is as wide as it was", "[rack]") {
    DeskShop shop;
    RackModel model;
    QAbstractItemModelTester tester{&model, Strict};
    auto rows = shop::rack(shop.session().shop());
    model.setPieces(rows, shop.session().today());
    CHECK_FALSE(model.worth(0).known);
    model.setWorths({{rows[0].piece.id, shop::PieceWorth{mm(60), shop::Reason::Kept{mm(30), 2, 40}, 1}},
                     {rows[1].piece.id, shop::PieceWorth{mm(70), std::nullopt, 1}},
                     {store::PieceId{4711}, std::nullopt}});
    CHECK(model.index(0, RackModel::WorthColumn).data().toString() == "60 mm");
    CHECK(model.index(0, RackModel::KeptColumn).data().toString() == QString::fromUtf8("2 × 30 mm"));
    CHECK(model.worth(1).known);
    CHECK_FALSE(model.worth(2).known);
    rows[1].piece.extent = mm(80);
    model.setPieces(rows, shop.session().today());
    CHECK(model.worth(0).known);
    CHECK_FALSE(model.worth(1).known);
}

} // namespace riband::ui
