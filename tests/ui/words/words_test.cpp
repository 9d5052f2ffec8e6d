#include "tests/catch.h"

#include "resources/table_texts.h"
#include "ui/words/words.h"

#include <set>

using namespace riband;

namespace {

const belt::Tables& tables() {
    static const auto loaded = belt::Tables::load(tableTexts()).value();
    return *loaded;
}

/// Every value has words of its own: none is empty, no two are alike, none has a hole left in it.
template <class Enum, class Say>
void wordsForAll(Enum last, Say say) {
    std::set<QString> seen;
    for (int value = 0; value <= static_cast<int>(last); ++value) {
        INFO("value " << value);
        const QString words = say(static_cast<Enum>(value));
        CHECK_FALSE(words.isEmpty());
        CHECK_FALSE(words.contains(QStringLiteral("%1")));
        CHECK_FALSE(words.contains(QStringLiteral("%2")));
        CHECK(seen.insert(words).second);
    }
}

const belt::Belt someBelt{"H8M", Teeth{150}, Length::millimetres(1200), ""};
const belt::Belt nextBelt{"H8M", Teeth{151}, Length::millimetres(1208), ""};

belt::Reading someReading() {
    return {.belt = someBelt,
            .width = Extent{Width::millimetres(30)},
            .quantity = 3,
            .doubleSided = false,
            .remarks = {},
            .said = "124",
            .saidWidth = "30",
            .nearestMade = {}};
}

} // namespace

TEST_CASE("Every fault of a designation has words", "[words]") {
    wordsForAll(belt::ReadFault::Kind::SeveralBelts, [](belt::ReadFault::Kind kind) {
        return ui::say(belt::ReadFault{kind, "1203", {someBelt, nextBelt}, Extent{Width::millimetres(470)}},
                       tables());
    });
}

TEST_CASE("A length that is no whole number of teeth is told with the pitch and the nearest belts",
          "[words]") {
    const belt::ReadFault fault{belt::ReadFault::Kind::LengthNotMultiple, "1203", {someBelt, nextBelt}, {}};
    const QString words = ui::say(fault, tables());
    CHECK(words.contains("1203"));
    CHECK(words.contains("8 mm"));
    CHECK(words.contains("H8M 1200 and H8M 1208"));
}

TEST_CASE("A width over every sleeve is told with the widest", "[words]") {
    const belt::ReadFault fault{
        belt::ReadFault::Kind::WidthOverSleeve, "900", {}, Extent{Width::millimetres(470)}};
    CHECK(ui::say(fault, tables()).contains("470 mm"));
}

TEST_CASE("Where several belts may be meant all are named", "[words]") {
    const belt::ReadFault fault{belt::ReadFault::Kind::SeveralBelts, "390", {someBelt, nextBelt}, {}};
    CHECK(ui::say(fault, tables()).contains("H8M 1200 and H8M 1208"));
    CHECK_FALSE(ui::say(fault, tables()).contains("nearest"));
}

TEST_CASE("Every question has words, and each reading is told apart from the others", "[words]") {
    using belt::Question;
    wordsForAll(Question::HowLong, [](Question question) { return ui::say(question); });
    const belt::Reading round = someReading();
    belt::Reading flat = round;
    flat.belt.profile = "S8M";
    const QString first = ui::tellApart(round, Question::WhichToothShape, tables());
    CHECK(first.contains("H8M 1200"));
    CHECK(first != ui::tellApart(flat, Question::WhichToothShape, tables()));
    for (int question = 0; question <= static_cast<int>(Question::HowLong); ++question)
        CHECK_FALSE(ui::tellApart(round, static_cast<Question>(question), tables()).isEmpty());
}

TEST_CASE("Every remark on a reading has words", "[words]") {
    const belt::Reading reading{
        .belt = someBelt, .width = Extent{Width::millimetres(30)}, .remarks = {}, .said = "124"};
    wordsForAll(belt::Reading::Remark::HalfLost,
                [&](belt::Reading::Remark remark) { return ui::say(remark, reading); });
}

TEST_CASE("Every refusal of the shop has words", "[words]") {
    wordsForAll(shop::Refusal::Why::CodeTaken, [](shop::Refusal::Why why) {
        return ui::say(shop::Refusal{why, "7K2-M"});
    });
}

TEST_CASE("Every reason of a suggestion has words, with its figure", "[words]") {
    using Kind = shop::Reason::Kind;
    wordsForAll(Kind::Unserved, [](Kind kind) {
        return ui::say(shop::Reason{kind, Extent{Width::micrometres(8'500)}, "7K2-M", 2});
    });
    CHECK(ui::say(shop::Reason{Kind::AvoidsDead, Extent{Width::micrometres(8'500)}, "7K2-M", 0}) ==
          "The smallest that fits, 7K2-M, would leave a dead 8.5 mm.");
    CHECK(ui::say(shop::Reason{Kind::Finishes, Extent{Ribs{1}}, "", 0}).contains("1 rib"));
    CHECK(ui::say(shop::Reason{Kind::Finishes, Extent{Ribs{4}}, "", 2}) ==
          "Finishes the pieces: of the last 4 ribs nothing more can be made.");
    CHECK(ui::say(shop::Reason{Kind::SeveralPieces, Extent{Ribs{4}}, "", 2}) ==
          "No single piece takes it all: 2 mountings. 4 ribs is thrown away.");
    CHECK(ui::say(shop::Reason{Kind::SeveralPieces, Extent{Ribs{0}}, "7K2-M", 2}) ==
          "7K2-M would take it all, but 2 mountings cost less width.");
}

TEST_CASE("Every other finding of the core has words", "[words]") {
    wordsForAll(TextFault::UnknownUnit, [](TextFault v) { return ui::say(v); });
    wordsForAll(CsvFault::Kind::NoHead, [](CsvFault::Kind v) { return ui::say(CsvFault{v, 3, 2, "belt"}); });
    wordsForAll(cutting::Unserved::Why::NotEnough, [](cutting::Unserved::Why v) { return ui::say(v); });
    wordsForAll(cutting::SetUp::Remark::CutInTheGroove, [](cutting::SetUp::Remark v) { return ui::say(v); });
    wordsForAll(cutting::SetUpFault::NoShaft, [](cutting::SetUpFault v) { return ui::say(v); });
    wordsForAll(cutting::PieceKind::Ready, [](cutting::PieceKind v) { return ui::say(v); });
    wordsForAll(store::ScrapReason::Aged, [](store::ScrapReason v) { return ui::say(v); });
    wordsForAll(store::OrderState::Cancelled, [](store::OrderState v) { return ui::say(v); });
    wordsForAll(store::Act::Undo, [](store::Act v) { return ui::say(v); });
    wordsForAll(store::Account::Difference, [](store::Account v) { return ui::say(v); });
    wordsForAll(belt::ToothShape::Rib, [](belt::ToothShape v) { return ui::say(v); });
    wordsForAll(belt::Family::VRibbed, [](belt::Family v) { return ui::say(v); });
    wordsForAll(store::StoreError::Kind::Failed, [](store::StoreError::Kind v) {
        const QString said = ui::say(store::StoreError{v, "shop.riband", "12"});
        return said.section(QStringLiteral(": "), 1); // behind the file's name
    });
    wordsForAll(store::Disagreement::Kind::Database, [](store::Disagreement::Kind v) {
        return ui::say(store::Disagreement{v, "7K2-M", 30'000, 29'000, ""});
    });
}

TEST_CASE("A fault of a file names its line and column", "[words]") {
    CHECK(ui::say(CsvFault{CsvFault::Kind::WrongFields, 12, 4, ""}).startsWith("line 12, column 4: "));
    CHECK(ui::say(CsvFault{CsvFault::Kind::NulCharacter, 12, 0, ""}).startsWith("line 12: "));
    CHECK(ui::say(belt::TableFault{"widths", 7, "no such profile"}).contains("line 7"));
}

TEST_CASE("A belt with ribs on both sides is not called a slip of the pen", "[words]") {
    const auto words = [](const char* part) {
        return ui::say(belt::ReadFault{belt::ReadFault::Kind::NotUnderstood, part, {}, {}}, tables());
    };
    CHECK(words("dpj").contains("ribs on both sides"));
    CHECK(words("DPK").contains("ribs on both sides"));
    CHECK_FALSE(words("DPX").contains("ribs on both sides"));
}
