#include "app/commands.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "core/shop/learn.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QJsonArray>
#include <QJsonObject>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {QStringLiteral("learn"),
            Words::tr("Fits the worth tables of a shop that are due, for its suggestions."),
            {{QStringLiteral("FILE"), Words::tr("the shop")}},
            {}};
}

struct Learned {
    std::string belt;
    int version;
    std::int64_t orders;
};

std::optional<Learned> learnBelt(const OpenShop& open, store::BeltId belt) {
    const auto table = shop::learn(shop::lessonOf(open.shop(), belt), [](double) { return true; });
    if (!table) return std::nullopt;
    const int version = shop::keepWorth(open.shop(), belt, *table);
    return Learned{store::Catalogue{open.shop().connection}.at(belt).designation, version, table->orders};
}

void tell(const Learned& learned) {
    print(Words::tr("%1: worth table %2, from %n orders", nullptr, static_cast<int>(learned.orders))
              .arg(ui::text(learned.belt))
              .arg(learned.version));
}

QJsonObject jsonOf(const Learned& learned) {
    return {{"belt", ui::text(learned.belt)},
            {"version", learned.version},
            {"orders", static_cast<qint64>(learned.orders)}};
}

} // namespace

Exit learn(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const OpenShop open(options.positional(0), store::Connection::Mode::Open);
    QJsonArray belts;
    for (const store::BeltId belt : shop::dueBelts(open.shop())) {
        const auto learned = learnBelt(open, belt);
        if (!learned) continue;
        belts << jsonOf(*learned);
        if (!options.json()) tell(*learned);
    }
    if (options.json())
        printJson(QJsonObject{{"learned", belts}});
    else if (belts.isEmpty())
        print(Words::tr("Every worth table is up to date."));
    return Exit::Done;
}

} // namespace riband::app
