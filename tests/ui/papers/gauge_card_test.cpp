#include "ui/papers/gauge_card.h"

#include "tests/catch.h"
#include "tests/ui/papers/example_papers.h"

#include <algorithm>
#include <cmath>
#include <map>

using namespace riband;
using namespace riband::ui;

// The PDF is read as a printer reads it: pdftoppm makes dots of it, and what is measured is dots.

namespace {

constexpr int dpi = 500; // as fine as an image reader of 128 MB takes a page
constexpr double mmPerDot = 25.4 / dpi;

struct Printed {
    GaugeCard card;
    std::vector<QImage> pages;
};

QByteArray pdf(QPageSize::PageSizeId size) {
    return pdfOf(QPageSize{size},
                 [](QPagedPaintDevice& device) { paintGaugeCard(device, example::tables()); });
}

const Printed& printed(QPageSize::PageSizeId size) {
    static std::map<QPageSize::PageSizeId, Printed> all;
    const auto at = all.find(size);
    if (at != all.end()) return at->second;
    const QSizeF paper = QPageSize{size}.size(QPageSize::Millimeter);
    return all
        .emplace(size, Printed{layOutGaugeCard(example::tables(), paper), example::pages(pdf(size), dpi)})
        .first->second;
}

int dots(double millimetres) { return static_cast<int>(std::lround(millimetres / mmPerDot)); }

/// Where dark strokes cross a line of dots from left to right: the middle of each, in mm.
std::vector<double> strokes(const QImage& page, double y, double from, double to) {
    std::vector<double> found;
    const uchar* line = page.constScanLine(dots(y));
    int begun = -1;
    for (int x = std::max(0, dots(from)); x <= std::min(page.width() - 1, dots(to)); ++x) {
        const bool dark = line[x] < 140;
        if (dark && begun < 0) begun = x;
        if (!dark && begun >= 0) {
            found.push_back((begun + x - 1) / 2.0 * mmPerDot);
            begun = -1;
        }
    }
    return found;
}

/// Dark from left to right at least once in each column: how far a row of teeth reaches.
std::vector<bool> shadow(const QImage& page, double top, double bottom, double from, double to) {
    std::vector<bool> dark;
    for (int x = dots(from); x <= dots(to); ++x) {
        bool any = false;
        for (int y = dots(top); y <= dots(bottom) && !any; ++y)
            any = page.constScanLine(y)[x] < 140;
        dark.push_back(any);
    }
    return dark;
}

const QPageSize::PageSizeId papers[] = {QPageSize::A4, QPageSize::Letter};

} // namespace

TEST_CASE("The check line of the printed card is 100 mm long, on every page", "[papers][gauge]") {
    for (const auto size : papers) {
        const Printed& print = printed(size);
        REQUIRE(static_cast<int>(print.pages.size()) == print.card.pages);
        for (const QImage& page : print.pages) {
            const QPointF start = print.card.checkLine;
            // Through the long marks at 0, 50 and 100.
            const auto marks = strokes(page, start.y() + 2, start.x() - 2, start.x() + 102);
            REQUIRE(marks.size() == 3);
            CHECK(marks[2] - marks[0] == Approx(100).margin(.1));
            CHECK(marks[1] - marks[0] == Approx(50).margin(.1));
        }
    }
}

TEST_CASE("Every printed rule is true to its pitch within 0.1 mm over its whole length", "[papers][gauge]") {
    for (const auto size : papers) {
        const Printed& print = printed(size);
        for (const GaugeRow& row : print.card.rows) {
            INFO(row.profile->name);
            const double pitch = row.profile->pitch.inMillimetres();
            const auto& page = print.pages[static_cast<std::size_t>(row.page)];
            // Just below the line every tooth has its mark.
            const auto marks = strokes(page, row.rule() + .7, row.left() - 1, row.left() + row.span() + 1);
            REQUIRE(marks.size() == static_cast<std::size_t>(row.pitches) + 1);
            for (std::size_t i = 0; i < marks.size(); ++i)
                CHECK(marks[i] - marks[0] == Approx(static_cast<double>(i) * pitch).margin(.1));
        }
    }
}

TEST_CASE("Every profile has 20 teeth where the paper is wide enough, else 10, the largest 5",
          "[papers][gauge]") {
    for (const auto size : papers)
        for (const GaugeRow& row : printed(size).card.rows) {
            INFO(row.profile->name);
            const double pitch = row.profile->pitch.inMillimetres();
            const double width = printed(size).card.size.width() - 20;
            if (20 * pitch <= width)
                CHECK(row.pitches == 20);
            else
                CHECK(row.pitches == (10 * pitch <= width ? 10 : 5));
            CHECK(row.left() + row.span() <= printed(size).card.size.width() - 9.99);
        }
}

TEST_CASE("The printed teeth stand one pitch apart and are as high as the tables say", "[papers][gauge]") {
    for (const char* name : {"T5", "T10", "XL", "L", "H5M", "H8M", "R8M", "S8M", "AT10"}) {
        INFO(name);
        const Printed& print = printed(QPageSize::A4);
        const auto row = std::find_if(print.card.rows.begin(), print.card.rows.end(),
                                      [&](const GaugeRow& each) { return each.profile->name == name; });
        REQUIRE(row != print.card.rows.end());
        const auto& page = print.pages[static_cast<std::size_t>(row->page)];
        const double pitch = row->profile->pitch.inMillimetres(), height = *row->profile->form.height;
        const double tips = row->rule() - .8; // 0.8 mm above the rule
        // Halfway down the teeth: each tooth is one dark stroke.
        const auto teeth = strokes(page, tips - height / 2, row->left() - 1, row->left() + row->span() + 1);
        REQUIRE(teeth.size() == static_cast<std::size_t>(row->pitches));
        CHECK(teeth.back() - teeth.front() == Approx((row->pitches - 1) * pitch).margin(.1));
        // The middle column of the first tooth ends at the tip (a dimple is shallow), the gap at the land.
        const auto lowest = [&](double x) {
            for (double y = tips + .5; y > tips - height - 2; y -= mmPerDot)
                if (page.constScanLine(dots(y))[dots(x)] < 140) return y;
            return 0.0;
        };
        CHECK(lowest(row->left() + pitch / 2) - lowest(row->left() + pitch) == Approx(height).margin(.15));
    }
}

TEST_CASE("The card has every family and every single-sided profile once, each with its figures",
          "[papers][gauge]") {
    const auto& rows = printed(QPageSize::A4).card.rows;
    const QString words = example::words(pdf(QPageSize::A4));
    std::size_t single = 0;
    for (const belt::Profile& profile : example::tables().profiles()) {
        if (profile.doubleSided) continue;
        ++single;
        CHECK(words.contains(QString::fromStdString(profile.name) + " · pitch"));
    }
    CHECK(rows.size() == single);
    CHECK(std::count_if(rows.begin(), rows.end(), [](const GaugeRow& row) { return row.beginsFamily; }) == 8);
    CHECK(words.contains("T5 · pitch 5 mm · tooth 1.2 · in all 2.2 · DIN 7721"));
    CHECK(words.contains("20 teeth = 100 mm"));
    CHECK(words.contains("10 teeth = 80 mm"));
    CHECK(words.contains("20 teeth = 40.64 mm")); // MXL: too short for words at the tenth
    CHECK(words.contains("20 ribs = 46.8 mm"));   // PJ
    CHECK(words.contains("form about so"));       // round modified teeth have no published points
}

TEST_CASE("Nothing on the card runs into the next row or off the paper", "[papers][gauge]") {
    for (const auto size : papers) {
        const Printed& print = printed(size);
        for (const QImage& page : print.pages) {
            const QRectF ink = example::inked(page, dpi);
            CHECK(ink.left() > 9.5);
            CHECK(ink.right() < print.card.size.width() - 9.5);
            CHECK(ink.top() > 9);
            CHECK(ink.bottom() < print.card.size.height() - 9);
        }
        for (std::size_t i = 1; i < print.card.rows.size(); ++i) {
            const GaugeRow &row = print.card.rows[i - 1], &next = print.card.rows[i];
            if (row.page == next.page) CHECK(next.topLeft.y() >= row.topLeft.y() + row.height() - 1e-9);
            // Above each caption a strip of paper stays white.
            const auto& page = print.pages[static_cast<std::size_t>(row.page)];
            const double below = row.topLeft.y() + row.height();
            const auto ink = shadow(page, below - .6, below - .2, row.left(), row.left() + 200);
            CHECK(std::none_of(ink.begin(), ink.end(), [](bool dark) { return dark; }));
        }
    }
}
