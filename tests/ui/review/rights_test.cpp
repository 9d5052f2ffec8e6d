#include "core/shop/receive.h"
#include "core/shop/reports/table.h"
#include "tests/ui/review/at_the_review.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>

namespace riband::ui {

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
    const QString report = pdfWords(papers.filePath("report-2026-03-01-to-2026-03-02.pdf"));
    CHECK(report.contains("H8M 1200"));
    CHECK_FALSE(report.contains("ost lost"));
    CHECK_FALSE(report.contains(amount));

    shop.session().actAs(owner);
    settle(desk);
    const auto columns = goTo(desk, "waste").table().columns;
    CHECK(std::find(columns.begin(), columns.end(), "cost_lost") != columns.end());
}

} // namespace riband::ui
