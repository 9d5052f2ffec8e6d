#include "app/demo/demo_file.h"

#include "app/console.h"
#include "app/demo/demo_shop.h"
#include "core/store/backup.h"
#include "core/store/files.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QFile>
#include <QFileInfo>

namespace riband::app {

namespace {

bool isDemoShop(const QString& path) {
    try {
        store::Connection connection(path.toStdString(), store::Connection::Mode::ReadOnly);
        return store::Settings{connection}.read().name == demoName;
    } catch (const store::StoreError& error) {
        throw BadInput(ui::say(error) + QLatin1Char(' ') +
                       ui::Words::tr("Choose another folder with --out."));
    }
}

void refuseOther(const QString& path) {
    if (QFileInfo::exists(path) && !isDemoShop(path))
        throw BadInput(
            ui::Words::tr(
                "%1 is a shop, but not the demo: it is left alone. Choose another folder with --out.")
                .arg(path));
}

/// The old demo shop gives way, unless somebody has it open: restore() refuses that.
void replaceOld(const std::string& made, const QString& path) {
    const QString kept = QString::fromStdString(store::restore(made, path.toStdString()));
    for (const char* ending : {"", "-wal", "-shm"})
        QFile::remove(kept + QLatin1String(ending));
}

} // namespace

void writeDemoFile(const QString& path, const std::function<void(store::Connection&)>& make) {
    refuseOther(path);
    const store::UnfinishedFile unfinished{store::freeNameBeside(path.toStdString(), ".making")};
    {
        store::Connection connection(unfinished.path(), store::Connection::Mode::Create);
        make(connection);
    }
    if (QFileInfo::exists(path))
        replaceOld(unfinished.path(), path);
    else
        store::takeName(unfinished.path(), path.toStdString(), false);
}

} // namespace riband::app
