#include "ui/words/count_words.h"

#include "core/store/orders.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QStringList>

#include <cmath>
#include <cstdlib>

namespace riband::ui {

namespace {

using shop::counting::Difference;
using shop::counting::Proposal;
using store::Explanation;

constexpr double leastTold = 0.05; ///< of a piece that is probably wrong; less is shown as 0.0

QString width(Unit unit, std::int64_t count) { return shown(Extent::of(unit, std::abs(count))); }

QString belts(const Proposal& proposal, Unit unit) {
    return Words::tr("%1 × %2", "belts, width").arg(proposal.belts).arg(width(unit, proposal.each));
}

QString ticketOf(const Proposal& proposal, store::Connection& shop) {
    return text(store::Tickets{shop}.ofMounting(*proposal.mounting).code);
}

QString orderOf(const Proposal& proposal, store::Connection& shop) {
    store::Orders orders{shop};
    return text(orders.at(orders.orderOf(*proposal.line)).code);
}

QString codeOf(const Difference& other, store::Connection& shop) {
    return other.piece ? text(store::Pieces{shop}.at(*other.piece).code) : QString{};
}

/// A second mistake, if what the first one leaves is more than measuring can make.
QString besides(const Proposal& proposal, const shop::Finding& finding) {
    const bool cut =
        proposal.what == Explanation::CutNotRecorded || proposal.what == Explanation::LineNotTicketed;
    if (!cut || finding.difference.kind != Difference::Kind::Differs ||
        -proposal.unexplained <= finding.difference.tolerance)
        return {};
    return QLatin1Char(' ') + Words::tr("%1 more is missing, as if a trim had not been booked either.")
                                  .arg(width(finding.difference.unit, -proposal.unexplained));
}

QString ofCuts(const Proposal& proposal, Unit unit, store::Connection& shop) {
    switch (proposal.what) {
    case Explanation::CutNotRecorded:
        return Words::tr("Ticket %1 was cut and not recorded: record it now.").arg(ticketOf(proposal, shop));
    case Explanation::CutFromOther:
        return Words::tr("Ticket %1 was cut from this piece instead of its own: record it so.")
            .arg(ticketOf(proposal, shop));
    case Explanation::LineNotTicketed:
        return Words::tr("%1 for order %2 were cut without a ticket: record it.")
            .arg(belts(proposal, unit), orderOf(proposal, shop));
    case Explanation::SaleWithoutOrder:
        return Words::tr("%1 and a trim were cut, and no order says so: book the loss.")
            .arg(belts(proposal, unit));
    default:
        return {};
    }
}

QString ofMixUps(const Proposal& proposal, const shop::Finding& finding, store::Connection& shop) {
    const Unit unit = finding.difference.unit;
    switch (proposal.what) {
    case Explanation::Swapped:
        return Words::tr("%1 differs by %2: a cut went to the wrong one of the two. Move the width.")
            .arg(codeOf(*proposal.other, shop), shownChange(unit, proposal.other->gap));
    case Explanation::LostLabel:
        if (finding.difference.kind == Difference::Kind::Find)
            return Words::tr("It is %1, which has lost its label: print a new one.")
                .arg(codeOf(*proposal.other, shop));
        return Words::tr("It is the find of %1, and has lost its label: print a new one.")
            .arg(width(unit, proposal.other->measured));
    case Explanation::Transposed:
        return Words::tr("Two digits of the book's figure changed places: correct the book.");
    case Explanation::TrimForgotten:
        return Words::tr("A trim was not booked: book it.");
    case Explanation::EdgeWaste:
        return Words::tr("No more than the ragged edge is missing: book it as end.");
    case Explanation::BookedLate:
        return Words::tr("It has been booked since it was counted: nothing to do.");
    default:
        return ofCuts(proposal, unit, shop) + besides(proposal, finding);
    }
}

} // namespace

QString say(store::Method method) {
    switch (method) {
    case store::Method::Calliper:
        return Words::tr("calliper");
    case store::Method::Tape:
        return Words::tr("tape");
    case store::Method::Eye:
        return Words::tr("by eye");
    }
    return {};
}

QString say(Explanation explanation) {
    switch (explanation) {
    case Explanation::Measuring:
        return Words::tr("measuring");
    case Explanation::CutNotRecorded:
    case Explanation::LineNotTicketed:
    case Explanation::SaleWithoutOrder:
        return Words::tr("unrecorded cut");
    case Explanation::CutFromOther:
    case Explanation::Swapped:
        return Words::tr("wrong piece taken");
    case Explanation::LostLabel:
        return Words::tr("label lost");
    case Explanation::Transposed:
        return Words::tr("digits in the wrong order");
    case Explanation::TrimForgotten:
    case Explanation::EdgeWaste:
        return Words::tr("edge waste");
    case Explanation::BookedLate:
        return Words::tr("booked late");
    case Explanation::Found:
        return Words::tr("found");
    case Explanation::Unexplained:
        return Words::tr("unexplained");
    }
    return {};
}

QString whyItStands(const shop::Refusal& why) {
    using Why = shop::Refusal::Why;
    switch (why.why()) {
    case Why::AlreadyDone:
        return why.detail().empty()
                   ? Words::tr("It is taken back already.")
                   : Words::tr("Of the width that it booked something is used by now: count %1 again.")
                         .arg(text(why.detail()));
    case Why::ActStays:
        if (!why.detail().empty())
            return Words::tr("%1 was measured again since, and the book follows that. If the later figure is "
                             "wrong, take that one back first, or count the piece again.")
                .arg(text(why.detail()));
        return Words::tr("It put a piece back that had been booked as missing. If the piece is gone again, "
                         "count its place.");
    default:
        return say(why);
    }
}

QString say(const shop::counting::PlaceTask& task) {
    QStringList why;
    if (task.overdue > 0) why << Words::tr("due: %1 of %2", "pieces").arg(task.overdue).arg(task.pieces);
    if (task.wrong >= leastTold)
        why << Words::tr("probably wrong: %1", "pieces").arg(QLocale{}.toString(task.wrong, 'f', 1));
    if (why.isEmpty()) why << Words::tr("not due yet");
    return Words::tr("%1 · pieces: %2 · about %3 min\n%4", "place, pieces, minutes, why")
        .arg(text(task.place))
        .arg(task.pieces)
        .arg((task.seconds + 59) / 60)
        .arg(why.join(QStringLiteral(" · ")));
}

QString say(const shop::counting::PieceTask& task) {
    const char* const classes[] = {"A", "B", "C"};
    QStringList why{Words::tr("class %1").arg(QLatin1String(classes[static_cast<std::size_t>(task.of)]))};
    why << (task.asItCame ? Words::tr("came %n days ago", nullptr, *task.days)
            : task.days   ? Words::tr("counted %n days ago", nullptr, *task.days)
                          : Words::tr("never counted"));
    if (task.cuts > 0) why << Words::tr("cuts since: %1").arg(task.cuts);
    why << Words::tr("in doubt: %1\u00a0%").arg(std::lround(100 * task.doubt));
    return why.join(QStringLiteral(" · "));
}

QString shownChange(Unit unit, std::int64_t change) {
    const QString sign = change < 0 ? QString::fromUtf8("−") : QStringLiteral("+");
    return sign + width(unit, change);
}

QString say(const shop::Finding& finding) {
    const Difference& d = finding.difference;
    switch (d.kind) {
    case Difference::Kind::Missing:
        return Words::tr("not seen; the book says %1").arg(width(d.unit, d.book));
    case Difference::Kind::Find:
        return Words::tr("%1 without label").arg(width(d.unit, d.measured));
    case Difference::Kind::Differs:
        return Words::tr("the book said %1, measured %2: %3")
            .arg(width(d.unit, d.book), width(d.unit, d.measured), shownChange(d.unit, d.gap));
    }
    return {};
}

QString say(const Proposal& proposal, const shop::Finding& finding, store::Connection& shop) {
    const QString known = ofMixUps(proposal, finding, shop);
    if (!known.isEmpty()) return known;
    if (proposal.what == Explanation::Found)
        return proposal.settlement ? Words::tr("It was booked as missing and is here again: put it back.")
               : finding.piece     ? Words::tr("It was out of the book and is here again: book it as found.")
                                   : Words::tr("It was in no book: book it as found, and label it.");
    return finding.difference.kind == Difference::Kind::Missing
               ? Words::tr("Nobody knows where it is: book it as missing.")
               : Words::tr("Nobody knows: book what was measured.");
}

} // namespace riband::ui
