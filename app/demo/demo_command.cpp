#include "app/commands.h"
#include "app/demo/demo_file.h"
#include "app/demo/demo_shop.h"
#include "app/demo/walk_in.h"
#include "app/open_shop.h"
#include "app/options.h"
#include "app/standard_tables.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"

#include <QApplication>
#include <QDir>
#include <QJsonObject>

namespace riband::app {

namespace {

using ui::Words;

Usage usage() {
    return {
        QStringLiteral("demo"),
        Words::tr("Writes the demo shop, then serves one walk-in from words to ticket."),
        {},
        {{"size", Words::tr("small (the default), or large: 3,000 belts, 20,000 pieces, 500,000 movements."),
          "SIZE", "small"},
         {"out", Words::tr("The folder for demo.riband, the papers and the pictures."), "DIR", "."},
         {"seed", Words::tr("Another number, another shop."), "N", "1"},
         {"shop-only", Words::tr("Write the shop and serve nobody.")}}};
}

struct Wanted {
    bool large;
    std::uint64_t seed;
    QDir folder;
};

Wanted wantedOf(const Options& options) {
    const QString size = options.value("size");
    if (size != QLatin1String("small") && size != QLatin1String("large"))
        throw BadInput(Words::tr("--size %1: say small or large.").arg(size));
    bool number = false;
    const quint64 seed = options.value("seed").toULongLong(&number);
    if (!number) throw BadInput(Words::tr("--seed %1: a whole number is needed.").arg(options.value("seed")));
    const QDir folder(options.value("out"));
    if (!folder.mkpath(QStringLiteral(".")))
        throw BadInput(Words::tr("The folder %1 can't be made.").arg(options.value("out")));
    return {size == QLatin1String("large"), seed, folder};
}

void tellTenths(double share) {
    static int told = 0;
    if (const int tenth = static_cast<int>(share * 10); tenth > told) {
        told = tenth;
        complain(Words::tr("%1 % of the years are told").arg(10 * tenth));
    }
}

void make(store::Connection& connection, const Wanted& wanted) {
    const auto tables = standardTables();
    const Moment now = presentMoment();
    if (wanted.large)
        makeLargeShop(connection, tables, now, wanted.seed, {}, tellTenths);
    else
        makeSmallShop(connection, tables, now, wanted.seed);
    learnMostOrdered(connection, tables, now);
}

QJsonObject counted(const QString& file) {
    store::Connection connection(file.toStdString(), store::Connection::Mode::ReadOnly);
    return {{"shop", file},
            {"belts", static_cast<qint64>(store::Catalogue{connection}.all().size())},
            {"pieces", static_cast<qint64>(store::Pieces{connection}.all().size())}};
}

bool serve(const QString& file, const QDir& folder, const std::function<void(const QString&)>& tell) {
    ui::Look::apply(*qApp, ui::Shade::Light);
    store::Connection connection(file.toStdString());
    const auto clerk = store::People{connection}.present().front().id;
    ui::Session session(std::move(connection), standardTables(), clerk, presentMoment, folder.absolutePath());
    return serveWalkIn(session, tell);
}

} // namespace

Exit demo(const QStringList& arguments) {
    const Options options(usage(), arguments);
    const Wanted wanted = wantedOf(options);
    const QString file = wanted.folder.absoluteFilePath(QStringLiteral("demo.riband"));
    writeDemoFile(file, [&](store::Connection& connection) { make(connection, wanted); });
    QJsonObject made = counted(file);
    const auto tell = options.json() ? complain : print; // standard output is for the JSON alone
    tell(Words::tr("%1: %2 belts, %3 pieces on the rack.")
             .arg(file)
             .arg(made.value("belts").toInteger())
             .arg(made.value("pieces").toInteger()));
    const bool served = !options.has("shop-only") && serve(file, wanted.folder, tell);
    made.insert("served", served);
    if (options.json()) printJson(made);
    return served || options.has("shop-only") ? Exit::Done : Exit::No;
}

} // namespace riband::app
