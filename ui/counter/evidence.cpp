#include "ui/counter/evidence.h"

#include "core/belt/identify/interchange.h"
#include "core/belt/said_profile.h"
#include "ui/words/drive_words.h"
#include "ui/words/identify_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace riband::ui {

namespace {

struct EvidenceWords {
    Q_DECLARE_TR_FUNCTIONS(EvidenceWords)
};

using belt::identify::Interchange;
using belt::identify::Measure;
using belt::identify::Taped;
using Finding = Evidence::Finding;

QString name(const belt::Belt& belt) { return text(belt::designation(belt)); }

/// Its teeth are as the pulley's: alone, or on one of its two sides.
bool runsOn(const Interchange& interchange) {
    using Verdict = Interchange::Verdict;
    return interchange.verdict == Verdict::Same || interchange.verdict == Verdict::OtherLength ||
           interchange.verdict == Verdict::SameTooth;
}

QString millimetres(double value) { return shownReading(Measure::Flat, value); }

/// "819.15 mm long", "827.37 mm round the back".
QString asMeasured(Measure how, double value) {
    if (how == Measure::Outside) return EvidenceWords::tr("%1 round the back").arg(millimetres(value));
    if (how == Measure::Inside) return EvidenceWords::tr("%1 round the inside").arg(millimetres(value));
    return EvidenceWords::tr("%1 long").arg(millimetres(value));
}

QString names(const std::vector<belt::Belt>& belts) {
    QStringList all;
    for (const belt::Belt& belt : belts)
        all << name(belt);
    return all.join(QStringLiteral(", "));
}

QString fitWords(const Taped& taped, const belt::Belt& wanted, const belt::Tables& tables) {
    QString words =
        EvidenceWords::tr("%1 by tape fits: %2 is %3.")
            .arg(millimetres(taped.measured), name(wanted), asMeasured(taped.how, taped.expected));
    if (const auto tolerance = tables.lengthTolerance(wanted); tolerance && taped.how == Measure::Flat)
        words += QLatin1Char(' ') + EvidenceWords::tr("Its length may be +%1 -%2 mm (%3).")
                                        .arg(shownNumber(tolerance->plus), shownNumber(tolerance->minus),
                                             text(tolerance->standard));
    if (!taped.others.empty())
        words += QLatin1Char(' ') +
                 EvidenceWords::tr("A tape can't tell it from %1: count the teeth.").arg(names(taped.others));
    return words;
}

QString misfitWords(const Taped& taped, const belt::Belt& wanted) {
    QString words = (taped.by() > 0 ? EvidenceWords::tr("%1 by tape does not fit: %2 is %3, %4 less.")
                                    : EvidenceWords::tr("%1 by tape does not fit: %2 is %3, %4 more."))
                        .arg(millimetres(taped.measured), name(wanted), asMeasured(taped.how, taped.expected),
                             millimetres(std::abs(taped.by())));
    if (!taped.others.empty())
        words += QLatin1Char(' ') + EvidenceWords::tr("It fits %1.").arg(names(taped.others));
    return words;
}

} // namespace

std::vector<belt::Belt> ofProfile(const belt::Profile& profile, Length length, const belt::Tables& tables) {
    std::vector<const belt::MadeLength*> made;
    if (const auto* same = tables.made(profile.name, length))
        made = {same};
    else
        made = tables.around(profile.name, length);
    std::vector<belt::Belt> belts;
    for (const auto* each : made)
        belts.push_back({profile.name, each->teeth, each->length, {}});
    return belts;
}

void Evidence::setMeasured(const MeasuredBelt& measured, std::optional<belt::Belt> said) {
    measured_ = measured;
    said_ = std::move(said);
    overruled_ = false;
}

void Evidence::clear() {
    pulley_.clear();
    tape_.clear();
    measured_.reset();
    said_.reset();
    overruled_ = false;
}

const belt::Profile* Evidence::pulley() const {
    const auto may = pulleys();
    return may.size() == 1 ? may.front() : nullptr;
}

std::vector<const belt::Profile*> Evidence::pulleys() const {
    return belt::profilesSaid(pulley_.toStdString(), *tables_);
}

QString Evidence::pulleyFault() const {
    return pulleyIsKnown() ? QString{} : QStringLiteral("%1: %2").arg(pulley_, sayNotOneProfile(pulleys()));
}

std::optional<double> Evidence::tapeFigure() const {
    bool good = false;
    const double value = QString{tape_}.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&good);
    if (!good || !(value > 0 && value < 100'000)) return std::nullopt;
    return value;
}

std::vector<Finding> Evidence::of(const belt::Belt& wanted) const {
    std::vector<Finding> found;
    ofPulley(wanted, found);
    ofMeasured(wanted, found);
    ofTape(wanted, found);
    return found;
}

bool Evidence::stops(const belt::Belt& wanted) const {
    if (overruled_) return false;
    for (const Finding& each : of(wanted))
        if (each.kind == Finding::Kind::Stops) return true;
    return false;
}

void Evidence::ofPulley(const belt::Belt& wanted, std::vector<Finding>& found) const {
    const belt::Profile* has = pulley_.isEmpty() ? nullptr : pulley();
    const belt::Profile* asked = tables_->profile(wanted.profile);
    if (!has || !asked) return;
    const Interchange verdict = belt::identify::interchange(*asked, *has);
    if (runsOn(verdict)) {
        found.push_back({Finding::Kind::Fits,
                         EvidenceWords::tr("%1 runs on a %2 pulley.").arg(name(wanted), text(has->name))});
        return;
    }
    found.push_back({Finding::Kind::Stops,
                     EvidenceWords::tr("%1 will not run on the customer's pulley: %2")
                         .arg(name(wanted), say(verdict, text(asked->name), text(has->name))),
                     ofProfile(*has, wanted.length, *tables_)});
}

void Evidence::ofMeasured(const belt::Belt& wanted, std::vector<Finding>& found) const {
    if (!measured_) return;
    const QString chance = shownChance(measured_->probability);
    const belt::Profile* seen = tables_->profile(measured_->profile);
    const belt::Profile* asked = tables_->profile(wanted.profile);
    if (!seen || !asked) return;
    if (measured_->belt
            ? measured_->belt->profile == wanted.profile && measured_->belt->length == wanted.length
            : measured_->profile == wanted.profile) {
        if (said_ &&
            said_->profile != wanted.profile) { // it was measured, and taken instead of what was said
            const Interchange verdict = belt::identify::interchange(*said_, wanted, *tables_);
            found.push_back(
                {Finding::Kind::Warns,
                 EvidenceWords::tr("%1 was said, %2 was measured (%3). %4")
                     .arg(name(*said_), name(wanted), chance, say(verdict, name(*said_), name(wanted))),
                 {*said_}});
        } else if (measured_->rival.empty())
            found.push_back(
                {Finding::Kind::Fits, EvidenceWords::tr("The old belt measures the same (%1).").arg(chance)});
        if (!measured_->rival.empty())
            found.push_back(
                {Finding::Kind::Warns,
                 EvidenceWords::tr("What was measured is not settled: it is %1 by %2 only, and may be %3. "
                                   "Ctrl+W measures on.")
                     .arg(measured_->belt ? name(*measured_->belt) : text(seen->name), chance,
                          text(measured_->rival))});
        return;
    }
    if (measured_->belt) {
        const Interchange verdict = belt::identify::interchange(wanted, *measured_->belt, *tables_);
        found.push_back(
            {Finding::Kind::Stops,
             EvidenceWords::tr("The old belt measures %1 (%2), not what was said. %3")
                 .arg(name(*measured_->belt), chance, say(verdict, name(wanted), name(*measured_->belt))),
             {*measured_->belt}});
        return;
    }
    // Not even teeth on one side and on both: the other side drives something, too.
    const Interchange verdict = belt::identify::interchange(*asked, *seen);
    found.push_back({Finding::Kind::Stops,
                     EvidenceWords::tr("The old belt measures %1 (%2), not what was said. %3")
                         .arg(text(seen->name), chance, say(verdict, text(asked->name), text(seen->name))),
                     ofProfile(*seen, wanted.length, *tables_)});
}

void Evidence::ofTape(const belt::Belt& wanted, std::vector<Finding>& found) const {
    const auto figure = tape_.isEmpty() ? std::nullopt : tapeFigure();
    if (!figure) return;
    const auto taped = belt::identify::taped(wanted, *figure, tapeError_, *tables_);
    if (!taped) return;
    if (taped->fits)
        found.push_back({Finding::Kind::Fits, fitWords(*taped, wanted, *tables_)});
    else
        found.push_back({Finding::Kind::Stops, misfitWords(*taped, wanted), taped->others});
}

} // namespace riband::ui
