#include "core/belt/drive/remarks.h"
#include "core/belt/reader.h"
#include "ui/drive/entries.h"
#include "ui/drive/reading.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

using namespace belt::drive;

/// The question, read.
struct Asked {
    TwoPulleys drive;
    std::optional<double> centre, length; ///< of these at least one
    std::optional<Range> range;
    std::optional<Extent> width;
    std::optional<Duty> duty;
};

Pulley readPulleyOf(const QString& typed, const belt::Profile* profile, DriveField field) {
    const QString which = field == DriveField::First ? Words::tr("First pulley") : Words::tr("Second pulley");
    const bool toothed = profile && !profile->ribbed();
    if (typed.trimmed().isEmpty())
        ask(field, toothed   ? Words::tr("%1: type its teeth, or its pitch diameter with mm.").arg(which)
                   : profile ? Words::tr("%1: type its effective diameter.").arg(which)
                             : Words::tr("%1: type its diameter, or the profile first.").arg(which));
    const auto said = readPulley(typed, toothed);
    if (!said)
        refuse(field, Words::tr("“%1” is no pulley: type teeth, as in 22, or a diameter, as in 70 mm.")
                          .arg(typed.trimmed()));
    const auto pulley = pulleyAsSaid(profile, *said);
    if (!pulley) refuse(field, QStringLiteral("%1: %2").arg(which, say(pulley.reason(), profile)));
    return *pulley;
}

std::optional<double> readCentre(const QString& typed) {
    if (typed.trimmed().isEmpty()) return std::nullopt;
    const auto centre = readDistance(typed);
    if (!centre)
        refuse(DriveField::Centre,
               Words::tr("“%1” is no distance: type it in mm, as in 300.").arg(typed.trimmed()));
    return centre;
}

std::optional<double> readLengthOfBelt(const QString& typed, const belt::Profile* profile,
                                       const belt::Tables& tables) {
    if (typed.trimmed().isEmpty()) return std::nullopt;
    if (profile) {
        const auto belt = belt::readBelt(profile->name + " " + typed.toStdString(), tables);
        if (!belt) refuse(DriveField::Belt, say(belt.reason(), tables));
        return belt->length.inMillimetres();
    }
    const auto length = readDistance(typed);
    if (!length) refuse(DriveField::Belt, Words::tr("“%1” is no length.").arg(typed.trimmed()));
    return length;
}

std::optional<Range> readRangeOf(const QString& typed) {
    if (typed.trimmed().isEmpty()) return std::nullopt;
    const auto range = readRange(typed);
    if (!range)
        refuse(DriveField::Range,
               Words::tr("Type how far it can be set: 10 for either way, or -5 +10 for nearer and farther."));
    return range;
}

std::optional<Duty> readDutyOf(const TwoQuestion& typed) {
    if (typed.power.trimmed().isEmpty()) return std::nullopt;
    const auto service = typed.service.trimmed().isEmpty() ? std::optional{1.0} : readNumber(typed.service);
    if (!service || !(*service > 0))
        refuse(DriveField::Service, Words::tr("A service factor is a number, as in 1.4."));
    if (typed.speed.trimmed().isEmpty())
        ask(DriveField::Speed, Words::tr("Type the turns of the first pulley in a minute."));
    const auto speed = readNumber(typed.speed);
    if (!speed || !(*speed > 0))
        refuse(DriveField::Speed, Words::tr("Turns in a minute are a number, as in 1450."));
    const auto duty = readDuty(typed.power, *speed, *service);
    if (!duty)
        refuse(DriveField::Power, Words::tr("Type the power in kW, as in 1.5, or the torque, as in 10 Nm."));
    return duty;
}

Asked read(const TwoQuestion& typed, const belt::Tables& tables) {
    const belt::Profile* profile = readProfile(typed.profile, tables);
    Asked asked{{profile, readPulleyOf(typed.first, profile, DriveField::First),
                 readPulleyOf(typed.second, profile, DriveField::Second)},
                readCentre(typed.centre),
                readLengthOfBelt(typed.belt, profile, tables),
                readRangeOf(typed.range),
                readWidthOf(typed.width, profile),
                readDutyOf(typed)};
    if (!asked.centre && !asked.length)
        ask(DriveField::Centre, Words::tr("Type the centre distance, or the belt that is known."));
    return asked;
}

Run runOf(const Asked& asked) {
    const auto run =
        asked.centre ? atDistance(asked.drive, *asked.centre) : withLength(asked.drive, *asked.length);
    if (!run) refuse(asked.centre ? DriveField::Centre : DriveField::Belt, say(run.reason(), asked.drive));
    return *run;
}

RoutePicture pictureOf(const TwoPulleys& drive, double centre) {
    return {{drive.profile, {{{0, 0}, drive.first}, {{centre, 0}, drive.second}}}, {}};
}

QString meshOf(const Run& run) {
    return run.mesh ? QString::number(*run.teethInMesh()) : QStringLiteral("–");
}

QString hereOf(const Choice& choice) {
    QStringList parts;
    if (!choice.reachable) parts << Words::tr("out of reach");
    if (choice.inStock()) parts << shownStock(choice.stock);
    if (!choice.listed) parts << Words::tr("in no maker's list");
    return parts.join(QStringLiteral(" · "));
}

BeltRow rowOf(const TwoPulleys& drive, const Choice& choice) {
    return {asStocked(choice.belt, choice.stock),
            {text(belt::designation(choice.belt)),
             choice.belt.teeth ? QString::number(choice.belt.teeth->count()) : QStringLiteral("–"),
             shownMillimetres(choice.run.centre), shownShift(choice.shift), meshOf(choice.run),
             QStringLiteral("%1 · %2").arg(shownDegrees(choice.run.arcSmallDegrees),
                                           shownDegrees(choice.run.arcLargeDegrees)),
             shownRatio(choice.run.ratio), hereOf(choice)},
            choice.inStock(),
            choice.reachable,
            pictureOf(drive, choice.run.centre)};
}

void addBelts(DriveAnswer& answer, const Asked& asked, const Run& run, const belt::Tables& tables,
              const StockOf& stock) {
    const std::string& profile = asked.drive.profile->name;
    const auto choices = beltsFor(asked.drive, {run.centre, asked.range, asked.width}, tables,
                                  readStock(stock, profile, answer))
                             .value();
    for (const Choice& choice : choices.belts)
        answer.belts.push_back(rowOf(asked.drive, choice));
    const bool known = std::any_of(choices.belts.begin(), choices.belts.end(), [&](const Choice& choice) {
        return asked.length && choice.belt.length.inMillimetres() == *asked.length;
    });
    if (asked.length && !asked.centre && !known) answer.warnings << sayNotListed();
    if (!choices.any && (asked.centre || asked.range)) answer.warnings << sayNothingFits(choices);
}

/// The belt that is known, on a drive whose distance is wanted as well.
QString knownBelt(const Asked& asked) {
    const auto known = withLength(asked.drive, *asked.length);
    if (!known) return say(known.reason(), asked.drive);
    return Words::tr("The belt of %1 that is known: at %2, %3.")
        .arg(shownMillimetres(*asked.length), shownMillimetres(known->centre),
             shownShift(known->centre - *asked.centre));
}

void addNotes(DriveAnswer& answer, const Asked& asked, const Run& run, const belt::Tables& tables) {
    if (asked.centre && asked.length) answer.notes << knownBelt(asked);
    for (const Remark& remark : remarksOn(asked.drive, run))
        answer.warnings << say(remark, asked.drive);
    if (asked.duty)
        answer.notes << describe(pullOf(asked.drive, *asked.duty),
                                 carry(asked.drive, run, *asked.duty, asked.width, tables));
    if (!asked.width || !asked.drive.profile) return;
    QStringList widths;
    for (const OtherWidth& width : otherWidths(*asked.drive.profile, *asked.width, tables))
        widths << describe(width);
    if (!widths.isEmpty()) answer.notes << widths.join(QStringLiteral("; ")) + QLatin1Char('.');
}

} // namespace

DriveAnswer answerTo(const TwoQuestion& question, const belt::Tables& tables, const StockOf& stock) {
    try {
        const Asked asked = read(question, tables);
        const Run run = runOf(asked);
        DriveAnswer answer;
        answer.profile = asked.drive.profile;
        answer.width = asked.width;
        answer.exact = Words::tr("Exactly: %1").arg(describe(run));
        answer.picture = pictureOf(asked.drive, run.centre);
        answer.headings = {Words::tr("Belt"),           Words::tr("Teeth"),   Words::tr("Distance"),
                           Words::tr("Against wanted"), Words::tr("In mesh"), Words::tr("Arcs"),
                           Words::tr("Ratio"),          Words::tr("Here")};
        if (asked.drive.profile)
            addBelts(answer, asked, run, tables, stock);
        else
            answer.notes << Words::tr("Type the profile to see which belts exist.");
        addNotes(answer, asked, run, tables);
        return answer;
    } catch (const Unclear& why) {
        return unclear(why);
    }
}

} // namespace riband::ui
