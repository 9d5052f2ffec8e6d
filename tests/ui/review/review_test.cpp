#include "core/shop/reports/table.h"
#include "tests/ui/review/at_the_review.h"
#include "ui/look/key_button.h"
#include "ui/papers/month_report.h"
#include "ui/papers/papers.h"
#include "ui/review/period_bar.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
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
    CHECK(until() == "2026-03-03"); // so far
    CHECK(bar.findChild<QLabel*>()->text().endsWith("so far"));
    bar.stepBy(1);
    CHECK(from() == "2026-03-01");
    bar.stepBy(-3);
    CHECK(from() == "2025-12-01");
    CHECK(until() == "2026-01-01");
    CHECK_FALSE(bar.findChild<QLabel*>()->text().contains("so far"));
    bar.setSpan(PeriodBar::Span::Quarter);
    CHECK(from() == "2025-10-01");
    CHECK(until() == "2026-01-01");
    bar.setSpan(PeriodBar::Span::Week);
    CHECK(from() == "2025-12-29"); // the Monday before the last day of the quarter
    bar.setSpan(PeriodBar::Span::Year);
    CHECK(from() == "2026-01-01"); // that week ends in the new year
    CHECK(until() == "2026-03-03");
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
    settle(desk);
    CHECK(rows >= 2);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    QFile csv{QDir{shop.papers()}.filePath("waste-by-belt-2026-03-01.csv")};
    REQUIRE(csv.open(QIODevice::ReadOnly));
    CHECK(QString::fromUtf8(csv.readAll()).startsWith("group,unit,opening,bought,found,sold"));
    desk.press(Qt::Key_P, Qt::ControlModifier);
    settle(desk);
    CHECK(QFile::exists(QDir{shop.papers()}.filePath("report-2026-03-01-to-2026-03-02.pdf")));
}

TEST_CASE("Enter on one figure tells the movements of that figure and what they come to", "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "waste-by-belt");
    const shop::ReportTable table = part.table();
    const auto at = std::find(table.columns.begin(), table.columns.end(), "trim") - table.columns.begin();
    const auto row = std::find_if(table.rows.begin(), table.rows.end(),
                                  [](const auto& fields) { return fields[0] == "H8M 1200"; });
    REQUIRE(row != table.rows.end());
    desk.press(Qt::Key_F4);
    auto* figures = part.findChild<QTableView*>();
    figures->setCurrentIndex(
        figures->model()->index(static_cast<int>(row - table.rows.begin()), static_cast<int>(at)));
    QString said;
    desk.answering([&](QDialog& dialog) {
        for (const QLabel* label : dialog.findChildren<QLabel*>())
            said += label->text() + QLatin1Char('\n');
        dialog.accept();
    });
    figures->setFocus();
    desk.press(Qt::Key_Return);
    settle(desk);
    CHECK(said.contains("H8M 1200, Trim"));
    CHECK(said.contains(
        QStringLiteral("Together: %1 mm").arg(QString::fromStdString((*row)[static_cast<std::size_t>(at)]))));
}

TEST_CASE("A month goes on two or three leaves, those of the stock manager without money", "[review]") {
    DeskShop shop;
    trade(shop);
    countAll(shop);
    const shop::Shop& open = shop.session().shop();
    const shop::Period month{Moment{Date{std::chrono::year{2026} / 3 / 1}},
                             Moment{Date{std::chrono::year{2026} / 4 / 1}}};
    for (const shop::Sees sees : {shop::Sees::Cost, shop::Sees::WidthOnly}) {
        const MonthReport report = gatherMonth(open, shop::soFar(month, shop.session().today()), sees);
        CHECK(dayOf(report.now.period.until) == Date{std::chrono::year{2026} / 3 / 3});
        CHECK(report.before.period.until == report.now.period.from);
        CHECK((report.now.sales.revenue > Money::minor(0)) == (sees == shop::Sees::Cost));
        int pages = 0;
        pdfOf(ticketSize(shop.session().settings()), [&](QPagedPaintDevice& device) {
            pages = paintMonthReport(device, report, shop.session().settings());
        });
        CHECK(pages >= 2);
        CHECK(pages <= 3);
    }
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
    figures->setCurrentIndex(figures->model()->index(static_cast<int>(cutter - rows.begin()), 0));
    int movements = 0;
    desk.answering([&](QDialog& dialog) {
        movements = dialog.findChild<QTableView*>()->model()->rowCount();
        dialog.accept();
    });
    figures->setFocus();
    desk.press(Qt::Key_Return);
    settle(desk);
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
