#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "core/shop/cut.h"
#include "core/shop/order.h"
#include "core/shop/outlook.h"
#include "core/shop/reports/table.h"
#include "tests/ui/desk_fixture.h"
#include "ui/desk/long_work.h"
#include "ui/desk/page.h"
#include "ui/look/key_button.h"
#include "ui/review/period_bar.h"
#include "ui/review/report_table_model.h"
#include "ui/review/review_page.h"
#include "ui/review/review_part.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QRegularExpression>
#include <QTableView>
#include <QTest>
#include <QThread>
#include <QThreadPool>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

/// The owner is at the desk; three of 30 and two of 25 were sold and cut.
void trade(DeskShop& shop) {
    store::Transaction transaction{shop.connection()};
    const store::PersonId owner =
        store::People{shop.connection()}.add("OW", "Odile Wren", store::Role::Owner);
    transaction.commit();
    shop.session().actAs(owner);
    const shop::Shop& open = shop.session().shop();
    for (const auto& [belt, width, count] : {std::tuple{"H8M 1200", 30, 3}, std::tuple{"T10 1250", 25, 2}}) {
        const auto ordered =
            shop::order(open, {.lines = {{shop.belt(belt), mm(width), count, belt, std::nullopt, {}}},
                               .customer = "Lower Mill",
                               .phone = "",
                               .due = std::nullopt,
                               .note = ""});
        for (const auto& mounting : store::Tickets{open.connection}.at(*ordered.ticket).mountings)
            shop::recordCut(open, {mounting.id});
    }
}

/// Three orders; for each another piece is taken than was suggested.
void overrule(DeskShop& shop) {
    const shop::Shop& open = shop.session().shop();
    const auto belt = shop.belt("H8M 1200");
    for (int i = 0; i < 3; ++i) {
        const shop::Outlook outlook = shop::lookAt(open, belt, {{mm(30), 1}});
        const shop::Suggestion suggestion = shop::suggest(outlook);
        REQUIRE_FALSE(suggestion.others.empty());
        shop::DraftLine line{belt, mm(30), 1};
        line.way = suggestion.others.front().plan;
        for (const cutting::Piece& piece : outlook.problem.pieces)
            line.wayPieces.push_back(piece.code);
        line.overrideKey = i == 0 ? store::OverrideKey::OlderFirst : store::OverrideKey::NearerToHand;
        const auto ordered = shop::order(open, {.lines = {line}});
        for (const auto& mounting : store::Tickets{open.connection}.at(*ordered.ticket).mountings)
            shop::recordCut(open, {mounting.id});
    }
}

/// Two pieces agree, one is 20 mm short, the others are not there; all is settled by the likeliest cause.
void countAll(DeskShop& shop) {
    const shop::Shop& open = shop.session().shop();
    const store::CountId count = shop::beginCount(open, "B3-2");
    int seen = 0;
    for (const store::StockPiece& piece : store::Pieces{open.connection}.all()) {
        if (piece.extent.unit() == Unit::Rib || ++seen > 3) continue;
        for (int i = 0; i < 2; ++i)
            shop::note(open, count, piece.id, seen == 3 ? piece.extent - mm(20) : piece.extent,
                       store::Method::Calliper);
    }
    shop::closeCount(open, count);
    for (auto found = shop::findings(open); !found.empty(); found = shop::findings(open))
        shop::settle(open, found.front().difference, found.front().proposals.front());
}

ReviewPage& review(DeskWindow& desk) {
    for (Page* page : desk.window().pages())
        if (auto* found = qobject_cast<ReviewPage*>(page)) return *found;
    FAIL("no review");
    throw std::logic_error("unreachable");
}

void settle(DeskWindow& desk) {
    do {
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
    } while (!review(desk).settled());
}

void goToTheReview(DeskWindow& desk) {
    desk.window().open(&review(desk));
    settle(desk);
}

QListWidget& titles(DeskWindow& desk) { return *review(desk).findChild<QListWidget*>(); }

QString wordsOf(const ReviewPart& part) {
    QString words;
    for (const QWidget* widget : part.findChildren<QWidget*>())
        words += widget->accessibleDescription();
    return words;
}

QString wordsShown(const ReviewPart& part) {
    QString words;
    for (const QLabel* label : part.findChildren<QLabel*>())
        words += label->text() + QLatin1Char(' ');
    return words;
}

const ReviewPart& goTo(DeskWindow& desk, const QString& report) {
    const auto& parts = review(desk).parts();
    for (std::size_t row = 0; row < parts.size(); ++row)
        if (parts[row]->fileName() == report) titles(desk).setCurrentRow(static_cast<int>(row));
    settle(desk);
    return *review(desk).part();
}

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

TEST_CASE("The owner's review tells costs and margins", "[review]") {
    DeskShop shop;
    trade(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const auto columns = review(desk).part()->table().columns;
    CHECK(std::find(columns.begin(), columns.end(), "cost_lost") != columns.end());
    for (int row = 0; row < titles(desk).count(); ++row)
        CHECK_FALSE(titles(desk).item(row)->isHidden());
}

namespace {

/// All that a part says: its words, its pictures as they are told, its table.
QString allOf(const ReviewPart& part) {
    return wordsShown(part) + wordsOf(part) + QString::fromStdString(shop::csvOf(part.table()));
}

QString pdfWords(const QString& file) {
    QProcess reader;
    reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), file, QStringLiteral("-")});
    REQUIRE(reader.waitForFinished());
    REQUIRE(reader.exitCode() == 0);
    return QString::fromUtf8(reader.readAllStandardOutput());
}

/// Sleeves at a cost that no width, count or share can be taken for.
void buyDear(DeskShop& shop) {
    for (const auto& [belt, width, cents] :
         {std::tuple{"H8M 1200", 400, 7'654'321}, std::tuple{"T10 1250", 300, 8'765'432}}) {
        shop::Delivery goods{.belt = shop.belt(belt), .extent = mm(width)};
        goods.costEach = Money::minor(cents);
        goods.place = "B3-2";
        shop::receive(shop.session().shop(), {goods});
    }
}

/// An amount of money of at least a hundred, as papers, screens and files write it here; widths have no two
/// decimals in this shop, shares one.
const QRegularExpression amount{
    QStringLiteral("[0-9]{2}[0-9\\x{2009}\\x{202F}\\x{00A0}]*[0-9][.][0-9]{2}(?![0-9.])")};

} // namespace

TEST_CASE(
    "The stock manager sees what counting found, how right the book is and where the width went, and no "
    "cost on any page, in any table, CSV or PDF",
    "[review]") {
    DeskShop shop;
    buyDear(shop);
    trade(shop);
    countAll(shop);
    const store::PersonId owner = shop.session().person().id;
    store::Transaction transaction{shop.connection()};
    const store::PersonId manager =
        store::People{shop.connection()}.add("SM", "S. Mercer", store::Role::StockManager);
    transaction.commit();
    DeskWindow desk{shop};
    goToTheReview(desk);
    const std::vector<QString> ownersOnly{"purchase", "what-if", "margin", "day"};
    const auto& parts = review(desk).parts();
    const auto isOwners = [&](const ReviewPart& part) {
        return std::find(ownersOnly.begin(), ownersOnly.end(), part.fileName()) != ownersOnly.end();
    };
    QString told; // to the owner: what is looked for is there to be seen
    for (const auto* part : parts)
        if (!isOwners(*part)) told += allOf(goTo(desk, part->fileName()));
    CHECK(told.contains("cost"));
    CHECK(told.contains(amount));

    shop.session().actAs(manager); // while the owner's figures stand on the page
    CHECK(desk.window().current() == &review(desk));
    settle(desk);
    for (std::size_t row = 0; row < parts.size(); ++row) {
        INFO(parts[row]->fileName().toStdString());
        CHECK(titles(desk).item(static_cast<int>(row))->isHidden() == isOwners(*parts[row]));
        if (!isOwners(*parts[row])) CHECK_FALSE(allOf(*parts[row]).contains(amount));
    }
    for (const auto* part : parts) {
        if (isOwners(*part)) continue;
        const QString words = allOf(goTo(desk, part->fileName()));
        INFO(words.toStdString());
        CHECK_FALSE(part->table().columns.empty());
        for (const std::string& column : part->table().columns)
            CHECK(column.find("cost") == std::string::npos);
        CHECK_FALSE(words.contains(amount));
        desk.press(Qt::Key_E, Qt::ControlModifier);
    }
    const QDir papers{shop.papers()};
    CHECK(papers.entryList({"*.csv"}).size() == static_cast<int>(parts.size() - ownersOnly.size()));
    for (const QString& name : papers.entryList({"*.csv"})) {
        QFile file{papers.filePath(name)};
        REQUIRE(file.open(QIODevice::ReadOnly));
        const QString csv = QString::fromUtf8(file.readAll());
        INFO(name.toStdString());
        CHECK_FALSE(csv.contains("cost"));
        CHECK_FALSE(csv.contains(amount));
    }
    CHECK(wordsShown(goTo(desk, "accuracy")).contains("Proved within 90 days"));
    desk.press(Qt::Key_P, Qt::ControlModifier);
    settle(desk);
    const QString report = pdfWords(papers.filePath("report-2026-03-01-to-2026-03-31.pdf"));
    CHECK(report.contains("H8M 1200"));
    CHECK_FALSE(report.contains("ost lost"));
    CHECK_FALSE(report.contains(amount));

    shop.session().actAs(owner);
    settle(desk);
    const auto columns = goTo(desk, "waste").table().columns;
    CHECK(std::find(columns.begin(), columns.end(), "cost_lost") != columns.end());
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

TEST_CASE("What was done otherwise is replayed both ways by a key, and the verdict is said", "[review]") {
    DeskShop shop;
    trade(shop);
    overrule(shop);
    DeskWindow desk{shop};
    goToTheReview(desk);
    const ReviewPart& part = goTo(desk, "overrides");
    CHECK(part.table().columns.back() == "expected_doubt");
    CHECK(wordsShown(part).contains("3 of"));
    desk.press(Qt::Key_F5);
    settle(desk);
    CHECK(wordsShown(part).contains("Replayed both ways, doing otherwise"));
    const shop::ReportTable table = part.table();
    CHECK(table.columns.back() == "told");
    CHECK(table.rows.front()[6] == "3");
    CHECK(table.rows.back()[0] == "belt");
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
