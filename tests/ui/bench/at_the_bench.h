#pragma once

#include "tests/ui/desk_fixture.h"

#include <QLineEdit>
#include <QTest>

namespace riband::ui {

/// Three belts of 30 of H8M 1200 are ordered, and the Bench is in front.
inline void orderThreeAndGoToTheBench(DeskWindow& desk) {
    desk.type("3 x H8M 1200 30");
    desk.press(Qt::Key_F9);
    desk.press(Qt::Key_2, Qt::ControlModifier);
}

inline void type(QDialog& dialog, const char* field, const QString& words) {
    auto* edit = dialog.findChild<QLineEdit*>(QString::fromLatin1(field));
    REQUIRE(edit != nullptr);
    edit->selectAll();
    QTest::keyClicks(edit, words);
}

inline std::int64_t onRack(DeskShop& shop) {
    std::int64_t sum = 0;
    for (const auto& balance : store::Ledger{shop.connection()}.balances())
        if (balance.account == store::Account::Rack) sum += balance.amount;
    return sum;
}

} // namespace riband::ui
