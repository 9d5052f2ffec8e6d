#include "core/measure/csv.h"
#include "tests/catch.h"

using namespace riband;

namespace {

CsvFault faultOf(std::string_view text, std::size_t limit = 64u << 20) {
    const auto table = CsvTable::read(text, limit);
    REQUIRE_FALSE(table.ok());
    return table.reason();
}

} // namespace

TEST_CASE("A table is read with its quotes, as RFC 4180 has it", "[measure]") {
    const auto table = CsvTable::read("\xEF\xBB\xBFpiece,belt,width_mm\r\n"
                                      "S1,\"H8M 1200, steel\",470\r\n"
                                      "\r\n"
                                      "S2,\"said \"\"wide\"\"\",19.05\r\n");
    REQUIRE(table.ok());
    CHECK(table->head() == std::vector<std::string>{"piece", "belt", "width_mm"});
    REQUIRE(table->rows().size() == 2);
    CHECK(table->rows()[0].fields[1] == "H8M 1200, steel");
    CHECK(table->rows()[1].fields[1] == "said \"wide\"");
    CHECK(table->rows()[0].line == 2);
    CHECK(table->rows()[1].line == 4);
    CHECK(table->column("width_mm") == 2u);
    CHECK_FALSE(table->column("Width").has_value());
}

TEST_CASE("Semicolons separate where the head has them", "[measure]") {
    const auto table = CsvTable::read("piece;width\nS1;19,05\n");
    REQUIRE(table.ok());
    CHECK(table->rows()[0].fields == std::vector<std::string>{"S1", "19,05"});
}

TEST_CASE("The last line needs no line end", "[measure]") {
    const auto table = CsvTable::read("a,b\n1,2");
    REQUIRE(table.ok());
    CHECK(table->rows().at(0).fields == std::vector<std::string>{"1", "2"});
}

TEST_CASE("A quoted field may hold line ends, and the next row knows its line", "[measure]") {
    const auto table = CsvTable::read("a,b\n\"x\ny\",2\n3,4\n");
    REQUIRE(table.ok());
    CHECK(table->rows()[0].fields[0] == "x\ny");
    CHECK(table->rows()[1].line == 4);
}

TEST_CASE("A broken table says where", "[measure]") {
    CHECK(faultOf("").kind == CsvFault::Kind::NoHead);
    CHECK(faultOf("a,a\n").kind == CsvFault::Kind::DoubleColumn);
    const CsvFault fields = faultOf("a,b\n1,2\n1,2,3\n");
    CHECK(fields.kind == CsvFault::Kind::WrongFields);
    CHECK(fields.line == 3);
    CHECK(fields.column == 3);
    const CsvFault nul = faultOf(std::string_view{"a,b\n1,\0", 7});
    CHECK(nul.kind == CsvFault::Kind::NulCharacter);
    CHECK(nul.line == 2);
    CHECK(faultOf("a,b\n1,\"open\n").kind == CsvFault::Kind::OpenQuote);
    CHECK(faultOf("a,b\n1,\"x\"y\n").kind == CsvFault::Kind::OpenQuote);
    CHECK(faultOf("a,b\n1,2\n", 5).kind == CsvFault::Kind::TooLarge);
}

TEST_CASE("Hostile bytes are refused, not read", "[measure]") {
    CHECK(faultOf("a\n\xff\n").kind == CsvFault::Kind::NotUtf8);
    CHECK(faultOf("a\n\xc0\xaf\n").kind == CsvFault::Kind::NotUtf8);     // overlong
    CHECK(faultOf("a\n\xed\xa0\x80\n").kind == CsvFault::Kind::NotUtf8); // a surrogate
    CHECK(faultOf("a\n\xf0\x9f").kind == CsvFault::Kind::NotUtf8);       // cut short
    const CsvFault row = faultOf("a\n" + std::string(10u << 20, 'x') + "\n");
    CHECK(row.kind == CsvFault::Kind::LineTooLong);
    CHECK(row.line == 2);
}

TEST_CASE("A written field reads back, and no spreadsheet runs it", "[measure]") {
    CHECK(csvField("plain") == "plain");
    CHECK(csvField("a,b") == "\"a,b\"");
    CHECK(csvField("a\"b") == "\"a\"\"b\"");
    CHECK(csvField("=1+1") == "'=1+1");
    CHECK(csvField("@x") == "'@x");
    CHECK(csvField("-30.5") == "-30.5");
    CHECK(csvField("-cmd") == "'-cmd");
    for (const std::string text : {"x y", " lead", "two\nlines", "quote \" inside", "1;2"}) {
        const auto table = CsvTable::read("a,b\n" + csvField(text) + ",2\n");
        REQUIRE(table.ok());
        CHECK(table->rows()[0].fields[0] == text);
    }
}

TEST_CASE("Tabs and bars separate where the head has them, and signs in quotes do not count", "[measure]") {
    const auto tabs = CsvTable::read("piece\twidth, mm\nS1\t19,05\n");
    REQUIRE(tabs.ok());
    CHECK(tabs->head() == std::vector<std::string>{"piece", "width, mm"});
    CHECK(tabs->rows()[0].fields == std::vector<std::string>{"S1", "19,05"});
    const auto bars = CsvTable::read("\"a,b,c\"|d\n1|2\n");
    REQUIRE(bars.ok());
    CHECK(bars->head() == std::vector<std::string>{"a,b,c", "d"});
}

TEST_CASE("Columns may be without a name, as often as one likes", "[measure]") {
    const auto table = CsvTable::read("a,,\n1,2,3\n");
    REQUIRE(table.ok());
    CHECK(table->rows()[0].fields.size() == 3);
}

TEST_CASE("A text that is not UTF-8 is taken for Latin-1", "[measure]") {
    CHECK(asUtf8("L\xfc\xdf") == "L\xc3\xbc\xc3\x9f"); // ü is 00FC, ß is 00DF in Unicode as in ISO 8859-1
    CHECK(asUtf8("L\xc3\xbc") == "L\xc3\xbc");
    CHECK(asUtf8("plain") == "plain");
    for (int code = 0x80; code <= 0xFF; ++code) { // every one of its characters is one of UTF-8 then
        const std::string text = asUtf8("a," + std::string(1, static_cast<char>(code)) + "\n1,2\n");
        CHECK(CsvTable::read(text).ok());
    }
}

TEST_CASE("A field comes back as it was before it was written for a spreadsheet", "[measure]") {
    for (const char* text : {"=1+2", "@x", "-a", "plain", "'tis", "12"})
        CHECK(csvValue(csvField(text)) == text);
    CHECK(csvValue("  spaced ") == "spaced");
    CHECK(csvValue("") == "");
}
