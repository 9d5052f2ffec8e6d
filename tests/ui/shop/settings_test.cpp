// What the shop works by.
#include "core/shop/counting/count.h"
#include "tests/ui/shop/on_the_shop_page.h"
#include "ui/desk/page.h"
#include "ui/shop/belt_dialog.h"
#include "ui/shop/price_part.h"
#include "ui/tally/tally_page.h"
#include "ui/window/toast.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>

namespace riband::ui {

TEST_CASE("What is saved on the Shop page is what the shop works by", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    QWidget& page = *desk.window().current();

    SECTION("prices") {
        write(fieldNamed(page, "Cutting charge"), "3,60");
        write(fieldNamed(page, "Tax"), "20");
        write(fieldNamed(page, "Off for quantity"), "5: 2.5, 10: 5");
        desk.press(Qt::Key_S, Qt::ControlModifier);
        const auto rules = store::Settings{shop.connection()}.read().prices;
        CHECK(rules.cuttingCharge == Money::minor(360));
        CHECK(rules.tax == Permille{200});
        REQUIRE(rules.steps.size() == 2);
        CHECK(rules.steps[0] == store::QuantityStep{5, Permille{25}});
    }
    SECTION("the currency, as long as the amounts keep their decimals") {
        const auto saved = [&] { return store::Settings{shop.connection()}.read().prices; };
        write(fieldNamed(page, "Currency"), "chf");
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(saved().currency == Currency{"CHF", 2});
        CHECK(saved().cuttingCharge == Money::minor(250));
        write(fieldNamed(page, "Currency"), "JPY"); // no minor unit: 2.50 would be 250 yen
        CHECK(fieldNamed(page, "Currency").accessibleDescription().startsWith("JPY has no decimals"));
        CHECK(fieldNamed(page, "Currency").accessibleDescription().contains("Keep CHF"));
        write(fieldNamed(page, "Currency"), "KWD");
        CHECK(fieldNamed(page, "Currency").accessibleDescription().startsWith("KWD has 3 decimals"));
        write(fieldNamed(page, "Currency"), "Y");
        CHECK(fieldNamed(page, "Currency").accessibleDescription().startsWith("Type its three letters"));
        write(fieldNamed(page, "Currency"), "JPY");
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(saved().currency == Currency{"CHF", 2});
        CHECK(desk.window().toast().words().contains("ISO 4217"));
    }
    SECTION("cutting rules: the next suggestion trims 3 mm") {
        write(fieldNamed(page, "Trim, lost at every mounting"), "3");
        desk.press(Qt::Key_S, Qt::ControlModifier);
        const auto outlook = shop::lookAt(shop.session().shop(), shop.belt("H8M 1200"), {{mm(30), 1}});
        CHECK(outlook.problem.rules.trim == mm(3));
    }
    SECTION("counting: what a calliper can't tell is corrected, and the day has its minutes") {
        write(fieldNamed(page, "By calliper"), "0.5");
        write(fieldNamed(page, "Approval above"), "12.50");
        page.findChild<QSpinBox*>("minutesADay")->setValue(35);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        const auto rules = store::Settings{shop.connection()}.read().counting;
        CHECK(rules.approveOver == Money::minor(1'250));
        const shop::Shop& open = shop.session().shop();
        const auto piece = shop.piece("XL 414", mm(200));
        CHECK(shop::note(open, shop::beginCount(open, "B3-2"), piece, um(199'600), store::Method::Calliper)
                  .verdict == shop::counting::Verdict::Within);
        desk.press(Qt::Key_4, Qt::ControlModifier);
        CHECK(desk.window().tally().findChild<QSpinBox*>()->value() == 35);
    }
    SECTION("how long rubber may lie") {
        spinNamed(page, "Rubber, years").setValue(6);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(store::readShelfLives(shop.connection()).at("rubber") == store::ShelfYears{6, 3});
        CHECK(store::readShelfLives(shop.connection()).at("EPDM") == store::ShelfYears{10, 5});
    }
    SECTION("labels on a sheet, two of them side by side, are printed there") {
        for (auto* box : page.findChildren<QComboBox*>())
            if (box->accessibleName() == "Labels are on") box->setCurrentIndex(1);
        write(fieldNamed(page, "Width of a label"), "70");
        write(fieldNamed(page, "First label, from the left edge"), "10");
        for (auto* count : page.findChildren<QSpinBox*>())
            if (count->accessibleName() == "Labels side by side") count->setValue(2);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        const auto labels = store::Settings{shop.connection()}.read().labels;
        CHECK(labels.sheet);
        CHECK(labels.width == Width::millimetres(70));
        CHECK(labels.left == Width::millimetres(10));
        CHECK(labels.columns == 2);
    }
    SECTION("labels that would be cut at the paper's edge are refused with what fits") {
        for (auto* box : page.findChildren<QComboBox*>())
            if (box->accessibleName() == "Labels are on") box->setCurrentIndex(1);
        write(fieldNamed(page, "Height of a label"), "38");
        write(fieldNamed(page, "First label, from the top edge"), "15");
        spinNamed(page, "Labels one below the other").setValue(9); // 15 + 9 x 38 = 357, and A4 has 297
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK_FALSE(store::Settings{shop.connection()}.read().labels.sheet);
        CHECK(desk.window().toast().words().contains("fit at most 3 labels side by side and 7 one below"));
        spinNamed(page, "Labels one below the other").setValue(7);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(store::Settings{shop.connection()}.read().labels.rows == 7);
    }
    SECTION("cutters are added, made the usual one and taken out by keys") {
        page.findChild<QListWidget*>()->setCurrentRow(6);
        auto& name = fieldNamed(page, "Name of the cutter");
        name.setFocus();
        desk.press(Qt::Key_N, Qt::ControlModifier | Qt::ShiftModifier);
        write(name, "bench cutter"); // has one already: nothing is saved
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(shop.session().settings().cutters.size() == 1);
        write(name, "Long bench");
        desk.press(Qt::Key_U, Qt::ControlModifier | Qt::ShiftModifier);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        REQUIRE(shop.session().settings().cutters.size() == 2);
        CHECK(shop.session().settings().usualCutter().name == "Long bench");
        CHECK(shop.session().settings().cutters[1].cutter.shafts.size() == 2); // the old one kept its own
        const auto id = shop.session().settings().cutters[0].id;
        write(fieldNamed(page, "Gap between sleeve and edge of the shaft"), "12");
        desk.press(Qt::Key_S, Qt::ControlModifier); // once more: no third one
        CHECK(shop.session().settings().cutters[0].id == id);
        CHECK(shop.session().settings().cutters.size() == 2);
        desk.press(Qt::Key_Delete, Qt::ControlModifier | Qt::ShiftModifier);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        REQUIRE(shop.session().settings().cutters.size() == 1);
        CHECK(shop.session().settings().usualCutter().name == "bench cutter");
    }
    SECTION("a wrong figure saves nothing at all") {
        write(fieldNamed(page, "Name of the shop"), "Elsewhere");
        write(fieldNamed(page, "Cutting charge"), "lots");
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(store::Settings{shop.connection()}.read().name == "Lockside Drives");
    }
    SECTION("and can be taken back before it is saved") {
        QLineEdit& name = fieldNamed(page, "Name of the shop");
        write(name, "Elsewhere");
        desk.press(Qt::Key_R, Qt::ControlModifier);
        CHECK(name.text() == "Lockside Drives");
    }
}

TEST_CASE("Steps for quantity rise, from two belts on", "[shop]") {
    CHECK(readSteps("")->empty());
    CHECK(printSteps(*readSteps("5: 2.5; 10: 5")) == "5: 2.5, 10: 5");
    for (const char* wrong : {"5", "5:", "1: 3", "10: 5, 5: 2", "five: 2", "5: lots"}) {
        INFO(wrong);
        CHECK_FALSE(readSteps(wrong).has_value());
    }
}

TEST_CASE("Usual widths are read in any order, each once", "[shop]") {
    const auto listed = readListed("30, 10; 15 10", Unit::Micrometre);
    REQUIRE(listed);
    CHECK(*listed == std::vector<Extent>{mm(10), mm(15), mm(30)});
    CHECK(readListed("19,05; 25,4", Unit::Micrometre)->size() == 2);
    CHECK_FALSE(readListed("10, wide", Unit::Micrometre).has_value());
    CHECK_FALSE(readListed("2.5", Unit::Rib).has_value());
}

} // namespace riband::ui
