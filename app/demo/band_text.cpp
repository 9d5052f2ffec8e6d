#include "app/demo/band_text.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::app {

namespace {

constexpr std::int64_t columns = 72;

/// The characters that a strip gets, but enough for its words.
QString strip(Extent extent, Extent piece, const QString& words) {
    const auto scaled =
        static_cast<qsizetype>(columns * extent.count() / std::max<std::int64_t>(1, piece.count()));
    return words.leftJustified(std::max(scaled, words.size()), QLatin1Char(' '));
}

} // namespace

QString bandText(const cutting::Problem& problem, const shop::Way& way, std::size_t number) {
    const cutting::Mounting& mounting = way.plan.mountings[number];
    const Extent piece = problem.pieces[mounting.piece].extent;
    const Extent left = way.left(number, problem.rules);
    const QString rest = left >= problem.rules.stub ? ui::Words::tr("%1 stays") : ui::Words::tr("%1 lost");
    QString band = strip(left, piece, rest.arg(ui::shownNumber(left)));
    std::vector<Extent> belts = way.forShelf[number];
    for (const cutting::Cut& cut : mounting.cuts)
        belts.insert(belts.end(), static_cast<std::size_t>(cut.count), problem.lines[cut.line].extent);
    std::sort(belts.begin(), belts.end());
    QString strips;
    for (const Extent width : belts)
        strips.prepend(QLatin1Char('|') + strip(width, piece, ui::shownNumber(width)));
    return QLatin1Char('[') + band + strips + QStringLiteral("|/]");
}

} // namespace riband::app
