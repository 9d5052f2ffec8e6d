// A place is counted and settled by scanner and keys; the mouse is never needed.
#include "core/shop/counting/findings.h"
#include "core/shop/order.h"
#include "core/shop/stock.h"
#include "tests/ui/desk_fixture.h"
#include "ui/desk/page.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/tally/plan_view.h"
#include "ui/tally/tally_page.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>
#include <QTest>
#include <QThreadPool>

namespace riband::ui {

namespace {

class TallyDesk : public DeskWindow {
public:
    explicit TallyDesk(DeskShop& shop) : DeskWindow{shop}, shop_{shop} {
        press(Qt::Key_4, Qt::ControlModifier);
    }
    /// As a scanner does: the words and Enter.
    void scan(const QString& words) {
        QTest::keyClicks(QApplication::focusWidget(), words);
        press(Qt::Key_Return);
    }
    void measure(const store::StockPiece& piece, const QString& width) {
        scan(QString::fromStdString(piece.code));
        scan(width);
    }
    TallyPage& page() { return window().tally(); }
    /// Waits until the day's plan stands.
    void planned() {
        do {
            QThreadPool::globalInstance()->waitForDone();
            QApplication::processEvents();
        } while (!page().plan().settled());
    }
    int planLines() { return page().plan().findChild<QListWidget*>()->count(); }
    /// All that can be read on the page.
    QString words() {
        QString all;
        for (const auto* label : page().findChildren<QLabel*>())
            if (label->isVisible()) all += label->text() + QLatin1Char('\n');
        for (const auto* list : page().findChildren<QListWidget*>())
            for (int row = 0; list->isVisible() && row < list->count(); ++row)
                all += list->item(row)->text() + QLatin1Char('\n');
        return all;
    }
    store::StockPiece piece(const std::string& belt, std::size_t index = 0) {
        const auto kept = store::Catalogue{shop_.connection()}.find(shop_.belt(belt));
        return store::Pieces{shop_.connection()}.ofBelt(kept->id).at(index);
    }
    void keep(const QString& name) {
        const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
        folder.mkpath(".");
        for (const QSize size : {QSize{1920, 1080}, QSize{1366, 768}}) {
            window().resize(size);
            settle();
            CHECK(window().size() == size);
            for (const auto* button : page().findChildren<KeyButton*>()) {
                INFO(button->text().toStdString());
                CHECK(button->width() >= button->sizeHint().width());
            }
            CHECK(window().grab().save(
                folder.filePath(QStringLiteral("tally-%1-%2.png").arg(name).arg(size.width()))));
        }
        Look::apply(*qApp, Shade::Dark);
        settle();
        CHECK(window().grab().save(folder.filePath(QStringLiteral("tally-%1-dark.png").arg(name))));
        Look::apply(*qApp, Shade::Light);
    }

private:
    DeskShop& shop_;
};

void countAllButOne(TallyDesk& desk) {
    desk.scan("b3-2"); // as people type it
    desk.measure(desk.piece("H8M 1200", 0), "101");
    desk.measure(desk.piece("H8M 1200", 1), "128.4");
    desk.measure(desk.piece("H8M 1200", 2), "470");
    desk.measure(desk.piece("PJ 1194", 0), "");
    desk.measure(desk.piece("PJ 1194", 1), "60");
    desk.measure(desk.piece("XL 414"), "250");
}

} // namespace

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
    desk.press(Qt::Key_F3);
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
    desk.scan("358.3");
    CHECK(desk.words().contains("differs"));
    desk.press(Qt::Key_F3);
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("380"));
    desk.keep("settle");
    desk.press(Qt::Key_F9);
    CHECK(desk.piece("T10 1250").extent == um(358'300));
    CHECK(shop::findings(shop.session().shop()).empty());
    desk.press(Qt::Key_F6);
    CHECK(desk.piece("T10 1250").extent == mm(380));
    CHECK(shop::findings(shop.session().shop()).size() == 1);
    CHECK(shop.disagreements().empty());
}

TEST_CASE("An unrecorded cut is proposed first, and a digit marks another line", "[tally]") {
    DeskShop shop;
    shop::order(shop.session().shop(),
                {{{shop.belt("T10 1250"), mm(25), 1, "T10 1250 25", std::nullopt, {}}}, "", "", {}, ""});
    TallyDesk desk{shop};
    const store::StockPiece sleeve = desk.piece("T10 1250");
    desk.scan("B3-2");
    desk.measure(sleeve, "352.5"); // 380 - 2.5 - 25
    desk.scan("352.5");
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("was cut and not recorded"));
    desk.press(Qt::Key_2);
    auto* proposals = desk.page().findChildren<QListWidget*>().back();
    CHECK(proposals->currentRow() == 1);
    desk.press(Qt::Key_1);
    CHECK(proposals->currentRow() == 0);
    desk.press(Qt::Key_F9);
    CHECK(shop.orders(store::OrderState::Ready).size() == 1);
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
    desk.press(Qt::Key_F3);
    desk.press(Qt::Key_F4);
    const QStringList differences = saved("differences");
    REQUIRE(differences.size() > 1);
    CHECK(differences.filter(QString::fromStdString(piece.code)).size() == 1);
}

} // namespace riband::ui
