#pragma once

#include "tests/ui/desk_fixture.h"
#include "ui/review/review_page.h"
#include "ui/review/review_part.h"

#include <QListWidget>

namespace riband::ui {

/// The owner is at the desk; three of 30 and two of 25 were sold and cut.
void trade(DeskShop& shop);
/// Three orders; for each another piece is taken than was suggested.
void overrule(DeskShop& shop);
/// Two pieces agree, one is 20 mm short, the others are not there; all is settled by the likeliest cause.
void countAll(DeskShop& shop);

ReviewPage& review(DeskWindow& desk);
/// Waits until what the page asked for is read.
void settle(DeskWindow& desk);
void goToTheReview(DeskWindow& desk);
QListWidget& titles(DeskWindow& desk);
QString wordsOf(const ReviewPart& part);
QString wordsShown(const ReviewPart& part);
const ReviewPart& goTo(DeskWindow& desk, const QString& report);

} // namespace riband::ui
