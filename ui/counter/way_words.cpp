#include "ui/counter/way_words.h"

#include "core/shop/reason.h"
#include "ui/drawing/pictures.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QStringList>

#include <cmath>
#include <map>

namespace riband::ui {

namespace {

struct WayWords {
    Q_DECLARE_TR_FUNCTIONS(WayWords)
};

const QString Dot = QStringLiteral(" · ");

QString headlineOf(const shop::Outlook& outlook, const cutting::Plan& plan) {
    if (plan.mountings.empty() && !plan.taken.empty())
        return plan.taken.size() == 1
                   ? WayWords::tr("Take the ready belt %1")
                         .arg(text(outlook.problem.pieces[plan.taken.front().piece].code))
                   : WayWords::tr("Take %n ready belts", nullptr, static_cast<int>(plan.taken.size()));
    if (plan.mountings.empty()) return WayWords::tr("Not enough here");
    if (plan.mountings.size() > 1)
        return WayWords::tr("Cut from %n pieces", nullptr, static_cast<int>(plan.mountings.size()));
    // By its label: who fetches a sleeve looks for a sleeve, be some of it promised or not.
    const store::StockPiece& piece = outlook.pieces[plan.mountings.front().piece];
    return piece.kind == cutting::PieceKind::Sleeve
               ? WayWords::tr("Cut the sleeve %1").arg(text(piece.code))
               : WayWords::tr("Cut the remnant %1").arg(text(piece.code));
}

QString placeOf(const store::StockPiece& piece) {
    return piece.place.empty() ? WayWords::tr("no place yet")
                               : WayWords::tr("place %1").arg(text(piece.place));
}

QString daysHere(const store::StockPiece& piece, Date today) {
    const auto days = static_cast<int>((today - piece.received).count());
    return days < 1 ? WayWords::tr("on the rack since today")
                    : WayWords::tr("on the rack %n days", nullptr, days);
}

/// What is promised to other tickets is still on the piece: who fetches it must find the width that is said.
QString widthOf(const shop::Outlook& outlook, std::size_t piece) {
    const Extent free = outlook.problem.pieces[piece].extent, now = outlook.pieces[piece].extent;
    return free == now ? shown(now) : WayWords::tr("%1 free of %2", "width").arg(shown(free), shown(now));
}

QString pieceLine(const shop::Outlook& outlook, std::size_t piece) {
    const store::StockPiece& stock = outlook.pieces[piece];
    return widthOf(outlook, piece) + Dot + placeOf(stock) + Dot + daysHere(stock, outlook.today);
}

QString takenLine(const shop::Outlook& outlook, const cutting::Plan& plan) {
    QStringList codes;
    for (const auto& taken : plan.taken) {
        const store::StockPiece& piece = outlook.pieces[taken.piece];
        codes << text(piece.code) +
                     (piece.place.empty() ? QString{} : QStringLiteral(" (%1)").arg(text(piece.place)));
    }
    return WayWords::tr("from the shelf: %1").arg(codes.join(QStringLiteral(", ")));
}

QString pieceLines(const shop::Outlook& outlook, const cutting::Plan& plan) {
    QStringList lines;
    if (plan.mountings.size() == 1) lines << pieceLine(outlook, plan.mountings.front().piece);
    if (!plan.taken.empty()) lines << takenLine(outlook, plan);
    return lines.join(Dot);
}

QString leaves(Extent left, const cutting::Problem& problem) {
    if (left.isNone()) return WayWords::tr("uses it up");
    return shop::goesBack(problem, left) ? WayWords::tr("leaves %1").arg(shown(left))
                                         : WayWords::tr("leaves a dead %1").arg(shown(left));
}

QString shortOf(const shop::Outlook& outlook, const shop::Way& way) {
    QStringList parts, ends;
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
        const Extent left = way.left(i, outlook.problem.rules);
        parts << leaves(left, outlook.problem);
        if (!left.isNone() && !shop::goesBack(outlook.problem, left)) ends << shownNumber(left);
    }
    if (ends.size() > 1 && ends.size() == parts.size())
        return WayWords::tr("dead ends: %1", "widths").arg(ends.join(QStringLiteral(", ")));
    return parts.join(QStringLiteral(", "));
}

QString shelfOf(const shop::Way& way) {
    std::map<Extent, int> belts;
    for (const auto& mounting : way.forShelf)
        for (const Extent belt : mounting)
            ++belts[belt];
    QStringList parts;
    for (const auto& [extent, count] : belts)
        parts << WayWords::tr("%1 × %2", "belts of a width").arg(count).arg(shown(extent));
    return parts.join(QStringLiteral(", "));
}

QString missingOf(const shop::Outlook& outlook, const cutting::Plan& plan) {
    QStringList parts;
    for (const auto& unserved : plan.unserved)
        parts << WayWords::tr("%1 of %2 can't be cut: %3.")
                     .arg(unserved.count)
                     .arg(shown(outlook.problem.lines[unserved.line].extent), say(unserved.why));
    return parts.join(QLatin1Char(' '));
}

QString sourceOf(const shop::Outlook& outlook, const cutting::Plan& plan) {
    QStringList parts;
    if (!plan.taken.empty()) parts << WayWords::tr("from ready belts");
    for (const auto& mounting : plan.mountings) {
        const store::StockPiece& piece = outlook.pieces[mounting.piece];
        parts << say(piece.kind) + QLatin1Char(' ') + text(piece.code);
    }
    return parts.join(QStringLiteral(", "));
}

QString counted(const std::map<Extent, std::int64_t>& belts) {
    QStringList parts;
    for (const auto& [extent, count] : belts)
        parts << WayWords::tr("%1 × %2", "belts of a width").arg(count).arg(shownNumber(extent));
    return parts.join(QStringLiteral(", "));
}

/// The bands of several pieces are too low for figures: they stand beside the name.
QString bandName(const shop::Outlook& outlook, const shop::Way& way, std::size_t number) {
    const cutting::Mounting& mounting = way.plan.mountings[number];
    const store::StockPiece& stock = outlook.pieces[mounting.piece];
    std::map<Extent, std::int64_t> belts, shelf;
    for (const cutting::Cut& cut : mounting.cuts)
        belts[outlook.problem.lines[cut.line].extent] += cut.count;
    if (number < way.forShelf.size())
        for (const Extent extent : way.forShelf[number])
            ++shelf[extent];
    QStringList parts{text(stock.code), widthOf(outlook, mounting.piece), placeOf(stock), counted(belts)};
    if (!shelf.empty()) parts << WayWords::tr("%1 to the shelf").arg(counted(shelf));
    parts << leaves(way.left(number, outlook.problem.rules), outlook.problem);
    return parts.join(Dot);
}

} // namespace

QString shownCount(Unit unit, std::int64_t count) {
    const QString sign = count < 0 ? QStringLiteral("−") : QString{};
    return sign + shown(Extent::of(unit, count < 0 ? -count : count));
}

QString shownExpected(const store::StockedBelt& belt, double width, const std::optional<Currency>& costs) {
    const double grain = belt.unit == Unit::Rib ? 1 : 100; // an expectation is told to 0.1 mm
    const auto count = static_cast<std::int64_t>(std::llround(width / grain) * std::llround(grain));
    const QString said = shownCount(belt.unit, count);
    const Money money = shop::asMoney(belt, width);
    if (!costs || money == Money::minor(0)) return said;
    return said + Dot + shown(money, *costs) + QLatin1Char(' ') + text(std::string{costs->code()});
}

namespace {

/// Belts for the shelf may be worth more than the width that they take.
QString costOf(const shop::Outlook& outlook, const shop::Way& way, const std::optional<Currency>& costs) {
    return way.cost < 0 ? WayWords::tr("adds %1 of worth").arg(shownExpected(outlook.belt, -way.cost, costs))
                        : WayWords::tr("takes %1 of worth").arg(shownExpected(outlook.belt, way.cost, costs));
}

} // namespace

ShownWay shownWay(const shop::Outlook& outlook, const shop::Way& way, const std::optional<Currency>& costs) {
    ShownWay made;
    made.headline = headlineOf(outlook, way.plan);
    made.piece = pieceLines(outlook, way.plan);
    made.cuts = !way.plan.mountings.empty();
    if (made.cuts) made.cost = costOf(outlook, way, costs);
    made.reason = say(way.reason);
    if (outlook.shelfGivesWay)
        made.reason += QLatin1Char(' ') + WayWords::tr("Belts for the shelf that wait to be cut give way.");
    made.source = sourceOf(outlook, way.plan);
    made.brief = shortOf(outlook, way);
    made.shelf = shelfOf(way);
    const auto extra = static_cast<double>(way.extra);
    made.extra = way.extra == 0 ? WayWords::tr("the same")
                                : QStringLiteral("+ ") + shownExpected(outlook.belt, extra, costs);
    made.missing = missingOf(outlook, way.plan);
    for (std::size_t i = 0; i < way.plan.mountings.size(); ++i) {
        made.bands.push_back(pictureOf(outlook.problem, way, i));
        made.bandNames.push_back(bandName(outlook, way, i));
    }
    return made;
}

QString savingOf(const shop::Outlook& outlook, const shop::Suggestion& suggestion,
                 const std::optional<Currency>& costs) {
    const cutting::Plan& best = suggestion.best.plan;
    if (best.mountings.empty() || !best.unserved.empty()) return {};
    const cutting::Plan usual = cutting::bestFit(outlook.problem);
    const auto saved = [&](std::int64_t width) {
        return shownExpected(outlook.belt, static_cast<double>(width), costs);
    };
    for (const shop::Way& other : suggestion.others)
        if (other.plan.mountings == usual.mountings && other.extra > 0)
            return WayWords::tr("Saves %1 against the smallest piece that fits.").arg(saved(other.extra));
    if (best.newSleeves > 0) return {};
    for (const shop::Way& other : suggestion.others)
        if (other.plan.newSleeves > 0 && other.extra > 0)
            return WayWords::tr("Saves %1 against a new sleeve.").arg(saved(other.extra));
    return {};
}

} // namespace riband::ui
