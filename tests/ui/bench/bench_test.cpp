#include "core/shop/order.h"
#include "core/shop/shelf_ticket.h"
#include "tests/ui/desk_fixture.h"
#include "ui/bench/bench_model.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/order_dialog.h"
#include "ui/bench/order_lines_model.h"
#include "ui/bench/orders_model.h"
#include "ui/bench/stops_model.h"
#include "ui/bench/together_dialog.h"
#include "ui/counter/counter_page.h"
#include "ui/desk/paper_tray.h"
#include "ui/window/toast.h"
#include "ui/words/cutting_steps.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMessageBox>
#include <QProgressBar>
#include <QSpinBox>
#include <QTableView>
#include <QTest>

#include <memory>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

/// Three belts of 30 of H8M 1200 are ordered, and the Bench is in front.
void orderThreeAndGoToTheBench(DeskWindow& desk) {
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_2, Qt::ControlModifier);
}

void type(QDialog& dialog, const char* field, const QString& words) {
    auto* edit = dialog.findChild<QLineEdit*>(QString::fromLatin1(field));
    REQUIRE(edit != nullptr);
    edit->selectAll();
    QTest::keyClicks(edit, words);
}

std::int64_t onRack(DeskShop& shop) {
    std::int64_t sum = 0;
    for (const auto& balance : store::Ledger{shop.connection()}.balances())
        if (balance.account == store::Account::Rack) sum += balance.amount;
    return sum;
}

} // namespace

TEST_CASE("A cut is recorded by keys, and the ledger balances", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    REQUIRE(desk.window().bench().waiting() == 1);
    const std::int64_t before = onRack(shop);

    SECTION("as planned: Enter, and Enter again") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        const auto ready = shop.orders(store::OrderState::Ready);
        REQUIRE(ready.size() == 1);
        CHECK(ready.front().lines.front().cut == 3);
        CHECK(desk.window().bench().waiting() == 0);
        CHECK(shop.disagreements().empty());
    }
    SECTION("one millimetre less was left: the difference is booked") {
        desk.answering([](QDialog& dialog) {
            type(dialog, "rest", "35");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        CHECK(onRack(shop) == before - 128'500 + 35'000);
        CHECK(shop.disagreements().empty());
    }
    SECTION("labels are made for what goes back and for the belts") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(QDir{shop.papers()}.entryList({"label-*.pdf"}).size() == 1);
        CHECK(QDir{shop.papers()}.entryList({"belt-*.pdf"}).size() == 1);
    }
    SECTION("leaving the dialog books nothing") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); });
        desk.press(Qt::Key_F9);
        CHECK(onRack(shop) == before);
        CHECK(desk.window().bench().waiting() == 1);
    }
}

TEST_CASE("Enter pressed once too often records no cut that nobody has made", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    shop::order(shop.session().shop(), {.lines = {{shop.belt("T10 1250"), mm(25), 1, "", std::nullopt, {}}},
                                        .customer = "",
                                        .phone = "",
                                        .due = std::nullopt,
                                        .note = ""});
    shop.session().touch();
    REQUIRE(desk.window().bench().waiting() == 2);
    auto* list = desk.window().bench().findChild<QListView*>();
    list->setFocus();
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_Return);
    REQUIRE(desk.window().bench().waiting() == 1);
    list->setFocus();
    desk.press(Qt::Key_Return); // the third: no dialog opens
    CHECK(desk.window().bench().waiting() == 1);
    CHECK(desk.window().toast().words().contains("F9"));
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_F9);
    CHECK(desk.window().bench().waiting() == 0);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A miscut is scrapped, planned again, and the order still stands", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    desk.answering([](QDialog& dialog) {
        dialog.findChild<QSpinBox*>("good1")->setValue(1);
        type(dialog, "spoiled", "28.6");
        QTest::keyClick(&dialog, Qt::Key_Return);
    });
    desk.press(Qt::Key_F6);
    const auto open = shop.orders(store::OrderState::Open);
    REQUIRE(open.size() == 1);
    CHECK(open.front().lines.front().cut == 1);
    CHECK(desk.window().bench().waiting() == 1); // the two that are missing, on a new ticket
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A changed mind makes the ticket anew", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const auto order = shop.orders(store::OrderState::Open).front();
    OrderDialog dialog{shop.session(), order.id, &desk.window()};
    dialog.show();
    desk.answering([](QDialog& change) {
        change.findChild<QSpinBox*>("quantity")->setValue(2);
        type(change, "width", "25");
        QTest::keyClick(&change, Qt::Key_Return);
    });
    for (QAction* action : dialog.actions())
        if (action->shortcut() == QKeySequence{Qt::Key_F2}) action->trigger();
    const auto line = shop.orders(store::OrderState::Open).front().lines.front();
    CHECK(line.extent == mm(25));
    CHECK(line.quantity - line.cancelled == 2);
    CHECK(shop.disagreements().empty());
}

namespace {

/// Three belts of 30 of H8M 1200 are ordered, their order is open, and F2 asks what to change.
struct ChangingMind {
    DeskShop shop;
    DeskWindow desk{shop};
    std::unique_ptr<OrderDialog> dialog;

    ChangingMind() {
        orderThreeAndGoToTheBench(desk);
        dialog = std::make_unique<OrderDialog>(shop.session(), order().id, &desk.window());
        dialog->show();
    }
    store::Order order() { return shop.orders(store::OrderState::Open).front(); }
    void change(const std::function<void(QDialog&)>& answer) {
        desk.answering(answer);
        for (QAction* action : dialog->actions())
            if (action->shortcut() == QKeySequence{Qt::Key_F2}) action->trigger();
    }
    static QString words(const QDialog& change) { return change.findChild<QLabel*>("words")->text(); }
};

} // namespace

TEST_CASE("The first field of a change is chosen: a digit replaces the number", "[bench]") {
    ChangingMind mind;
    mind.change([](QDialog& change) {
        QTest::keyClicks(change.focusWidget(), "2");
        QTest::keyClick(&change, Qt::Key_Return);
    });
    CHECK(mind.order().lines.front().quantity == 2);
}

TEST_CASE("A change that can't be is refused in words, and the dialog stays", "[bench]") {
    ChangingMind mind;
    const auto refused = [&](const QString& width, const char* why) {
        bool stayed = false;
        QString words;
        mind.change([&](QDialog& change) {
            type(change, "width", width);
            QTest::keyClick(&change, Qt::Key_Return);
            stayed = change.isVisible();
            words = ChangingMind::words(change);
        });
        INFO(words.toStdString());
        CHECK(stayed);
        CHECK(words.contains(QString::fromUtf8(why)));
    };
    refused("5000", "wider than 500 mm");
    refused("abc", "Type a width in mm");
    refused("400", "does not give H8M 1200 400"); // three of them
    refused("30", "Nothing is changed yet");
    CHECK(mind.order().lines.front().extent == mm(30));
    CHECK(mind.shop.disagreements().empty());
}

TEST_CASE("A change that would open a sleeve says which before it is made", "[bench]") {
    ChangingMind mind;
    QString asked;
    Qt::Key answer = Qt::Key_Return;
    const auto widen = [&] {
        mind.change([&](QDialog& change) {
            type(change, "width", "140"); // no remnant is so wide
            mind.desk.answering([&](QDialog& question) {
                asked = static_cast<QMessageBox&>(question).text();
                QTest::keyClick(&question, answer);
            });
            QTest::keyClick(&change, Qt::Key_Return);
        });
    };
    SECTION("yes") {
        widen();
        CHECK(mind.order().lines.front().extent == mm(140));
    }
    SECTION("no") {
        answer = Qt::Key_Escape;
        widen();
        CHECK(mind.order().lines.front().extent == mm(30));
    }
    CHECK(asked.contains("470 mm"));
    CHECK(mind.shop.disagreements().empty());
}

TEST_CASE("The Bench follows the order it showed: another customer's is never chosen instead", "[bench]") {
    DeskShop shop;
    shop.piece("H14M 1400", mm(300));
    DeskWindow desk{shop};
    desk.type("T10 1250 30");
    desk.press(Qt::Key_F9);
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_2, Qt::ControlModifier);
    auto* list = desk.window().bench().findChild<QListView*>();
    const auto mountings = shop::bench(shop.session().shop());
    REQUIRE(mountings.size() == 2);
    for (int row = 0; row < 2; ++row)
        if (mountings[static_cast<std::size_t>(row)].belt.designation == "H8M 1200")
            list->setCurrentIndex(list->model()->index(row, 0));
    const auto chosen = [&] { return list->currentIndex().data(BenchModel::BeltRole).toString(); };
    REQUIRE(chosen() == "H8M 1200");

    SECTION("its line is changed") {
        const auto order = store::Orders{shop.connection()}.inState(store::OrderState::Open).back();
        shop::change(shop.session().shop(), order.lines.front().id, mm(25), 2);
        shop.session().touch();
        CHECK(list->currentIndex().data(BenchModel::CutsRole).toString().contains("2 × 25 mm"));
    }
    SECTION("a belt of it is spoiled") {
        desk.answering([](QDialog& dialog) {
            dialog.findChild<QSpinBox*>("good1")->setValue(1);
            type(dialog, "spoiled", "28.6");
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F6);
    }
    CHECK(chosen() == "H8M 1200");
    CHECK(desk.window().bench().waiting() == 2);
}

TEST_CASE("What somebody else has cut in between asks for nothing more and leaves the list", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    QStringList warned;
    QObject::connect(&shop.session(), &Session::warned, [&](const QString& words) { warned << words; });
    const auto mounting = shop::bench(shop.session().shop()).front().mounting.id;
    SECTION("before the dialog opens") {
        shop::recordCut(shop.session().shop(), {.mounting = mounting});
        desk.press(Qt::Key_F9);
        REQUIRE(warned.size() == 1);
    }
    SECTION("while it is open") {
        desk.answering([&](QDialog& dialog) {
            shop::recordCut(shop.session().shop(), {.mounting = mounting});
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        REQUIRE(warned.size() == 2); // the refusal, and that it waits no more
    }
    CHECK(warned.back().contains("waits no more"));
    CHECK(desk.window().bench().waiting() == 0);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Where the shaft is too thin the Bench says what to do", "[bench]") {
    DeskShop shop;
    shop.piece("H14M 1400", mm(300));
    DeskWindow desk{shop};
    desk.type("H14M 1400 40");
    desk.press(Qt::Key_F9);
    const auto row = shop::bench(shop.session().shop()).front();
    const auto warnings = warningsOf(row);
    REQUIRE_FALSE(warnings.empty());
    CHECK(warnings.front().stop);
    CHECK(warnings.front().words.contains("thicker shaft"));
}

TEST_CASE("Each width has its own tolerance, the customer's first", "[bench]") {
    DeskShop shop;
    shop.piece("H8M 960", mm(59), cutting::PieceKind::Remnant); // 30 for the customer, 20 fill it up
    DeskWindow desk{shop};
    desk.type("H8M 960 30");
    desk.press(Qt::Key_F9);
    const auto row = shop::bench(shop.session().shop()).front();
    REQUIRE(row.stops.size() == 2);
    CHECK(tolerancesOf(row) ==
          "30 mm, " + QString::number(row.stops.front().count() / 1000) + " mm +0.8 -1.2 (ISO 13050)");
}

TEST_CASE("The Bench's models keep the rules of models", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const auto mountings = shop::bench(shop.session().shop());
    REQUIRE(mountings.size() == 1);

    SECTION("the waiting mountings") {
        BenchModel model;
        QAbstractItemModelTester tester{&model, Strict};
        model.setMountings(mountings, false);
        CHECK(model.rowOf(mountings.front().mounting.id) == 0);
        CHECK(model.index(0, 0).data(BenchModel::CutsRole).toString() == QString::fromUtf8("3 × 30 mm"));
        model.setMountings({}, false);
        CHECK(model.rowCount() == 0);
    }
    SECTION("the stops: 30, 60, 90 from the trimmed edge") {
        StopsModel model;
        QAbstractItemModelTester tester{&model, Strict};
        model.setMounting(mountings.front());
        REQUIRE(model.rowCount() == 3);
        CHECK(model.index(2, StopsModel::EachColumn).data().toString() == "30");
        CHECK(model.index(2, StopsModel::CumulativeColumn).data().toString() == "90");
        model.clear();
        CHECK(model.rowCount() == 0);
    }
    SECTION("the lines of an order, and the orders") {
        const auto order = shop.orders(store::OrderState::Open).front();
        OrderLinesModel lines;
        QAbstractItemModelTester first{&lines, Strict};
        lines.setOrder(order, {"H8M 1200"}, Currency{"EUR", 2});
        CHECK(lines.index(0, OrderLinesModel::OrderedColumn).data().toString() == "3");
        OrdersModel orders;
        QAbstractItemModelTester second{&orders, Strict};
        orders.setOrders({{order, "3", false}});
        CHECK(orders.rowCount() == 1);
        orders.setOrders({});
        CHECK(orders.rowCount() == 0);
    }
}

TEST_CASE("The steps name the piece, the shaft with its distance, and the trim", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const auto mounting = shop::bench(shop.session().shop()).front();
    QString all;
    for (const QString& words : setUpSteps(mounting))
        all += words + '\n';
    INFO(all.toStdString());
    CHECK(all.contains(QString::fromStdString(mounting.piece.code)));
    CHECK(all.contains("2.5 mm"));
    // The teeth of H8M, 3.38 mm high, lie on the plain shaft of 80 mm, the pitch line 0.686 mm above their
    // land: pitch diameter 80 + 2 x 4.066 = 88.13; (1200 - pi x 88.13) / 2 = 461.6 mm between centres.
    CHECK(all.contains("461.6 mm"));
    QString warned;
    for (const QString& words : cautions())
        warned += words;
    for (const char* said :
         {"trained people", "own manual", "emergency stop", "moving blade", "shafts rotate"})
        CHECK(warned.contains(said));
}

TEST_CASE("Two orders for one belt are cut together by two keys: one ticket, one mounting", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    for (const char* line : {"H8M 1200 85", "H8M 1200 100"}) {
        desk.type(QString::fromLatin1(line));
        desk.press(Qt::Key_F9);
    }
    desk.press(Qt::Key_2, Qt::ControlModifier);
    REQUIRE(desk.window().bench().waiting() == 2);
    int rows = -1;
    desk.answering([&](QDialog& dialog) {
        auto* together = qobject_cast<TogetherDialog*>(&dialog);
        REQUIRE(together != nullptr);
        CHECK(QTest::qWaitFor([&] { return !together->searching(); }, 60'000));
        rows = together->rows();
        QTest::keyClick(together->findChild<QTableView*>(), Qt::Key_Return);
        CHECK(QTest::qWaitFor([&] { return !together->searching(); }, 60'000));
        dialog.reject();
    });
    desk.press(Qt::Key_F8);
    CHECK(rows == 1);
    CHECK(desk.window().bench().waiting() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Where the orders can't be read, the search for what to cut together ends, and says so",
          "[bench]") {
    DeskShop shop;
    QStringList warned;
    QObject::connect(&shop.session(), &Session::warned, [&](const QString& words) { warned << words; });
    REQUIRE(QFile::rename(shop.file(), shop.file() + ".away"));
    TogetherDialog dialog{shop.session()};
    dialog.show();
    CHECK(QTest::qWaitFor([&] { return !dialog.searching(); }, 60'000));
    CHECK(dialog.findChild<QProgressBar*>()->isHidden());
    CHECK(dialog.rows() == 0);
    REQUIRE(warned.size() == 1);
    CHECK(warned.front().contains("shop.riband"));
    QStringList said;
    for (const auto* label : dialog.findChildren<QLabel*>())
        said << label->text();
    CHECK(said.join(' ').contains("could not be read"));
}

TEST_CASE("A key puts a mounting on the shop's other cutter, whose set-up is shown and which is booked",
          "[bench]") {
    DeskShop shop;
    store::ShopSettings settings = shop.session().settings();
    settings.cutters.push_back({store::CutterId{0}, {"Long bench", {{"long", 60, 60, 800, 100, 3000}}}});
    shop.session().save(settings);
    const store::CutterId other = shop.session().settings().cutters.back().id;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    desk.press(Qt::Key_F7);
    REQUIRE(desk.window().bench().waiting() == 1);
    const auto mounting = shop::bench(shop.session().shop()).front();
    CHECK(mounting.cutter.id == other);
    CHECK(
        desk.window().bench().findChild<BenchModel*>()->index(0, 0).data(BenchModel::ShaftRole).toString() ==
        "Long bench · shaft long");
    desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
    desk.press(Qt::Key_F9);
    const store::Ledger ledger{shop.connection()};
    CHECK(ledger.at(*ledger.last()).movement.about().cutter == other);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("With one cutter there is no key to choose it", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const store::CutterId only = shop::bench(shop.session().shop()).front().cutter.id;
    desk.press(Qt::Key_F7);
    CHECK(shop::bench(shop.session().shop()).front().cutter.id == only);
    CHECK(shop.session().settings().cutters.size() == 1);
}

TEST_CASE("Belts for the shelf that were not cut stay with the rest", "[bench]") {
    DeskShop shop;
    const auto piece = shop.piece("H8M 960", mm(59), cutting::PieceKind::Remnant); // 2.5 + 30 leave 26.5
    DeskWindow desk{shop};
    desk.type("H8M 960 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_2, Qt::ControlModifier);
    SECTION("cut as planned") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(store::Pieces{shop.connection()}.at(piece).gone());
    }
    SECTION("left out before it is cut: the ticket says so, and is made anew") {
        REQUIRE(shop::bench(shop.session().shop()).front().forShelf().size() == 1);
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        const auto row = shop::bench(shop.session().shop()).front();
        CHECK(row.forShelf().empty());
        CHECK(row.mounting.left == um(26'500));
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(store::Pieces{shop.connection()}.at(piece).extent == um(26'500));
    }
    SECTION("not cut") {
        desk.answering([](QDialog& dialog) {
            dialog.findChild<QSpinBox*>("ofShelf1")->setValue(0);
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
        CHECK(store::Pieces{shop.connection()}.at(piece).extent == um(26'500));
    }
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A remnant is cut for the shelf from the Bench, or given up, and the list leaves as CSV",
          "[bench]") {
    DeskShop shop;
    const store::PieceId piece = shop.piece("XL 414", mm(60), cutting::PieceKind::Remnant);
    shop::cutForShelf(shop.session().shop(), piece, mm(20), 2);
    DeskWindow desk{shop};
    desk.press(Qt::Key_2, Qt::ControlModifier);
    REQUIRE(desk.window().bench().waiting() == 1);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    QFile csv{QDir{shop.papers()}.filePath("bench-2026-03-02.csv")};
    REQUIRE(csv.open(QIODevice::ReadOnly));
    const QStringList lines = QString::fromUtf8(csv.readAll()).split("\r\n", Qt::SkipEmptyParts);
    REQUIRE(lines.size() == 2);
    CHECK(lines[0] == "Ticket,Order,Customer,Belt,Piece,Place,Width,Cuts");
    CHECK(lines[1].contains(",,,XL 414,"));

    SECTION("cut: two belts lie on the shelf with their labels") {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        CHECK(desk.window().bench().waiting() == 0);
        const auto kept = store::Catalogue{shop.connection()}.find(shop.belt("XL 414"));
        const auto pieces = store::Pieces{shop.connection()}.ofBelt(kept->id);
        CHECK(std::count_if(pieces.begin(), pieces.end(), [](const store::StockPiece& each) {
                  return each.kind == cutting::PieceKind::Ready && each.extent == mm(20);
              }) == 2);
    }
    SECTION("given up: the remnant is free again") {
        desk.press(Qt::Key_Delete, Qt::ControlModifier);
        CHECK(desk.window().bench().waiting() == 0);
        CHECK(store::Pieces{shop.connection()}.at(piece).reserved.isNone());
    }
    SECTION("its ticket says whom it is for") {
        const auto ticket = store::Tickets{shop.connection()}.inState(store::TicketState::Open).front();
        CHECK(QFile::exists(PaperTray{shop.session()}.ticket(ticket.id)));
    }
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
