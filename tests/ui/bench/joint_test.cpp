#include "core/shop/order.h"
#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/bench_page.h"
#include "ui/bench/order_dialog.h"
#include "ui/bench/stops_model.h"
#include "ui/bench/which_order_dialog.h"
#include "ui/desk/paper_tray.h"
#include "ui/window/toast.h"

#include <QDir>
#include <QFile>
#include <QListWidget>
#include <QProcess>
#include <QSpinBox>

namespace riband::ui {

namespace {

shop::DraftLine line(const DeskShop& shop, const char* belt, Extent extent, std::int64_t belts) {
    return {shop.belt(belt), extent, belts, "", std::nullopt, {}};
}

shop::Ordered order(DeskShop& shop, const std::string& customer, std::vector<shop::DraftLine> lines) {
    return shop::order(
        shop.session().shop(),
        {.lines = std::move(lines), .customer = customer, .phone = "", .due = std::nullopt, .note = ""});
}

QString codeOf(DeskShop& shop, const shop::Ordered& ordered) {
    return QString::fromStdString(store::Orders{shop.connection()}.at(ordered.order).code);
}

/// What stands on each page of a paper.
QStringList pagesOf(const QString& file) {
    QProcess process;
    process.start("pdftotext", {"-layout", file, "-"});
    REQUIRE(process.waitForFinished(120'000));
    return QString::fromUtf8(process.readAllStandardOutput()).split('\f', Qt::SkipEmptyParts);
}

QStringList labelsOf(DeskShop& shop) {
    const QDir papers{shop.papers()};
    const QStringList files = papers.entryList({"belt-*.pdf"});
    REQUIRE(files.size() == 1);
    return pagesOf(papers.filePath(files.front()));
}

/// Two orders of H8M 1200 on one ticket; the second one wants T10 1250 besides. The Bench is in front, the
/// joint mounting chosen.
struct Joint {
    DeskShop shop;
    DeskWindow desk{shop};
    shop::Ordered mill = order(shop, "Mill", {line(shop, "H8M 1200", mm(15), 2)});
    shop::Ordered dairy =
        order(shop, "Dairy", {line(shop, "H8M 1200", mm(25), 1), line(shop, "T10 1250", mm(20), 3)});
    QString words;

    Joint() {
        const auto belt = store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"));
        shop::together(shop.session().shop(), {mill.order, dairy.order}, belt->id);
        shop.session().touch();
        desk.press(Qt::Key_2, Qt::ControlModifier);
        type(codeOf(shop, mill));
    }
    void type(const QString& code) {
        for (const QChar character : code)
            QTest::keyClick(QApplication::focusWidget(), character.toLatin1());
        desk.press(Qt::Key_Return);
    }
    void cut() {
        desk.answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        desk.press(Qt::Key_F9);
        words = desk.window().toast().words();
    }
};

} // namespace

TEST_CASE("Each stop of what is cut together says whose belt it is", "[bench]") {
    Joint joint;
    auto* stops = joint.desk.window().bench().findChild<StopsModel*>();
    REQUIRE(stops->rowCount() == 3);
    const auto whom = [&](int row) { return stops->index(row, StopsModel::ForColumn).data().toString(); };
    CHECK(whom(0) == codeOf(joint.shop, joint.mill) + QString::fromUtf8(" · Mill"));
    CHECK(whom(1) == whom(0));
    CHECK(whom(2) == codeOf(joint.shop, joint.dairy) + QString::fromUtf8(" · Dairy"));
}

TEST_CASE("Every belt has its label, with its own customer and order", "[bench]") {
    Joint joint;
    joint.cut();
    const QStringList labels = labelsOf(joint.shop);
    REQUIRE(labels.size() == 3);
    int mill = 0, dairy = 0;
    for (const QString& label : labels) {
        mill += label.contains("Mill") && label.contains(codeOf(joint.shop, joint.mill)) ? 1 : 0;
        dairy += label.contains("Dairy") && label.contains(codeOf(joint.shop, joint.dairy)) ? 1 : 0;
        CHECK_FALSE((label.contains("Mill") && label.contains("Dairy")));
    }
    CHECK(mill == 2);
    CHECK(dairy == 1);
}

TEST_CASE("After a joint cut it is said which orders are ready, and which miss how many belts", "[bench]") {
    Joint joint;
    joint.cut();
    INFO(joint.words.toStdString());
    CHECK(joint.words.contains("Order " + codeOf(joint.shop, joint.mill) + " is ready"));
    CHECK(joint.words.contains("order " + codeOf(joint.shop, joint.dairy) + ": 3"));
    CHECK_FALSE(joint.words.contains("Order " + codeOf(joint.shop, joint.dairy)));
}

TEST_CASE("Of a joint mounting each of its orders can be opened, by a digit", "[bench]") {
    Joint joint;
    const bool second = GENERATE(false, true);
    QStringList offered;
    QString opened;
    joint.desk.answering([&](QDialog& dialog) {
        auto* list = dialog.findChild<QListWidget*>();
        REQUIRE(list != nullptr);
        for (int row = 0; row < list->count(); ++row)
            offered << list->item(row)->text();
        joint.desk.answering([&](QDialog& order) {
            opened = order.windowTitle();
            order.reject();
        });
        QTest::keyClick(list, second ? Qt::Key_2 : Qt::Key_1);
    });
    joint.desk.press(Qt::Key_F4);
    REQUIRE(offered.size() == 2);
    CHECK(offered[0].contains("Mill"));
    CHECK(offered[0].contains(QString::fromUtf8("2 × 15 mm")));
    CHECK(offered[1].contains("Dairy"));
    CHECK(opened.contains(codeOf(joint.shop, second ? joint.dairy : joint.mill)));
}

TEST_CASE("The belts that were good before a miscut get their labels", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    desk.answering([](QDialog& dialog) {
        QTest::keyClicks(dialog.focusWidget(), "2"); // takes the place of the 0 that stands there
        type(dialog, "spoiled", "28.6");
        QTest::keyClick(&dialog, Qt::Key_Return);
    });
    desk.press(Qt::Key_F6);
    CHECK(shop.orders(store::OrderState::Open).front().lines.front().cut == 2);
    CHECK(labelsOf(shop).size() == 2);
}

TEST_CASE("The ticket of orders that are cut together names them all; of one that is void nothing is cut",
          "[bench]") {
    Joint joint;
    const auto open = store::Tickets{joint.shop.connection()}.inState(store::TicketState::Open);
    REQUIRE(open.size() == 2); // the T10 of the second order is still on its own
    const auto words = [&](const store::Ticket& ticket) {
        return pagesOf(PaperTray{joint.shop.session()}.ticket(ticket.id)).join(' ').simplified();
    };
    const bool first = open.front().id == *joint.dairy.ticket;
    const QString alone = words(open[first ? 0 : 1]), together = words(open[first ? 1 : 0]);
    for (const char* said : {"Mill", "Dairy", "2 × H8M 1200, 15 mm", "1 × H8M 1200, 25 mm"})
        CHECK(together.contains(QString::fromUtf8(said)));
    CHECK_FALSE(together.contains("T10"));
    CHECK(alone.contains(QString::fromUtf8("3 × T10 1250, 20 mm")));
    CHECK_FALSE(alone.contains("H8M"));
}

TEST_CASE("Ready belts are fetched from a place, and an order of nothing else was not cut", "[bench]") {
    DeskShop shop;
    const auto both = order(shop, "Mill", {line(shop, "PJ 1194", Ribs{6}, 2)});
    const QString ticket = pagesOf(PaperTray{shop.session()}.ticket(*both.ticket)).join(' ').simplified();
    CHECK(ticket.contains("at B3-2"));
    CHECK(ticket.contains("1 of 2"));
    shop.piece("PJ 1194", Ribs{6}, cutting::PieceKind::Ready);
    const auto ready = order(shop, "Mill", {line(shop, "PJ 1194", Ribs{6}, 1)});
    const auto paper = [&](store::OrderId id) {
        return pagesOf(PaperTray{shop.session()}.order(id)).join(' ');
    };
    CHECK(paper(ready.order).contains("Ready belts from the shelf."));
    CHECK(paper(both.order).contains("cut to width for this order"));
}

} // namespace riband::ui
