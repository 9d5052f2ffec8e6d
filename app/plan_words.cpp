#include "app/plan_words.h"

#include "ui/counter/way_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::app {

namespace {

using ui::Words;

QString cutsOf(const cutting::Problem& problem, const cutting::Mounting& mounting) {
    QStringList cuts;
    for (const cutting::Cut& cut : mounting.cuts) {
        const cutting::Line& line = problem.lines[cut.line];
        cuts
            << Words::tr("%1 x %2 for line %3").arg(cut.count).arg(ui::shown(line.extent), ui::text(line.id));
    }
    return cuts.join(QStringLiteral(", "));
}

QString shownStops(const cutting::Problem& problem, const cutting::Mounting& mounting) {
    QStringList stops;
    for (const Extent stop : cumulativeStops(problem, mounting))
        stops << ui::shownNumber(stop);
    return stops.join(QStringLiteral(", "));
}

QString wordsOf(const BeltPlan& made, const cutting::Mounting& mounting) {
    const cutting::Piece& piece = made.problem.pieces[mounting.piece];
    const QString head =
        Words::tr("%1, %2 %3 of %4")
            .arg(ui::text(piece.code), ui::say(piece.kind), ui::text(made.belt), ui::shown(piece.extent));
    const QString work = Words::tr("trim %1, then %2; stops %3")
                             .arg(ui::shown(made.problem.rules.trim), cutsOf(made.problem, mounting),
                                  shownStops(made.problem, mounting));
    const QString left = mounting.rest == cutting::Rest::Remnant ? Words::tr("back to the rack: %1")
                                                                 : Words::tr("thrown away: %1");
    return head + QStringLiteral(": ") + work + QStringLiteral("; ") + left.arg(ui::shown(mounting.left));
}

} // namespace

QStringList wordsOf(const BeltPlan& made) {
    QStringList lines;
    for (const auto& taken : made.plan.taken)
        lines << Words::tr("%1, ready belt %2: take it for line %3")
                     .arg(ui::text(made.problem.pieces[taken.piece].code), ui::text(made.belt),
                          ui::text(made.problem.lines[taken.line].id));
    for (const auto& mounting : made.plan.mountings)
        lines << wordsOf(made, mounting);
    for (const auto& unserved : made.plan.unserved)
        lines << Words::tr("line %1: %2 x %3 can't be served: %4")
                     .arg(ui::text(made.problem.lines[unserved.line].id))
                     .arg(unserved.count)
                     .arg(ui::text(made.belt), ui::say(unserved.why));
    return lines;
}

QString shelfWords(const shop::Outlook& outlook, const shop::Way& way) {
    if (!way.fillsShelf()) return {};
    QStringList left;
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i)
        left << ui::shown(way.left(i, outlook.problem.rules));
    return Words::tr("Cut these as well, onto the shelf: %1; then %2 is left.")
        .arg(ui::shownWay(outlook, way, {}).shelf, left.join(QStringLiteral(", ")));
}

} // namespace riband::app
