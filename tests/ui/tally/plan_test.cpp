// What to count today, and the lists that leave the page.
#include "core/shop/stock.h"
#include "tests/ui/tally/at_the_tally.h"
#include "ui/tally/plan_view.h"
#include "ui/tally/tally_page.h"

#include <QDir>
#include <QFile>
#include <QSpinBox>

namespace riband::ui {

TEST_CASE("The day's plan says what to count and why; Enter starts it, and anybody goes on with it",
          "[tally]") {
    DeskShop shop;
    const store::PieceId far = shop.piece("XL 414", mm(40), cutting::PieceKind::Remnant);
    shop::move(shop.session().shop(), far, "C1");
    TallyDesk desk{shop};
    desk.planned();
    CHECK(desk.words().contains("B3-2 · pieces: 7"));
    CHECK(desk.words().contains("due: 3 of 7"));
    CHECK(desk.words().contains("Why B3-2"));
    CHECK(desk.words().contains("never counted"));
    CHECK(desk.words().contains("came 0 days ago")); // a sleeve that was measured as it came
    CHECK_FALSE(desk.words().contains("128"));       // blind here, too
    CHECK_FALSE(desk.words().contains("probably wrong: 0.0"));
    desk.keep("plan");
    desk.press(Qt::Key_Down);
    CHECK(desk.words().contains("Why C1"));
    desk.press(Qt::Key_Return);
    CHECK(desk.page().tally().place() == "C1");
    CHECK(desk.words().contains("0 of 1 seen"));
    desk.measure(store::Pieces{shop.connection()}.at(far), "40");
    CHECK(desk.words().contains("1 of 1 seen"));
    desk.press(Qt::Key_Escape); // left, not closed
    desk.planned();
    CHECK(desk.words().contains("C1 · going on"));
    CHECK(desk.page().plan().openCount());
    desk.press(Qt::Key_F5); // the mark stayed on it
    CHECK(desk.page().tally().place() == "C1");
    desk.press(Qt::Key_F3);
    desk.planned();
    CHECK_FALSE(desk.words().contains("C1 · ")); // proved just now
    CHECK(desk.words().contains("C1 is counted, nothing is missing."));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("The plan fits in the minutes that there are", "[tally]") {
    DeskShop shop;
    for (const char* place : {"C1", "C2", "C3", "C4"})
        shop::move(shop.session().shop(), shop.piece("XL 414", mm(190), cutting::PieceKind::Remnant), place);
    TallyDesk desk{shop};
    desk.planned();
    CHECK(desk.planLines() == 5); // 20 minutes: seven pieces in four, four places of one in six
    auto* minutes = desk.page().findChild<QSpinBox*>();
    minutes->setValue(5);
    desk.planned();
    CHECK(desk.planLines() < 5);
    CHECK(desk.planLines() > 0);
}

TEST_CASE("The day's plan, what is not seen yet and the differences leave as CSV; blind stays blind",
          "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.planned();
    const auto saved = [&](const char* name) {
        desk.press(Qt::Key_E, Qt::ControlModifier);
        QFile file{
            QDir{shop.papers()}.filePath(QStringLiteral("%1-2026-03-02.csv").arg(QLatin1String(name)))};
        REQUIRE(file.open(QIODevice::ReadOnly));
        return QString::fromUtf8(file.readAll()).split("\r\n", Qt::SkipEmptyParts);
    };
    const QStringList plan = saved("to-count");
    REQUIRE(plan.size() == 2);
    CHECK(plan[0] == "Place,What,Pieces");
    CHECK(plan[1].startsWith("B3-2,"));
    desk.scan("b3-2");
    const QStringList unseen = saved("not-seen");
    CHECK(unseen.size() == 8);
    CHECK_FALSE(unseen.join(' ').contains("128")); // the book's widths stay hidden
    const store::StockPiece piece = desk.piece("T10 1250");
    desk.measure(piece, "350");
    desk.scan("350");
    desk.closeAnyway();
    desk.press(Qt::Key_F4);
    const QStringList differences = saved("differences");
    REQUIRE(differences.size() > 1);
    CHECK(differences.filter(QString::fromStdString(piece.code)).size() == 1);
}

} // namespace riband::ui
