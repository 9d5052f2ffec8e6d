// A place is counted by scanner and keys; the mouse is never needed.
#include "core/shop/counting/count.h"
#include "core/shop/counting/findings.h"
#include "core/shop/limits.h"
#include "core/shop/stock.h"
#include "tests/ui/tally/at_the_tally.h"
#include "ui/tally/tally_page.h"

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QListWidget>
#include <QTest>

namespace riband::ui {

TEST_CASE("Who scans on says that the piece before is there", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    const auto first = desk.piece("H8M 1200", 0), second = desk.piece("T10 1250");
    desk.scan(QString::fromStdString(first.code));
    desk.scan(QString::fromStdString(first.code)); // the scanner read it twice
    CHECK(desk.words().contains("Scanned twice."));
    desk.scan(QString::fromStdString(second.code));
    CHECK(desk.page().tally().large() == QString::fromStdString(second.code));
    CHECK(desk.words().contains(QString::fromStdString(first.code + " agrees.")));
    desk.scan("rubbish");
    CHECK(desk.words().contains("Type the width in mm, for example"));
    desk.press(Qt::Key_Escape); // the words
    desk.scan("XL 414");        // a belt without label
    CHECK(desk.page().tally().large() == "XL 414");
    desk.scan("12");
    CHECK(desk.words().contains("2 of 7 seen"));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("The code of a piece never becomes a place", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    const QString code = QString::fromStdString(desk.piece("H8M 1200", 0).code);
    desk.scan(code);
    CHECK(desk.words().contains(code + " is a piece, at home at B3-2. Scan the label of the place."));
    desk.press(Qt::Key_Return);
    CHECK_FALSE(desk.page().tally().count());
    CHECK_THROWS_AS(shop::beginCount(shop.session().shop(), code.toStdString()), shop::Refusal);
    CHECK_THROWS_AS(shop::move(shop.session().shop(), desk.piece("T10 1250").id, code.toStdString()),
                    shop::Refusal);
}

TEST_CASE("A place is counted blind, from the place to what is missing, by keys alone", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.keep("place");
    desk.scan("b3-2");
    CHECK(desk.words().contains("Not seen yet: 7"));
    desk.scan(QString::fromStdString(desk.piece("H8M 1200", 1).code));
    CHECK(desk.page().tally().step() == Tally::Step::Width);
    CHECK_FALSE(desk.words().contains("128")); // blind
    QTest::keyClicks(QApplication::focusWidget(), "128.5");
    desk.keep("width");
    desk.press(Qt::Key_Return);
    CHECK(desk.words().contains("agrees"));
    CHECK(desk.words().contains("Not seen yet: 6"));
    desk.closeAnyway();
    CHECK(desk.page().tally().step() == Tally::Step::Place);
    CHECK(shop::findings(shop.session().shop()).size() == 6);
    CHECK(desk.page().waiting() == 6);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Near enough corrects the book, beyond it one measures again, and then settles by one key",
          "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    countAllButOne(desk);
    CHECK(desk.piece("H8M 1200", 1).extent == um(128'400));
    const store::StockPiece sleeve = desk.piece("T10 1250");
    desk.measure(sleeve, "358.3");
    CHECK(desk.words().contains("once more"));
    CHECK_FALSE(desk.words().contains("380"));
    desk.keep("again");
    desk.press(Qt::Key_F3); // refused: the piece waits
    CHECK(desk.page().tally().count());
    CHECK(desk.words().contains("a second time"));
    desk.scan("358.3");
    CHECK(desk.words().contains("differs"));
    CHECK_FALSE(desk.words().contains("a second time")); // it is done
    desk.press(Qt::Key_F3);
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("380"));
    desk.keep("settle");
    desk.press(Qt::Key_F9);
    CHECK(desk.piece("T10 1250").extent == um(358'300));
    CHECK(shop::findings(shop.session().shop()).empty());
    desk.takeBackNewest();
    CHECK(desk.piece("T10 1250").extent == mm(380));
    CHECK(shop::findings(shop.session().shop()).size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A piece without label is named by its belt, and gets a label when it is settled", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    desk.scan("S8M 960");
    CHECK(desk.words().contains("without label"));
    desk.scan("77");
    desk.press(Qt::Key_F4);
    desk.press(Qt::Key_F9);
    CHECK(desk.piece("S8M 960").extent == mm(77));
    CHECK(desk.piece("S8M 960").place == "B3-2");
    CHECK(QDir{shop.papers()}.entryList(QDir::Files).size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("A piece that the book has thrown away is measured, and comes back as found", "[tally]") {
    DeskShop shop;
    const store::PieceId gone = shop.piece("XL 414", mm(90), cutting::PieceKind::Remnant);
    shop::scrap(shop.session().shop(), gone, mm(90), store::ScrapReason::Aged, "");
    const auto now = [&] { return store::Pieces{shop.connection()}.at(gone); };
    TallyDesk desk{shop};
    desk.scan("B3-2");
    desk.scan(QString::fromStdString(now().code));
    desk.scan(""); // "it is there" is not enough
    CHECK(desk.words().contains("The book has nothing of"));
    desk.scan(QString::fromStdString(desk.piece("T10 1250").code)); // nor is scanning on
    CHECK(desk.page().tally().large() == QString::fromStdString(now().code));
    CHECK(now().gone());
    desk.scan("89.5"); // over what was refused
    desk.scan("89.5");
    CHECK(desk.words().contains("It waits to be settled."));
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("is here again"));
    desk.press(Qt::Key_F9);
    CHECK(now().extent == um(89'500));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Nothing goes missing without a question, and a scan is no answer to it", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    const QString code = QString::fromStdString(desk.piece("T10 1250").code);
    QString asked;
    desk.answering([&](QDialog& dialog) {
        for (const auto* label : dialog.findChildren<QLabel*>())
            asked += label->text();
        CHECK(dialog.findChild<QListWidget*>()->count() == 7);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F3);
    CHECK(asked.contains("not seen"));
    CHECK(desk.page().tally().count());
    desk.answering([&](QDialog& dialog) { // a scanner goes on to type into what is left when it has closed
        QTest::keyClick(dialog.findChild<QListWidget*>(), code[0].toLatin1());
        CHECK_FALSE(dialog.isVisible());
    });
    desk.press(Qt::Key_F3);
    desk.scan(code.mid(1));
    CHECK(desk.page().tally().large() == code);
    desk.closeAnyway();
    CHECK_FALSE(desk.page().tally().count());
    CHECK(shop::findings(shop.session().shop()).size() == 7);
}

TEST_CASE("A code is understood without its dash, and never becomes a place", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    const QString code = QString::fromStdString(desk.piece("T10 1250").code),
                  bare = QString{code}.remove('-');
    desk.scan(bare);
    desk.press(Qt::Key_Return);
    CHECK_FALSE(desk.page().tally().count());
    CHECK_FALSE(shop::canBePlace(shop.session().shop(), bare.toStdString()));
    desk.scan("B3-2");
    desk.scan(bare);
    CHECK(desk.page().tally().large() == code);
    desk.scan(bare);
    CHECK(desk.words().contains("Scanned twice."));
}

TEST_CASE("After a refused entry the next scan begins anew, also when one was away", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("122");
    desk.press(Qt::Key_F3);
    desk.press(Qt::Key_F4);
    desk.press(Qt::Key_F4);
    const QString code = QString::fromStdString(desk.piece("T10 1250").code);
    desk.scan(code);
    CHECK(desk.typed() == code);
    CHECK(desk.words().contains(code + " is a piece, at home at B3-2"));
}

TEST_CASE("Belt and width of a piece without label can be said at once", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    desk.scan("T10 1250 27");
    CHECK(desk.page().tally().step() == Tally::Step::Piece);
    CHECK(desk.words().contains("Noted: 27"));
    CHECK(desk.words().contains("0 of 7 seen · besides: 1"));
    desk.scan("");
    CHECK(desk.words().contains("Scan the label of a piece; without a label, type its belt."));
    const auto scans = store::Counts{shop.connection()}.allScans();
    REQUIRE(scans.size() == 1);
    CHECK(scans.front().measured == mm(27));
}

TEST_CASE("What can't be understood is said and can be typed on", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("Z9");
    CHECK(desk.words().contains("No place is called"));
    desk.press(Qt::Key_Escape);
    desk.scan("B3-2");
    desk.scan("hello");
    CHECK(desk.words().contains("is no code of a piece"));
    desk.press(Qt::Key_Escape);
    desk.scan(QString::fromStdString(desk.piece("XL 414").code));
    desk.scan("-4");
    CHECK(desk.page().tally().step() == Tally::Step::Width);
    desk.press(Qt::Key_Escape); // the words
    desk.press(Qt::Key_Escape); // the piece
    CHECK(desk.page().tally().step() == Tally::Step::Piece);
    desk.press(Qt::Key_F2);
    CHECK(desk.words().contains("tape"));
}

} // namespace riband::ui
