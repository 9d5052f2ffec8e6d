// From every figure of the review to what it is made of, and its sum is the figure.
#include "core/shop/cut.h"
#include "core/shop/order.h"
#include "tests/ui/review/at_the_review.h"
#include "ui/review/report_view.h"
#include "ui/words/report_words.h"

#include <QApplication>
#include <QLabel>
#include <QLayout>
#include <QScrollArea>
#include <QTableView>

#include <set>

namespace riband::ui {

namespace {

const shop::Period march{Moment{Date{std::chrono::year{2026} / 3 / 1}},
                         Moment{Date{std::chrono::year{2026} / 3 / 3}}};

/// Opens what stands behind every figure of a table: a sum that is told is the figure. The columns that were
/// sums somewhere.
std::set<std::string> sumsOf(const shop::Shop& shop, const ReportView& view) {
    std::set<std::string> sums;
    REQUIRE_FALSE(view.table.rows.empty());
    for (const std::string& name : view.table.columns) {
        INFO(name);
        CHECK_FALSE(columnWord(name).contains('_')); // a word for people, not the name in the file
    }
    for (std::size_t row = 0; row < view.table.rows.size(); ++row)
        for (std::size_t column = 0; column < view.table.columns.size(); ++column) {
            const std::string& name = view.table.columns[column];
            const std::string& field = view.table.rows[row][column];
            if (field.empty()) continue;
            const ReadBasis read = view.behind(row, name);
            if (!read) continue;
            const shop::Basis basis = read(shop);
            INFO(view.table.rows[row].front() << ", row " << row << ", " << name);
            for (const auto& line : basis.lines.rows)
                CHECK(line.size() == basis.lines.columns.size());
            if (basis.sum.empty()) continue;
            CHECK(basis.sum == field);
            sums.insert(name);
        }
    return sums;
}

void checkSums(const shop::Shop& shop, const ReportView& view, const std::vector<std::string>& columns) {
    const std::set<std::string> sums = sumsOf(shop, view);
    for (const std::string& column : columns) {
        INFO(column);
        CHECK(sums.contains(column));
    }
}

/// One order with its own words for taking another piece.
void overruleInWords(DeskShop& shop, const std::string& words) {
    const shop::Shop& open = shop.session().shop();
    const auto belt = shop.belt("H8M 1200");
    const shop::Outlook outlook = shop::lookAt(open, belt, {{mm(30), 1}});
    const shop::Suggestion suggestion = shop::suggest(outlook);
    REQUIRE_FALSE(suggestion.others.empty());
    shop::DraftLine line{belt, mm(30), 1};
    line.way = suggestion.others.front().plan;
    for (const cutting::Piece& piece : outlook.problem.pieces)
        line.wayPieces.push_back(piece.code);
    line.overrideKey = store::OverrideKey::Other;
    line.overrideWords = words;
    shop::order(open, {.lines = {line}});
}

} // namespace

TEST_CASE("Behind every figure of every report stands what comes to it", "[review][drill]") {
    DeskShop shop;
    trade(shop);
    overrule(shop);
    const shop::Shop& open = shop.session().shop();
    const auto ready = shop.orders(store::OrderState::Ready);
    REQUIRE_FALSE(ready.empty());
    shop::handOver(open, ready.front().id, store::Payment::Card);
    const std::vector<std::string> widths{"bought",    "sold",      "trim",   "closing",
                                          "cost_sold", "cost_lost", "lost_m2"};
    checkSums(open, flowView(open, march), {"sold", "trim", "closing", "cost_trim"});
    checkSums(open, paretoView(open, march), widths);
    checkSums(open, groupsView(open, march), widths);
    checkSums(open, comparedBelts(open, march), {"sold", "lost", "yield_percent", "cost_lost"});
    checkSums(open, comparedGroups(open, march), {"sold", "lost", "yield_percent", "cost_lost"});
    checkSums(open, trendView(open, march), {"sold", "lost", "cuts"});
    checkSums(open, overridesView(open, march), {"suggested", "overridden"});
    checkSums(open, playedView(open, march, {}),
              {"suggested", "overridden", "replayed", "replayed_mm", "replayed_cost"});
    checkSums(open, hindsightView(open, march), {"ordered", "sold", "used"});
    checkSums(open, stockView(open, march), {"pieces", "width", "sold_in_year", "cost", "belts"});
    checkSums(open, marginView(open, march), {"lines", "width", "revenue", "cost", "revenue_without_cost"});
    checkSums(open, dayView(open, march), {"orders", "amount"});
}

TEST_CASE("What people said in their own words stands in the report, in its file and behind its figures",
          "[review][drill]") {
    DeskShop shop;
    trade(shop);
    overruleInWords(shop, "it lies under the bench");
    const shop::Shop& open = shop.session().shop();
    const ReportView view = overridesView(open, march);
    QString told;
    for (const auto& chart : view.charts)
        told += chart.words;
    CHECK(told.contains("it lies under the bench"));
    CHECK(shop::csvOf(view.table).find("it lies under the bench") != std::string::npos);
    const auto words = [&](const std::string& column) {
        return shop::csvOf(view.behind(0, column)(open).lines).find("it lies under the bench");
    };
    CHECK(words("overridden") != std::string::npos);
    CHECK(words("shelf_refused") == std::string::npos); // that it was not
}

TEST_CASE("Where every suggestion was followed no head stands over nothing", "[review][drill]") {
    DeskShop shop;
    trade(shop);
    const ReportView view = overridesView(shop.session().shop(), march);
    CHECK(view.headline == "Every suggestion was followed.");
    CHECK(view.charts.empty());
}

TEST_CASE("F7 puts belts beside earlier periods, and says plainly where the book begins too late",
          "[review][drill]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "waste-by-belt");
    const auto has = [&](const char* column) {
        const auto columns = part.table().columns;
        return std::find(columns.begin(), columns.end(), column) != columns.end();
    };
    CHECK_FALSE(has("sold_before"));
    desk.press(Qt::Key_F7);
    settle(desk);
    CHECK(has("sold_before"));
    CHECK(has("sold_year_before"));
    CHECK(wordsShown(part).contains("there is nothing to compare with"));
    CHECK(wordsOf(part).contains("the book begins later"));
    desk.press(Qt::Key_F7);
    settle(desk);
    CHECK_FALSE(has("sold_before"));
}

TEST_CASE("New pictures never lie over each other, not even before the scroll area has made room for them",
          "[review][drill]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    for (const char* report : {"stock", "margin"}) {
        const ReviewPart& part = goTo(desk, report);
        QWidget* pictures = part.findChild<QScrollArea*>()->widget();
        QLayout* layout = pictures->layout();
        auto* late = new QWidget;
        late->setMinimumHeight(2000);
        layout->addWidget(late);
        QApplication::sendPostedEvents(nullptr, QEvent::MetaCall); // it is shown, nothing else happens yet
        REQUIRE(late->isVisible());
        for (int i = 0; i < layout->count(); ++i)
            if (QWidget* chart = layout->itemAt(i)->widget(); chart && chart != late)
                CHECK_FALSE(chart->geometry().intersects(late->geometry()));
        delete late;
    }
}

TEST_CASE("Enter on a margin opens its order lines with their sum", "[review][drill]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "margin");
    const shop::ReportTable table = part.table();
    const auto at = std::find(table.columns.begin(), table.columns.end(), "revenue") - table.columns.begin();
    desk.press(Qt::Key_F4);
    auto* figures = part.findChild<QTableView*>();
    figures->setCurrentIndex(figures->model()->index(0, static_cast<int>(at)));
    QString said;
    int lines = 0;
    desk.answering([&](QDialog& dialog) {
        for (const QLabel* label : dialog.findChildren<QLabel*>())
            said += label->text() + QLatin1Char('\n');
        lines = dialog.findChild<QTableView*>()->model()->rowCount();
        dialog.accept();
    });
    figures->setFocus();
    desk.press(Qt::Key_Return);
    settle(desk);
    CHECK(lines == 1);
    CHECK(said.contains(QString::fromStdString(table.rows[0][1]))); // the belt
    CHECK(said.contains(QStringLiteral("Together: %1")
                            .arg(QString::fromStdString(table.rows[0][static_cast<std::size_t>(at)]))));
}

} // namespace riband::ui
