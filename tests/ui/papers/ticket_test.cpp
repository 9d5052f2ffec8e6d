#include "tests/catch.h"

#include "tests/ui/papers/example_papers.h"
#include "ui/papers/leaves.h"
#include "ui/words/words.h"

using namespace riband;
using namespace riband::ui;

namespace {

struct Printed {
    QByteArray pdf;
    int pages;
    QString words;
};

Printed print(const TicketPaper& paper, store::ShopSettings shop = example::shop()) {
    Printed printed{{}, 0, {}};
    printed.pdf = pdfOf(ticketSize(shop), [&](QPagedPaintDevice& device) {
        printed.pages = paintTicket(device, paper, shop, example::tables());
    });
    printed.words = example::words(printed.pdf);
    return printed;
}

shop::BenchMounting threeThirties(int number = 1) {
    return example::mounting("H8M 1200", Width::micrometres(128'500), Width::millimetres(30), 3, number);
}

void checkSays(const QString& words, std::initializer_list<const char*> all) {
    for (const char* word : all) {
        INFO(word);
        CHECK(words.contains(QString::fromUtf8(word)));
    }
}

/// Everything printed keeps the margin of 14 mm (less half a millimetre for the strength of lines).
void checkMargins(const QByteArray& pdf, double width, double height) {
    for (const QImage& page : example::pages(pdf, 100)) {
        CHECK(page.width() * .254 == Approx(width).margin(.6));
        CHECK(page.height() * .254 == Approx(height).margin(.6));
        const QRectF ink = example::inked(page, 100);
        CHECK(ink.left() >= 13.5);
        CHECK(ink.right() <= width - 13.5);
        CHECK(ink.top() >= 13.5);
        CHECK(ink.bottom() <= height - 13.5);
    }
}

/// A dark line at least `length` mm long that stands upright at x (mm).
bool hasUpright(const QImage& page, int dpi, double x, double length) {
    const int column = qRound(x / 25.4 * dpi);
    int dark = 0, longest = 0;
    for (int y = 0; y < page.height(); ++y) {
        bool here = false;
        for (int off : {-1, 0, 1})
            here = here || page.constScanLine(y)[column + off] < 140;
        dark = here ? dark + 1 : 0;
        longest = std::max(longest, dark);
    }
    return longest * 25.4 / dpi >= length;
}

} // namespace

TEST_CASE("The ticket says what to cut, from what, where it lies, and how the cutter is set up", "[ticket]") {
    const Printed printed = print(example::ticket({threeThirties()}));
    CHECK(printed.pages == 1);
    checkSays(printed.words,
              {"T2B-6", "N2B-4", "Zakłady Łożysk Gniezno", "3 × H8M 1200, 30 mm", "B3-2",
               "rubber, glass cord", "128.5 mm",
               // the set-up sheet
               "493.0 mm", "± 0.3, just taut, no tension", "10 mm", "2.5 mm", "then zero the display",
               "ISO 13050", "blade just marks the shaft", "sleeve runs true",
               // the stops, one by one and cumulative
               "60 mm", "90 mm", "Left 36 mm: back to the rack", "page 1 of 1"});
}

TEST_CASE("The ticket warns: emergency stop, blade, shafts, clothing, manual, trained people", "[ticket]") {
    const QString words = print(example::ticket({threeThirties()})).words.simplified();
    checkSays(words,
              {"emergency stop", "moving blade", "shafts rotate", "loose clothing",
               "gloves only as the local rules say", "The cutter's own manual", "Only trained people"});
}

TEST_CASE("What is too narrow to be held is said to be scrap", "[ticket]") {
    const auto paper = example::ticket(
        {example::mounting("H8M 1200", Width::micrometres(98'500), Width::millimetres(30), 3)});
    CHECK(print(paper).words.contains("Left 6 mm: scrap"));
}

TEST_CASE("A ribbed belt's stops are ribs, with the millimetres that the display shows", "[ticket]") {
    // PJ has 2.34 mm a rib: 6 ribs 14.04, 12 ribs 28.08.
    auto ribbed = example::mounting("PJ 1194", Ribs{40}, Ribs{6}, 2);
    ribbed.setUp->approximate = true;
    ribbed.setUp->remarks = {cutting::SetUp::Remark::CutInTheGroove};
    const QString words = print(example::ticket({ribbed})).words;
    checkSays(words, {"groove", "6 = 14.04 mm", "12 = 28.08 mm", "about 493 mm", "whole ribs", "27 ribs"});
}

TEST_CASE("Steel, aramid and polyurethane are never cut without a word", "[ticket]") {
    auto steel = threeThirties(1), aramid = threeThirties(2), body = threeThirties(3);
    steel.belt.cord = "steel";
    aramid.belt.cord = "aramid";
    body.belt.body = "polyurethane";
    checkSays(print(example::ticket({steel, aramid, body})).words,
              {"Steel cord: only with a knife", "Aramid cord: only with a knife",
               "Polyurethane body: only with a knife"});
    steel.setUp->remarks = {cutting::SetUp::Remark::SteelCord};
    const QString words = print(example::ticket({steel})).words;
    CHECK(words.contains("this cutter is not made for it"));
    CHECK_FALSE(words.contains("only with a knife"));
}

TEST_CASE("A piece that no shaft takes is printed with the reason, and without a distance", "[ticket]") {
    auto mounting = threeThirties();
    mounting.setUp.reset();
    mounting.setUpFault = cutting::SetUpFault::TooLong;
    const QString words = print(example::ticket({mounting})).words;
    CHECK_FALSE(words.contains("distance of shafts"));
    CHECK(words.contains("shaft"));
}

TEST_CASE("Twelve mountings take several pages, and none is cut in two", "[ticket]") {
    std::vector<shop::BenchMounting> all;
    for (int i = 1; i <= 12; ++i)
        all.push_back(threeThirties(i));
    const Printed printed = print(example::ticket(all));
    const QStringList pages = printed.words.split('\f', Qt::SkipEmptyParts);
    REQUIRE(pages.size() == printed.pages);
    CHECK(printed.pages >= 6);
    int found = 0;
    for (int i = 0; i < pages.size(); ++i) {
        const auto heads = pages[i].count("of 12"), ends = pages[i].count("really left");
        CHECK(heads == ends);
        CHECK(pages[i].contains(QString("page %1 of %2").arg(i + 1).arg(printed.pages)));
        found += static_cast<int>(heads);
    }
    CHECK(found == 12);
    checkMargins(printed.pdf, 210, 297);
}

TEST_CASE("A sleeve full of narrow belts fits one page, each belt with its stop", "[ticket]") {
    const Printed printed = print(
        example::ticket({example::mounting("T5 500", Width::millimetres(470), Width::millimetres(5), 92)}));
    CHECK(printed.words.contains("460 mm")); // the last stop
    CHECK(printed.pages == 2);               // the head, then the mounting
    checkMargins(printed.pdf, 210, 297);
}

TEST_CASE("Every stop of many odd widths can be read whole, for the order and for the shelf", "[ticket]") {
    auto mounting = example::mounting("XL 414", Width::millimetres(480), Width::micrometres(9'525), 40);
    mounting.mounting.cuts = {{store::LineId{1}, Width::micrometres(9'525), 1},
                              {std::nullopt, Width::micrometres(9'525), 39}};
    const QString words = print(example::ticket({mounting})).words;
    for (std::int64_t belt = 1; belt <= 40; ++belt) {
        INFO(belt);
        CHECK(words.contains(shown(Extent{Width::micrometres(9'525 * belt)})));
    }
    CHECK(words.count("shelf") >= 39);
    CHECK_FALSE(words.contains(QChar{0x2026}));
}

TEST_CASE("Each width has its own tolerance on the ticket", "[ticket]") {
    auto mounting = threeThirties();
    const auto& belt = mounting.belt.belt;
    for (const auto wide : {Width::millimetres(25), Width::millimetres(85)})
        mounting.tolerances.push_back({wide, *example::tables().widthTolerance(belt, wide)});
    // ISO 13050, 840 to 1680 mm long: up to 40 mm wide +0.8 -1.2, over 50 mm +1.6 -2.
    checkSays(print(example::ticket({mounting})).words,
              {"Width may differ: 30 mm, 25 mm +0.8 -1.2; 85 mm +1.6 -2 (ISO 13050)"});
}

TEST_CASE("A changed line prints no words that hold no more, and a line that is cancelled is not there",
          "[ticket]") {
    auto paper = example::ticket({threeThirties()});
    CHECK(print(paper).words.contains("said: 3 x h8m 1200 30"));
    paper.orders.front().lines.front().quantity = 2;
    CHECK_FALSE(print(paper).words.contains("said:"));
    CHECK(print(paper).words.contains("changed since it was ordered"));
    paper.orders.front().lines.front().cancelled = 2;
    CHECK_FALSE(print(paper).words.contains("changed since"));
}

TEST_CASE("A ticket for several orders names each with its customer, and of each what is cut here",
          "[ticket]") {
    auto mounting = threeThirties();
    auto paper = example::ticket({mounting});
    store::Order other = paper.orders.front();
    other.id = store::OrderId{2};
    other.code = "N2D-Z";
    other.customerName = "Aldermoor Dairy";
    other.lines.push_back(other.lines.front()); // the second one is cut elsewhere
    other.lines.front().id = store::LineId{7};
    other.lines.front().position = 7;
    other.lines.front().said.clear();
    other.lines.back().id = store::LineId{8};
    other.lines.back().extent = Width::millimetres(77);
    auto& shown = paper.mountings.front();
    shown.mounting.cuts.push_back({store::LineId{7}, Width::millimetres(30), 1});
    shown.stops.push_back(Width::millimetres(30));
    shown.cumulative.push_back(Width::millimetres(120));
    paper.orders.push_back(other);
    const QString words = print(paper).words;
    checkSays(words, {"cut together for N2B-4, N2D-Z", "Zakłady Łożysk Gniezno", "Aldermoor Dairy",
                      "N2B-4 line 1", "N2D-Z line 7", "3 × H8M 1200, 30 mm", "1 of 3 × "});
    CHECK_FALSE(words.contains("77 mm"));
}

TEST_CASE("A line that another ticket cuts is not on this one", "[ticket]") {
    auto paper = example::ticket({threeThirties(1), example::mounting("T5 500", Width::millimetres(470),
                                                                      Width::millimetres(16), 2, 2)});
    CHECK(print(paper).words.contains("16 mm"));
    paper.mountings.pop_back();
    const QString words = print(paper).words;
    CHECK_FALSE(words.contains("16 mm"));
    CHECK(words.contains("3 × H8M 1200"));
}

TEST_CASE("Long names and notes stay on the paper, A4 and Letter", "[ticket]") {
    auto mounting = threeThirties();
    mounting.belt.designation = "H8M 1200 " + std::string(90, 'W');
    mounting.piece.place = "Regal 14, Fach 3b, ganz oben links hinter den Scheiben";
    auto paper = example::ticket({mounting});
    paper.orders.front().customerName = std::string(180, 'M');
    paper.orders.front().note = std::string(400, 'X');
    paper.orders.front().lines.front().said = std::string(199, 'h');
    paper.fromShelf = {std::string(300, 'S')};
    for (const char* size : {"A4", "Letter"}) {
        auto shop = example::shop();
        shop.paper = size;
        shop.name = std::string(120, 'N');
        const bool a4 = std::string{size} == "A4";
        checkMargins(print(paper, shop).pdf, a4 ? 210 : 215.9, a4 ? 297 : 279.4);
    }
}

TEST_CASE("The band on paper is to scale over the width between the margins", "[ticket]") {
    // A4 less 14 mm at each side is 182 mm for 128.5 mm of piece. From the right: trim 2.5, belts 30 each.
    const int dpi = 254;
    const QImage page = example::pages(print(example::ticket({threeThirties()})).pdf, dpi).front();
    const double scale = 182 / 128.5, right = 196;
    for (double edge : {2.5, 32.5, 62.5, 92.5}) {
        INFO(edge);
        CHECK(hasUpright(page, dpi, right - edge * scale, 15));
    }
    CHECK_FALSE(hasUpright(page, dpi, right - 45 * scale, 15)); // within a belt there is none
}

TEST_CASE("Another reader reads the ticket's code back", "[ticket]") {
    const QImage page = example::pages(print(example::ticket({threeThirties()})).pdf, 300).front();
    CHECK(example::codesOn(page) == std::vector<std::string>{"T2B-6"});
}

TEST_CASE("Ready belts are fetched from the shelf: their ticket has no mounting and no caution", "[ticket]") {
    TicketPaper paper = example::ticket({});
    paper.fromShelf = {"PJ 1194, 6 ribs: 3 belts, 7K2-M 7K4-2 7K6-T"};
    const QString words = print(paper).words;
    checkSays(words, {"From the shelf, no cutting", "7K4-2"});
    CHECK_FALSE(words.contains("emergency stop"));
}

TEST_CASE("Blocks fill a page before the next begins; a heading goes with what follows", "[ticket]") {
    const auto nothing = [](QPainter&, const QRectF&) {};
    using Pages = std::vector<std::vector<std::size_t>>;
    CHECK(paginate({{40, nothing}, {40, nothing}, {40, nothing}}, 100) == Pages{{0, 1}, {2}});
    CHECK(paginate({{40, nothing}, {50, nothing, true}, {20, nothing}}, 100) == Pages{{0}, {1, 2}});
    CHECK(paginate({{10, nothing}, {150, nothing}, {10, nothing}}, 100) == Pages{{0}, {1}, {2}});
    CHECK(paginate({}, 100) == Pages{{}});
}
