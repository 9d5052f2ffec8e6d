// What is tried out before it is saved.
#include "tests/ui/shop/on_the_shop_page.h"
#include "ui/desk/page.h"
#include "ui/shop/advice_part.h"
#include "ui/shop/belt_dialog.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QListWidget>
#include <QTest>

namespace riband::ui {

TEST_CASE("The settings of the suggestion are tried out before they are saved", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_6, Qt::ControlModifier);
    QWidget& page = *desk.window().current();
    auto* part = page.findChild<AdvicePart*>();
    REQUIRE(part != nullptr);
    page.findChild<QListWidget*>()->setCurrentRow(4);
    QAction* tryOut = nullptr;
    QAction* stop = nullptr;
    QAction* usual = nullptr;
    for (QAction* action : part->actions())
        (action->shortcut() == QKeySequence{Qt::Key_F5}   ? tryOut
         : action->shortcut() == QKeySequence{Qt::Key_F6} ? usual
                                                          : stop) = action;
    REQUIRE(tryOut != nullptr);
    REQUIRE(usual != nullptr);
    SECTION("saved") {
        write(fieldNamed(page, "Interest a year on what lies there"), "8.5");
        spinNamed(*part, "Most ready belts of a width").setValue(2);
        spinNamed(*part, "Most of them from one mounting").setValue(5);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        const auto advice = store::Settings{shop.connection()}.read().advice;
        CHECK(advice.interest == Permille{85});
        CHECK(advice.shelfLimit == 2);
        CHECK(advice.shelfAtOnce == 5);
        CHECK(shop::lookAt(shop.session().shop(), shop.belt("H8M 1200"), {{mm(30), 1}})
                  .past.setting.shelfAtOnce == 5);
    }
    SECTION("the usual figures by a key, until they are saved only shown") {
        write(fieldNamed(page, "Interest a year on what lies there"), "8.5");
        write(fieldNamed(page, "Labour of a mounting, in width"), "9");
        for (const char* name :
             {"Most ready belts of a width", "Most of them from one mounting", "Most remnants of a belt"})
            spinNamed(*part, name).setValue(1);
        part->findChild<QCheckBox*>()->setChecked(false);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK_FALSE(store::Settings{shop.connection()}.read().advice.finish);
        usual->trigger();
        CHECK_FALSE(store::Settings{shop.connection()}.read().advice.finish);
        desk.press(Qt::Key_S, Qt::ControlModifier);
        const auto saved = store::Settings{shop.connection()}.read();
        const store::ShopSettings fresh;
        CHECK(saved.advice == fresh.advice);
        CHECK(saved.mostRemnants == fresh.mostRemnants);
        CHECK(saved.mountingCost == fresh.mountingCost);
        CHECK(saved.name == "Lockside Drives"); // of the other parts nothing is touched
    }
    SECTION("a wrong figure saves nothing") {
        write(fieldNamed(page, "Interest a year on what lies there"), "a lot");
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(store::Settings{shop.connection()}.read().advice == store::AdviceRules{});
    }
    SECTION("tried, and stopped") {
        tryOut->trigger();
        CHECK(part->trial().trying());
        stop->trigger();
        CHECK_FALSE(part->trial().trying());
        CHECK(part->trial().outcome() == "Stopped.");
    }
}

TEST_CASE("Whether a belt is cut before it is asked for is tried out where it is set", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    const auto belt = *store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"));
    BeltDialog dialog{belt, shop.session()};
    dialog.show();
    auto* trial = dialog.findChild<TrialView*>();
    REQUIRE(trial != nullptr);
    dialog.findChild<QComboBox*>()->setCurrentIndex(static_cast<int>(store::PreCut::Never));
    for (QAction* action : dialog.actions())
        if (action->shortcut() == QKeySequence{Qt::Key_F5}) action->trigger();
    CHECK(trial->trying());
    CHECK(QTest::qWaitFor([&] { return !trial->trying(); }, 300'000));
    INFO(trial->outcome().toStdString());
    CHECK(trial->outcome().startsWith("H8M 1200, "));
    CHECK(trial->outcome().contains(
        "Cut before it is asked for: where trim is a large share; as it stands here: never."));
    CHECK(trial->outcome().contains("wast")); // which of both wastes less, or that it can't be told
    CHECK(trial->figures().isVisible());
    for (int column = 0; column < trial->figures().columnCount(); ++column) {
        const auto figure = [&](int row) {
            return trial->figures().item(row, column)->text().replace(u'−', u'-').toDouble();
        };
        CHECK(std::abs(figure(2) - (figure(1) - figure(0))) < 0.011); // each is rounded
    }
    CHECK(store::Catalogue{shop.connection()}.at(belt.id).preCut == store::PreCut::WherePays);
}

} // namespace riband::ui
