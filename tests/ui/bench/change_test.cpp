#include "core/shop/cut.h"
#include "tests/ui/bench/at_the_bench.h"
#include "ui/bench/order_dialog.h"
#include "ui/window/toast.h"

#include <QAction>
#include <QDir>
#include <QLabel>
#include <QMessageBox>
#include <QSpinBox>

#include <memory>

namespace riband::ui {

TEST_CASE("A changed mind makes the ticket anew", "[bench]") {
    DeskShop shop;
    DeskWindow desk{shop};
    orderThreeAndGoToTheBench(desk);
    const auto order = shop.orders(store::OrderState::Open).front();
    OrderDialog dialog{shop.session(), order.id, &desk.window()};
    dialog.show();
    desk.answering([](QDialog& change) {
        change.findChild<QSpinBox*>("quantity")->setValue(2);
        type(change, "width", "25");
        QTest::keyClick(&change, Qt::Key_Return);
    });
    for (QAction* action : dialog.actions())
        if (action->shortcut() == QKeySequence{Qt::Key_F2}) action->trigger();
    const auto line = shop.orders(store::OrderState::Open).front().lines.front();
    CHECK(line.extent == mm(25));
    CHECK(line.quantity - line.cancelled == 2);
    CHECK(shop.disagreements().empty());
}

namespace {

/// Three belts of 30 of H8M 1200 are ordered, their order is open, and F2 asks what to change.
struct ChangingMind {
    DeskShop shop;
    DeskWindow desk{shop};
    std::unique_ptr<OrderDialog> dialog;

    ChangingMind() {
        orderThreeAndGoToTheBench(desk);
        dialog = std::make_unique<OrderDialog>(shop.session(), order().id, &desk.window());
        dialog->show();
    }
    store::Order order() { return shop.orders(store::OrderState::Open).front(); }
    void change(const std::function<void(QDialog&)>& answer) {
        desk.answering(answer);
        for (QAction* action : dialog->actions())
            if (action->shortcut() == QKeySequence{Qt::Key_F2}) action->trigger();
    }
    static QString words(const QDialog& change) {
        return change.findChild<QLabel*>("fieldWords")->text() + change.findChild<QLabel*>("words")->text();
    }
};

} // namespace

TEST_CASE("The first field of a change is chosen: a digit replaces the number", "[bench]") {
    ChangingMind mind;
    mind.change([](QDialog& change) {
        QTest::keyClicks(change.focusWidget(), "2");
        QTest::keyClick(&change, Qt::Key_Return);
    });
    CHECK(mind.order().lines.front().quantity == 2);
}

TEST_CASE("A change that can't be is refused in words, and the dialog stays", "[bench]") {
    ChangingMind mind;
    const auto refused = [&](const QString& width, const char* why) {
        bool stayed = false;
        QString words;
        mind.change([&](QDialog& change) {
            type(change, "width", width);
            QTest::keyClick(&change, Qt::Key_Return);
            stayed = change.isVisible();
            words = ChangingMind::words(change);
        });
        INFO(words.toStdString());
        CHECK(stayed);
        CHECK(words.contains(QString::fromUtf8(why)));
    };
    refused("5000", "wider than 500 mm");
    refused("abc", "Type the width in mm");
    refused("400", "does not give H8M 1200 400"); // three of them
    refused("30", "Nothing is changed yet");
    CHECK(mind.order().lines.front().extent == mm(30));
    CHECK(mind.shop.disagreements().empty());
}

TEST_CASE("Belts that are left over by a change get their labels", "[bench]") {
    ChangingMind mind;
    const auto ticket = store::Tickets{mind.shop.connection()}.ofOrder(mind.order().id).front();
    shop::recordCut(mind.shop.session().shop(), {ticket.mountings.front().id, {}, {}, ""});
    mind.dialog = std::make_unique<OrderDialog>(
        mind.shop.session(), mind.shop.orders(store::OrderState::Ready).front().id, &mind.desk.window());
    mind.dialog->show();
    mind.change([](QDialog& change) {
        QTest::keyClicks(change.focusWidget(), "2");
        QTest::keyClick(&change, Qt::Key_Return);
    });
    CHECK(QDir{mind.shop.papers()}.entryList({"label-*.pdf"}).size() == 1);
    CHECK(mind.desk.window().toast().words().contains("go to the shelf"));
    CHECK(mind.shop.disagreements().empty());
}

TEST_CASE("A change that would open a sleeve says which before it is made", "[bench]") {
    ChangingMind mind;
    QString asked;
    Qt::Key answer = Qt::Key_Return;
    const auto widen = [&] {
        mind.change([&](QDialog& change) {
            type(change, "width", "140"); // no remnant is so wide
            mind.desk.answering([&](QDialog& question) {
                asked = static_cast<QMessageBox&>(question).text();
                QTest::keyClick(&question, answer);
            });
            QTest::keyClick(&change, Qt::Key_Return);
        });
    };
    SECTION("yes") {
        widen();
        CHECK(mind.order().lines.front().extent == mm(140));
    }
    SECTION("no") {
        answer = Qt::Key_Escape;
        widen();
        CHECK(mind.order().lines.front().extent == mm(30));
    }
    CHECK(asked.contains("470 mm"));
    CHECK(mind.shop.disagreements().empty());
}

} // namespace riband::ui
