#include "core/shop/cut.h"
#include "core/shop/order.h"
#include "core/shop/outlook.h"
#include "core/store/goods.h"
#include "tests/ui/review/at_the_review.h"
#include "ui/desk/long_work.h"
#include "ui/review/period_bar.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QThread>
#include <QThreadPool>

namespace riband::ui {

namespace {
constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;
} // namespace

TEST_CASE("The purchase list is reckoned when it is opened, explained, and leaves as PDF and CSV",
          "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "purchase");
    CHECK_FALSE(review(desk).period().isVisible()); // it is of today
    CHECK(part.table().columns.front() == "belt");
    part.findChild<QCheckBox*>()->setChecked(true);
    auto* table = part.findChild<QTableView*>();
    QAbstractItemModelTester tester{table->model(), Strict};
    CHECK(table->model()->rowCount() == 4);
    CHECK(wordsShown(part).contains("little to judge by"));
    CHECK_FALSE(wordsShown(part).contains("too old"));
    auto* budget = part.findChild<QLineEdit*>();
    budget->setFocus();
    QTest::keyClicks(budget, "lots");
    desk.press(Qt::Key_Return); // says what is wrong, and the list stays
    CHECK(part.settled());
    CHECK(table->model()->rowCount() == 4);
    budget->selectAll();
    QTest::keyClicks(budget, "100");
    desk.press(Qt::Key_F5);
    settle(desk);
    CHECK(wordsShown(part).contains("that should be bought"));
    desk.press(Qt::Key_F7);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    CHECK(QFile::exists(QDir{shop.papers()}.filePath("purchase-2026-03-02.pdf")));
    QFile csv{QDir{shop.papers()}.filePath("purchase-2026-03-01.csv")};
    CHECK(csv.exists());
}

TEST_CASE("A list is expected only when that was asked, and one key takes all of it back", "[review]") {
    DeskShop shop;
    trade(shop);
    const shop::Shop& open = shop.session().shop();
    Moment then = open.now() - std::chrono::days{17 * 7};
    const shop::Shop earlier{open.connection, open.tables, open.person, [&then] { return then; }};
    const auto isLeft = [&] {
        return shop::suggest(shop::lookAt(open, shop.belt("H8M 1200"), {{mm(30), 1}}))
            .best.plan.unserved.empty();
    };
    for (; isLeft() && then < open.now(); then += std::chrono::days{7}) {
        const auto ordered = shop::order(earlier, {.lines = {{shop.belt("H8M 1200"), mm(30), 1}}});
        for (const auto& mounting : store::Tickets{open.connection}.at(*ordered.ticket).mountings)
            shop::recordCut(earlier, {mounting.id});
    }
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "purchase");
    const auto expected = [&open] { return store::Goods{open.connection}.expected().size(); };
    REQUIRE_FALSE(part.table().rows.empty());
    QString asked;
    const auto answer = [&](QMessageBox::StandardButton button) {
        desk.answering([&asked, button](QDialog& dialog) {
            auto* box = qobject_cast<QMessageBox*>(&dialog);
            asked = box->text() + box->informativeText();
            box->button(button)->click();
        });
    };
    answer(QMessageBox::Cancel);
    desk.press(Qt::Key_F8);
    CHECK(asked.contains("H8M 1200"));
    CHECK(asked.contains("Due "));
    CHECK(expected() == 0);
    answer(QMessageBox::Ok);
    desk.press(Qt::Key_F8);
    settle(desk);
    CHECK(expected() > 0);
    desk.press(Qt::Key_Z, Qt::ControlModifier);
    settle(desk);
    CHECK(expected() == 0);
    answer(QMessageBox::Ok);
    desk.press(Qt::Key_F8);
    settle(desk);
    REQUIRE(expected() > 0);
    desk.window().hide();
    DeskWindow later{shop}; // who opens the program anew knows of the list from the book
    goToTheReview(later);
    goTo(later, "purchase");
    later.press(Qt::Key_Z, Qt::ControlModifier);
    settle(later);
    CHECK(expected() == 0);
}

TEST_CASE("The year is played again with a lesser trim", "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "what-if");
    desk.press(Qt::Key_F5); // nothing is otherwise yet
    CHECK(part.settled());
    CHECK(part.table().rows.empty());
    part.findChild<QDoubleSpinBox*>()->setValue(0.5); // the trim, first of the form
    desk.press(Qt::Key_F5);
    settle(desk);
    const bool played = part.table().rows.size() > 3;
    CHECK((played || wordsShown(part).contains("would be changed by this")));
    if (!played) return;
    const auto& columns = part.table().columns;
    CHECK(columns.back() == "verdict");
    CHECK(part.table().rows.back().front() == "expense");
    const QString words = wordsShown(part);
    CHECK((words.contains("Better") || words.contains("Worse") || words.contains("In money")));
}

TEST_CASE("Long work that is stopped shows nothing, and the next one does", "[review]") {
    DeskShop shop;
    LongWork work{shop.session(), nullptr};
    int ended = 0, shown = 0;
    QObject::connect(&work, &LongWork::ended, [&] { ++ended; });
    work.start(
        [](const shop::Shop&, const foresight::Work& told) -> int {
            while (!told.stopped())
                QThread::yieldCurrentThread();
            throw foresight::Stopped{};
        },
        [&](int) { ++shown; });
    CHECK(work.running());
    work.stop();
    CHECK_FALSE(work.running());
    QThreadPool::globalInstance()->waitForDone();
    QApplication::processEvents();
    CHECK(ended == 1);
    CHECK(shown == 0);
    work.start([](const shop::Shop&, const foresight::Work&) { return 7; }, [&](int what) { shown = what; });
    QThreadPool::globalInstance()->waitForDone();
    QApplication::processEvents();
    CHECK(shown == 7);
    CHECK(ended == 2);
}

TEST_CASE("What was done otherwise is replayed both ways by a key, and the verdict is said", "[review]") {
    DeskShop shop;
    trade(shop);
    overrule(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "overrides");
    const auto has = [&](const char* column) {
        const auto columns = part.table().columns;
        return std::find(columns.begin(), columns.end(), column) != columns.end();
    };
    CHECK(has("expected_doubt"));
    CHECK_FALSE(has("told")); // before both ways are replayed
    CHECK(wordsShown(part).contains("3 of"));
    desk.press(Qt::Key_F5);
    settle(desk);
    CHECK(wordsShown(part).contains("Replayed both ways, doing otherwise"));
    const shop::ReportTable table = part.table();
    CHECK(has("told"));
    CHECK(table.rows.front()[8] == "3");
    CHECK(
        std::any_of(table.rows.begin(), table.rows.end(), [](const auto& row) { return row[0] == "belt"; }));
    CHECK(wordsOf(part).contains("nearer to hand"));
    QDir{}.mkpath(QStringLiteral(RIBAND_BINARY_DIR "/scenes"));
    for (const QSize size : {QSize{1366, 768}, QSize{1920, 1080}})
        for (const Shade shade : {Shade::Light, Shade::Dark}) {
            Look::apply(*qApp, shade);
            desk.window().resize(size);
            QApplication::processEvents();
            CHECK(desk.window().grab().save(
                QStringLiteral(RIBAND_BINARY_DIR "/scenes/review-replayed-%1-%2.png")
                    .arg(size.width())
                    .arg(shade == Shade::Dark ? "dark" : "light")));
        }
    Look::apply(*qApp, Shade::Light);
    desk.press(Qt::Key_F4);
    CHECK(part.findChild<QTableView*>()->isVisible());
    CHECK(shop.disagreements().empty());
}

} // namespace riband::ui
