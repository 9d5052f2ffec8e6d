#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

QString notFound(const shop::Refusal& refusal) {
    using Why = shop::Refusal::Why;
    const QString detail = text(refusal.detail());
    switch (refusal.why()) {
    case Why::NoSuchPiece:
        return Words::tr("No piece has the code “%1”. Check the label.").arg(detail);
    case Why::NoSuchTicket:
        return Words::tr("No ticket has the code “%1”.").arg(detail);
    case Why::NoSuchOrder:
        return Words::tr("No order has the code “%1”.").arg(detail);
    case Why::NoSuchBelt:
        return Words::tr("The shop does not keep the belt “%1”. Add it first.").arg(detail);
    case Why::NoSuchCutter:
        return Words::tr("That cutter was taken out on the Shop page. Choose another one.");
    default:
        return {};
    }
}

QString tooLate(const shop::Refusal& refusal) {
    using Why = shop::Refusal::Why;
    const QString detail = text(refusal.detail());
    switch (refusal.why()) {
    case Why::AlreadyCut:
        return Words::tr("This is cut already (%1). What was cut stays cut.").arg(detail);
    case Why::AlreadyDone:
        return Words::tr("This is closed already (%1): handed over, cancelled or void.").arg(detail);
    case Why::NothingToCut:
        return Words::tr("There is nothing left to cut.");
    case Why::WidthTaken:
        return Words::tr("What is free here does not give %1: another order may have taken it. Nothing was "
                         "done; ask for another width or fewer belts, or quote it from a new sleeve.")
            .arg(detail);
    case Why::PieceGone:
        return Words::tr("The piece %1 is used up.").arg(detail);
    case Why::PieceReserved:
        return Words::tr("The piece is promised to %1. Cut or cancel that first.").arg(detail);
    case Why::UndoneAlready:
        return Words::tr("This was undone already, by entry %1.").arg(detail);
    case Why::ActStays:
        return Words::
            tr("This can't be undone by a counter-entry (%1): what was spoiled is spoiled, and what belongs "
               "to an order is changed at the order.")
                .arg(detail);
    case Why::NotAllCut:
        return Words::tr("Not all belts of the order are cut yet.");
    default:
        return notFound(refusal);
    }
}

QString ofCounts(const shop::Refusal& refusal) {
    using Why = shop::Refusal::Why;
    const QString detail = text(refusal.detail());
    switch (refusal.why()) {
    case Why::CountClosed:
        return Words::tr("This place is not being counted (%1). Begin its count first.").arg(detail);
    case Why::MeasureAgain:
        return Words::tr("Measure %1 a second time before the count is closed.").arg(detail);
    case Why::NeedsApproval:
        return Words::tr("The difference of %1 is worth more than the limit: the owner must approve it.")
            .arg(detail);
    case Why::SettledByCut:
        return Words::tr("This was settled by recording its cut. Undo that cut on the Bench.");
    default:
        return tooLate(refusal);
    }
}

QString aboutPeople(const shop::Refusal& refusal) {
    using Why = shop::Refusal::Why;
    switch (refusal.why()) {
    case Why::NotTheirs:
        return Words::tr("That is for %1. Ctrl+U changes who acts.")
            .arg(say(static_cast<store::Role>(std::stoi(refusal.detail()))));
    case Why::InitialsTaken:
        return Words::tr("Give initials of one to four letters or digits that nobody else has (“%1”).")
            .arg(text(refusal.detail()));
    case Why::LastOwner:
        return Words::tr("%1 is the last owner. Make somebody else an owner first.")
            .arg(text(refusal.detail()));
    case Why::BadNumber:
        return Words::tr("A number to lock with has 4 to 12 digits.");
    default:
        return ofCounts(refusal);
    }
}

} // namespace

QString say(store::Role role) {
    switch (role) {
    case store::Role::Clerk:
        return Words::tr("counter clerk");
    case store::Role::StockManager:
        return Words::tr("stock manager");
    case store::Role::Owner:
        break;
    }
    return Words::tr("owner");
}

QString say(const shop::Refusal& refusal) {
    using Why = shop::Refusal::Why;
    const QString detail = text(refusal.detail());
    switch (refusal.why()) {
    case Why::MoreThanThere:
        return Words::tr("More would be left than there was. Measure again (%1).").arg(detail);
    case Why::TooNarrow:
        return Words::tr("The piece is too narrow for that (%1).").arg(detail);
    case Why::UnitMixed:
        return Words::tr("Ribbed belts are counted in ribs, toothed belts are measured in mm (%1).")
            .arg(detail);
    case Why::BadQuantity:
        return Words::tr("“%1” can't be meant here. Belts are counted from 1 on, amounts are 0 or more, and "
                         "no day is still "
                         "to come.")
            .arg(detail);
    case Why::BadWidth:
        return Words::tr("That width can't be used (%1). Check it.").arg(detail);
    case Why::CodeTaken:
        return wrongPlace(refusal.detail());
    case Why::ExtendedAlready:
        return Words::tr(
                   "%1 was inspected and extended once; that is all the storage standard allows. Scrap it.")
            .arg(detail);
    case Why::HasArrived:
        return Words::tr(
                   "Some of %1 has come: its line keeps belt and width, and no fewer sleeves than came.")
            .arg(detail);
    case Why::NotAged:
        return Words::tr("%1 is young enough: there is nothing to extend yet.").arg(detail);
    default:
        return aboutPeople(refusal);
    }
}

} // namespace riband::ui
