#include "tests/ui/review/at_the_review.h"

#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "core/shop/cut.h"
#include "core/shop/order.h"
#include "core/shop/outlook.h"
#include "ui/desk/page.h"

#include <QApplication>
#include <QLabel>
#include <QThreadPool>

namespace riband::ui {

void trade(DeskShop& shop) {
    store::Transaction transaction{shop.connection()};
    const store::PersonId owner =
        store::People{shop.connection()}.add("OW", "Odile Wren", store::Role::Owner);
    transaction.commit();
    shop.session().actAs(owner);
    const shop::Shop& open = shop.session().shop();
    for (const auto& [belt, width, count] : {std::tuple{"H8M 1200", 30, 3}, std::tuple{"T10 1250", 25, 2}}) {
        const auto ordered =
            shop::order(open, {.lines = {{shop.belt(belt), mm(width), count, belt, std::nullopt, {}}},
                               .customer = "Lower Mill",
                               .phone = "",
                               .due = std::nullopt,
                               .note = ""});
        for (const auto& mounting : store::Tickets{open.connection}.at(*ordered.ticket).mountings)
            shop::recordCut(open, {mounting.id});
    }
}

void overrule(DeskShop& shop) {
    const shop::Shop& open = shop.session().shop();
    const auto belt = shop.belt("H8M 1200");
    for (int i = 0; i < 3; ++i) {
        const shop::Outlook outlook = shop::lookAt(open, belt, {{mm(30), 1}});
        const shop::Suggestion suggestion = shop::suggest(outlook);
        REQUIRE_FALSE(suggestion.others.empty());
        shop::DraftLine line{belt, mm(30), 1};
        line.way = suggestion.others.front().plan;
        for (const cutting::Piece& piece : outlook.problem.pieces)
            line.wayPieces.push_back(piece.code);
        line.overrideKey = i == 0 ? store::OverrideKey::OlderFirst : store::OverrideKey::NearerToHand;
        const auto ordered = shop::order(open, {.lines = {line}});
        for (const auto& mounting : store::Tickets{open.connection}.at(*ordered.ticket).mountings)
            shop::recordCut(open, {mounting.id});
    }
}

void countAll(DeskShop& shop) {
    const shop::Shop& open = shop.session().shop();
    const store::CountId count = shop::beginCount(open, "B3-2");
    int seen = 0;
    for (const store::StockPiece& piece : store::Pieces{open.connection}.all()) {
        if (piece.extent.unit() == Unit::Rib || ++seen > 3) continue;
        for (int i = 0; i < 2; ++i)
            shop::note(open, count, piece.id, seen == 3 ? piece.extent - mm(20) : piece.extent,
                       store::Method::Calliper);
    }
    shop::closeCount(open, count);
    for (auto found = shop::findings(open); !found.empty(); found = shop::findings(open))
        shop::settle(open, found.front().difference, found.front().proposals.front());
}

ReviewPage& review(DeskWindow& desk) {
    for (Page* page : desk.window().pages())
        if (auto* found = qobject_cast<ReviewPage*>(page)) return *found;
    FAIL("no review");
    throw std::logic_error("unreachable");
}

void settle(DeskWindow& desk) {
    do {
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
    } while (!review(desk).settled());
}

void goToTheReview(DeskWindow& desk) {
    desk.window().open(&review(desk));
    settle(desk);
}

QListWidget& titles(DeskWindow& desk) { return *review(desk).findChild<QListWidget*>(); }

QString wordsOf(const ReviewPart& part) {
    QString words;
    for (const QWidget* widget : part.findChildren<QWidget*>())
        words += widget->accessibleDescription();
    return words;
}

QString wordsShown(const ReviewPart& part) {
    QString words;
    for (const QLabel* label : part.findChildren<QLabel*>())
        words += label->text() + QLatin1Char(' ');
    return words;
}

const ReviewPart& goTo(DeskWindow& desk, const QString& report) {
    const auto& parts = review(desk).parts();
    for (std::size_t row = 0; row < parts.size(); ++row)
        if (parts[row]->fileName() == report) titles(desk).setCurrentRow(static_cast<int>(row));
    settle(desk);
    return *review(desk).part();
}

} // namespace riband::ui
