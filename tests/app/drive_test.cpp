#include "tests/app/demo_shop_file.h"
#include "tests/app/printing.h"

#include <QJsonArray>

using namespace riband::tests;

namespace {

QJsonObject beltAt(const Answer& answer, int index) {
    return answer.json()["belts"].toArray().at(index).toObject();
}

const QStringList case7 = {"drive", "--profile", "H5M",      "--z1", "22",
                           "--z2",  "44",        "--centre", "300",  "--json"};

} // namespace

TEST_CASE("riband drive gives two pulleys and a distance in the documented form", "[app][drive]") {
    const Answer answer = run(case7);
    CHECK(answer.exit == 0);
    CHECK(answer.err.isEmpty());
    const QJsonObject json = answer.json();
    CHECK(json.keys() == QStringList{"arc_large_deg", "arc_small_deg", "belts", "centre_mm",
                                     "length_exact_mm", "ratio", "teeth_in_mesh"});
    CHECK(json["length_exact_mm"] == 766.021946); // another program's halving, to a nanometre
    CHECK(json["centre_mm"] == 300);
    CHECK(json["ratio"] == 2);
    CHECK(json["teeth_in_mesh"] == 10);
    CHECK(json["arc_small_deg"].toDouble() + json["arc_large_deg"].toDouble() == Approx(360));
    CHECK(beltAt(answer, 0) == jsonOf(R"({"profile":"H5M","teeth":154,"length_mm":770,"centre_mm":301.9924,
        "in_stock":false})"));
}

TEST_CASE("riband drive gives the distance of a belt that is known", "[app][drive]") {
    // A published example: 36 and 56 teeth of 8 mm, belt of 1200 mm: 415.22 mm.
    const QStringList call = {"drive", "--profile", "h8m", "--z1", "36", "--z2", "56", "--json"};
    const Answer byTeeth = run(call + QStringList{"--teeth", "150"}),
                 byLength = run(call + QStringList{"--length", "1200"});
    CHECK(byTeeth.exit == 0);
    CHECK(byTeeth.json()["centre_mm"].toDouble() == Approx(415.22).margin(0.005));
    CHECK(byTeeth.json()["length_exact_mm"] == 1200);
    CHECK(beltAt(byTeeth, 0)["teeth"] == 150);
    CHECK(byLength.out == byTeeth.out);
}

TEST_CASE("An inch length may be said as it is printed, rounded", "[app][drive]") {
    const Answer answer =
        run({"drive", "--profile", "L", "--z1", "20", "--z2", "20", "--length", "819.2", "--json"});
    CHECK(answer.json()["length_exact_mm"] == 819.15);
    CHECK(answer.json()["centre_mm"] == 314.325); // (819.15 - 20 x 9.525) / 2
}

TEST_CASE("What the shop has comes first, if it is wide enough", "[app][drive]") {
    const DemoShop shop;
    const QStringList call = {"drive", "--profile", "H8M", "--z1",   "36",      "--z2",
                              "56",    "--centre",  "425", "--shop", shop.file, "--json"};
    const Answer any = run(call);
    CHECK(any.exit == 0);
    CHECK(beltAt(any, 0)["length_mm"] == 1200); // 1216 is nearer, but 1200 is here
    CHECK(beltAt(any, 0)["in_stock"] == true);
    CHECK(beltAt(any, 1)["length_mm"] == 1216);
    CHECK(beltAt(any, 1)["in_stock"] == false);
    // The sleeve of 470 gives 462.5.
    CHECK(beltAt(run(call + QStringList{"--width", "462.5"}), 0)["length_mm"] == 1200);
    CHECK(beltAt(run(call + QStringList{"--width", "462.501"}), 0)["length_mm"] == 1216);
}

TEST_CASE("riband drive changes nothing of the shop", "[app][drive]") {
    const DemoShop shop;
    const QByteArray before = shop.folder.content("shop.riband");
    run(case7 + QStringList{"--shop", shop.file});
    CHECK(shop.folder.content("shop.riband") == before);
}

TEST_CASE("Plain diameters need no profile and find no belts", "[app][drive]") {
    // Shigley, problem 17-4: 6 and 18 in, 96 in apart: 230.074 in.
    const Answer answer = run({"drive", "--d1", "6 in", "--d2", "18 in", "--centre", "96 in", "--json"});
    CHECK(answer.exit == 0);
    CHECK(answer.json()["length_exact_mm"].toDouble() / 25.4 == Approx(230.0742).margin(0.0001));
    CHECK(answer.json()["teeth_in_mesh"].isNull());
    CHECK(answer.json()["belts"].toArray().isEmpty());
}

TEST_CASE("Ribbed belts go by effective diameters and have no teeth", "[app][drive]") {
    const Answer answer =
        run({"drive", "--profile", "PJ", "--d1", "50", "--d2", "50", "--length", "1194", "--json"});
    CHECK(answer.json()["centre_mm"].toDouble() == Approx((1194 - 50 * 3.14159265) / 2));
    CHECK(beltAt(answer, 0)["teeth"].isNull());
    CHECK(answer.json()["teeth_in_mesh"].isNull());
}

TEST_CASE("Where nothing fits riband drive says so with exit 1, and how far the belts go", "[app][drive]") {
    const Answer narrow = run(case7 + QStringList{"--adjust", "1"});
    CHECK(narrow.exit == 1);
    CHECK(beltAt(narrow, 0)["reachable"] == false);
    CHECK(beltAt(run(case7 + QStringList{"--adjust", "2"}), 0)["reachable"] == true);
    const Answer far = run({"drive", "--profile", "H5M", "--z1", "22", "--z2", "44", "--centre", "30000"});
    CHECK(far.exit == 1);
    CHECK(far.out.contains("the greatest centre distance is 2317.43 mm"));
}

TEST_CASE("Impossible drives are bad input that says the least that works", "[app][drive]") {
    const Answer close = run({"drive", "--d1", "100", "--d2", "60", "--centre", "79", "--json"});
    CHECK(close.exit == 2);
    CHECK(close.out.isEmpty());
    CHECK(close.err.contains("The least is 80.00 mm"));
    CHECK(run({"drive", "--d1", "100", "--d2", "60", "--centre", "80"}).exit == 0);
    const QStringList tight = {"drive", "--profile", "T5", "--z1", "20", "--z2", "60", "--teeth"};
    const Answer tooShort = run(tight + QStringList{"66"});
    CHECK(tooShort.exit == 2);
    CHECK(tooShort.err.contains("343.60 mm, 69 teeth"));
    CHECK(run(tight + QStringList{"68"}).exit == 2);
    CHECK(run(tight + QStringList{"69"}).exit == 0);
}

TEST_CASE("A profile that may be several is asked about, look-alikes are never mixed", "[app][drive]") {
    const Answer asked = run({"drive", "--profile", "5M", "--z1", "22", "--z2", "44", "--centre", "300"});
    CHECK(asked.exit == 2);
    for (const char* name : {"H5M", "R5M", "S5M", "G5M"})
        CHECK(asked.err.contains(name));
    CHECK_FALSE(asked.err.contains("S4.5M"));
}

TEST_CASE("What riband drive can't use is bad input", "[app][drive]") {
    const QStringList call = GENERATE(values<QStringList>({
        {"--z1", "22", "--z2", "44", "--centre", "300"},                    // no pitch
        {"--profile", "PJ", "--z1", "22", "--z2", "44", "--centre", "300"}, // ribs have no teeth
        {"--profile", "T7", "--z1", "22", "--z2", "44", "--centre", "300"}, // no such profile
        {"--profile", "", "--z1", "22", "--z2", "44", "--centre", "300"},   //
        {"--profile", "T5", "--z1", "22", "--centre", "300"},               // one pulley
        {"--profile", "T5", "--z1", "22", "--d1", "30", "--z2", "44", "--centre", "300"},   // said twice
        {"--profile", "T5", "--z1", "0", "--z2", "44", "--centre", "300"},                  //
        {"--profile", "T5", "--z1", "2.5", "--z2", "44", "--centre", "300"},                //
        {"--profile", "T5", "--z1", "99999999999999999999", "--z2", "44", "--centre", "3"}, //
        {"--profile", "T5", "--z1", "22", "--z2", "44"}, // no distance, no belt
        {"--profile", "T5", "--z1", "22", "--z2", "44", "--centre", "300", "--teeth", "9"}, // both
        {"--profile", "T5", "--z1", "22", "--z2", "44", "--length", "333"},                 // half a tooth
        {"--d1", "22", "--d2", "44", "--teeth", "99"},                  // teeth of what pitch?
        {"--d1", "0", "--d2", "44", "--centre", "99"},                  //
        {"--d1", "-5", "--d2", "44", "--centre", "99"},                 //
        {"--d1", "1e300", "--d2", "44", "--centre", "99"},              //
        {"--d1", "nan", "--d2", "44", "--centre", "99"},                //
        {"--d1", "22", "--d2", "44", "--centre", "99", "--power", "1"}, // at what speed?
        {"--d1", "22", "--d2", "44", "--centre", "99", "--speed", "1"}, //
        {"--d1", "22", "--d2", "44", "--centre", "99", "--power", "0", "--speed", "1"},     //
        {"--profile", "T5", "--z1", "22", "--z2", "44", "--centre", "300", "--ribs", "6"},  // it has none
        {"--profile", "T5", "--z1", "22", "--z2", "44", "--centre", "300", "--width", "0"}, //
        {"--d1", "22", "--d2", "44", "--centre", "99", "--move", "1"},                      // no layout
        {"--d1", "22", "--d2", "44", "--centre", "99", "--shop", "nowhere.riband"},         //
        {},
    }));
    const Answer answer = run(QStringList{"drive"} + call);
    INFO(call.join(' ').toStdString());
    CHECK(answer.exit == 2);
    CHECK_FALSE(answer.err.isEmpty());
    CHECK(answer.out.isEmpty());
}

TEST_CASE("What the width carries is told where the tables know, with the other widths", "[app][drive]") {
    const QStringList call = {"drive", "--z1",      "24",   "--z2",    "48",       "--centre",
                              "400",   "--width",   "50.8", "--power", "5.5",      "--speed",
                              "1450",  "--service", "1.4",  "--json",  "--profile"};
    const QJsonObject json = run(call + QStringList{"H"}).json();
    const QJsonObject load = json["load"].toObject(), carries = load["carries"].toObject();
    CHECK(load["belt_speed_m_s"].toDouble() == Approx(7.366));
    CHECK(load["pull_n"].toDouble() == Approx(746.674).margin(0.001));
    CHECK(carries["share"].toDouble() == Approx(0.7992).margin(0.0002));
    CHECK(carries["next_width_mm"] == 50.8);
    CHECK(carries["standard"] == "ISO 5295:1987");
    CHECK(json["other_widths"].toArray().size() == 3); // 25.4, 38.1 and 76.2
    CHECK(run(call + QStringList{"T10"}).json()["load"].toObject()["carries"].isNull());
}

TEST_CASE("A drive is never told without its cautions", "[app][drive]") {
    const Answer answer = run({"drive", "--d1", "100", "--d2", "60", "--centre", "200"});
    CHECK(answer.out.contains("the belt maker's data decide"));
    CHECK(answer.out.contains("Lock the machine out"));
}

TEST_CASE("riband drive follows a layout of more pulleys and sets one of them for each belt",
          "[app][drive]") {
    const Folder folder;
    // Two pulleys of 24 teeth of T5, 200 mm apart: 520 mm.
    const QString two =
        folder.with("two.csv", "x_mm,y_mm,teeth,diameter_mm,side\n0,0,24,,\n200,0,24,,inside\n");
    const Answer answer =
        run({"drive", "--profile", "T5", "--layout", two, "--move", "2", "--adjust", "12", "--json"});
    CHECK(answer.exit == 0);
    const QJsonObject json = answer.json();
    CHECK(json["length_exact_mm"] == 520);
    CHECK(json["spans"].toArray()[0].toObject()["length_mm"] == 200);
    const QJsonObject pulley = json["pulleys"].toArray()[1].toObject();
    CHECK(pulley["arc_deg"] == 180);
    CHECK(pulley["teeth_in_mesh"] == 12);
    for (const QJsonValue& value : json["belts"].toArray()) {
        const QJsonObject belt = value.toObject();
        const double half = belt["excess_mm"].toDouble() / 2;
        CHECK(belt["excess_mm"].toDouble() == belt["length_mm"].toDouble() - 520);
        if (std::abs(half) <= 12)
            CHECK(belt["move_mm"].toDouble() == Approx(half).margin(1e-6));
        else
            CHECK(belt["move_mm"].isNull());
    }
    CHECK(run({"drive", "--profile", "T5", "--layout", two, "--move", "2", "--adjust", "1"}).exit == 1);
}

TEST_CASE("A layout that has no belt, or can't be read, says which pulley and why", "[app][drive]") {
    const Folder folder;
    const auto told = [&](const QByteArray& rows, const QStringList& more = {}) {
        const QString file = folder.with("layout.csv", "x_mm,y_mm,teeth,diameter_mm,side\n" + rows);
        const Answer answer = run(QStringList{"drive", "--layout", file} + more);
        CHECK(answer.exit == 2);
        return answer.err;
    };
    CHECK(
        told("0,0,,100,\n80,0,,100,\n").contains("Pulleys 1 and 2 overlap: they must be at least 20.00 mm"));
    CHECK(told("-120,0,,100,\n0,74.5,,40,back\n120,0,,100,\n").contains("misses it by 4.50 mm"));
    CHECK(told("0,0,,100,\n").contains("two pulleys"));
    CHECK(told("0,0,24,,\n200,0,24,,\n").contains("line 2, column 3 (teeth)"));
    CHECK(told("0,0,24,,\n200,0,24,,back\n", {"--profile", "T5"}).contains("no teeth"));
    CHECK(told("0,0,,10,\n200,0,,-10,\n").contains("line 3, column 4 (diameter_mm)"));
    CHECK(told("0,nan,,10,\n200,0,,10,\n").contains("line 2, column 2 (y_mm)"));
    CHECK(told("0,0,,10,\n200,0,,10,\n", {"--move", "3", "--adjust", "1"}).contains("from 1 to 2"));
    CHECK(told("0,0,,10,\n200,0,,10,\n", {"--z1", "9"}).contains("--z1"));
}
