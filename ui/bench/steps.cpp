#include "ui/bench/steps.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>

#include <algorithm>

namespace riband::ui {

namespace {

struct StepWords {
    Q_DECLARE_TR_FUNCTIONS(StepWords)
};

QString millimetres(double mm, int decimals) {
    return StepWords::tr("%1 mm").arg(QLocale().toString(mm, 'f', decimals));
}

QString fetch(const shop::BenchMounting& mounting) {
    const store::StockPiece& piece = mounting.piece;
    const QString where = piece.place.empty() ? StepWords::tr("it has no place yet")
                                              : StepWords::tr("from %1").arg(text(piece.place));
    return StepWords::tr("Fetch %1 (%2, %3), %4. Read its label; compare belt and width.")
        .arg(text(piece.code), text(mounting.belt.designation), shown(piece.extent), where);
}

QString shaftStep(const shop::BenchMounting& mounting, const cutting::Cutter& cutter) {
    if (!mounting.setUp) return {};
    const cutting::SetUp& setUp = *mounting.setUp;
    if (setUp.shaft >= cutter.shafts.size()) return {};
    const int decimals = setUp.approximate ? 0 : 1;
    return StepWords::tr("Shaft %1. Centres %2 apart (± %3), just taut.")
        .arg(text(cutter.shafts[setUp.shaft].name), millimetres(setUp.centreDistance, decimals),
             millimetres(setUp.doubt, decimals));
}

QString trimStep(const store::TicketMounting& mounting) {
    if (mounting.trim.isNone()) return StepWords::tr("Zero the display at the edge.");
    return mounting.trim.unit() == Unit::Rib
               ? StepWords::tr("Trim %1 in the groove, then zero the display.").arg(shown(mounting.trim))
               : StepWords::tr("Trim %1, then zero the display.").arg(shown(mounting.trim));
}

} // namespace

std::vector<QString> setUpSteps(const shop::BenchMounting& mounting, const store::ShopSettings& settings) {
    std::vector<QString> steps{fetch(mounting)};
    const QString shaft = shaftStep(mounting, settings.cutter);
    if (!shaft.isEmpty()) steps.push_back(shaft);
    steps.push_back(StepWords::tr("Leave about %1 between the piece and the edge of the shaft.")
                        .arg(millimetres(settings.cutter.gap, 0)));
    steps.push_back(
        StepWords::tr("Let it run slowly: it must run true. Set the blade so that it just marks the shaft."));
    steps.push_back(trimStep(mounting.mounting));
    steps.push_back(StepWords::tr("Cut at the stops, narrow belts first. Measure the first belt."));
    return steps;
}

std::vector<Warning> warningsOf(const shop::BenchMounting& mounting) {
    using Remark = cutting::SetUp::Remark;
    std::vector<Warning> warnings;
    if (mounting.setUpFault) warnings.push_back({say(*mounting.setUpFault), true});
    if (!mounting.setUp) return warnings;
    for (const Remark remark : mounting.setUp->remarks) {
        const bool stop = remark == Remark::SteelCord || remark == Remark::AramidCord ||
                          remark == Remark::Polyurethane || remark == Remark::ShaftUnderSmallest;
        warnings.push_back({say(remark), stop});
    }
    std::stable_sort(warnings.begin(), warnings.end(),
                     [](const Warning& a, const Warning& b) { return a.stop > b.stop; });
    return warnings;
}

std::vector<QString> cautions() {
    return {StepWords::tr("Know where the emergency stop is before you start."),
            StepWords::tr("The blade moves and is sharp; the shafts turn: hands, sleeves and hair away."),
            StepWords::tr(
                "The cutter's own manual and the rules of this place come first. Trained people only.")};
}

QString toleranceOf(const shop::BenchMounting& mounting) {
    if (!mounting.tolerance || mounting.stops.empty()) return {};
    const Extent widest = *std::max_element(mounting.stops.begin(), mounting.stops.end());
    return StepWords::tr("%1 %2 (%3)", "width, tolerance, standard")
        .arg(shown(widest), shown(*mounting.tolerance), text(mounting.tolerance->standard));
}

} // namespace riband::ui
