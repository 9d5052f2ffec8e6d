#include "core/store/goods.h"
#include "core/store/search.h"
#include "core/store/upkeep.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

using namespace riband;
using namespace riband::store;

namespace {

struct Rack {
    Connection connection = Connection::inMemory();
    SmallShop shop{connection};
    PieceId sleeve = shop.receive(shop.toothed, Width::micrometres(62'500), Money::minor(1));
    PieceId ribbed = shop.receive(shop.ribbed, Ribs{60}, Money::minor(1), cutting::PieceKind::Sleeve, "B3-2");

    std::vector<PieceId> find(const std::vector<std::string>& words) { return findPieces(connection, words); }
    std::string code(PieceId piece) { return Pieces{connection}.at(piece).code; }
};

using Found = std::vector<PieceId>;

} // namespace

TEST_CASE("A piece is found by the beginning of any of its words", "[store][search]") {
    Rack rack;
    const std::string code = rack.code(rack.sleeve);
    for (const std::vector<std::string>& words :
         std::vector<std::vector<std::string>>{{code},
                                               {std::string{code}.erase(code.find('-'), 1)},
                                               {"h8m"},
                                               {"H8M1200"},
                                               {"8m", "1200"},
                                               {"8M12"},
                                               {"62.5"},
                                               {"a1"},
                                               {"a1-1", "sle"}})
        CHECK(rack.find(words) == Found{rack.sleeve});
    CHECK(rack.find({"pj", "60"}) == Found{rack.ribbed});
    CHECK(rack.find({"b3-2"}) == Found{rack.ribbed});
    CHECK(rack.find({"sleeve"}).size() == 2);
    CHECK(rack.find({"sleeve", "nothing"}).empty());
}

TEST_CASE("What a person types is never taken for the language of the index", "[store][search]") {
    Rack rack;
    for (const char* word : {"\"", "*", "NOT", "OR", "h8m\"", "(", "words:", "-", "^h8m", "'; --", "é"})
        CHECK_NOTHROW(rack.find({std::string{word}}));
    CHECK(rack.find({"-", "h8m"}) == Found{rack.sleeve}); // a sign alone asks for nothing
    CHECK(rack.find({}).empty());
    CHECK(rack.find({"OR"}).empty());
}

TEST_CASE("The words follow the piece: width, kind, place, and gone is gone", "[store][search]") {
    Rack rack;
    const LineId line = rack.shop.order(rack.shop.toothed, mm(30), 1);
    rack.shop.record(rack.shop.cutOf(rack.sleeve, line, 1));
    CHECK(rack.find({"62.5"}).empty());
    CHECK(rack.find({"30", "h8m"}) == Found{rack.sleeve});
    Pieces{rack.connection}.becomeRemnant(rack.sleeve);
    CHECK(rack.find({"offcut"}) == Found{rack.sleeve});
    Upkeep{rack.connection}.relocate(rack.sleeve, "C9", rack.shop.clerk, rack.shop.now);
    CHECK(rack.find({"c9"}) == Found{rack.sleeve});
    const std::string code = rack.code(rack.sleeve);
    rack.shop.record(
        Movement{{Act::Scrap, rack.shop.now, rack.shop.clerk, rack.shop.toothed, "", {}},
                 {{Account::Rack, rack.sleeve, {}, -30'000, Money::minor(0), {}},
                  {Account::Scrap, rack.sleeve, {}, 30'000, Money::minor(0), ScrapReason::Aged}}});
    CHECK(rack.find({code}).empty());
}

TEST_CASE("A piece is found by its days, its body and its orders", "[store][search]") {
    Rack rack;
    const StockPiece sleeve = Pieces{rack.connection}.at(rack.sleeve);
    const std::string day = printDate(sleeve.received);
    CHECK(rack.find({day, "h8m"}) == Found{rack.sleeve});
    CHECK(rack.find({day.substr(0, 7)}).size() == 2);
    CHECK(rack.find({"1999-01-31"}).empty());
    CHECK(rack.find({day.substr(8)}).empty()); // the day alone is a figure, and no width

    StockedBelt belt = Catalogue{rack.connection}.at(sleeve.belt);
    belt.body = "chloroprene";
    Catalogue{rack.connection}.change(belt);
    CHECK(rack.find({"chlorop"}) == Found{rack.sleeve});
}

TEST_CASE("The spellings of a belt", "[store][search]") {
    const belt::Belt h8m{"H8M", Teeth{150}, Length::millimetres(1200), ""};
    CHECK(searchWords(h8m) == "H8M 1200 H8M1200 8M 8M1200");
    const belt::Belt t5{"T5", Teeth{100}, Length::millimetres(500), "steel cord"};
    CHECK(searchWords(t5) == "T5 500 steel cord T5500");
    const belt::Belt l{"L", Teeth{86}, Length::micrometres(819'150), ""};
    CHECK(searchWords(l) == "L 322 L322");
}
