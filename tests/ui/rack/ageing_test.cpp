// What ages out, and what is not worth its place.
#include "core/shop/order.h"
#include "core/shop/stock.h"
#include "core/store/places.h"
#include "core/store/upkeep.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/bench/bench_page.h"
#include "ui/rack/ageing_model.h"

#include <QDir>
#include <QFile>
#include <QTableView>
#include <QThreadPool>

namespace riband::ui {

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

TEST_CASE("What ages is inspected once, and a useless remnant is scrapped from the same list", "[rack]") {
    DeskShop shop;
    DeskWindow desk{shop};
    goToTheRack(desk);

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
        QTest::keyClick(&dialog, Qt::Key_F7); // the wrong key: it is not bad
        wait();
        QTest::keyClick(&dialog, Qt::Key_Z, Qt::ControlModifier);
        wait();
        QTest::keyClick(&dialog, Qt::Key_F6); // the first ages out: it is sound
        wait();
        table->selectRow(1);
        answering(desk, [](QDialog& scrap) { QTest::keyClick(&scrap, Qt::Key_Return); });
        QTest::keyClick(&dialog, Qt::Key_Delete, Qt::ControlModifier);
        wait();
    });
    desk.press(Qt::Key_F10);
    CHECK(store::Upkeep{shop.connection()}.inspectionsOf(aged).size() == 2);
    CHECK(store::Upkeep{shop.connection()}.lastInspections().at(aged).until);
    CHECK(store::Pieces{shop.connection()}.at(useless).gone());
    CHECK(shop.disagreements().empty());
}

TEST_CASE("What ages can be looked through place by place, by a key", "[rack]") {
    DeskShop shop;
    const auto lay = [&](const char* place, int width) {
        const auto piece = shop.piece("H8M 1200", mm(width), cutting::PieceKind::Remnant);
        shop::move(shop.session().shop(), piece, place);
        return piece;
    };
    lay("C1", 7);
    lay("C1-2", 6);
    lay("C10", 5);
    lay("X7", 4);
    store::Places places{shop.connection()};
    store::Place bay = *places.byName("C1"), elsewhere = *places.byName("X7");
    bay.level = store::PlaceLevel::Bay;
    elsewhere.parent = bay.id;
    store::Transaction transaction{shop.connection()};
    places.change(bay);
    places.change(elsewhere);
    transaction.commit();
    DeskWindow desk{shop};
    goToTheRack(desk);
    answering(desk, [&](QDialog& dialog) {
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
        const auto* table = dialog.findChild<QTableView*>();
        const auto at = [&](const char* place) {
            QTest::keyClick(&dialog, Qt::Key_F, Qt::ControlModifier);
            CHECK(QApplication::focusWidget() == &field(dialog, "place"));
            QTest::keyClicks(&field(dialog, "place"), place); // over what was typed before
            return table->model()->rowCount();
        };
        CHECK(table->model()->rowCount() == 4);
        CHECK(at("c1") == 3); // with what is named or stands in it; C10 is another place
        CHECK(at("C1-") == 1);
        CHECK(at("C1-2") == 1);
        CHECK(at("Z") == 0);
        const auto sum = [&] {
            QString all;
            for (const auto* label : dialog.findChildren<QLabel*>())
                all += label->text();
            return all;
        };
        CHECK(sum().contains("not worth their place: 0"));
        CHECK(at("C") == 4);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F10);
}

} // namespace riband::ui
