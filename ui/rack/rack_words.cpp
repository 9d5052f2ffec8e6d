#include "ui/rack/rack_words.h"

#include "core/measure/code.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

struct RackWords {
    Q_DECLARE_TR_FUNCTIONS(RackWords)
};

constexpr qsizetype ShortestKind = 3; ///< letters that name a kind: "rem"

/// The index knows the kinds by these.
QString kindInIndex(const QString& word) {
    const auto begins = [&](const QString& name) {
        return word.size() >= ShortestKind && name.toLower().startsWith(word);
    };
    if (begins(say(cutting::PieceKind::Sleeve))) return QStringLiteral("sleeve");
    // The trade says offcut as well.
    if (begins(say(cutting::PieceKind::Remnant)) || begins(RackWords::tr("offcut")))
        return QStringLiteral("remnant");
    if (begins(say(cutting::PieceKind::Ready))) return QStringLiteral("ready");
    return word;
}

} // namespace

QString say(shop::PlaceAdvice::Why why) {
    using Why = shop::PlaceAdvice::Why;
    switch (why) {
    case Why::Fixed:
        return RackWords::tr("kept for this belt");
    case Why::Front:
        return RackWords::tr("within easy reach, for narrow remnants");
    case Why::Same:
        return RackWords::tr("the same belt lies there");
    case Why::Beside:
        return RackWords::tr("empty, beside the same belt");
    case Why::Empty:
        return RackWords::tr("empty");
    }
    return {};
}

QString say(store::PlaceLevel level) {
    switch (level) {
    case store::PlaceLevel::Room:
        return RackWords::tr("room");
    case store::PlaceLevel::Bay:
        return RackWords::tr("bay");
    case store::PlaceLevel::Shelf:
        return RackWords::tr("shelf");
    case store::PlaceLevel::Bin:
        return RackWords::tr("bin");
    }
    return {};
}

QString say(shop::PlaceFault fault) {
    using shop::PlaceFault;
    switch (fault) {
    case PlaceFault::NoName:
        return RackWords::tr("Type the name that stands on its label, for example B3-2.");
    case PlaceFault::BadName:
        return RackWords::tr("A name has at most 60 characters in one line and is no code of a piece, a "
                             "ticket or an order.");
    case PlaceFault::NameTaken:
        return RackWords::tr("Another place has this name. Give it one of its own.");
    case PlaceFault::StandsInSmaller:
        return RackWords::tr("A place stands in a larger one: bins in a shelf, shelves in a bay, bays in a "
                             "room. Choose a larger place, or a smaller level for this one.");
    case PlaceFault::HoldsLarger:
        return RackWords::tr("Places as large as this one would be stand in it. Put them elsewhere first, "
                             "or choose a larger level.");
    case PlaceFault::LiesThere:
        return RackWords::tr("Pieces lie there. Move them first (F6 on the Rack).");
    case PlaceFault::HoldsPlaces:
        return RackWords::tr("Other places stand in it. Put them elsewhere first (F2).");
    case PlaceFault::HasLain:
        return RackWords::tr("The book names this place: pieces lay there, so it stays. Give it another name "
                             "if the shelf has one (F2).");
    }
    return {};
}

QString saidOf(const std::vector<shop::PlaceAdvice>& places) {
    QStringList parts;
    for (const shop::PlaceAdvice& place : places)
        parts << RackWords::tr("%1 (%2)", "place, why").arg(text(place.place), say(place.why));
    return parts.isEmpty() ? QString{}
                           : RackWords::tr("goes best to %1").arg(parts.join(QStringLiteral(", ")));
}

QString saidOf(const shop::Burden& burden) {
    if (!burden.width) return RackWords::tr("scrap it: nothing that is asked for can be cut");
    return RackWords::tr("offer it as ready belts: %1 x %2").arg(burden.belts).arg(shown(*burden.width));
}

QString briefly(const shop::Reason::Kept& kept) {
    if (kept.belts == 1) return shown(kept.extent);
    return RackWords::tr("%1 × %2", "belts of a width").arg(kept.belts).arg(shown(kept.extent));
}

QString daysOld(int days) { return RackWords::tr("%1 d", "days").arg(days); }

QString whyItStays(store::Act act, const shop::Refusal& why) {
    using Why = shop::Refusal::Why;
    const QString detail = text(why.detail());
    if (why.why() == Why::AlreadyDone) {
        const auto code = Code::read(why.detail());
        if (code && code->kind() == CodeKind::Piece)
            return RackWords::tr(
                       "Something else was done with %1 since. Choose that in its life and undo it first.")
                .arg(detail);
        return RackWords::tr(
                   "The order %1 is handed over or cancelled, so its belts stay cut. If the rack holds "
                   "something else than the book, count the piece (Tally).")
            .arg(detail);
    }
    if (why.why() != Why::ActStays) return say(why);
    switch (act) {
    case store::Act::Correct:
    case store::Act::Cut:
        return RackWords::tr(
            "A count booked it. Count the piece again (Tally), or take the settlement back (Tally, F6).");
    case store::Act::Miscut:
    case store::Act::Scrap:
        return RackWords::tr(
            "What is spoiled is spoiled. If the rack holds something else than the book, count the "
            "piece (Tally).");
    case store::Act::Undo:
        return RackWords::tr("It undid a mistake. Do the act again as it should be.");
    default:
        return RackWords::tr("It belongs to an order: scan the order and change it there.");
    }
}

std::vector<std::string> searchWordsOf(const QString& typed) {
    std::vector<std::string> words;
    for (const QString& word : typed.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts))
        words.push_back(kindInIndex(word).toStdString());
    return words;
}

} // namespace riband::ui
