#include "core/shop/sheet.h"
#include "tests/core/shop/shop_fixture.h"

namespace riband::shop {

namespace {

using Field = SheetField;
using Problem = SheetFault::Problem;

CsvTable table(const std::string& text) {
    auto read = CsvTable::read(asUtf8(text));
    REQUIRE(read.ok());
    return read.value();
}

Sheet sheetOf(TestShop& shop, const std::string& text) {
    const CsvTable read = table(text);
    const SheetMatch match = guessMatch(read.head());
    REQUIRE_FALSE(gapOf(match));
    return readSheet(shop.shop, read, match);
}

bool problemIs(const SheetFault& fault, Problem problem) {
    const auto* got = std::get_if<Problem>(&fault.why);
    return got && *got == problem;
}

} // namespace

TEST_CASE("A stock in a foreign spreadsheet: any order, semicolons, decimal comma, Latin-1", "[sheet]") {
    TestShop shop;
    const Sheet sheet = sheetOf(shop, "Fach;Breite;L\xe4nge;Profil;Anzahl;Preis\n"
                                      "L\xfc-1;47,5;1200;H8M;2;12,50\n"
                                      "A2;470;500;T5;;\n");
    CHECK(sheet.faults.empty());
    REQUIRE(sheet.rows.size() == 2);
    const Delivery& first = sheet.rows[0].delivery;
    CHECK(belt::designation(first.belt) == "H8M 1200");
    CHECK(first.extent == um(47'500));
    CHECK(first.sleeves == 2);
    CHECK(first.costEach == Money::minor(1250));
    CHECK(first.place == "L\xc3\xbc-1");
    CHECK(first.kind == cutting::PieceKind::Remnant); // narrower than a new sleeve
    CHECK(receive(shop.shop, sheet.deliveries()).size() == 3);
}

TEST_CASE("The same table separated by tabs or bars is the same stock", "[sheet]") {
    TestShop shop;
    for (const char sign : {'\t', '|', ',', ';'}) {
        std::string text = "width_mm#belt#kind\n30#T5 500#ready\n";
        std::replace(text.begin(), text.end(), '#', sign);
        const Sheet sheet = sheetOf(shop, text);
        REQUIRE(sheet.rows.size() == 1);
        CHECK(sheet.rows[0].delivery.kind == cutting::PieceKind::Ready);
    }
}

TEST_CASE("Widths without a unit are in what the person says; with one they are in that", "[sheet]") {
    TestShop shop;
    const CsvTable read = table("belt,width_mm\nT5 500,3\nT5 500,30 mm\nPJ 1194,6 ribs\n");
    SheetMatch match = guessMatch(read.head());
    match.unit = SheetUnit::Inch;
    const Sheet inches = readSheet(shop.shop, read, match);
    CHECK(inches.rows[0].delivery.extent == um(76'200));
    CHECK(inches.rows[1].delivery.extent == mm(30));
    CHECK(inches.rows[2].delivery.extent == ribs(6)); // ribs in the column for both
    match.unit = SheetUnit::Centimetre;
    CHECK(readSheet(shop.shop, read, match).rows[0].delivery.extent == mm(30));
}

TEST_CASE("Every bad field of every row is told with its line and column", "[sheet]") {
    TestShop shop;
    const Sheet sheet = sheetOf(shop, "belt,kind,width_mm,ribs,made,cost,sleeves\n"
                                      "H8M 1200,sleeve,400,,,,\n"
                                      "H8M 1200,roll,-4,,31.6.2026,x,0\n"
                                      "PJ 1194,sleeve,280,,,,\n"
                                      "T5 500,sleeve,,6,,,\n"
                                      "H8M 1203,sleeve,400,,,,\n"
                                      "H8M 1200,sleeve,0,,,,\n"
                                      "H8M 1200,sleeve,6000,,,,\n"
                                      "H8M 1200,sleeve,400,,2099-02-01,-30,-1\n"
                                      "H8M 1200,sleeve,400,,,100000000.01,501\n");
    REQUIRE(sheet.rows.size() == 1);
    REQUIRE(sheet.faults.size() == 15);
    CHECK(sheet.faults[0].line == 3);
    CHECK(problemIs(sheet.faults[0], Problem::NoDay));
    CHECK(sheet.faults[0].column == 4);
    CHECK(problemIs(sheet.faults[2], Problem::BadCount));
    CHECK(std::get<TextFault>(sheet.faults[3].why) == TextFault::Negative);
    CHECK(problemIs(sheet.faults[4], Problem::UnknownKind));
    CHECK(problemIs(sheet.faults[5], Problem::CountRibs));
    CHECK(problemIs(sheet.faults[6], Problem::NoRibs));
    CHECK(std::holds_alternative<belt::ReadFault>(sheet.faults[7].why));
    CHECK(problemIs(sheet.faults[8], Problem::Nothing));
    CHECK(problemIs(sheet.faults[9], Problem::TooWide));
    CHECK(problemIs(sheet.faults[10], Problem::FutureDay));
    CHECK(std::get<TextFault>(sheet.faults[11].why) == TextFault::Negative);
    CHECK(problemIs(sheet.faults[12], Problem::BadCount));
    CHECK(problemIs(sheet.faults[13], Problem::TooDear));
    CHECK(problemIs(sheet.faults[14], Problem::BadCount));
}

TEST_CASE("A place of a table has a name in one line, and no code of the shop", "[sheet]") {
    TestShop shop;
    const std::string code = shop.at(shop.piece(shop.h8m1200, mm(400))).code;
    const Sheet sheet =
        sheetOf(shop, "belt,width_mm,place\nH8M 1200,400,\"A\nB\"\nH8M 1200,400," + code + "\nH8M 1200,400," +
                          std::string(61, 'x') + "\nH8M 1200,400," + std::string(60, 'x') + "\n");
    CHECK(sheet.rows.size() == 1);
    REQUIRE(sheet.faults.size() == 3);
    for (const SheetFault& fault : sheet.faults)
        CHECK(problemIs(fault, Problem::NoPlace));
}

TEST_CASE("A supplier's code stands for its belt once it is tied to it", "[sheet]") {
    TestShop shop;
    const std::string text = "code,belt,width_mm\n4006381333931,,\n";
    CHECK(problemIs(sheetOf(shop, text).faults.at(0), Problem::UnknownCode));
    const Sheet tying = sheetOf(shop, "code,belt,width_mm\n4006381333931,H8M 1200,470\n");
    receive(shop.shop, tying.deliveries());
    const Sheet known = sheetOf(shop, text);
    REQUIRE(known.rows.size() == 1);
    CHECK(known.rows[0].delivery.belt == shop.h8m1200);
    CHECK(known.rows[0].delivery.extent == mm(470));
}

TEST_CASE("Without a column for it the kind follows from the sleeves of the belt that are known", "[sheet]") {
    TestShop shop;
    const auto kindOf = [&](const std::string& width) {
        const Sheet sheet = sheetOf(shop, "belt,width_mm\nT5 500," + width + "\n");
        REQUIRE(sheet.rows.size() == 1);
        CHECK(sheet.rows[0].kindGuessed);
        return sheet.rows[0].delivery.kind;
    };
    using cutting::PieceKind;
    CHECK(kindOf("470") == PieceKind::Sleeve);
    CHECK(kindOf("200") == PieceKind::Remnant);
    shop.piece(shop.t5x500, mm(90), PieceKind::Remnant);
    CHECK(kindOf("90") == PieceKind::Remnant); // a remnant is no sleeve, however often it comes
    SECTION("one that lies here unopened, as near as a tape says") {
        shop.piece(shop.t5x500, mm(200));
        CHECK(kindOf("200") == PieceKind::Sleeve);
        CHECK(kindOf("196") == PieceKind::Sleeve); // a fiftieth less
        CHECK(kindOf("195.9") == PieceKind::Remnant);
        CHECK(kindOf("204.1") == PieceKind::Remnant);
    }
    SECTION("one that the shop usually buys") {
        store::Catalogue catalogue{shop.connection};
        store::StockedBelt entry = *catalogue.find(shop.t5x500);
        entry.newSleeve = mm(200);
        store::Transaction transaction{shop.connection};
        catalogue.change(entry);
        transaction.commit();
        CHECK(kindOf("200") == PieceKind::Sleeve);
    }
    SECTION("one that is on its way") {
        store::Transaction transaction{shop.connection};
        store::ExpectedDelivery expected{store::ExpectedId{0}, "", "", {}, false, {}};
        expected.lines.push_back(
            {1, store::Catalogue{shop.connection}.find(shop.t5x500)->id, mm(200), 1, Money::minor(0)});
        store::Goods{shop.connection}.expect(expected, shop.shop.person, shop.shop.now());
        transaction.commit();
        CHECK(kindOf("200") == PieceKind::Sleeve);
    }
    SECTION("one whose label says so, whatever the tape says") {
        const Sheet sheet = sheetOf(shop, "belt,width_mm,labelled\nT5 500,370,380\n");
        CHECK(kindOf("370") == PieceKind::Remnant);
        CHECK(sheet.rows.at(0).delivery.kind == PieceKind::Sleeve);
    }
    SECTION("a column that says it is believed") {
        const Sheet sheet = sheetOf(shop, "belt,width_mm,kind\nT5 500,470,remnant\n");
        CHECK(sheet.rows.at(0).delivery.kind == PieceKind::Remnant);
        CHECK_FALSE(sheet.rows.at(0).kindGuessed);
    }
}

TEST_CASE("A match says what it lacks", "[sheet]") {
    CHECK(gapOf(guessMatch({"width"})) == SheetGap::NoBelt);
    CHECK(gapOf(guessMatch({"profile", "width"})) == SheetGap::NoBelt);
    CHECK(gapOf(guessMatch({"belt", "colour"})) == SheetGap::NoWidth);
    CHECK(gapOf({{Field::Belt, Field::Width, Field::Width}, SheetUnit::Millimetre}) == SheetGap::TwoOfAField);
    CHECK_FALSE(gapOf(guessMatch({"Profile", "Length (mm)", "WIDTH"})));
    for (const Field field : {Field::Belt, Field::Width, Field::SupplierCode, Field::Labelled})
        CHECK(fieldNamed(nameOf(field)) == field);
    CHECK(guessMatch({"width", "Width (mm)"}).columns[1] == Field::Ignored); // given once
}

TEST_CASE("Reading a long table can be stopped", "[sheet]") {
    TestShop shop;
    std::string text = "belt,width_mm\n";
    for (int i = 0; i < 1000; ++i)
        text += "T5 500,30\n";
    const CsvTable read = table(text);
    const Sheet stopped =
        readSheet(shop.shop, read, guessMatch(read.head()), [](double share) { return share < 0.3; });
    CHECK(stopped.stopped);
    CHECK(stopped.rows.size() == 512);
}

} // namespace riband::shop
