#include "tests/catch.h"

#include "core/shop/price.h"
#include "tests/ui/papers/example_papers.h"

using namespace riband;
using namespace riband::ui;

namespace {

QByteArray pdfOfOrder(const OrderPaper& paper, const store::ShopSettings& shop = example::shop()) {
    return pdfOf(ticketSize(shop), [&](QPagedPaintDevice& device) { paintOrder(device, paper, shop); });
}

/// Without spaces: figures that stand under each other are set digit by digit.
bool says(const QString& words, QString line) {
    return words.simplified().remove(' ').contains(line.remove(' '));
}

} // namespace

TEST_CASE("The customer sees how each price is made up, the tax and the total", "[order]") {
    // 3 belts of 30 mm: 90 mm at 0.51 is 45.90, 3 cuts at 3.60 are 10.80, net 56.70, 20 % tax 11.34: 68.04.
    const QString words = example::words(pdfOfOrder(example::order(1)));
    CHECK(says(words, "3 × H8M 1200, 30 mm 56.70"));
    CHECK(says(words, "width, 90 mm in all 45.90"));
    CHECK(says(words, "cutting, 3 × 10.80"));
    CHECK(says(words, "net 56.70"));
    CHECK(says(words, "tax, 20 % 11.34"));
    CHECK(says(words, "Total, EUR 68.04"));
    CHECK(says(words, "Weirside Drives"));
    CHECK(says(words, "Mill Lane 4"));
}

TEST_CASE("The order's paper says that belts are cut for it, unless all came ready from the shelf",
          "[order]") {
    OrderPaper paper = example::order(1);
    CHECK(says(example::words(pdfOfOrder(paper)), "cut to width for this order"));
    paper.allFromShelf = true;
    const QString words = example::words(pdfOfOrder(paper));
    CHECK_FALSE(says(words, "cut to width"));
    CHECK(says(words, "Ready belts from the shelf"));
}

TEST_CASE("Where prices include the tax, the total comes first and the tax is said to be in it", "[order]") {
    auto shop = example::shop();
    shop.prices.pricesIncludeTax = true;
    OrderPaper paper = example::order(1);
    auto& line = paper.order.lines.front();
    line.price =
        riband::shop::priceOf(shop.prices, WidthPrice::thousandths(51'000), line.extent, line.quantity);
    const QString words = example::words(pdfOfOrder(paper, shop));
    CHECK(says(words, "3 × H8M 1200, 30 mm 56.70"));
    CHECK(says(words, "Total, EUR 56.70 of this tax, 20 % 9.45 net 47.25")); // 56.70 x 20/120
}

TEST_CASE("Discount, least price and rounding are named where they act, else not", "[order]") {
    OrderPaper paper = example::order(1);
    auto& price = paper.order.lines.front().price;
    QString words = example::words(pdfOfOrder(paper));
    CHECK_FALSE(says(words, "for the quantity"));
    CHECK_FALSE(says(words, "least price"));
    CHECK_FALSE(says(words, "rounding"));
    price.discount = Money::minor(-459);
    price.minimum = Money::minor(200);
    price.total = price.net + price.tax + Money::minor(1);
    words = example::words(pdfOfOrder(paper));
    CHECK(says(words, "for the quantity -4.59"));
    CHECK(says(words, "least price of a line 2.00"));
    CHECK(says(words, "rounding 0.01"));
}

TEST_CASE("A quote calls itself one and says that nothing is reserved", "[order]") {
    OrderPaper paper = example::order(1);
    paper.order.state = store::OrderState::Quoted;
    const QString words = example::words(pdfOfOrder(paper));
    CHECK(says(words, "Quote N2B-4"));
    CHECK(says(words, "Nothing is reserved"));
    CHECK_FALSE(says(words, "delivery"));
    paper.deliveryDays = {5};
    CHECK(says(example::words(pdfOfOrder(paper)), "not here; delivery takes about 5 days"));
    paper.deliveryDays = {0};
    CHECK(says(example::words(pdfOfOrder(paper)), "can be cut today"));
}

TEST_CASE("Sixty lines go on over the pages, each with its number, and the code can be scanned", "[order]") {
    const QByteArray pdf = pdfOfOrder(example::order(60));
    const QStringList pages = example::words(pdf).split('\f', Qt::SkipEmptyParts);
    REQUIRE(pages.size() > 2);
    qsizetype lines = 0;
    for (int i = 0; i < pages.size(); ++i) {
        lines += pages[i].count("H8M 1200, 30 mm");
        CHECK(pages[i].count("H8M 1200, 30 mm") == pages[i].count("width, 90 mm in all")); // none cut in two
        CHECK(pages[i].contains(QString("page %1 of %2").arg(i + 1).arg(pages.size())));
    }
    CHECK(lines == 60);
    CHECK(pages.last().contains("4082.40")); // 60 x 68.04
    CHECK(example::codesOn(example::pages(pdf, 200).back()) == std::vector<std::string>{"N2B-4"});
}

TEST_CASE("A long name or address stays within the margins", "[order]") {
    auto shop = example::shop();
    shop.name = std::string(140, 'N');
    shop.address = std::string(140, 'A') + "\nB\nC\nD\nE\nF\nG";
    OrderPaper paper = example::order(2);
    paper.order.customerName = std::string(200, 'M');
    paper.designations.front() = std::string(200, 'W');
    paper.order.note = std::string(500, 'x');
    for (const QImage& page : example::pages(pdfOfOrder(paper, shop), 100)) {
        const QRectF ink = example::inked(page, 100);
        CHECK(ink.left() >= 13.5);
        CHECK(ink.right() <= 196.5);
    }
}
