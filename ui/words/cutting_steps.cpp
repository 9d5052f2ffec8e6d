#include "ui/words/cutting_steps.h"

#include "core/cutting/forbidden.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QStringList>

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

using Remark = cutting::SetUp::Remark;

/// What the person at the cutter does about it, where it must not be mounted.
QString wayOut(Remark remark) {
    if (remark == Remark::ShaftUnderSmallest)
        return StepWords::tr(
            "Take a thicker shaft or another cutter, or ask the belt's maker whether this one "
            "bears the bend; else give the order another belt, or cancel it (its order).");
    return StepWords::tr("Put it on a cutter that is made for it, or order it cut and finished from the "
                         "belt's maker and cancel "
                         "the line here (its order). The local rules and trained people decide.");
}

Warning warningOf(Remark remark) {
    if (!cutting::forbids(remark)) return {say(remark), false};
    return {say(remark) + QLatin1Char(' ') + wayOut(remark), true};
}

Warning warningOf(cutting::SetUpFault fault) {
    if (fault == cutting::SetUpFault::NoShaft) return {say(fault), true};
    return {say(fault) + QLatin1Char(' ') +
                StepWords::tr("Cut it on another cutter, or change or cancel the line (its order)."),
            true};
}

bool remarks(const shop::BenchMounting& mounting, Remark remark) {
    if (!mounting.setUp) return false;
    const auto& all = mounting.setUp->remarks;
    return std::find(all.begin(), all.end(), remark) != all.end();
}

/// What not every knife is made for, said also where this cutter may: the knife has to be the right one.
struct Hard {
    Remark forbids;
    QString words;
};

std::vector<Hard> hardStuff(const store::StockedBelt& belt) {
    std::vector<Hard> hard;
    if (belt.cord == "steel")
        hard.push_back(
            {Remark::SteelCord, StepWords::tr("Steel cord: only with a knife and cutter made for it.")});
    if (belt.cord == "aramid")
        hard.push_back(
            {Remark::AramidCord, StepWords::tr("Aramid cord: only with a knife and cutter made for it.")});
    if (belt.body == "polyurethane")
        hard.push_back({Remark::Polyurethane,
                        StepWords::tr("Polyurethane body: only with a knife and cutter made for it.")});
    return hard;
}

bool alike(const belt::WidthTolerance& one, const belt::WidthTolerance& other) {
    return one.plus == other.plus && one.minus == other.minus && one.standard == other.standard;
}

} // namespace

std::vector<QString> setUpSteps(const shop::BenchMounting& mounting) {
    const cutting::Cutter& cutter = mounting.cutter.cutter;
    std::vector<QString> steps{fetch(mounting)};
    const QString shaft = shaftStep(mounting, cutter);
    if (!shaft.isEmpty()) steps.push_back(shaft);
    steps.push_back(StepWords::tr("Leave about %1 between the piece and the edge of the shaft.")
                        .arg(millimetres(cutter.gap, 0)));
    steps.push_back(
        StepWords::tr("Let it run slowly: it must run true. Set the blade so that it just marks the shaft."));
    steps.push_back(trimStep(mounting.mounting));
    steps.push_back(StepWords::tr("Cut at the stops, narrow belts first. Measure the first belt."));
    return steps;
}

std::vector<Warning> warningsOf(const shop::BenchMounting& mounting) {
    std::vector<Warning> warnings;
    if (mounting.setUpFault) warnings.push_back(warningOf(*mounting.setUpFault));
    if (mounting.setUp)
        for (const Remark remark : mounting.setUp->remarks)
            warnings.push_back(warningOf(remark));
    for (const Hard& hard : hardStuff(mounting.belt))
        if (!remarks(mounting, hard.forbids)) warnings.push_back({hard.words, false});
    std::stable_sort(warnings.begin(), warnings.end(),
                     [](const Warning& a, const Warning& b) { return a.stop > b.stop; });
    return warnings;
}

std::vector<QString> cautions() {
    return {StepWords::tr(
                "Cutting can hurt. Only trained people cut. The cutter's own manual and the rules of this "
                "place come first."),
            StepWords::tr("Know where the emergency stop is before you switch on."),
            StepWords::tr(
                "Keep hands and tools away from the moving blade. The shafts rotate: no loose clothing, hair "
                "or jewellery; gloves only as the local rules say."),
            StepWords::tr("Mount, measure and clean only while shafts and blade stand still.")};
}

QString tolerancesOf(const shop::BenchMounting& mounting) {
    QStringList groups, widths;
    for (std::size_t i = 0; i < mounting.tolerances.size(); ++i) {
        const auto& here = mounting.tolerances[i];
        widths << shown(here.extent);
        const auto* next = i + 1 < mounting.tolerances.size() ? &mounting.tolerances[i + 1] : nullptr;
        if (next && alike(next->tolerance, here.tolerance)) continue;
        groups << StepWords::tr("%1 %2", "widths, their tolerance")
                      .arg(widths.join(QStringLiteral(", ")), shown(here.tolerance));
        if (!next || next->tolerance.standard != here.tolerance.standard)
            groups.back() = StepWords::tr("%1 (%2)", "widths with tolerance, standard")
                                .arg(groups.back(), text(here.tolerance.standard));
        widths.clear();
    }
    return groups.join(QStringLiteral("; "));
}

} // namespace riband::ui
