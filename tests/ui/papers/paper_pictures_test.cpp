#include "tests/catch.h"

#include "tests/ui/papers/example_papers.h"

#include <QDir>
#include <QFile>

using namespace riband;
using namespace riband::ui;

/// Pictures of every paper, to be looked at: run this test by its tag, `[gallery]`.
namespace {

void keep(const QString& name, const QByteArray& pdf, int dpi) {
    QDir{RIBAND_BINARY_DIR}.mkpath("pictures");
    const QString path = QString{RIBAND_BINARY_DIR} + "/pictures/" + name;
    QFile file{path + ".pdf"};
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(pdf);
    int page = 1;
    for (const QImage& image : example::pages(pdf, dpi))
        CHECK(image.save(QString{"%1-%2.png"}.arg(path).arg(page++)));
}

} // namespace

TEST_CASE("Every paper is painted to be looked at", "[.gallery]") {
    const auto shop = example::shop();
    auto third = example::mounting("PJ 1194", Ribs{60}, Ribs{6}, 4, 3);
    third.setUp->approximate = true;
    third.setUp->doubt = 1;
    third.setUp->remarks = {cutting::SetUp::Remark::CutInTheGroove, cutting::SetUp::Remark::LittleTension};
    third.belt.cord = "steel";
    auto paper = example::ticket(
        {example::mounting("H8M 1200", Width::micrometres(128'500), Width::millimetres(30), 3, 1),
         example::mounting("XL 414", Width::millimetres(480), Width::micrometres(9525), 40, 2), third});
    paper.fromShelf = {"H8M 1200, 30 mm: 2 belts, 7K2-M 7K4-2"};
    paper.orders.front().note = "Bitte bis 16 Uhr, der Fahrer wartet. Größe vor dem Schneiden prüfen.";
    keep("ticket",
         pdfOf(ticketSize(shop),
               [&](QPagedPaintDevice& device) { paintTicket(device, paper, shop, example::tables()); }),
         110);
    keep("order",
         pdfOf(ticketSize(shop),
               [&](QPagedPaintDevice& device) { paintOrder(device, example::order(4), shop); }),
         110);
    const std::vector<Label> labels{RemnantLabel{"7K2-M", "H8M 1200", Width::micrometres(128'500), "B3-2",
                                                 Date{std::chrono::days{20'000}}},
                                    RemnantLabel{"7K2R-5", "T10 1250 steel cord", Width::micrometres(470'000),
                                                 "Regal 14-3b", Date{std::chrono::days{20'000}}},
                                    BeltLabel{"N2B-4", "1200H8M30", "H8M 1200", Width::millimetres(30),
                                              "+0.8 -0.8", "N2B-4", "Zakłady Łożysk Gniezno"}};
    keep("labels",
         pdfOf(labelSize(example::shop()),
               [&](QPagedPaintDevice& device) { paintLabels(device, labels, shop); }),
         203);
}
