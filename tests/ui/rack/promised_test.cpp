// What open tickets need of a piece is said in the dialog, before anything is typed.
#include "core/shop/order.h"
#include "core/shop/stock.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/rack/rack_page.h"

#include <QDialogButtonBox>
#include <QPushButton>

namespace riband::ui {

namespace {

struct PromisedRack {
    DeskShop shop;
    DeskWindow desk{shop};
    store::PieceId sleeve = onlyOf("XL 414"); ///< 250 mm

    store::PieceId onlyOf(const std::string& belt) {
        const auto kept = store::Catalogue{shop.connection()}.find(shop.belt(belt));
        return store::Pieces{shop.connection()}.ofBelt(kept->id).front().id;
    }
    std::string promise(Extent extent) {
        const auto made =
            shop::order(shop.session().shop(),
                        {{{shop.belt("XL 414"), extent, 1, "", std::nullopt, {}}}, "", "", {}, ""});
        return store::Tickets{shop.connection()}.at(*made.ticket).code;
    }
    void show(store::PieceId piece) {
        goToTheRack(desk);
        desk.window().rack().showPiece(piece);
        desk.settle();
    }
    store::StockPiece now() { return store::Pieces{shop.connection()}.at(sleeve); }
};

QString held(QDialog& dialog) {
    const auto* words = dialog.findChild<QLabel*>(QStringLiteral("held"));
    REQUIRE(words != nullptr);
    return words->isVisible() ? words->text() : QString{};
}

bool canGoOn(QDialog& dialog) {
    return dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)->isEnabled();
}

} // namespace

TEST_CASE("A piece of which a ticket needs a part says so before it is divided or scrapped", "[rack]") {
    PromisedRack at;
    const std::string ticket = at.promise(mm(100)); // 2.5 of trim, 100, and 5 stay: 142.5 are free
    at.show(at.sleeve);
    const auto ask = [&](Qt::Key key, const char* name, const char* much, const char* enough) {
        answering(at.desk, [&](QDialog& dialog) {
            CHECK(held(dialog).contains(QString::fromStdString(ticket)));
            CHECK(held(dialog).contains("at most 142.5 mm"));
            CHECK(canGoOn(dialog));
            field(dialog, name).selectAll();
            QTest::keyClicks(&field(dialog, name), much);
            QTest::keyClick(&field(dialog, name), Qt::Key_Return);
            CHECK(dialog.isVisible());
            CHECK(saidWrong(dialog).contains("at most 142.5 mm"));
            field(dialog, name).selectAll();
            QTest::keyClicks(&field(dialog, name), enough);
            CHECK(saidWrong(dialog).isEmpty());
            QTest::keyClick(&field(dialog, name), Qt::Key_Return);
        });
        at.desk.press(key, Qt::ControlModifier);
    };
    SECTION("divided") {
        ask(Qt::Key_T, "apart", "142.6", "142.5");
        CHECK(at.now().extent == um(107'500));
    }
    SECTION("scrapped") {
        ask(Qt::Key_Delete, "extent", "142.6", "40");
        CHECK(at.now().extent == mm(210));
    }
    CHECK(at.shop.disagreements().empty());
}

TEST_CASE("A piece that is promised whole, or is a ready belt, can't be divided, and nothing can be typed",
          "[rack]") {
    PromisedRack at;
    const auto refuses = [&](store::PieceId piece, const QString& why) {
        at.show(piece);
        bool asked = false;
        answering(at.desk, [&](QDialog& dialog) {
            asked = true;
            CHECK(held(dialog).contains(why));
            CHECK_FALSE(canGoOn(dialog));
            CHECK_FALSE(field(dialog, "apart").isEnabled());
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        at.desk.press(Qt::Key_T, Qt::ControlModifier);
        CHECK(asked);
    };
    const std::string ticket = at.promise(mm(230));
    refuses(at.sleeve, "is promised to " + QString::fromStdString(ticket));
    refuses(at.onlyOf("PJ 1194"), "is a ready belt");
    refuses(at.shop.piece("T5 500", mm(20), cutting::PieceKind::Remnant), "of two parts one would be under");
}

TEST_CASE("A piece that is gone is not moved, and it is said why", "[rack]") {
    PromisedRack at;
    shop::scrap(at.shop.session().shop(), at.sleeve, mm(250), store::ScrapReason::Aged, "");
    goToTheRack(at.desk);
    const auto action = [&](const QKeySequence& key) -> QAction& {
        for (auto* each : at.desk.window().rack().actions())
            if (each->shortcut() == key) return *each;
        FAIL("no such key");
        throw 0;
    };
    CHECK(action(Qt::Key_F6).isEnabled());
    auto& words = *at.desk.window().rack().findChild<QLineEdit*>();
    words.setText(QString::fromStdString(at.now().code));
    at.desk.settle();
    for (const QKeySequence& key :
         {QKeySequence{Qt::Key_F6}, QKeySequence{Qt::Key_F7}, QKeySequence{Qt::CTRL | Qt::Key_T},
          QKeySequence{Qt::CTRL | Qt::Key_Delete}}) {
        INFO(key.toString().toStdString());
        CHECK_FALSE(action(key).isEnabled());
        CHECK(action(key).toolTip().contains("is gone from the rack"));
    }
    QStringList said;
    for (const auto* label : at.desk.window().rack().findChildren<QLabel*>())
        said << label->text();
    CHECK(said.join(' ').contains("nothing is left of it to move"));
    words.clear();
    at.desk.settle();
    CHECK(action(Qt::Key_F6).isEnabled());
}

} // namespace riband::ui
