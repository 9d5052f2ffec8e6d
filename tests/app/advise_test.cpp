#include "core/foresight/referee.h"
#include "core/foresight/scenario.h"
#include "tests/app/program.h"
#include "tests/catch.h"

#include <QJsonArray>

#include <array>
#include <cmath>
#include <map>

using namespace riband::foresight;
using Said = riband::tests::Answer; // of the program; foresight has an Answer too
using riband::tests::run;

namespace {

QJsonObject object(const QByteArray& line) { return QJsonDocument::fromJson(line).object(); }
QByteArray lineOf(const QJsonObject& said) {
    return QJsonDocument(said).toJson(QJsonDocument::Compact) + '\n';
}
double spoken(const Setting& setting, Size size) { return setting.ribs ? size : size / 1000.0; }

QByteArray beginLine(const Setting& setting) {
    QJsonArray listed;
    for (Size width : setting.listed)
        listed.append(spoken(setting, width));
    const QJsonObject rules{{"trim", spoken(setting, setting.rules.trim)},
                            {"kerf", spoken(setting, setting.rules.kerf)},
                            {"end", spoken(setting, setting.rules.end)},
                            {"stub", spoken(setting, setting.rules.stub)},
                            {"mounting_cost", 1}};
    const char* shelves[] = {"none", "stub", "listed"};
    return lineOf({{"begin", QJsonObject{{"belt", "B"},
                                         {"unit", setting.ribs ? "ribs" : "mm"},
                                         {"sleeve", spoken(setting, setting.sleeve)},
                                         {"listed", listed},
                                         {"orders_per_year", setting.ordersPerYear},
                                         {"days_per_year", setting.daysPerYear},
                                         {"rules", rules},
                                         {"rack_limit", setting.rackLimit},
                                         {"shelf", shelves[static_cast<int>(setting.shelf)]},
                                         {"age_limit_days", setting.ageLimitDays},
                                         {"interest", setting.interest},
                                         {"holding_cost", 1},
                                         {"seed", 7}}}});
}

QByteArray orderLine(const Setting& setting, const Order& order) {
    QJsonArray lines;
    for (const auto& line : order.lines)
        lines.append(QJsonObject{{"width", spoken(setting, line.width)}, {"quantity", line.quantity}});
    return lineOf({{"order", QJsonObject{{"day", order.day}, {"lines", lines}}}});
}

/// Reads an answer as an outside judge does: names are only names.
class Reader {
public:
    explicit Reader(const Setting& setting) : setting_{setting} {}
    riband::foresight::Answer read(const QJsonObject& said) {
        riband::foresight::Answer answer;
        for (const auto& each : said["take"].toArray()) {
            const auto take = each.toObject();
            answer.take.push_back({size(take["width"]), take["count"].toInt()});
        }
        for (const auto& each : said["mountings"].toArray())
            answer.mountings.push_back(mounting(each.toObject()));
        for (const auto& each : said["scrap"].toArray())
            answer.scrap.push_back(name(each));
        return answer;
    }

private:
    Size size(const QJsonValue& value) const {
        return static_cast<Size>(std::llround(value.toDouble() * (setting_.ribs ? 1 : 1000)));
    }
    PieceName name(const QJsonValue& value) {
        return names_.try_emplace(value.toString(), static_cast<PieceName>(names_.size())).first->second;
    }
    Mounting mounting(const QJsonObject& said) {
        Mounting mounting{name(said["piece"]), said["opens_sleeve"].toBool(), {}, size(said["left"]), {}};
        for (const auto& each : said["cuts"].toArray()) {
            const auto cut = each.toObject();
            const bool forShelf = cut["for"].toString() == "shelf";
            mounting.cuts.push_back(
                {size(cut["width"]), cut["count"].toInt(), forShelf ? For::Shelf : For::Order});
        }
        if (!said["keep_as"].isNull()) mounting.keepAs = name(said["keep_as"]);
        return mounting;
    }
    Setting setting_;
    std::map<QString, PieceName> names_;
};

const QByteArray begin =
    R"({"begin":{"belt":"H8M-1200","unit":"mm","sleeve":400,"listed":[20,30,50,85],)"
    R"("orders_per_year":52,"days_per_year":300,"rules":{"trim":2.5,"kerf":0,"end":5,)"
    R"("stub":15,"mounting_cost":4},"rack_limit":10,"shelf":"none","age_limit_days":1800,)"
    R"("interest":0.06,"holding_cost":2,"seed":1}})"
    "\n";

} // namespace

TEST_CASE("An outside judge finds no breach in any shelf mode, unit or kind of order", "[app]") {
    for (std::uint64_t number = 0; number < 9; ++number) {
        auto shop = drawnScenario(200 + number);
        shop.setting.shelf = std::array{Shelf::None, Shelf::Stub, Shelf::Listed}[number % 3];
        auto orders = ordersOf(shop, Dice{number});
        if (orders.size() > 40) orders.resize(40);
        QByteArray input = beginLine(shop.setting);
        for (const auto& order : orders)
            input += orderLine(shop.setting, order);
        const Said said = run({"advise", "--stream"}, input + "{\"end\":true}\n");
        CAPTURE(shop.name, said.err.toStdString());
        REQUIRE(said.exit == 0);
        const auto lines = said.out.trimmed().split('\n');
        REQUIRE(lines.size() == static_cast<qsizetype>(orders.size()) + 2);
        CHECK(object(lines.first())["ready"].toBool());
        CHECK(object(lines.last())["done"].toBool());
        Referee referee{shop.setting};
        Reader reader{shop.setting};
        for (std::size_t i = 0; i < orders.size(); ++i)
            REQUIRE_NOTHROW(
                referee.book(orders[i], reader.read(object(lines[static_cast<qsizetype>(i) + 1]))));
    }
}

TEST_CASE("The same lines get the same answers", "[app]") {
    const QByteArray input =
        begin + "{\"order\":{\"day\":1,\"lines\":[{\"width\":30,\"quantity\":2}]}}\n"
                "{\"order\":{\"day\":2,\"lines\":[{\"width\":47.625,\"quantity\":1}]}}\n{\"end\":true}\n";
    CHECK(run({"advise", "--stream"}, input).out == run({"advise", "--stream"}, input).out);
}

TEST_CASE("A bad line is answered with one error line, and the exit is 2", "[app]") {
    const char* bad[] = {
        "",
        "x",
        "[]",
        "{}",
        "{\"begin\":1}",
        "{\"order\":{}}",
        "{\"order\":{\"day\":1,\"lines\":[]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":30}]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":-30,\"quantity\":1}]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":30,\"quantity\":1.5}]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":30,\"quantity\":0}]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":\"30\",\"quantity\":1}]}}",
        "{\"order\":{\"day\":-1,\"lines\":[{\"width\":30,\"quantity\":1}]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":399,\"quantity\":1}]}}",
        "{\"order\":{\"day\":1,\"lines\":[{\"width\":30,\"quantity\":1},{\"width\":30,\"quantity\":2}]}}",
        "{\"order\":{\"day\":1e999,\"lines\":[{\"width\":30,\"quantity\":1}]}}",
    };
    for (const char* line : bad) {
        CAPTURE(line);
        const Said said = run({"advise", "--stream"}, begin + line + "\n{\"end\":true}\n");
        CHECK(said.exit == 2);
        const auto lines = said.out.trimmed().split('\n');
        REQUIRE(lines.size() == 2);
        CHECK_FALSE(object(lines[1])["error"].toString().isEmpty());
    }
}

TEST_CASE("A begin that lacks a field or has a senseless one is refused by its name", "[app]") {
    for (const char* name : {"unit", "sleeve", "listed", "orders_per_year", "days_per_year", "rules",
                             "rack_limit", "shelf", "age_limit_days", "interest", "holding_cost", "seed"}) {
        auto said = object(begin)["begin"].toObject();
        said.remove(QLatin1String(name));
        const Said lacking = run({"advise", "--stream"}, lineOf({{"begin", said}}));
        said[QLatin1String(name)] = true;
        const Said wrong = run({"advise", "--stream"}, lineOf({{"begin", said}}));
        for (const auto& each : {lacking, wrong}) {
            CAPTURE(name);
            CHECK(each.exit == 2);
            CHECK(object(each.out.trimmed())["error"].toString().contains(QLatin1String(name)));
        }
    }
}

TEST_CASE("Orders before begin, a second begin, or an input without end are errors", "[app]") {
    CHECK(run({"advise", "--stream"}, "{\"order\":{\"day\":1,\"lines\":[{\"width\":30,\"quantity\":1}]}}\n")
              .exit == 2);
    CHECK(run({"advise", "--stream"}, begin + begin).exit == 2);
    CHECK(run({"advise", "--stream"}, begin).exit == 2);
    CHECK(run({"advise"}).exit == 2);
}

TEST_CASE("A practice shop is simulated: look-ahead closes the gap that fit leaves", "[app]") {
    const auto gap = [](const char* policy) {
        const Said said = run({"simulate", "--scenario", "8mm slow no custom W400", "--seeds", "1",
                               "--policy", QLatin1String(policy), "--json"});
        REQUIRE(said.exit == 0);
        const auto all = said.json()["all"].toObject();
        CHECK(all["waste_percent"].toObject()["mean"].toDouble() > 0);
        return all["gap_closed_percent"].toObject()["mean"].toDouble();
    };
    CHECK(gap("fit") == 0);
    CHECK(gap("lookahead") > 60);
    CHECK(gap("finish") > 100); // belts from finished ends pay no trim: below hindsight without a shelf
}

TEST_CASE("What can't be simulated is refused with the reason", "[app]") {
    CHECK(run({"simulate", "--scenario", "practice", "--policy", "guess"}).exit == 2);
    CHECK(run({"simulate", "--scenario", "no such", "--policy", "fit"}).exit == 2);
    CHECK(run({"simulate", "--scenario", "drawn 1", "--policy", "fit", "--seeds", "0"}).exit == 2);
    riband::tests::Folder folder;
    const auto broken =
        folder.with("s.json", R"({"scenarios":[{"name":"A","sleeve":400,"listed":[20],"mix":[]}]})");
    const Said said = run({"simulate", "--scenario", broken, "--policy", "fit"});
    CHECK(said.exit == 2);
    CHECK(said.err.contains("mix"));
}
