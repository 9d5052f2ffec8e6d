#include "tests/catch.h"

#include "core/measure/code.h"
#include "tests/ui/papers/example_papers.h"

#include <QPainter>

#include <algorithm>
#include <numeric>

using namespace riband;
using namespace riband::ui;

namespace {

QByteArray labelsPdf(const std::vector<Label>& labels, int dpi) {
    return pdfOf(labelSize(example::shop()), [&](QPagedPaintDevice& device) {
        static_cast<QPdfWriter&>(device).setResolution(dpi);
        paintLabels(device, labels, example::shop());
    });
}

std::vector<std::string> someCodes(CodeKind kind, int count) {
    std::vector<std::string> codes;
    std::int64_t number = 3;
    for (int i = 0; i < count; ++i, number += 977)
        codes.push_back(Code::next(kind, number).text());
    return codes;
}

std::vector<Label> labelsOf(const std::vector<std::string>& codes) {
    std::vector<Label> labels;
    for (const auto& code : codes)
        labels.push_back(RemnantLabel{code, "H8M 1200", Width::micrometres(128'500), "B3-2", Date{}});
    return labels;
}

/// Dots of each bar and space along the middle of the picture, without the white at both ends.
std::vector<int> runs(const QImage& image) {
    std::vector<int> found;
    const uchar* line = image.constScanLine(image.height() / 2);
    for (int x = 1, start = 0; x < image.width(); ++x)
        if ((line[x] < 128) != (line[x - 1] < 128)) {
            found.push_back(x - start);
            start = x;
        }
    return found;
}

QImage painted(const std::string& text, const QRectF& area, int dpi) {
    QImage image{600, 100, QImage::Format_Grayscale8};
    image.setDotsPerMeterX(qRound(dpi / .0254));
    image.setDotsPerMeterY(qRound(dpi / .0254));
    image.fill(Qt::white);
    QPainter painter{&image};
    paintCode128(painter, area, text);
    return image;
}

} // namespace

TEST_CASE("A symbol is as long as ISO/IEC 15417 counts it", "[code128]") {
    // 11 modules for start, each character and check, 13 for stop: 7 characters in set B are 11 x 9 + 13.
    CHECK(code128("PJJ123C").size() == 112);
    // abcdef in set B, the published example with check character 97.
    const auto modules = code128("abcdef");
    REQUIRE(modules.size() == 11 * 8 + 13);
    // Start B is 2 1 1 2 1 4: two modules of bar, one of space, and so on.
    const std::vector<bool> startB{1, 1, 0, 1, 0, 0, 1, 0, 0, 0, 0};
    CHECK(std::equal(startB.begin(), startB.end(), modules.begin()));
    // The stop character is 2 3 3 1 1 1 2.
    const std::vector<bool> stop{1, 1, 0, 0, 0, 1, 1, 1, 0, 1, 0, 1, 1};
    CHECK(std::equal(stop.rbegin(), stop.rend(), modules.rbegin()));
}

TEST_CASE("Nothing has no symbol, and no room paints none", "[code128]") {
    CHECK(code128("").empty());
    QImage image{100, 100, QImage::Format_Grayscale8};
    image.fill(Qt::white);
    QPainter painter{&image};
    CHECK(paintCode128(painter, {0, 0, 60, 60}, "7K2-M") == 0);
    CHECK(paintCode128(painter, {0, 0, 60, 60}, "") == 0);
    painter.end();
    CHECK(std::all_of(image.constBits(), image.constBits() + image.sizeInBytes(),
                      [](uchar c) { return c == 255; }));
}

TEST_CASE("Bars are whole dots of the device, with ten modules of white at each side", "[code128]") {
    for (int dpi : {203, 300}) {
        INFO(dpi);
        const double left = 3.4, width = 430.7; // not on a dot
        const QImage image = painted("7K2-M", {left, 0, width, 100}, dpi);
        const auto found = runs(image);
        REQUIRE(found.size() > 20);
        const int module = *std::min_element(found.begin() + 1, found.end());
        for (std::size_t i = 1; i < found.size(); ++i)
            CHECK(found[i] % module == 0);
        const int inked = std::accumulate(found.begin() + 1, found.end(), 0);
        CHECK(inked == module * static_cast<int>(code128("7K2-M").size()));
        CHECK(found[0] >= left + 10 * module - 1);
        CHECK(found[0] + inked + 10 * module <= left + width + 1);
        CHECK(module * 25.4 / dpi >= .19); // the least for open use
    }
}

TEST_CASE("A turned or scaled painter still sets whole dots", "[code128]") {
    QImage image{600, 100, QImage::Format_Grayscale8};
    image.fill(Qt::white);
    QPainter painter{&image};
    painter.scale(2.11, 2.11);
    painter.translate(3.3, 0);
    const double used = paintCode128(painter, {0, 0, 200, 40}, "T2B-6");
    painter.end();
    const auto found = runs(image);
    const int module = *std::min_element(found.begin() + 1, found.end());
    for (std::size_t i = 1; i < found.size(); ++i)
        CHECK(found[i] % module == 0);
    CHECK(used == Approx(module * (static_cast<double>(code128("T2B-6").size()) + 20) / 2.11).margin(.1));
    CHECK(example::codesOn(image) == std::vector<std::string>{"T2B-6"});
}

TEST_CASE("Another reader reads every label back, printed at 203 and at 300 dots an inch", "[code128]") {
    std::vector<std::string> codes = someCodes(CodeKind::Piece, 24);
    for (CodeKind kind : {CodeKind::Ticket, CodeKind::Order})
        for (const auto& code : someCodes(kind, 8))
            codes.push_back(code);
    for (int dpi : {203, 300}) {
        const auto pages = example::pages(labelsPdf(labelsOf(codes), dpi), dpi);
        REQUIRE(pages.size() == codes.size());
        for (std::size_t i = 0; i < pages.size(); ++i) {
            INFO(codes[i] << " at " << dpi);
            CHECK(example::codesOn(pages[i]) == std::vector<std::string>{codes[i]});
        }
    }
}

TEST_CASE("A label made for 203 dots an inch is read from a printer of 300, too", "[code128]") {
    const auto codes = someCodes(CodeKind::Piece, 8);
    const auto pages = example::pages(labelsPdf(labelsOf(codes), 203), 300);
    for (std::size_t i = 0; i < pages.size(); ++i)
        CHECK(example::codesOn(pages[i]) == std::vector<std::string>{codes[i]});
}
