#include "core/shop/learn.h"
#include "core/shop/order.h"
#include "core/shop/stock.h"
#include "core/shop/undo.h"
#include "core/store/search.h"
#include "core/store/upkeep.h"
#include "tests/ui/desk_fixture.h"
#include "ui/bench/bench_page.h"
#include "ui/desk/page.h"
#include "ui/rack/ageing_model.h"
#include "ui/rack/life_model.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_model.h"
#include "ui/rack/rack_page.h"
#include "ui/rack/rack_words.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QSpinBox>
#include <QTableView>
#include <QTableWidget>
#include <QTest>
#include <QThreadPool>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

QLineEdit& field(QDialog& dialog, const char* name) {
    auto* found = dialog.findChild<QLineEdit*>(QString::fromLatin1(name));
    REQUIRE(found != nullptr);
    return *found;
}

/// The keys of a dialog act as soon as its window is the active one.
void answering(DeskWindow& desk, const std::function<void(QDialog&)>& answer) {
    desk.answering([answer](QDialog& dialog) {
        dialog.activateWindow();
        QApplication::processEvents();
        answer(dialog);
    });
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

TEST_CASE("A delivery is expected, changed, booked in part and dropped by keys", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);
    const auto retype = [](QDialog& dialog, const char* name, const char* words) {
        field(dialog, name).selectAll();
        QTest::keyClicks(&field(dialog, name), words);
    };
    const auto expected = [&] { return store::Goods{shop.connection()}.expected(); };
    const auto inTheList = [&](Qt::Key key, Qt::KeyboardModifiers modifiers,
                               const std::function<void(QDialog&)>& answer) {
        answering(desk, [&](QDialog& list) {
            answering(desk, answer);
            QTest::keyClick(&list, key, modifiers);
            QTest::keyClick(&list, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8, Qt::ShiftModifier);
    };

    inTheList(Qt::Key_F8, Qt::NoModifier, [&](QDialog& form) {
        QTest::keyClicks(&field(form, "belt"), "S8M 960");
        retype(form, "width", "400");
        QTest::keyClicks(&field(form, "cost"), "61.50");
        QTest::keyClick(&field(form, "cost"), Qt::Key_Return);
        QTest::keyClicks(&field(form, "belt"), "T10 1250");
        retype(form, "width", "470");
        QTest::keyClicks(&field(form, "supplier"), "Mill Supply");
        QTest::keyClicks(&field(form, "reference"), "P-17");
        QTest::keyClicks(&field(form, "due"), "31.2.2026"); // no such day
        QTest::keyClick(&form, Qt::Key_F9);
        CHECK(form.isVisible());
        retype(form, "due", "2026-03-09");
        QTest::keyClick(&form, Qt::Key_F9); // the line that is typed belongs to it
    });
    REQUIRE(expected().size() == 1);
    CHECK(expected().front().supplier == "Mill Supply");
    CHECK(expected().front().due == readDate("2026-03-09"));
    REQUIRE(expected().front().lines.size() == 2);
    CHECK(expected().front().lines[0].costEach == Money::minor(6150));
    CHECK(expected().front().lines[1].extent == mm(470));

    inTheList(Qt::Key_F2, Qt::NoModifier, [&](QDialog& form) {
        auto* count = form.findChild<QSpinBox*>(QStringLiteral("count"));
        REQUIRE(count != nullptr);
        QTest::keyClick(&form, Qt::Key_F2); // the first line into the form
        count->selectAll();
        QTest::keyClicks(count, "3");
        QTest::keyClick(count, Qt::Key_Return);
        auto* lines = form.findChild<QTableWidget*>();
        lines->setFocus();
        QTest::keyClick(lines, Qt::Key_Down);
        QTest::keyClick(lines, Qt::Key_Delete, Qt::ControlModifier);
        QTest::keyClick(&form, Qt::Key_F9);
    });
    REQUIRE(expected().front().lines.size() == 1);
    CHECK(expected().front().lines[0].sleeves == 3);

    answering(desk, [&](QDialog& dialog) {
        auto* choice = dialog.findChild<QComboBox*>(QStringLiteral("expected"));
        REQUIRE(choice != nullptr);
        choice->setFocus();
        QTest::keyClick(choice, Qt::Key_Down);
        QTest::keyClick(&dialog, Qt::Key_F9);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F8);
    CHECK(expected().empty()); // all three came
    const auto kept = store::Catalogue{shop.connection()}.find(shop.belt("S8M 960"));
    REQUIRE(kept);
    CHECK(store::Pieces{shop.connection()}.ofBelt(kept->id).size() == 3);

    inTheList(Qt::Key_F8, Qt::NoModifier, [&](QDialog& form) {
        QTest::keyClicks(&field(form, "belt"), "XL 414");
        QTest::keyClick(&form, Qt::Key_F9);
    });
    REQUIRE(expected().size() == 1);
    inTheList(Qt::Key_Delete, Qt::ControlModifier,
              [](QDialog& question) { QTest::keyClick(&question, Qt::Key_Return); });
    CHECK(expected().empty());
    CHECK(shop.disagreements().empty());
}

TEST_CASE(
    "A remnant that is not worth its place is sent to the Bench for the shelf by a key; its costs are the "
    "owner's",
    "[rack]") {
    DeskShop shop;
    shop::order(shop.session().shop(), {.lines = {{shop.belt("H8M 1200"), mm(9), 3, "", std::nullopt, {}}},
                                        .customer = "",
                                        .phone = "",
                                        .due = std::nullopt,
                                        .note = ""});
    const auto piece = shop.piece("H8M 1200", mm(18), cutting::PieceKind::Remnant);
    DeskWindow desk{shop};
    goToTheRack(desk);
    const auto read = [](QDialog& dialog) -> QTableView& {
        auto* table = dialog.findChild<QTableView*>();
        REQUIRE(table != nullptr);
        for (int i = 0; i < 1000 && table->model()->rowCount() == 0; ++i) {
            QThreadPool::globalInstance()->waitForDone();
            QApplication::processEvents();
        }
        return *table;
    };
    answering(desk, [&](QDialog& dialog) {
        CHECK(read(dialog).model()->rowCount() == 1);
        CHECK_FALSE(read(dialog).isColumnHidden(AgeingModel::CostColumn));
        QTest::keyClick(&dialog, Qt::Key_F8);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F10);
    const auto tickets = store::Tickets{shop.connection()}.inState(store::TicketState::Open);
    REQUIRE(tickets.size() == 2);
    CHECK_FALSE(tickets.back().order);
    CHECK(tickets.back().mountings.front().piece == piece);
    CHECK(tickets.back().mountings.front().cuts.front().extent == mm(9));
    CHECK(QFile::exists(
        QDir{shop.papers()}.filePath("ticket-" + QString::fromStdString(tickets.back().code) + ".pdf")));
    CHECK(desk.window().bench().waiting() == 2);

    store::Transaction transaction{shop.connection()};
    const auto manager = store::People{shop.connection()}.add("SM", "S. Mercer", store::Role::StockManager);
    transaction.commit();
    shop.session().actAs(manager);
    shop.piece("XL 414", mm(3), cutting::PieceKind::Remnant);
    goToTheRack(desk);
    answering(desk, [&](QDialog& dialog) {
        QTableView& table = read(dialog);
        CHECK(table.isColumnHidden(AgeingModel::CostColumn));
        REQUIRE(table.model()->rowCount() > 0);
        CHECK(table.model()->index(0, AgeingModel::CostColumn).data().toString().isEmpty());
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F10);
}

namespace {

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

TEST_CASE("Goods in, a move and a scrap go by keys", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);

    SECTION("goods in: two sleeves of a belt that is new to the shop, one of another, with freight") {
        answering(desk, [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "belt"), "S8M 960");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "400");
            QTest::keyClicks(&field(dialog, "cost"), "61.50");
            field(dialog, "place").selectAll();
            QTest::keyClicks(&field(dialog, "place"), "C1-1");
            QTest::keyClick(&field(dialog, "place"), Qt::Key_Return);
            QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "463");
            QTest::keyClicks(&field(dialog, "labelled"), "470");
            QTest::keyClicks(&field(dialog, "cost"), "38.50");
            QTest::keyClicks(&field(dialog, "freight"), "5");
            QTest::keyClick(&dialog, Qt::Key_F9); // the line that is typed belongs to it
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("S8M 960"));
        REQUIRE(belt);
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 1);
        CHECK(pieces.front().extent == mm(400));
        CHECK(pieces.front().cost == Money::minor(6458)); // 5.00 over 61.50 and 38.50: 3.08 and 1.92
        CHECK(pieces.front().place == "C1-1");
        const auto other = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250"));
        const auto come = store::Pieces{shop.connection()}.ofBelt(other->id);
        REQUIRE(come.size() == 2);
        CHECK(come.back().extent == mm(463));
        CHECK(come.back().place == "B3-2"); // where the same belt lies: nobody said otherwise
        const auto deliveries = store::Goods{shop.connection()}.deliveries(1);
        CHECK(shop::mislabelled(shop.session().shop(), deliveries.front().id).size() == 1);
    }
    SECTION("a code that was scanned is tied to the belt that is said next, and known then") {
        const auto scan = [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "belt"), "4006381333931");
            QTest::keyClick(&field(dialog, "belt"), Qt::Key_Return);
        };
        answering(desk, [&](QDialog& dialog) {
            scan(dialog);
            QTest::keyClicks(&field(dialog, "belt"), "T10 1250");
            field(dialog, "width").selectAll();
            QTest::keyClicks(&field(dialog, "width"), "450");
            QTest::keyClick(&dialog, Qt::Key_F9);
            scan(dialog); // now it says all
            QTest::keyClick(&dialog, Qt::Key_F9);
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        desk.press(Qt::Key_F8);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250"));
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 3);
        CHECK(pieces[1].extent == mm(450));
        CHECK(pieces[2].extent == mm(450));
    }
    SECTION("typing finds, F6 moves what was found and all that is scanned behind it") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        const auto ready = store::Pieces{shop.connection()}.all();
        const auto other = std::find_if(ready.begin(), ready.end(), [](const auto& piece) {
            return piece.kind == cutting::PieceKind::Ready;
        });
        answering(desk, [&](QDialog& dialog) {
            for (const char* scanned : {"A9-9", other->code.c_str(), "A9-8"}) {
                QTest::keyClicks(&field(dialog, "scan"), scanned);
                QTest::keyClick(&field(dialog, "scan"), Qt::Key_Return);
            }
            QTest::keyClick(&dialog, Qt::Key_F9);
        });
        desk.press(Qt::Key_F6);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).front().place == "A9-9");
        CHECK(store::Pieces{shop.connection()}.at(other->id).place == "A9-8");
    }
    SECTION("a piece is divided, and whole again when that is undone") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        answering(desk, [](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "apart"), "100");
            QTest::keyClick(&field(dialog, "apart"), Qt::Key_Return);
        });
        desk.press(Qt::Key_T, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        CHECK(store::Pieces{shop.connection()}.ofBelt(belt->id).size() == 2);
        answering(desk, [](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_Z, Qt::ControlModifier);
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 1);
        CHECK(pieces.front().extent == mm(250));
        CHECK(pieces.front().kind == cutting::PieceKind::Sleeve);
    }
    SECTION("a stock is taken over from a file") {
        const QString path = shop.papers() + "-stock.csv";
        QFile file{path};
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write("Bezeichnung;Breite;Fach\nT10 1250;47,5;L\xfc 1\nXL 414;30;\n"); // Latin-1
        file.close();
        answering(desk, [&](QDialog& dialog) {
            QTest::keyClicks(&field(dialog, "path"), path);
            QTest::keyClick(&field(dialog, "path"), Qt::Key_Return);
            QTest::keyClick(&dialog, Qt::Key_F9);
            QTRY_VERIFY(!dialog.isVisible());
        });
        desk.press(Qt::Key_O, Qt::ControlModifier);
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("T10 1250"));
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(belt->id);
        REQUIRE(pieces.size() == 2);
        CHECK(pieces.back().extent == um(47'500));
        CHECK(pieces.back().place == "L\xc3\xbc 1");
    }
    SECTION("what ages is inspected once, and a useless remnant is scrapped from the same list") {
        shop::Delivery old{.belt = shop.belt("T5 500"), .extent = mm(300)};
        old.made = readDate("2018-10-01").value();
        const auto aged = shop::receive(shop.session().shop(), {old}).front();
        const auto useless = shop.piece("H8M 1200", mm(7), cutting::PieceKind::Remnant);
        const auto wait = [] {
            QThreadPool::globalInstance()->waitForDone();
            QApplication::processEvents();
        };
        answering(desk, [&](QDialog& dialog) {
            wait();
            auto* table = dialog.findChild<QTableView*>();
            CHECK(table->model()->rowCount() == 2);
            QTest::keyClick(&dialog, Qt::Key_F6); // the first ages out: it is sound
            wait();
            table->selectRow(1);
            answering(desk, [](QDialog& scrap) { QTest::keyClick(&scrap, Qt::Key_Return); });
            QTest::keyClick(&dialog, Qt::Key_Delete, Qt::ControlModifier);
            wait();
        });
        desk.press(Qt::Key_F10);
        CHECK(store::Upkeep{shop.connection()}.inspectionsOf(aged).size() == 1);
        CHECK(store::Pieces{shop.connection()}.at(useless).gone());
    }
    SECTION("the list is saved as a table") {
        desk.press(Qt::Key_E, Qt::ControlModifier);
        const QStringList files = QDir{shop.papers()}.entryList({"rack-*.csv"});
        REQUIRE(files.size() == 1);
        QFile file{QDir{shop.papers()}.filePath(files.front())};
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK(file.readAll().count("\r\n") == 8); // the head and seven pieces
    }
    SECTION("a scrap asks for the reason and books it") {
        desk.press(Qt::Key_X);
        desk.press(Qt::Key_L);
        answering(desk, [](QDialog& dialog) {
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
