#include "app/commands.h"
#include "app/drive_json.h"
#include "app/drive_layout.h"
#include "app/drive_options.h"
#include "app/open_shop.h"
#include "app/standard_tables.h"
#include "core/belt/drive/remarks.h"
#include "core/shop/cuttable.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"

#include <QJsonArray>

#include <algorithm>

namespace riband::app {

namespace {

using namespace belt::drive;
using ui::Words;
using Stock = std::vector<Stocked>;

Stock stockOf(const Options& options, const belt::Profile* profile) {
    if (!options.has("shop")) return {};
    const OpenShop open(options.value("shop"), store::Connection::Mode::ReadOnly);
    return profile ? shop::cuttable(open.shop(), profile->name) : Stock{};
}

void printAll(const QStringList& lines) {
    for (const QString& line : lines)
        print(line);
}

/// A drive of two pulleys as it was asked for.
struct Asked {
    TwoPulleys drive;
    std::optional<double> centre, length;
    std::optional<Extent> width;
    std::optional<Range> range;
    std::optional<Duty> duty;
};

Asked askedOf(const Options& options, const belt::Profile* profile) {
    if (options.has("move") || options.has("along"))
        throw BadInput(Words::tr("--move and --along go with --layout."));
    if (options.has("teeth") + options.has("length") + options.has("centre") != 1)
        throw BadInput(Words::tr("Say one of --centre, --teeth and --length."));
    return {pulleysOf(options, profile),
            millimetresOf(options, "centre"),
            beltLengthOf(options, profile),
            widthOf(options, profile),
            rangeOf(options),
            dutyOf(options)};
}

Run runOf(const Asked& asked) {
    const auto run =
        asked.length ? withLength(asked.drive, *asked.length) : atDistance(asked.drive, *asked.centre);
    if (!run) throw BadInput(ui::say(run.reason(), asked.drive));
    return *run;
}

/// Nothing for plain diameters.
std::optional<Choices> choicesFor(const Asked& asked, const Run& run, const belt::Tables& tables,
                                  const Stock& stock) {
    if (!asked.drive.profile) return std::nullopt;
    return beltsFor(asked.drive, {run.centre, asked.range, asked.width}, tables, stock).value();
}

/// All that is told of a drive of two pulleys.
struct Answer {
    Run run;
    std::optional<Choices> choices;
    std::vector<OtherWidth> widths;
    std::optional<Pull> pull;
    std::optional<Carry> carries;
};

Answer answerTo(const Asked& asked, const belt::Tables& tables, const Stock& stock) {
    const Run run = runOf(asked);
    Answer answer{run, choicesFor(asked, run, tables, stock), {}, {}, {}};
    const belt::Profile* profile = asked.drive.profile;
    if (asked.width && profile) answer.widths = otherWidths(*profile, *asked.width, tables);
    if (asked.duty) {
        answer.pull = pullOf(asked.drive, *asked.duty);
        answer.carries = carry(asked.drive, run, *asked.duty, asked.width, tables);
    }
    return answer;
}

QJsonObject answerJson(const Answer& answer, const Asked& asked) {
    QJsonObject json = jsonOf(answer.run, answer.choices ? answer.choices->belts : std::vector<Choice>{},
                              asked.range.has_value());
    if (asked.width) json.insert("other_widths", jsonOf(answer.widths));
    if (answer.pull) json.insert("load", jsonOf(*answer.pull, answer.carries));
    return json;
}

/// Plain diameters always do; so does a belt that the customer has, unless it is asked what could be in its
/// place.
bool fits(const Answer& answer, const Asked& asked) {
    return !answer.choices || (asked.length && !asked.range) || answer.choices->any;
}

/// A length that was said is given back as it was.
bool exists(double length, const std::vector<Choice>& belts) {
    return std::any_of(belts.begin(), belts.end(), [length](const Choice& choice) {
        return choice.belt.length.inMillimetres() == length;
    });
}

void printAnswer(const Answer& answer, const Asked& asked) {
    print(Words::tr("Exactly: %1").arg(ui::describe(answer.run)));
    if (answer.choices) {
        if (asked.length && !exists(*asked.length, answer.choices->belts)) print(ui::sayNotListed());
        for (const Choice& choice : answer.choices->belts)
            print(ui::describe(choice));
        if (!fits(answer, asked)) print(ui::sayNothingFits(*answer.choices));
    }
    for (const OtherWidth& width : answer.widths)
        print(ui::describe(width));
    if (answer.pull) printAll(ui::describe(*answer.pull, answer.carries));
    for (const Remark& remark : remarksOn(asked.drive, answer.run))
        print(ui::say(remark, asked.drive));
    printAll(ui::driveCautions());
}

Exit twoPulleys(const Options& options, const belt::Tables& tables) {
    const Asked asked = askedOf(options, profileOf(options, tables));
    const Answer answer = answerTo(asked, tables, stockOf(options, asked.drive.profile));
    if (options.json())
        printJson(answerJson(answer, asked));
    else
        printAnswer(answer, asked);
    return fits(answer, asked) ? Exit::Done : Exit::No;
}

void refuseForLayout(const Options& options) {
    for (const char* option :
         {"z1", "z2", "d1", "d2", "centre", "teeth", "length", "power", "torque", "speed", "service"})
        if (options.has(QLatin1String(option)))
            throw BadInput(Words::tr("--%1 does not go with --layout.").arg(QLatin1String(option)));
}

void printRoute(const Route& route, const std::vector<RouteChoice>& belts) {
    print(Words::tr("Exactly: belt %1").arg(ui::shownMillimetres(route.length)));
    for (std::size_t i = 0; i < route.contacts.size(); ++i)
        print(ui::describe(route.contacts[i], i + 1));
    for (const RouteChoice& choice : belts)
        print(ui::describe(choice));
    printAll(ui::driveCautions());
}

Exit manyPulleys(const Options& options, const belt::Tables& tables) {
    refuseForLayout(options);
    const belt::Profile* profile = profileOf(options, tables);
    const Layout layout = layoutOf(options, profile);
    const auto mover = moverOf(options, layout);
    const auto width = widthOf(options, profile);
    const auto route = routeOf(layout);
    if (!route) throw BadInput(ui::say(route.reason()));
    std::vector<RouteChoice> belts;
    if (profile) belts = beltsFor(layout, *route, mover, width, tables, stockOf(options, profile));
    if (options.json())
        printJson(jsonOf(layout, *route, belts));
    else
        printRoute(*route, belts);
    const bool fits = !profile || (!belts.empty() && (!mover || belts.front().move));
    return fits ? Exit::Done : Exit::No;
}

} // namespace

Exit drive(const QStringList& arguments) {
    const Options options(driveUsage(), arguments);
    const auto tables = standardTables();
    return options.has("layout") ? manyPulleys(options, *tables) : twoPulleys(options, *tables);
}

} // namespace riband::app
