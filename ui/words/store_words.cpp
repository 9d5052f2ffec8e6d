#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDir>
#include <QFileInfo>

namespace riband::ui {

namespace {

QString notThere(const QFileInfo& file) {
    if (file.isDir()) return Words::tr("This is a folder. Name a file in it.");
    if (!file.dir().exists())
        return Words::tr("There is no folder %1. Make it first, or name another.")
            .arg(QDir::toNativeSeparators(file.path()));
    return Words::tr("There is no such file.");
}

QString cantOpen(const store::StoreError& error) {
    using Kind = store::StoreError::Kind;
    switch (error.kind()) {
    case Kind::Missing:
        return notThere(QFileInfo{text(error.path())});
    case Kind::NotAShop:
        return Words::tr("This is not a shop of Riband. The file was not changed.");
    case Kind::Newer:
        return Words::tr("A later Riband wrote this shop (schema %1). Install that one; the file was not "
                         "changed.")
            .arg(text(error.detail()));
    case Kind::Older:
        return Words::tr(
            "An earlier Riband wrote this shop. Open it once in the window or by a command that writes "
            "(riband learn), which brings it up to date; the file was not changed.");
    case Kind::Corrupt:
        return Words::tr("The file is damaged (%1). It was not changed: restore the last backup.")
            .arg(text(error.detail()));
    case Kind::ReadOnly:
        return Words::tr("The file or its folder can't be written. Ask for the right to write there.");
    case Kind::Held:
        return Words::tr("Another program holds the file. Close it there, then try again.");
    default:
        return {};
    }
}

QString book(const store::Disagreement& d) { return Words::tr("book %1, found %2").arg(d.book).arg(d.found); }

QString ofPieces(const store::Disagreement& d) {
    using Kind = store::Disagreement::Kind;
    const QString where = text(d.where);
    switch (d.kind) {
    case Kind::PieceExtent:
        return Words::tr("Piece %1: its width is not the sum of its movements (%2).").arg(where, book(d));
    case Kind::PieceCost:
        return Words::tr("Piece %1: its cost is not the sum of its movements (%2).").arg(where, book(d));
    case Kind::PieceNegative:
        return Words::tr("Piece %1 is below zero (%2).").arg(where, book(d));
    case Kind::PieceCode:
        return Words::tr("Piece %1: its code is wrong or given twice.").arg(where);
    case Kind::OverReserved:
        return Words::tr("Piece %1: more is promised than is there (%2).").arg(where, book(d));
    default:
        return {};
    }
}

QString ofBook(const store::Disagreement& d) {
    using Kind = store::Disagreement::Kind;
    const QString where = text(d.where);
    switch (d.kind) {
    case Kind::MovementNotZero:
        return Words::tr("Movement %1 does not sum to zero (%2).").arg(where, book(d));
    case Kind::FlowSum:
        return Words::tr("The sums that the reports read of %1 are not those of the ledger (%2).")
            .arg(where, book(d));
    case Kind::LineCount:
        return Words::tr("%1: the belts cut of a line are not those that the ledger sold (%2).")
            .arg(where, book(d));
    case Kind::OrderState:
        return Words::tr("Order %1: its state does not follow from its lines.").arg(where);
    case Kind::TicketState:
        return Words::tr("Ticket %1: its state does not follow from its mountings.").arg(where);
    case Kind::UnitMixed:
        return Words::tr("%1: ribs and millimetres are mixed.").arg(where);
    case Kind::CountBook:
        return Words::tr("Count of %1: the book that was kept with it is not what the ledger had (%2).")
            .arg(where, book(d));
    case Kind::CountSettlement:
        return Words::tr("Settlement %1 of a count does not go with its movement.").arg(where);
    case Kind::ForeignKey:
        return Words::tr("%1 names something that is not there.").arg(where);
    case Kind::Database:
        return Words::tr("The file itself is damaged (%1).").arg(where);
    default:
        return ofPieces(d);
    }
}

} // namespace

QString say(const store::StoreError& error) {
    using Kind = store::StoreError::Kind;
    const QString path = text(error.path());
    QString what;
    switch (error.kind()) {
    case Kind::Full:
        what = Words::tr("The disk is full. Make room; nothing was lost.");
        break;
    case Kind::Exists:
        what = Words::tr("There is such a file already. Choose another name.");
        break;
    case Kind::Constraint:
        what = Words::tr("A rule of the book would be broken (%1). Nothing was changed.")
                   .arg(text(error.detail()));
        break;
    case Kind::Failed:
        what = Words::tr("It could not be done (%1). Nothing was changed.").arg(text(error.detail()));
        break;
    default:
        what = cantOpen(error);
    }
    return path.isEmpty() ? what : path + QStringLiteral(": ") + what;
}

QString say(const store::Disagreement& disagreement) {
    const QString sentence = ofBook(disagreement);
    if (disagreement.detail.empty()) return sentence;
    return sentence + QLatin1Char(' ') + text(disagreement.detail);
}

QString say(const store::CountHole& hole) {
    const QString where = text(hole.where);
    const QString place = hole.place.empty() ? Words::tr("no place") : text(hole.place);
    const QString found = shown(Extent::of(hole.unit, hole.found));
    const QString book = shown(Extent::of(hole.unit, hole.book));
    switch (hole.kind) {
    case store::CountHole::Kind::Missing:
        return Words::tr("%1: %2 (%3) was not seen in the count and is not settled.").arg(place, where, book);
    case store::CountHole::Kind::Differs:
        return Words::tr("%1: %2 measured %3, the book said %4; not settled.").arg(place, where, found, book);
    case store::CountHole::Kind::Unlabelled:
        return Words::tr("%1: a piece of %2, %3, without label is in no book.").arg(place, where, found);
    }
    return {};
}

QString say(store::ScrapReason reason) {
    using store::ScrapReason;
    switch (reason) {
    case ScrapReason::Stub:
        return Words::tr("too narrow to be held again");
    case ScrapReason::Miscut:
        return Words::tr("miscut");
    case ScrapReason::Damaged:
        return Words::tr("damaged");
    case ScrapReason::Aged:
        return Words::tr("aged");
    }
    return {};
}

QString say(store::OrderState state) {
    using store::OrderState;
    switch (state) {
    case OrderState::Parked:
        return Words::tr("parked");
    case OrderState::Quoted:
        return Words::tr("quoted");
    case OrderState::Open:
        return Words::tr("to be cut");
    case OrderState::Ready:
        return Words::tr("ready to hand over");
    case OrderState::HandedOver:
        return Words::tr("handed over");
    case OrderState::Cancelled:
        return Words::tr("cancelled");
    }
    return {};
}

QString say(const store::Movement& movement) {
    // Width that only went from one piece on the rack to another was not cut off for anybody.
    const auto& postings = movement.postings();
    const bool apart = movement.about().act == store::Act::Cut &&
                       std::all_of(postings.begin(), postings.end(), [](const store::Posting& posting) {
                           return posting.account == store::Account::Rack;
                       });
    return apart ? Words::tr("divided") : say(movement.about().act);
}

QString say(store::Act act) {
    using store::Act;
    switch (act) {
    case Act::Receive:
        return Words::tr("goods in");
    case Act::Cut:
        return Words::tr("cut");
    case Act::TakeReady:
        return Words::tr("taken from the shelf");
    case Act::Miscut:
        return Words::tr("miscut");
    case Act::Cancel:
        return Words::tr("cancelled");
    case Act::Scrap:
        return Words::tr("thrown away");
    case Act::Correct:
        return Words::tr("corrected");
    case Act::Undo:
        return Words::tr("undone");
    }
    return {};
}

QString say(store::Account account) {
    using store::Account;
    switch (account) {
    case Account::Bought:
        return Words::tr("bought");
    case Account::Found:
        return Words::tr("found");
    case Account::Rack:
        return Words::tr("rack");
    case Account::Ready:
        return Words::tr("shelf of ready belts");
    case Account::Sold:
        return Words::tr("sold");
    case Account::Trim:
        return Words::tr("trim");
    case Account::Kerf:
        return Words::tr("kerf");
    case Account::End:
        return Words::tr("end");
    case Account::Scrap:
        return Words::tr("scrap");
    case Account::Difference:
        return Words::tr("difference");
    }
    return {};
}

} // namespace riband::ui
