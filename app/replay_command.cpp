#include "app/commands.h"
#include "app/long_work.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/what_if_options.h"
#include "core/measure/text.h"
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
         {"profile", Words::tr("Only belts of this profile."), "NAME"}}};
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

struct Column {
    const char* name; ///< of the JSON field
    const char* head;
    shop::Estimate shop::ReplayFigures::*figure;
    double times;
    int places;
};
constexpr Column columns[] = {
    {"yield_percent", QT_TRANSLATE_NOOP("Words", "yield %"), &shop::ReplayFigures::yield, 100, 2},
    {"sleeves", QT_TRANSLATE_NOOP("Words", "sleeves"), &shop::ReplayFigures::sleeves, 1, 1},
    {"mountings", QT_TRANSLATE_NOOP("Words", "mountings"), &shop::ReplayFigures::mountings, 1, 1},
    {"lost_orders", QT_TRANSLATE_NOOP("Words", "lost orders"), &shop::ReplayFigures::lostOrders, 1, 1},
    {"lost_mm", QT_TRANSLATE_NOOP("Words", "lost mm"), &shop::ReplayFigures::lost, 1, 0},
    {"rubber_cost", QT_TRANSLATE_NOOP("Words", "rubber"), &shop::ReplayFigures::rubber, 1, 2},
    {"sleeves_held", QT_TRANSLATE_NOOP("Words", "held"), &shop::ReplayFigures::stock, 1, 1},
};

double toPlaces(double value, int places) {
    const double tens = std::pow(10, places);
    return std::round(value * tens) / tens;
}

/// Money is played in minor units.
double timesOf(const Column& column, const Currency& currency) {
    const bool isMoney = column.figure == &shop::ReplayFigures::rubber;
    return isMoney ? std::pow(10, -currency.decimals()) : column.times;
}

QJsonObject jsonOf(const shop::ReplayFigures& figures, const Currency& currency) {
    QJsonObject json;
    for (const Column& column : columns) {
        const shop::Estimate& figure = figures.*column.figure;
        const double times = timesOf(column, currency);
        json[QLatin1String(column.name)] = QJsonObject{{"mean", toPlaces(figure.mean * times, 3)},
                                                       {"doubt", toPlaces(figure.doubt * times, 3)}};
    }
    return json;
}

QString nameOf(const shop::Alternative& alternative) {
    return alternative.what.name.empty() ? Words::tr("as it is") : ui::text(alternative.what.name);
}

void printTable(const shop::ReplayResult& result, const Currency& currency) {
    QString head = QString{}.leftJustified(28);
    for (const Column& column : columns)
        head += Words::tr(column.head).rightJustified(16);
    print(head);
    for (const shop::Alternative& alternative : result.alternatives) {
        const bool isNow = &alternative == &result.alternatives.front();
        QString line = nameOf(alternative).leftJustified(28, QLatin1Char(' '), true);
        for (const Column& column : columns) {
            const shop::Estimate& figure =
                (isNow ? alternative.figures : alternative.difference).*column.figure;
            const double times = timesOf(column, currency);
            const QString sign = !isNow && figure.mean > 0 ? QStringLiteral("+") : QString{};
            line += (sign + QStringLiteral("%1 ±%2")
                                .arg(figure.mean * times, 0, 'f', column.places)
                                .arg(figure.doubt * times, 0, 'f', column.places))
                        .rightJustified(16);
        }
        print(line);
    }
    print(Words::tr("%1 belts; lines below the first are differences to it; ± is half of a 95 % interval.")
              .arg(result.belts));
}

} // namespace

Exit replay(const QStringList& arguments) {
    const Options options(usage(), arguments);
    options.needed("what-if");
    std::vector<shop::WhatIf> whatIfs;
    for (const QString& text : options.values("what-if"))
        whatIfs.push_back(whatIfOf(text));
    const OpenShop open(options.needed("shop"), store::Connection::Mode::ReadOnly);
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
        printTable(result, currency);
        return Exit::Done;
    }
    QJsonArray alternatives;
    for (const shop::Alternative& alternative : result.alternatives)
        alternatives << QJsonObject{{"what_if", ui::text(alternative.what.name)},
                                    {"belts", static_cast<qint64>(alternative.belts)},
                                    {"figures", jsonOf(alternative.figures, currency)},
                                    {"difference", jsonOf(alternative.difference, currency)}};
    printJson(QJsonObject{{"belts", static_cast<qint64>(result.belts)},
                          {"days", std::round(result.days)},
                          {"seeds", terms.years},
                          {"from", options.value("from")},
                          {"currency", ui::text(std::string{currency.code()})},
                          {"alternatives", alternatives}});
    return Exit::Done;
}

} // namespace riband::app
