#include "ui/tally/tally.h"

#include "core/measure/code.h"
#include "core/measure/text.h"
#include "core/shop/queries.h"
#include "ui/words/count_words.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

using shop::counting::Verdict;

Tally::Step Tally::step() const {
    if (!count_) return Step::Place;
    return piece_ || find_ ? Step::Width : Step::Piece;
}

void Tally::nextMethod() {
    using store::Method;
    method_ = method_ == Method::Calliper ? Method::Tape
              : method_ == Method::Tape   ? Method::Eye
                                          : Method::Calliper;
}

bool Tally::tell(Tone tone, const QString& words) {
    tone_ = tone;
    said_ = words;
    return tone != Tone::Warn;
}

bool Tally::enter(const QString& typed) {
    const QString words = typed.trimmed();
    switch (step()) {
    case Step::Place:
        return enterPlace(words);
    case Step::Piece:
        return enterPiece(words);
    case Step::Width:
        return enterWidth(words);
    }
    return false;
}

void Tally::back() {
    if (piece_ || find_) {
        piece_.reset();
        find_.reset();
    } else {
        count_.reset();
        place_.clear();
    }
    tell(Tone::Plain, {});
}

std::optional<std::string> Tally::knownPlace(const QString& words) const {
    for (const std::string& place : store::Pieces{session_.shop().connection}.places())
        if (text(place).compare(words, Qt::CaseInsensitive) == 0) return place;
    return std::nullopt;
}

std::optional<store::StockPiece> Tally::pieceOf(const QString& words) const {
    return shop::scan(session_.shop(), words.toStdString()).piece;
}

bool Tally::begin(const std::string& place) {
    if (!session_.attempt([&] { count_ = shop::beginCount(session_.shop(), place); })) return false;
    place_ = text(place);
    newPlace_.clear();
    return tell(Tone::Plain, Words::tr("Counting %1.").arg(place_));
}

bool Tally::enterPlace(const QString& words) {
    if (words.isEmpty()) return tell(Tone::Warn, Words::tr("Scan the label of a place, or type its name."));
    if (const auto known = knownPlace(words)) return begin(*known);
    if (const auto piece = pieceOf(words))
        return tell(Tone::Warn, piece->place.empty()
                                    ? Words::tr("%1 is a piece without a place. Scan the label of the place.")
                                          .arg(text(piece->code))
                                    : Words::tr("%1 is a piece, at home at %2. Scan the label of the place.")
                                          .arg(text(piece->code), text(piece->place)));
    if (newPlace_ == words) return begin(words.toStdString());
    newPlace_ = words;
    return tell(Tone::Warn,
                Words::tr("No place is called “%1”. Enter it once more if it is a new one.").arg(words));
}

bool Tally::enterPiece(const QString& words) {
    if (words.isEmpty())
        return tell(Tone::Warn, Words::tr("Scan the label of a piece; without a label, type its belt."));
    if ((piece_ = pieceOf(words))) {
        belt_ = text(store::Catalogue{session_.shop().connection}.at(piece_->belt).designation);
        if (piece_->gone())
            return tell(Tone::Plain, Words::tr("%1 is out of the book.").arg(text(piece_->code)));
        return tell(Tone::Plain, {});
    }
    if (Code::read(words.toStdString()))
        return tell(Tone::Warn, Words::tr("No piece has the code “%1”.").arg(words));
    if (const auto place = knownPlace(words)) return begin(*place);
    return enterFind(words);
}

/// The belt, or belt and width at once.
bool Tally::enterFind(const QString& words) {
    const auto found = findOf(words);
    if (!found)
        return tell(Tone::Warn, Words::tr("“%1” is no code of a piece and no belt. Without a label, type "
                                          "the belt; Ctrl+W helps to find out which it is.")
                                    .arg(words));
    find_ = found->belt;
    belt_ = text(belt::designation(found->belt));
    if (found->width) return noteFind(*found->width);
    return tell(Tone::Plain, Words::tr("A piece without label."));
}

/// Nothing unless one belt only can be meant, and one of it.
std::optional<belt::Reading> Tally::findOf(const QString& words) const {
    const std::string said = words.toStdString();
    if (const auto belt = belt::readBelt(said, session_.tables())) return belt::Reading{.belt = *belt};
    const belt::Understanding understood = belt::understand(said, session_.tables());
    if (understood.fault || understood.readings.size() != 1 || understood.readings.front().quantity != 1)
        return std::nullopt;
    return understood.readings.front();
}

Unit Tally::unit() const {
    if (piece_) return piece_->extent.unit();
    const belt::Profile* profile = session_.tables().profile(find_->profile);
    return profile ? profile->unit() : Unit::Micrometre;
}

/// As things stand now: it may have been cut up since it was scanned.
bool Tally::outOfBook() const {
    bool gone = false;
    session_.attempt([&] { gone = store::Pieces{session_.shop().connection}.at(piece_->id).gone(); });
    return gone;
}

/// It is no width but what would come after this piece: the next one, a belt without label, another place.
bool Tally::goesOn(const QString& words) const {
    return Code::read(words.toStdString()) || pieceOf(words) || knownPlace(words) || findOf(words);
}

/// Who scans on says by it that this piece is there.
bool Tally::thereAndNext(const QString& words) {
    if (const auto piece = pieceOf(words); piece && piece->id == piece_->id)
        return tell(Tone::Plain, Words::tr("Scanned twice. Type its width, or scan the next piece."));
    if (!noteWidth(std::nullopt)) return false;
    if (piece_) return false; // it must be measured once more first
    const Tone tone = tone_;
    const QString said = said_;
    if (!enterPiece(words)) return false;
    if (said_.isEmpty()) tell(tone, said);
    return true;
}

bool Tally::enterWidth(const QString& words) {
    if (words.isEmpty() && piece_) return noteWidth(std::nullopt);
    const auto read = readExtent(words.toStdString(), unit());
    if (!read && piece_ && goesOn(words)) return thereAndNext(words);
    if (!read) return tell(Tone::Warn, wrongExtent(words, unit()));
    return piece_ ? noteWidth(*read) : noteFind(*read);
}

bool Tally::noteWidth(std::optional<Extent> measured) {
    if (!measured && outOfBook())
        return tell(Tone::Warn, Words::tr("The book has nothing of %1 any more. Measure it, and it can be "
                                          "booked as found; Escape leaves it.")
                                    .arg(text(piece_->code)));
    std::optional<shop::Noted> noted;
    if (!session_.attempt(
            [&] { noted = shop::note(session_.shop(), *count_, piece_->id, measured, method_); }))
        return false;
    if (!noted->voided.empty())
        session_.warn(
            Words::tr("Tickets of this piece can't be cut any more. Plan them again on the Bench."));
    const QString code = text(piece_->code);
    if (noted->verdict == Verdict::Again) {
        piece_ = store::Pieces{session_.shop().connection}.at(piece_->id);
        tell(Tone::Warn, Words::tr("Measure %1 once more.").arg(code));
        return true;
    }
    const bool moved = noted->placeWas != place_.toStdString();
    piece_.reset();
    if (noted->verdict == Verdict::Differs) {
        tell(Tone::Warn, Words::tr("%1 differs from the book. It waits to be settled.").arg(code));
        return true;
    }
    return tell(Tone::Good, moved ? Words::tr("%1 agrees. It is at home here now.").arg(code)
                                  : Words::tr("%1 agrees.").arg(code));
}

bool Tally::noteFind(Extent measured) {
    if (!session_.attempt([&] { shop::noteFind(session_.shop(), *count_, *find_, measured, method_); }))
        return false;
    find_.reset();
    return tell(Tone::Good, Words::tr("Noted: %1 of %2 without label. Lay it aside until it is settled.")
                                .arg(shown(measured), belt_));
}

std::vector<store::StockPiece> Tally::unseen() const {
    std::vector<store::StockPiece> unseen;
    if (count_) session_.attempt([&] { unseen = shop::notSeen(session_.shop(), *count_); });
    return unseen;
}

/// Said here, not by the refusal: it goes when the piece is measured.
bool Tally::canClose() {
    if (!count_) return false;
    std::vector<store::StockPiece> again;
    if (!session_.attempt([&] { again = shop::toMeasureAgain(session_.shop(), *count_); })) return false;
    if (again.empty()) return true;
    return tell(
        Tone::Warn,
        Words::tr("Measure %1 a second time before the place is done.").arg(text(again.front().code)));
}

bool Tally::close() {
    if (!canClose()) return false;
    std::size_t missing = 0;
    if (!session_.attempt([&] { missing = shop::closeCount(session_.shop(), *count_).size(); })) return false;
    const QString done = place_;
    piece_.reset();
    find_.reset();
    count_.reset();
    place_.clear();
    return tell(missing == 0 ? Tone::Good : Tone::Plain,
                missing == 0 ? Words::tr("%1 is counted, nothing is missing.").arg(done)
                             : Words::tr("%1 is counted; missing: %2.").arg(done).arg(missing));
}

QString Tally::asks() const {
    switch (step()) {
    case Step::Place:
        return Words::tr("Which place? Scan its label or type its name");
    case Step::Piece:
        return Words::tr("Scan a piece; without a label type its belt");
    case Step::Width:
        if (find_ || piece_->gone())
            return unit() == Unit::Rib ? Words::tr("How many ribs?") : Words::tr("How wide, in mm?");
        return unit() == Unit::Rib ? Words::tr("How many ribs? Enter alone: it is there")
                                   : Words::tr("How wide, in mm? Enter alone: it is there");
    }
    return {};
}

QString Tally::large() const {
    if (piece_) return text(piece_->code);
    if (find_) return belt_;
    return place_;
}

QString Tally::about() const { return piece_ ? belt_ : QString{}; }

} // namespace riband::ui
