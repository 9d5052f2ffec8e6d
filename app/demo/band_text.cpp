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

QString bandText(const cutting::Problem& problem, const cutting::Mounting& mounting) {
    const Extent piece = problem.pieces[mounting.piece].extent;
    const QString rest =
        mounting.rest == cutting::Rest::Remnant ? ui::Words::tr("%1 stays") : ui::Words::tr("%1 lost");
    QString band = strip(mounting.left, piece, rest.arg(ui::shownNumber(mounting.left)));
    QString belts;
    for (const cutting::Cut& cut : mounting.cuts)
        for (std::int64_t i = 0; i < cut.count; ++i) {
            const Extent width = problem.lines[cut.line].extent;
            belts.prepend(QLatin1Char('|') + strip(width, piece, ui::shownNumber(width)));
        }
    return QLatin1Char('[') + band + belts + QStringLiteral("|/]");
}

} // namespace riband::app
