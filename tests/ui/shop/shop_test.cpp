#include "core/shop/counting/count.h"
#include "core/shop/suggest.h"
#include "core/store/places.h"
#include "core/store/shelf_lives.h"
#include "core/store/verify.h"
#include "tests/ui/desk_fixture.h"
#include "ui/desk/page.h"
#include "ui/shop/advice_part.h"
#include "ui/shop/belt_dialog.h"
#include "ui/shop/belts_model.h"
#include "ui/shop/price_part.h"
#include "ui/shop/shafts_model.h"
#include "ui/tally/tally_page.h"
#include "ui/window/toast.h"

#include <QAbstractItemModelTester>
#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSpinBox>
#include <QTableWidget>
#include <QTest>
#include <QTreeWidget>

namespace riband::ui {

namespace {

constexpr auto Strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

QLineEdit& fieldNamed(QWidget& page, const QString& name) {
    for (auto* field : page.findChildren<QLineEdit*>())
        if (field->accessibleName() == name) return *field;
    FAIL("no field " << name.toStdString());
    throw 0;
}

QSpinBox& spinNamed(QWidget& page, const QString& name) {
    for (auto* field : page.findChildren<QSpinBox*>())
        if (field->accessibleName() == name) return *field;
    FAIL("no field " << name.toStdString());
    throw 0;
}

void write(QLineEdit& field, const QString& words) {
    field.selectAll();
    QTest::keyClicks(&field, words);
}

} // namespace

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
        desk.press(Qt::Key_S, Qt::ControlModifier);
        CHECK(saved().currency == Currency{"CHF", 2});
        CHECK(desk.window().toast().words().contains("JPY has no decimals"));
        CHECK(desk.window().toast().words().contains("CHF"));
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

TEST_CASE("The list of belts is saved as a table with plain figures", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    auto* parts = desk.window().current()->findChild<QListWidget*>();
    for (int row = 0; row < parts->count(); ++row)
        if (parts->item(row)->text() == "Belts and widths") parts->setCurrentRow(row);
    desk.press(Qt::Key_E, Qt::ControlModifier);
    const QStringList files = QDir{shop.papers()}.entryList({"belts-*.csv"});
    REQUIRE(files.size() == 1);
    QFile file{QDir{shop.papers()}.filePath(files.front())};
    REQUIRE(file.open(QIODevice::ReadOnly));
    const QString head = QString::fromUtf8(file.readLine());
    CHECK(head.contains("New sleeve (mm),New sleeve (ribs)"));
    CHECK(head.contains("Delivery (days)"));
}

TEST_CASE("A place gets its level, its belt and its reach by keys, and a label", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    QWidget& page = *desk.window().current();
    auto* parts = page.findChild<QListWidget*>();
    for (int row = 0; row < parts->count(); ++row)
        if (parts->item(row)->text() == "Places") parts->setCurrentRow(row);
    const auto place = [&](const char* name) { return store::Places{shop.connection()}.byName(name); };
    const auto answer = [](QDialog& dialog, const char* name, const QString& words) {
        auto* field = dialog.findChild<QLineEdit*>(QString::fromLatin1(name));
        REQUIRE(field != nullptr);
        write(*field, words);
    };
    auto& tree = *page.findChild<QTreeWidget*>();
    REQUIRE(tree.topLevelItemCount() > 0);
    REQUIRE(place("B3-2"));

    desk.answering([&](QDialog& dialog) {
        answer(dialog, "name", "B3-2"); // there is one
        dialog.accept();
        CHECK(dialog.isVisible());
        answer(dialog, "name", "B3");
        dialog.findChild<QComboBox*>("level")->setCurrentIndex(1);
        dialog.accept();
    });
    desk.press(Qt::Key_N, Qt::ControlModifier);
    REQUIRE(place("B3"));
    CHECK(place("B3")->level == store::PlaceLevel::Bay);
    CHECK(place("B3-2")->parent == place("B3")->id);

    tree.setCurrentItem(tree.findItems("B3-2", Qt::MatchExactly | Qt::MatchRecursive).front());
    desk.answering([&](QDialog& dialog) {
        answer(dialog, "parent", "nowhere at all");
        dialog.accept();
        CHECK(dialog.isVisible());
        answer(dialog, "parent", "B3");
        answer(dialog, "belt", "H8M 1200");
        dialog.findChild<QCheckBox*>("front")->setChecked(true);
        dialog.accept();
    });
    desk.press(Qt::Key_F2);
    CHECK(place("B3-2")->front);
    CHECK(place("B3-2")->fixedFor == store::Catalogue{shop.connection()}.find(shop.belt("H8M 1200"))->id);

    desk.press(Qt::Key_F7);
    CHECK(QDir{shop.papers()}.entryList({"places-*.pdf"}).size() == 1);
    desk.press(Qt::Key_Delete, Qt::ControlModifier); // pieces lie there
    CHECK(place("B3-2"));
    CHECK(desk.window().toast().words().contains("Pieces lie there"));
}

TEST_CASE("A backup is made by keys while the shop is open, and is a whole shop", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    auto* parts = desk.window().current()->findChild<QListWidget*>();
    parts->setCurrentRow(parts->count() - 1);
    const QString target = shop.file() + ".backup.riband";
    desk.answering([&](QDialog& dialog) {
        auto* files = qobject_cast<QFileDialog*>(&dialog);
        REQUIRE(files != nullptr);
        files->findChild<QLineEdit*>()->setText(
            target); // selectFile leaves a field alone that is being typed in
        QMetaObject::invokeMethod(files, "accept");
    });
    desk.press(Qt::Key_F8);
    desk.settle();
    REQUIRE(QFileInfo::exists(target));
    store::Connection copy{target.toStdString(), store::Connection::Mode::ReadOnly};
    const auto found = store::verify(copy);
    CHECK(found.agrees());
    CHECK(found.pieces == 7);
}

TEST_CASE("The book is checked on demand", "[shop]") {
    DeskShop shop;
    DeskWindow desk{shop};
    desk.press(Qt::Key_6, Qt::ControlModifier);
    auto* parts = desk.window().current()->findChild<QListWidget*>();
    parts->setCurrentRow(parts->count() - 1);
    desk.press(Qt::Key_F5);
    desk.settle();
    bool said = false;
    for (const auto* label : desk.window().current()->findChildren<QLabel*>())
        said = said || label->text().startsWith("All agrees: 7 pieces");
    CHECK(said);
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

TEST_CASE("The Shop page's models keep the rules of models", "[shop]") {
    DeskShop shop;
    SECTION("shafts: a figure that is none is not taken") {
        ShaftsModel model;
        QAbstractItemModelTester tester{&model, Strict};
        model.setShafts({{"thin", 30, 30, 520, 60, 900}});
        const auto usable = model.index(0, ShaftsModel::UsableColumn);
        CHECK_FALSE(model.setData(usable, "wide", Qt::EditRole));
        CHECK_FALSE(model.setData(usable, "-3", Qt::EditRole));
        CHECK(model.setData(usable, "480,5", Qt::EditRole));
        CHECK(model.shafts().front().usable == 480.5);
        model.add();
        CHECK(model.rowCount() == 2);
        model.remove(0);
        CHECK(model.rowCount() == 1);
    }
    SECTION("belts") {
        BeltsModel model;
        QAbstractItemModelTester tester{&model, Strict};
        auto belts = store::Catalogue{shop.connection()}.all();
        model.setBelts(belts, Currency{"EUR", 2});
        REQUIRE(model.rowCount() == 4);
        belts[0].price = WidthPrice::thousandths(51'000);
        model.change(0, belts[0]);
        CHECK(model.index(0, BeltsModel::PriceColumn).data().toString() == "0.51 a mm");
        model.setBelts({}, Currency{"EUR", 2});
        CHECK(model.rowCount() == 0);
    }
}

} // namespace riband::ui
