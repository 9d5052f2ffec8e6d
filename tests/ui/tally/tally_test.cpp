// A place is counted and settled by scanner and keys; the mouse is never needed.
#include "core/shop/counting/findings.h"
#include "core/shop/limits.h"
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
#include <QTableView>
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
        if (!QApplication::activeWindow()) window().activateWindow(); // off screen no dialog gives it back
        QApplication::processEvents();
        QTest::keyClicks(QApplication::focusWidget(), words);
        press(Qt::Key_Return);
    }
    void measure(const store::StockPiece& piece, const QString& width) {
        scan(QString::fromStdString(piece.code));
        scan(width);
    }
    TallyPage& page() { return window().tally(); }
    /// The keys of a dialog act as soon as its window is the active one.
    void answering(const std::function<void(QDialog&)>& answer) {
        DeskWindow::answering([answer](QDialog& dialog) {
            dialog.activateWindow();
            QApplication::processEvents();
            answer(dialog);
        });
    }
    /// Says that the place is done, though not all of it was seen.
    void closeAnyway() {
        answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        press(Qt::Key_F3);
    }
    void takeBackNewest() {
        answering([](QDialog& dialog) {
            QTest::keyClick(&dialog, Qt::Key_F6);
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        press(Qt::Key_F6);
    }
    QString typed() { return qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(); }
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

TEST_CASE("Beyond the limit the owner approves there and then, with initials and number", "[tally]") {
    DeskShop shop;
    store::People people{shop.connection()};
    const store::PersonId owner = shop.session().person().id;
    people.lock(owner, "4711");
    const store::PersonId manager = people.add("SM", "S. Mercer", store::Role::StockManager);
    store::ShopSettings settings = shop.session().settings();
    settings.counting.approveOver = Money::minor(20);
    shop.session().save(settings);
    shop.session().actAs(manager);
    TallyDesk desk{shop};
    desk.scan("B3-2");
    const store::StockPiece sleeve = desk.piece("T10 1250");
    desk.measure(sleeve, "170.3");
    desk.scan("170.3");
    desk.press(Qt::Key_F4);
    CHECK(desk.words().contains("the owner approves it"));
    const auto answer = [&](const QString& number) {
        desk.answering([number](QDialog& dialog) {
            auto* list = dialog.findChild<QListWidget*>("people");
            CHECK(list->count() == 1); // owners only
            QTest::keyClicks(list, "JT");
            QTest::keyClicks(dialog.findChild<QLineEdit*>("number"), number);
            QTest::keyClick(&dialog, Qt::Key_Return);
        });
        desk.press(Qt::Key_F9);
    };
    answer("1234");
    CHECK(desk.piece("T10 1250").extent == mm(380));
    answer("4711");
    CHECK(desk.piece("T10 1250").extent == um(170'300));
    const auto settled = store::Counts{shop.connection()}.settlements();
    REQUIRE(settled.size() == 1);
    CHECK(settled.front().person == manager);
    CHECK(settled.front().approved == owner);
    CHECK(shop.session().person().id == manager); // who acted goes on acting
}

TEST_CASE("What was settled can be taken back another day, and it says why something can't", "[tally]") {
    DeskShop shop;
    {
        TallyDesk desk{shop};
        desk.scan("B3-2");
        desk.measure(desk.piece("T10 1250"), "371.7");
        desk.scan("371.7");
        desk.measure(desk.piece("XL 414"), "244.1");
        desk.scan("244.1");
        desk.press(Qt::Key_F4);
        desk.press(Qt::Key_F9);
        desk.press(Qt::Key_F9);
        CHECK(shop::findings(shop.session().shop()).empty());
    }
    TallyDesk desk{shop};
    desk.press(Qt::Key_F4);
    QStringList states, reasons;
    desk.answering([&](QDialog& dialog) {
        auto* table = dialog.findChild<QTableView*>();
        REQUIRE(table->model()->rowCount() == 2);
        QTest::keyClick(table, Qt::Key_Down); // the older one
        QTest::keyClick(&dialog, Qt::Key_F6);
        for (int row = 0; row < 2; ++row)
            states << table->model()->index(row, table->model()->columnCount() - 1).data().toString();
        for (const auto* label : dialog.findChildren<QLabel*>())
            reasons << label->text();
        QTest::keyClick(&dialog, Qt::Key_F6); // grey
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    desk.press(Qt::Key_F6);
    REQUIRE(states.size() == 2);
    CHECK(states[0] == "stands");
    CHECK(states[1].startsWith("taken back"));
    CHECK(reasons.join(' ').contains("It is taken back already."));
    CHECK(shop::findings(shop.session().shop()).size() == 1);
    CHECK(shop.disagreements().empty());
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

TEST_CASE("On the Settle page a scan chooses its difference, or it is said that none waits", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.scan("B3-2");
    const QString first = QString::fromStdString(desk.piece("T10 1250").code),
                  second = QString::fromStdString(desk.piece("XL 414").code),
                  agrees = QString::fromStdString(desk.piece("H8M 1200").code);
    desk.measure(desk.piece("T10 1250"), "371.7");
    desk.scan("371.7");
    desk.measure(desk.piece("XL 414"), "244.1");
    desk.scan("244.1");
    desk.press(Qt::Key_F4);
    for (const QString& code : {second, first, second}) {
        desk.scan(code);
        CHECK(desk.words().contains(code + " · B3-2"));
        CHECK(desk.typed().isEmpty());
    }
    desk.scan(agrees);
    CHECK(desk.words().contains("Nothing of " + agrees + " waits to be settled."));
    desk.scan(first); // over what was refused
    CHECK(desk.words().contains(first + " · B3-2"));
    desk.press(Qt::Key_F9);
    CHECK(desk.piece("T10 1250").extent == um(371'700));
    CHECK(desk.piece("XL 414").extent == mm(250));
}

TEST_CASE("The page's own key leads from settling back to counting", "[tally]") {
    DeskShop shop;
    TallyDesk desk{shop};
    desk.press(Qt::Key_F4);
    desk.press(Qt::Key_3, Qt::ControlModifier);
    desk.press(Qt::Key_4, Qt::ControlModifier); // from elsewhere: as it was left
    desk.scan("Z9");
    CHECK_FALSE(desk.words().contains("No place is called"));
    desk.press(Qt::Key_4, Qt::ControlModifier);
    desk.scan("Z9");
    CHECK(desk.words().contains("No place is called"));
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
