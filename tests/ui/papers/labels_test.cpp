#include "tests/catch.h"

#include "core/measure/code.h"
#include "tests/ui/papers/example_papers.h"

using namespace riband;
using namespace riband::ui;

namespace {

QByteArray pdfOfLabels(const std::vector<Label>& labels) {
    return pdfOf(labelSize(example::shop()),
                 [&](QPagedPaintDevice& device) { paintLabels(device, labels, example::shop()); });
}

const RemnantLabel remnant{"7K2-M", "H8M 1200", Width::micrometres(128'500), "B3-2",
                           std::chrono::sys_days{std::chrono::year{2026} / 3 / 14}};
const BeltLabel cutBelt{"N2B-4",     "1200H8M30", "H8M 1200",    Width::millimetres(30),
                        "+0.8 -0.8", "N2B-4",     "Łucja Müller"};

} // namespace

TEST_CASE("A remnant's label says code, belt, width, place and birth, and can be scanned", "[labels]") {
    const QByteArray pdf = pdfOfLabels({remnant});
    const QString words = example::words(pdf);
    for (const char* word : {"7K2-M", "H8M 1200", "128.5 mm", "B3-2", "2026-03-14"}) {
        INFO(word);
        CHECK(words.contains(word));
    }
    CHECK(example::codesOn(example::pages(pdf, 203).front()) == std::vector<std::string>{"7K2-M"});
}

TEST_CASE("A place's label says its name large, and is scanned as that", "[labels]") {
    const QByteArray pdf = pdfOfLabels({PlaceLabel{"B3-22", "in B3"}});
    CHECK(example::words(pdf).contains("B3-22"));
    CHECK(example::words(pdf).contains("in B3"));
    CHECK(example::codesOn(example::pages(pdf, 203).front()) == std::vector<std::string>{"B3-22"});
}

TEST_CASE("A belt's label says the printed form, the width with its tolerance, and whose it is", "[labels]") {
    const QString words = example::words(pdfOfLabels({cutBelt}));
    for (const char* word : {"1200H8M30", "H8M 1200", "30 mm", "+0.8 -0.8", "N2B-4", "Łucja Müller"}) {
        INFO(word);
        CHECK(words.contains(word));
    }
}

TEST_CASE("Each label has a page of 58 by 40 mm, and nothing leaves it, however long the words", "[labels]") {
    RemnantLabel longRemnant = remnant;
    longRemnant.designation = "T10 12500 polyurethane, steel cord, foam cover 5 mm";
    longRemnant.place = "Regal 14, Fach 3b, ganz oben links";
    longRemnant.code = "7K2R4TX-5";
    BeltLabel longBelt = cutBelt;
    longBelt.customer = "Przedsiębiorstwo Produkcyjno-Handlowe Łożyska i Napędy Sp. z o.o. w Gnieźnie";
    longBelt.printedForm = "6PJ1194 polyurethane steel cord";
    const auto pages = example::pages(pdfOfLabels({longRemnant, longBelt}), 203);
    REQUIRE(pages.size() == 2);
    for (const QImage& page : pages) {
        CHECK(page.width() * 25.4 / 203 == Approx(58).margin(.3));
        CHECK(page.height() * 25.4 / 203 == Approx(40).margin(.3));
        const QRectF ink = example::inked(page, 203);
        CHECK(ink.left() > 1);
        CHECK(ink.right() < 57);
        CHECK(ink.top() > 1);
        CHECK(ink.bottom() < 39.9);
    }
    CHECK(example::codesOn(pages[0]) == std::vector<std::string>{"7K2R4TX-5"});
}

TEST_CASE("A label's code is written so large that an arm's length is no hindrance", "[labels]") {
    // 4 mm capitals: the upper half of the label left of the width, between belt and boxes (7 to 15.6 mm).
    const QImage page = example::pages(pdfOfLabels({remnant}), 254).front(); // 10 dots a millimetre
    const QRectF ink = example::inked(page.copy(15, 72, 230, 82), 254);
    CHECK(ink.height() >= 4);
}

TEST_CASE("A larger and a smaller roll have the same label, and both are scanned", "[labels]") {
    for (const auto& [wide, high] : {std::pair{100, 50}, std::pair{45, 31}, std::pair{70, 70}}) {
        store::ShopSettings shop = example::shop();
        shop.labels.width = Width::millimetres(wide);
        shop.labels.height = Width::millimetres(high);
        INFO(wide << " x " << high);
        const QByteArray pdf =
            pdfOf(labelSize(shop), [&](QPagedPaintDevice& device) { paintLabels(device, {remnant}, shop); });
        const QImage page = example::pages(pdf, 203).front();
        CHECK(page.width() * 25.4 / 203 == Approx(wide).margin(.3));
        CHECK(page.height() * 25.4 / 203 == Approx(high).margin(.3));
        CHECK(example::inked(page, 203).right() < wide);
        CHECK(example::codesOn(page) == std::vector<std::string>{"7K2-M"});
    }
}

TEST_CASE("Sheets are filled row by row, each label on its place, and each is scanned", "[labels]") {
    store::ShopSettings shop = example::shop();
    // Three by eight of 70 x 36 mm fill an A4 sheet but for 4.5 mm above and below.
    shop.labels = {Width::millimetres(70),
                   Width::millimetres(36),
                   3,
                   8,
                   Width::micrometres(0),
                   Width::micrometres(4500),
                   Width::micrometres(0),
                   Width::micrometres(0),
                   true};
    std::vector<Label> labels;
    std::int64_t number = 0;
    std::vector<std::string> codes;
    for (int i = 0; i < 26; ++i) {
        RemnantLabel label = remnant;
        label.code = Code::next(CodeKind::Piece, number).text();
        codes.push_back(label.code);
        labels.push_back(label);
    }
    int sheets = 0;
    const QByteArray pdf = pdfOf(
        labelSize(shop), [&](QPagedPaintDevice& device) { sheets = paintLabels(device, labels, shop); });
    CHECK(sheets == 2);
    const auto pages = example::pages(pdf, 300);
    REQUIRE(pages.size() == 2);
    CHECK(pages[0].width() * 25.4 / 300 == Approx(210).margin(.3));
    const auto cell = [&](const QImage& page, int number_) {
        const double dot = 300 / 25.4;
        return page.copy(static_cast<int>(number_ % 3 * 70 * dot),
                         static_cast<int>((4.5 + number_ / 3 * 36) * dot), static_cast<int>(70 * dot),
                         static_cast<int>(36 * dot));
    };
    for (int i = 0; i < 26; ++i) {
        INFO(i);
        CHECK(example::codesOn(cell(pages[static_cast<std::size_t>(i / 24)], i % 24)) ==
              std::vector<std::string>{codes[static_cast<std::size_t>(i)]});
    }
}

TEST_CASE("No label makes no page", "[labels]") {
    int pages = -1;
    pdfOf(labelSize(example::shop()),
          [&](QPagedPaintDevice& device) { pages = paintLabels(device, {}, example::shop()); });
    CHECK(pages == 0);
}
