#include "core/shop/reports/table.h"
#include "tests/ui/review/at_the_review.h"
#include "ui/look/key_button.h"
#include "ui/review/period_bar.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QTableView>
#include <QThreadPool>

namespace riband::ui {

namespace {
constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;
} // namespace

TEST_CASE("The review tells where the month's width went, and turns to its figures by a key", "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    REQUIRE(review(desk).part() != nullptr);
    CHECK(wordsOf(*review(desk).part()).contains("Sold"));
    const shop::ReportTable table = review(desk).part()->table();
    REQUIRE_FALSE(table.rows.empty());
    auto* figures = review(desk).part()->findChild<QTableView*>();
    QAbstractItemModelTester tester{figures->model(), Strict};
    CHECK_FALSE(figures->isVisible());
    desk.press(Qt::Key_F4);
    CHECK(figures->isVisible());
    CHECK(figures->model()->rowCount() == static_cast<int>(table.rows.size()));
    desk.press(Qt::Key_F4);
    CHECK_FALSE(figures->isVisible());
}

TEST_CASE("Periods are stepped through by keys and never go past today", "[review]") {
    PeriodBar bar{Date{std::chrono::year{2026} / 3 / 2}};
    const auto from = [&] { return printDate(dayOf(bar.period().from)); };
    const auto until = [&] { return printDate(dayOf(bar.period().until)); };
    CHECK(from() == "2026-03-01");
    CHECK(until() == "2026-04-01");
    bar.stepBy(1);
    CHECK(from() == "2026-03-01");
    bar.stepBy(-3);
    CHECK(from() == "2025-12-01");
    bar.setSpan(PeriodBar::Span::Quarter);
    CHECK(from() == "2025-10-01");
    CHECK(until() == "2026-01-01");
    bar.setSpan(PeriodBar::Span::Week);
    CHECK(from() == "2025-12-29"); // the Monday before the last day of the quarter
    bar.setSpan(PeriodBar::Span::Year);
    CHECK(until() == "2027-01-01"); // that week ends in the new year
    bar.setSpan(PeriodBar::Span::Day);
    CHECK(from() == "2026-03-02");
}

TEST_CASE("A row of the belts tells the movements behind it, and the figures leave as CSV", "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    titles(desk).setCurrentRow(1);
    settle(desk);
    desk.press(Qt::Key_F4);
    int rows = 0;
    desk.answering([&](QDialog& dialog) {
        rows = dialog.findChild<QTableView*>()->model()->rowCount();
        dialog.accept();
    });
    review(desk).part()->findChild<QTableView*>()->setFocus();
    desk.press(Qt::Key_Return);
    CHECK(rows >= 2);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    QFile csv{QDir{shop.papers()}.filePath("waste-by-belt-2026-03-01.csv")};
    REQUIRE(csv.open(QIODevice::ReadOnly));
    CHECK(QString::fromUtf8(csv.readAll()).startsWith("group,unit,opening,bought,found,sold"));
    desk.press(Qt::Key_P, Qt::ControlModifier);
    settle(desk);
    CHECK(QFile::exists(QDir{shop.papers()}.filePath("report-2026-03-01-to-2026-03-31.pdf")));
}

TEST_CASE("A cutter's line tells the cuts that were made on it", "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "waste-by-group");
    const auto& rows = part.table().rows;
    const auto cutter = std::find_if(rows.begin(), rows.end(), [](const auto& row) {
        return row[0] == "cutter" && row[1] == "bench cutter";
    });
    REQUIRE(cutter != rows.end());
    desk.press(Qt::Key_F4);
    auto* figures = part.findChild<QTableView*>();
    figures->selectRow(static_cast<int>(cutter - rows.begin()));
    int movements = 0;
    desk.answering([&](QDialog& dialog) {
        movements = dialog.findChild<QTableView*>()->model()->rowCount();
        dialog.accept();
    });
    figures->setFocus();
    desk.press(Qt::Key_Return);
    CHECK(movements == 2);
}

TEST_CASE("What counting found lost and how right the book is are told like the other reports", "[review]") {
    DeskShop shop;
    trade(shop);
    countAll(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& lost = goTo(desk, "shrinkage");
    CHECK(lost.table().columns.back() == "cost_lost");
    CHECK(wordsOf(lost).contains("unexplained"));
    const ReviewPart& right = goTo(desk, "accuracy");
    CHECK(right.table().rows.front().front() == "all");
    CHECK(wordsOf(right).contains("B3-2"));
    CHECK(shop.disagreements().empty());
}

TEST_CASE("Every report is drawn whole, light and dark, small and large", "[review]") {
    DeskShop shop;
    trade(shop);
    countAll(shop);
    DeskWindow desk{shop};
    Window& window = desk.window();
    ReviewPage* page = &review(desk);
    goToTheReview(desk);
    const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
    folder.mkpath(".");
    for (const QSize size : {QSize{1366, 768}, QSize{1920, 1080}})
        for (const Shade shade : {Shade::Light, Shade::Dark}) {
            Look::apply(*qApp, shade);
            window.resize(size);
            for (std::size_t row = 0; row < page->parts().size(); ++row) {
                page->findChild<QListWidget*>()->setCurrentRow(static_cast<int>(row));
                do {
                    QThreadPool::globalInstance()->waitForDone();
                    QApplication::processEvents();
                } while (!page->settled());
                QApplication::processEvents(); // the pictures take their places
                CHECK(window.size() == size);
                const QString name = QStringLiteral("review-%1-%2-%3.png")
                                         .arg(page->part()->fileName())
                                         .arg(size.width())
                                         .arg(shade == Shade::Dark ? "dark" : "light");
                CHECK(window.grab().save(folder.filePath(name)));
                for (const auto* button : page->findChildren<KeyButton*>())
                    if (button->isVisible()) CHECK(button->width() >= button->sizeHint().width());
            }
        }
    Look::apply(*qApp, Shade::Light);
}

} // namespace riband::ui
