#include "tests/ui/papers/example_papers.h"

#include "tests/catch.h"

#include "core/measure/code.h"
#include "core/measure/text.h"
#include "core/shop/price.h"
#include "resources/table_texts.h"

#include <QProcess>
#include <QTemporaryDir>
#include <zbar.h>

#include <memory>

namespace riband::ui::example {
namespace {

const Date today = std::chrono::sys_days{std::chrono::year{2026} / 11 / 25};
const Moment now = std::chrono::sys_days{std::chrono::year{2026} / 11 / 25} + std::chrono::hours{10};

belt::Belt beltNamed(const std::string& designation) {
    const std::string profile = designation.substr(0, designation.find(' '));
    const bool ribbed = profile[0] == 'P';
    return {profile, ribbed ? std::nullopt : std::optional{Teeth{150}}, Length::millimetres(1200), ""};
}

store::StockedBelt stocked(const std::string& designation, int number) {
    return {store::BeltId{number},
            beltNamed(designation),
            designation,
            designation[0] == 'P' ? Unit::Rib : Unit::Micrometre,
            "rubber",
            "glass",
            WidthPrice::thousandths(51'000),
            Width::millimetres(470),
            Money::minor(9000),
            5,
            {}};
}

store::StockPiece piece(Extent extent, int number) {
    const auto code = Code::numbered(CodeKind::Piece, 4000 + 7 * number);
    return {store::PieceId{number},
            code ? code->text() : "7K2-M",
            store::BeltId{number},
            cutting::PieceKind::Remnant,
            extent,
            Extent::none(extent.unit()),
            Money::minor(4000),
            {},
            "B3-2",
            today,
            today,
            ""};
}

cutting::SetUp usualSetUp() { return {0, 492.9785, .3, false, {}}; }

store::OrderLine line(int position, Extent extent, std::int64_t quantity) {
    const auto rules = shop().prices;
    return {store::LineId{position},
            position,
            store::BeltId{position},
            extent,
            quantity,
            extent.unit() == Unit::Rib ? "" : std::to_string(quantity) + " x h8m 1200 " + printCount(extent),
            riband::shop::priceOf(rules, WidthPrice::thousandths(51'000), extent, quantity),
            0,
            0};
}

store::Order emptyOrder() {
    return {store::OrderId{1},  "N2B-4", store::OrderState::Open,     {}, "Zakłady Łożysk Gniezno",
            store::PersonId{1}, now,     now + std::chrono::hours{6}, "", {}};
}

QByteArray run(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    REQUIRE(process.waitForFinished(120'000));
    REQUIRE(process.exitCode() == 0);
    return process.readAllStandardOutput();
}

QString saved(const QTemporaryDir& folder, const QByteArray& pdf) {
    const QString path = folder.filePath("paper.pdf");
    QFile file{path};
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(pdf);
    return path;
}

} // namespace

const belt::Tables& tables() {
    static const auto loaded = belt::Tables::load(tableTexts());
    REQUIRE(loaded.ok());
    return *loaded.value();
}

store::ShopSettings shop() {
    store::ShopSettings settings;
    settings.name = "Weirside Drives";
    settings.address = "Mill Lane 4\nWeirside";
    settings.prices.tax = Permille{200};
    settings.prices.cuttingCharge = Money::minor(360);
    settings.cutters.front().cutter.name = "bench cutter";
    settings.cutters.front().cutter.shafts = {{"60", 60, 60, 500, 120, 900}, {"30", 30, 30, 400, 60, 500}};
    return settings;
}

namespace {

std::vector<shop::BenchMounting::Tolerated> tolerances(const store::StockedBelt& belt, Extent each) {
    if (each.unit() == Unit::Rib) return {};
    const auto found = tables().widthTolerance(belt.belt, each.width());
    if (!found) return {};
    return {{each, *found}};
}

} // namespace

shop::BenchMounting mounting(const std::string& designation, Extent whole, Extent each, std::int64_t count,
                             int number) {
    const auto rules = shop().rulesFor(whole.unit());
    Extent left = whole - rules.trim;
    std::vector<Extent> stops, cumulative;
    Extent reached = Extent::none(whole.unit());
    for (std::int64_t i = 0; i < count; ++i) {
        reached = reached + each;
        stops.push_back(each);
        cumulative.push_back(reached);
        left = left - each;
    }
    const bool kept = !(left < rules.stub);
    const auto belt = stocked(designation, number);
    return {{store::MountingId{number},
             store::PieceId{number},
             store::MountingState::Planned,
             {{store::LineId{number}, each, count}},
             rules.trim,
             rules.kerf,
             left,
             kept,
             {}},
            "T2B-6",
            "N2B-4",
            "Zakłady Łożysk Gniezno",
            piece(whole, number),
            belt,
            stops,
            cumulative,
            shop().cutters.front(),
            usualSetUp(),
            {},
            tolerances(belt, each)};
}

TicketPaper ticket(const std::vector<shop::BenchMounting>& mountings) {
    TicketPaper paper{{store::TicketId{1}, "T2B-6", store::OrderId{1}, store::TicketState::Open, now, {}, {}},
                      {emptyOrder()},
                      mountings,
                      {}};
    int position = 1;
    for (const auto& each : mountings) {
        const auto& cut = each.mounting.cuts.front();
        paper.orders.front().lines.push_back(line(position++, cut.extent, cut.count));
    }
    return paper;
}

OrderPaper order(int lines) {
    OrderPaper paper{emptyOrder(), {}};
    for (int i = 1; i <= lines; ++i) {
        paper.order.lines.push_back(line(i, Width::millimetres(30), 3));
        paper.designations.push_back("H8M 1200");
    }
    return paper;
}

std::vector<QImage> pages(const QByteArray& pdf, int dpi) {
    const QTemporaryDir folder;
    run("pdftoppm", {"-r", QString::number(dpi), "-gray", saved(folder, pdf), folder.filePath("page")});
    std::vector<QImage> found;
    const QDir inside{folder.path()};
    for (const QString& name : inside.entryList({"*.pgm"}, QDir::Files, QDir::Name))
        found.push_back(QImage{inside.filePath(name)}.convertToFormat(QImage::Format_Grayscale8));
    return found;
}

QString words(const QByteArray& pdf) {
    const QTemporaryDir folder;
    return QString::fromUtf8(run("pdftotext", {"-layout", saved(folder, pdf), "-"}));
}

std::vector<std::string> codesOn(const QImage& page) {
    const auto width = static_cast<unsigned>(page.width()), height = static_cast<unsigned>(page.height());
    std::vector<unsigned char> grey;
    for (int y = 0; y < page.height(); ++y)
        grey.insert(grey.end(), page.scanLine(y), page.scanLine(y) + width);
    const std::unique_ptr<zbar::zbar_image_scanner_t, decltype(&zbar::zbar_image_scanner_destroy)> scanner{
        zbar::zbar_image_scanner_create(), &zbar::zbar_image_scanner_destroy};
    zbar::zbar_image_scanner_set_config(scanner.get(), zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
    zbar::zbar_image_scanner_set_config(scanner.get(), zbar::ZBAR_CODE128, zbar::ZBAR_CFG_ENABLE, 1);
    const std::unique_ptr<zbar::zbar_image_t, decltype(&zbar::zbar_image_destroy)> image{
        zbar::zbar_image_create(), &zbar::zbar_image_destroy};
    zbar::zbar_image_set_format(image.get(), zbar_fourcc('Y', '8', '0', '0'));
    zbar::zbar_image_set_size(image.get(), width, height);
    zbar::zbar_image_set_data(image.get(), grey.data(), grey.size(), nullptr);
    zbar::zbar_scan_image(scanner.get(), image.get());
    std::vector<std::string> texts;
    for (const auto* symbol = zbar::zbar_image_first_symbol(image.get()); symbol;
         symbol = zbar::zbar_symbol_next(symbol))
        texts.emplace_back(zbar::zbar_symbol_get_data(symbol), zbar::zbar_symbol_get_data_length(symbol));
    return texts;
}

QRectF inked(const QImage& page, int dpi) {
    QRect box;
    for (int y = 0; y < page.height(); ++y)
        for (int x = 0; x < page.width(); ++x)
            if (page.constScanLine(y)[x] < 200) box |= QRect{x, y, 1, 1};
    const double mm = 25.4 / dpi;
    return {box.left() * mm, box.top() * mm, box.width() * mm, box.height() * mm};
}

} // namespace riband::ui::example
