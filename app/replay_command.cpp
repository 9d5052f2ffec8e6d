#include "app/commands.h"
#include "app/long_work.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/what_if_options.h"
#include "core/measure/text.h"
#include "core/shop/people.h"
#include "ui/words/replay_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QJsonArray>
#include <QJsonObject>

#include <cmath>

namespace riband::app {

namespace {

using ui::Words;
constexpr int mostYears = 1000;

Usage usage() {
    return {
        QStringLiteral("replay"),
        Words::tr("Plays the shop's last year again, with something otherwise, side by side."),
        {},
        {{"shop", Words::tr("The shop."), "FILE"},
         {"what-if",
          Words::tr("KEY=VALUE, several by commas: trim, kerf, sleeve, least, price, service, lead, review, "
                    "remnants, together. Again for each further alternative."),
          "KEY=VALUE"},
         {"seeds", Words::tr("Years that are drawn; 10 if not said."), "N"},
         {"from", Words::tr("history (the default) or outlook."), "WHERE", "history"},
         {"profile", Words::tr("Only belts of this profile."), "NAME"},
         {"person", Words::tr("The initials of who asks: only an owner sees costs (an owner)."),
          "INITIALS"}}};
}

shop::ReplayTerms termsOf(const Options& options, const OpenShop& open) {
    shop::ReplayTerms terms;
    if (options.has("seeds")) {
        bool isNumber = false;
        terms.years = options.value("seeds").toInt(&isNumber);
        if (!isNumber || terms.years < 1 || terms.years > mostYears)
            throw BadInput(Words::tr("--seeds must be a whole number from 1 to %1.").arg(mostYears));
    }
    const QString from = options.value("from");
    if (from == QLatin1String("outlook"))
        terms.from = shop::Years::Outlook;
    else if (from != QLatin1String("history"))
        throw BadInput(Words::tr("--from %1: say history or outlook.").arg(from));
    terms.profile = options.value("profile").toStdString();
    if (!terms.profile.empty() && !open.tables().profile(terms.profile))
        throw BadInput(Words::tr("There is no profile “%1”.").arg(options.value("profile")));
    return terms;
}

double toPlaces(double value, int places) {
    const double tens = std::pow(10, places);
    return std::round(value * tens) / tens;
}

QJsonObject jsonOf(const shop::ReplayFigures& figures, const Currency& currency) {
    QJsonObject json;
    for (const ui::ReplayLine& line : ui::replayLines()) {
        const shop::Estimate& figure = figures.*line.figure;
        const double times = ui::timesOf(line, currency);
        json[QLatin1String(line.name)] = QJsonObject{{"mean", toPlaces(figure.mean * times, 3)},
                                                     {"doubt", toPlaces(figure.doubt * times, 3)}};
    }
    return json;
}

/// Better, worse, the same or untold, a word a figure.
QJsonObject verdictsOf(const shop::Alternative& alternative) {
    QJsonObject json;
    for (const ui::ReplayLine& line : ui::replayLines())
        json[QLatin1String(line.name)] =
            QLatin1String(ui::verdictWord(line, alternative.difference.*line.figure));
    return json;
}

QString nameOf(const shop::Alternative& alternative) {
    return alternative.what.name.empty() ? Words::tr("as it is") : ui::text(alternative.what.name);
}

/// How it is, then each alternative: its differences, what they mean, and all of it in money.
void printYears(const shop::ReplayResult& result, const Currency& currency) {
    constexpr int nameRoom = 26, figureRoom = 24;
    for (const shop::Alternative& alternative : result.alternatives) {
        const bool isNow = &alternative == &result.alternatives.front();
        print(nameOf(alternative) + QLatin1Char(':'));
        for (const ui::ReplayLine& line : ui::replayLines()) {
            const shop::Estimate& figure =
                (isNow ? alternative.figures : alternative.difference).*line.figure;
            const double times = ui::timesOf(line, currency);
            const QString words = QStringLiteral("%1%2 ± %3")
                                      .arg(!isNow && figure.mean > 0 ? QStringLiteral("+") : QString{},
                                           ui::shownNumber(figure.mean * times, line.places),
                                           ui::shownNumber(figure.doubt * times, line.places));
            QString row = QStringLiteral("  ") + Words::tr(line.head).leftJustified(nameRoom) +
                          words.rightJustified(figureRoom);
            if (!isNow) row += QStringLiteral("  ") + ui::sayVerdict(line, figure);
            print(row);
        }
        if (!isNow) print(QStringLiteral("  ") + ui::verdictOf(alternative, currency));
    }
    print(Words::tr("%1 belts, a year each; below the first are differences to it; ± is half of a 95 % "
                    "interval.")
              .arg(result.belts));
}

} // namespace

Exit replay(const QStringList& arguments) {
    const Options options(usage(), arguments);
    options.needed("what-if");
    std::vector<shop::WhatIf> whatIfs;
    for (const QString& text : options.values("what-if"))
        whatIfs.push_back(whatIfOf(text));
    const OpenShop open(options.needed("shop"), store::Connection::Mode::ReadOnly, options.value("person"));
    if (options.has("person")) shop::demandRole(open.shop(), store::Role::Owner); // else: whose file it is
    const shop::ReplayTerms terms = termsOf(options, open);
    const shop::BuyingOutlook outlook = shop::lookAtBuying(open.shop());
    const Currency& currency = outlook.settings.prices.currency;
    const StopOnInterrupt stop;
    shop::ReplayResult result;
    try {
        result = shop::replay(outlook, whatIfs, terms, StopOnInterrupt::work());
    } catch (const foresight::Stopped&) {
        complain(Words::tr("riband replay: stopped; nothing was changed."));
        return Exit::No;
    }
    if (!options.json()) {
        printYears(result, currency);
        return Exit::Done;
    }
    QJsonArray alternatives;
    for (const shop::Alternative& alternative : result.alternatives)
        alternatives << QJsonObject{{"what_if", ui::text(alternative.what.name)},
                                    {"belts", static_cast<qint64>(alternative.belts)},
                                    {"figures", jsonOf(alternative.figures, currency)},
                                    {"difference", jsonOf(alternative.difference, currency)},
                                    {"verdicts", verdictsOf(alternative)}};
    printJson(QJsonObject{{"belts", static_cast<qint64>(result.belts)},
                          {"days", std::round(result.days)},
                          {"seeds", terms.years},
                          {"from", options.value("from")},
                          {"currency", ui::text(std::string{currency.code()})},
                          {"alternatives", alternatives}});
    return Exit::Done;
}

} // namespace riband::app
