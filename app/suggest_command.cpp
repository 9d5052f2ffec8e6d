#include "app/commands.h"
#include "app/json.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/plan_json.h"
#include "app/plan_words.h"
#include "app/reading_json.h"
#include "core/shop/price.h"
#include "core/shop/reason.h"
#include "core/shop/suggest.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QElapsedTimer>
#include <QJsonArray>

#include <cmath>

namespace riband::app {

namespace {

using ui::Words;
constexpr qint64 longestThought = 5000; ///< ms

Usage usage() {
    return {QStringLiteral("suggest"),
            Words::tr("Says which piece to cut for what a customer says."),
            {{QStringLiteral("TEXT"), Words::tr("what is printed on a belt, or what a customer says")}},
            {{"shop", Words::tr("The shop."), "FILE"}}};
}

/// What was found for one reading.
struct Answer {
    shop::Outlook outlook;
    shop::Suggestion suggestion;
    store::PriceRules rules;
    std::optional<store::LinePrice> price; ///< none if the shop has no price for the belt
    std::vector<const belt::Profile*> lookAlikes;
};

Answer answerTo(const belt::Reading& reading, const OpenShop& open) {
    const shop::Outlook outlook =
        shop::lookAt(open.shop(), reading.belt, {{*reading.width, reading.quantity}});
    QElapsedTimer timer;
    timer.start();
    const cutting::Limits limits{[&timer] { return timer.elapsed() > longestThought; }, nullptr};
    const auto rules = store::Settings{open.shop().connection}.read().prices;
    std::optional<store::LinePrice> price;
    if (outlook.belt.price > WidthPrice::thousandths(0))
        price = shop::priceOf(rules, outlook.belt.price, *reading.width, reading.quantity);
    return {outlook, shop::suggest(outlook, limits), rules, price,
            open.tables().lookAlikes(reading.belt.profile)};
}

/// What is left is what the belts for the shelf leave. Of a rest that can be held again, but of which nothing
/// listed can be cut, a running shop keeps nothing.
BeltPlan planOf(const Answer& answer, const shop::Way& way) {
    BeltPlan made{answer.outlook.belt.designation, answer.outlook.problem, way.plan};
    for (std::size_t i = 0; i < made.plan.mountings.size(); ++i) {
        cutting::Mounting& mounting = made.plan.mountings[i];
        mounting.left = way.left(i, made.problem.rules);
        if (!shop::goesBack(made.problem, mounting.left)) mounting.rest = cutting::Rest::Scrap;
    }
    return made;
}

QJsonValue amount(Money money, const Currency& currency) {
    return QString::fromStdString(printMoney(money, currency)).toDouble();
}

QJsonObject wayJson(const Answer& answer, const shop::Way& way) {
    QJsonObject json = jsonOf({planOf(answer, way)});
    json.insert("reason", ui::say(way.reason));
    const Unit unit = answer.outlook.belt.unit;
    json.insert(keyOf("extra", unit), inUnit(unit, way.extra));
    json.insert("extra_money", amount(shop::asMoney(answer.outlook.belt, static_cast<double>(way.extra)),
                                      answer.rules.currency));
    json.insert(keyOf("cost", unit), inUnit(unit, std::llround(way.cost)));
    QJsonArray mountings;
    for (const auto& belts : way.forShelf) {
        QJsonArray widths;
        for (const Extent belt : belts)
            widths << inUnit(belt);
        mountings << widths;
    }
    json.insert(keyOf("for_shelf", unit), mountings);
    return json;
}

QJsonValue priceJson(const Answer& answer) {
    if (!answer.price) return QJsonValue(QJsonValue::Null);
    const store::LinePrice& price = *answer.price;
    const Currency& currency = answer.rules.currency;
    return QJsonObject{{"currency", textValue(std::string{currency.code()})},
                       {"width", amount(price.width, currency)},
                       {"cutting", amount(price.cutting, currency)},
                       {"discount", amount(price.discount, currency)},
                       {"minimum", amount(price.minimum, currency)},
                       {"net", amount(price.net, currency)},
                       {"tax", amount(price.tax, currency)},
                       {"total", amount(price.total, currency)}};
}

void insertAnswer(QJsonObject& json, const Answer& answer) {
    QJsonArray others, lookAlikes;
    for (const shop::Way& way : answer.suggestion.others)
        others << wayJson(answer, way);
    for (const belt::Profile* profile : answer.lookAlikes)
        lookAlikes << textValue(profile->name);
    json.insert("best", wayJson(answer, answer.suggestion.best));
    json.insert("others", others);
    json.insert("basis", ui::basisOf(answer.suggestion));
    json.insert("worth_table", answer.suggestion.worthVersion);
    json.insert("price", priceJson(answer));
    json.insert("look_alikes", lookAlikes);
}

void printWay(const Answer& answer, const shop::Way& way) {
    for (const QString& line : wordsOf(planOf(answer, way)))
        print(line);
    print(QStringLiteral("    ") + ui::say(way.reason));
    if (const QString shelf = shelfWords(answer.outlook, way); !shelf.isEmpty())
        print(QStringLiteral("    ") + shelf);
}

void printOthers(const Answer& answer) {
    for (const shop::Way& way : answer.suggestion.others) {
        print(
            Words::tr("Or, at %1 of width more:")
                .arg(ui::shown(Extent::of(answer.outlook.belt.unit, std::max<std::int64_t>(way.extra, 0)))));
        printWay(answer, way);
    }
}

void printAnswer(const Answer& answer) {
    printWay(answer, answer.suggestion.best);
    printOthers(answer);
    if (!answer.suggestion.best.plan.mountings.empty())
        print(Words::tr("This is %1.").arg(ui::basisOf(answer.suggestion)));
    if (answer.price)
        print(Words::tr("Price %1 %2")
                  .arg(ui::shown(answer.price->total, answer.rules.currency),
                       ui::text(std::string{answer.rules.currency.code()})));
    QStringList names;
    for (const belt::Profile* profile : answer.lookAlikes)
        names << ui::text(profile->name);
    if (!names.isEmpty())
        print(Words::tr("Not for pulleys of %1, which look alike.").arg(names.join(QStringLiteral(", "))));
}

void printRemarks(const belt::Reading& reading) {
    for (const auto remark : reading.remarks)
        print(ui::say(remark, reading));
}

/// Why there is no belt to look for yet.
Exit ask(const belt::Understanding& understanding, const Options& options, const belt::Tables& tables) {
    if (options.json()) printJson(jsonOf(understanding, tables));
    if (understanding.fault)
        complain(QStringLiteral("riband suggest: ") + ui::say(*understanding.fault, tables));
    if (understanding.readings.empty()) return Exit::BadInput;
    if (options.json()) return Exit::No;
    for (const belt::Reading& reading : understanding.readings)
        print(understanding.question ? ui::tellApart(reading, *understanding.question, tables)
                                     : writtenForm(reading, tables));
    if (understanding.question) print(ui::say(*understanding.question));
    return Exit::No;
}

} // namespace

Exit suggest(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const OpenShop open(options.needed("shop"), store::Connection::Mode::ReadOnly);
    const auto understanding = belt::understand(options.positional(0).toStdString(), open.tables());
    if (understanding.readings.size() != 1 || !understanding.readings.front().width)
        return ask(understanding, options, open.tables());
    const Answer answer = answerTo(understanding.readings.front(), open);
    if (options.json()) {
        QJsonObject json = jsonOf(understanding, open.tables());
        insertAnswer(json, answer);
        printJson(json);
    } else {
        printRemarks(understanding.readings.front());
        printAnswer(answer);
    }
    return answer.suggestion.best.plan.unserved.empty() ? Exit::Done : Exit::No;
}

} // namespace riband::app
