#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

QString mountings(std::int64_t count) {
    return count == 1 ? Words::tr("one mounting")
                      : Words::tr("%n mountings", nullptr, static_cast<int>(count));
}

QString belts(std::int64_t count) {
    return count == 1 ? Words::tr("one belt") : Words::tr("%n belts", nullptr, static_cast<int>(count));
}

QString finishes(const shop::Reason& reason) {
    if (reason.count > 1)
        return reason.figure.isNone()
                   ? Words::tr("Finishes the pieces: nothing is thrown away.")
                   : Words::tr("Finishes the pieces: of the last %1 nothing more can be made.")
                         .arg(shown(reason.figure));
    if (reason.figure.isNone()) return Words::tr("Finishes the piece: nothing is thrown away.");
    return Words::tr("Finishes the piece: of the last %1 nothing more can be made.")
        .arg(shown(reason.figure));
}

/// What stays of the piece: "121.5 mm", "81.5 mm after two belts for the shelf".
QString stays(const shop::Reason& reason) {
    const QString figure = reason.figure.isNone() ? Words::tr("nothing") : shown(reason.figure);
    return reason.count == 0 ? figure
                             : Words::tr("%1 after %2 for the shelf").arg(figure, belts(reason.count));
}

QString severalPieces(const shop::Reason& reason) {
    const QString sentence = reason.other.empty()
                                 ? Words::tr("No single piece takes it all: %1.").arg(mountings(reason.count))
                                 : Words::tr("%1 would take it all, but %2 cost less width.")
                                       .arg(text(reason.other), mountings(reason.count));
    if (reason.figure.isNone()) return sentence;
    return sentence + QLatin1Char(' ') + Words::tr("%1 is thrown away.").arg(shown(reason.figure));
}

} // namespace

QString say(const shop::Reason::Kept& kept) {
    const QString belts =
        kept.belts == 1 ? shown(kept.extent)
                        : Words::tr("%1 × %2", "belts of a width").arg(kept.belts).arg(shown(kept.extent));
    return Words::tr("%1: %2 % of the orders here").arg(belts).arg(kept.percent);
}

QString say(const shop::Reason& reason) {
    using Kind = shop::Reason::Kind;
    const QString other = text(reason.other);
    const QString figure = shown(reason.figure);
    switch (reason.kind) {
    case Kind::FromShelf:
        return Words::tr("Ready on the shelf, %1: nothing has to be cut.").arg(belts(reason.count));
    case Kind::OnlyPiece:
        return Words::tr("The only piece that is wide enough; it leaves %1.").arg(stays(reason));
    case Kind::Finishes:
        return finishes(reason);
    case Kind::FinishesForShelf:
        if (reason.figure.isNone())
            return Words::tr("Finishes the piece with %1 for the shelf: nothing is thrown away.")
                .arg(belts(reason.count));
        return Words::tr("Finishes the piece with %1 for the shelf: only %2 is thrown away.")
            .arg(belts(reason.count), figure);
    case Kind::KeepsFor:
        return Words::tr("Keeps %1 for %2; that saves %3, on average.")
            .arg(other, say(*reason.keptFor), figure);
    case Kind::AboutTheSame:
        return Words::tr("About the same as %1; it leaves %2.").arg(other, stays(reason));
    case Kind::AvoidsDead:
        return Words::tr("The smallest that fits, %1, would leave a dead %2.").arg(other, figure);
    case Kind::SmallestThatFits:
        return Words::tr("The smallest piece that fits; it leaves %1.").arg(stays(reason));
    case Kind::KeepsWider:
        return Words::tr("Leaves %1 whole; this piece keeps %2.").arg(other, stays(reason));
    case Kind::Oldest:
        return Words::tr("About the same as %1, but older: to be used first; it leaves %2.")
            .arg(other, stays(reason));
    case Kind::SeveralPieces:
        return severalPieces(reason);
    case Kind::NewSleeve:
        return Words::tr("No remnant is wide enough: a new sleeve, which leaves %1.").arg(stays(reason));
    case Kind::Unserved:
        return Words::tr("There is not enough of this belt here: %1 can't be given. Order a sleeve.")
            .arg(belts(reason.count));
    }
    return {};
}

QString basisOf(const shop::Suggestion& suggestion) {
    if (suggestion.basis == store::AdviceBasis::SmallestThatFits)
        return Words::tr("the smallest that fits, for now");
    if (suggestion.basis == store::AdviceBasis::LookAhead)
        return Words::tr("by worth table %1 and the orders to be expected").arg(suggestion.worthVersion);
    using Fault = shop::WorthFault;
    switch (suggestion.fault) {
    case Fault::None:
        return Words::tr("best for this order, by worth table");
    case Fault::Missing:
        return Words::tr("best for this order alone: no worth table yet");
    case Fault::OtherForm:
        return Words::tr("best for this order alone: the worth table is of another version");
    case Fault::OutOfDate:
        return Words::tr("best for this order alone: the worth table is out of date");
    case Fault::Unfit:
        return Words::tr("best for this order alone: no width of this belt is listed");
    }
    return {};
}

QString say(store::OverrideKey key) {
    using Key = store::OverrideKey;
    switch (key) {
    case Key::OlderFirst:
        return Words::tr("the older one first");
    case Key::NearerToHand:
        return Words::tr("nearer to hand");
    case Key::CustomerSawIt:
        return Words::tr("the customer chose the piece");
    case Key::Damaged:
        return Words::tr("the suggested piece is damaged or not to be found");
    case Key::KeptForSomebody:
        return Words::tr("the suggested piece is kept for somebody");
    case Key::Other:
        return Words::tr("another reason");
    }
    return {};
}

QString say(store::PreCut preCut) {
    using store::PreCut;
    switch (preCut) {
    case PreCut::WherePays:
        return Words::tr("where trim is a large share");
    case PreCut::Never:
        return Words::tr("never");
    case PreCut::Always:
        return Words::tr("always");
    }
    return {};
}

QString say(cutting::Unserved::Why why) {
    using Why = cutting::Unserved::Why;
    switch (why) {
    case Why::NoPiece:
        return Words::tr("there is no piece of this belt");
    case Why::TooNarrow:
        return Words::tr("no single piece is wide enough");
    case Why::NotEnough:
        return Words::tr("the pieces are used up by the other belts");
    }
    return {};
}

QString say(cutting::SetUp::Remark remark) {
    using Remark = cutting::SetUp::Remark;
    switch (remark) {
    case Remark::LittleTension:
        return Words::tr("Short sleeve: little tension, just taut.");
    case Remark::NearSmallestShaft:
        return Words::tr("The shaft is near the smallest for this profile.");
    case Remark::ShaftUnderSmallest:
        return Words::tr("The shaft is thinner than the smallest pulley of this profile: do not mount it.");
    case Remark::SteelCord:
        return Words::tr("Steel cord: this cutter is not made for it. Do not cut it here.");
    case Remark::AramidCord:
        return Words::tr("Aramid cord: this cutter is not made for it. Do not cut it here.");
    case Remark::Polyurethane:
        return Words::tr("Polyurethane body: this cutter is not made for it. Do not cut it here.");
    case Remark::CutInTheGroove:
        return Words::tr("Ribbed: set the blade in the groove and count ribs.");
    }
    return {};
}

QString say(cutting::SetUpFault fault) {
    using cutting::SetUpFault;
    switch (fault) {
    case SetUpFault::TooWide:
        return Words::tr("The piece is wider than any shaft of the cutter can hold.");
    case SetUpFault::TooShort:
        return Words::tr("The piece is too short for the shafts of the cutter.");
    case SetUpFault::TooLong:
        return Words::tr("The piece is too long for the shafts of the cutter.");
    case SetUpFault::NoShaft:
        return Words::tr("No shaft is set for the cutter. Add one on the Shop page.");
    }
    return {};
}

QString say(cutting::PieceKind kind) {
    switch (kind) {
    case cutting::PieceKind::Sleeve:
        return Words::tr("sleeve");
    case cutting::PieceKind::Remnant:
        return Words::tr("remnant");
    case cutting::PieceKind::Ready:
        return Words::tr("ready belt");
    }
    return {};
}

} // namespace riband::ui
