// What can be done with a piece, and why not.
#include "core/shop/stock.h"
#include "tests/ui/rack/at_the_rack.h"
#include "ui/rack/rack_page.h"

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
    store::StockPiece now() { return store::Pieces{shop.connection()}.at(sleeve); }
};

} // namespace

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
