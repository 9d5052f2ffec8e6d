#include "app/window_command.h"

#include "app/open_shop.h"
#include "app/standard_tables.h"
#include "ui/desk/learner.h"
#include "ui/desk/who_dialog.h"
#include "ui/look/look.h"
#include "ui/window/window.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QMessageBox>
#include <QSettings>
#include <QStandardPaths>

namespace riband::app {

namespace {

using ui::Words;
const QString lastFile = QStringLiteral("lastShop");

QString ownShop() {
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    folder.mkpath(QStringLiteral("."));
    return folder.filePath(QStringLiteral("shop.riband"));
}

QString fileOf(const QStringList& files) {
    if (files.size() > 1) throw BadInput(Words::tr("One shop at a time. Put a name with spaces in quotes."));
    if (!files.isEmpty()) return QFileInfo(files.first()).absoluteFilePath();
    const QString last = QSettings().value(lastFile).toString();
    return QFileInfo::exists(last) ? last : ownShop();
}

/// A new shop has nobody in it yet, and something has to be there for the first act to be written down.
void addFirstPerson(store::Connection& connection) {
    store::Transaction transaction{connection};
    store::People{connection}.add("ME", Words::tr("The owner").toStdString(), store::Role::Owner);
    transaction.commit();
}

store::Connection opened(const QString& file) {
    const bool isNew = !QFileInfo::exists(file) && file == ownShop();
    store::Connection connection(file.toStdString(),
                                 isNew ? store::Connection::Mode::Create : store::Connection::Mode::Open);
    if (store::People{connection}.present().empty()) addFirstPerson(connection);
    return connection;
}

int show(const QString& file) {
    ui::Look::apply(*qApp, ui::rememberedShade());
    store::Connection connection = opened(file);
    const auto person = ui::whoStarts(connection);
    if (!person) return 0;
    QSettings().setValue(lastFile, file);
    const QString papers = QFileInfo(file).absoluteDir().filePath(QStringLiteral("papers"));
    ui::Session session(std::move(connection), standardTables(), *person, presentMoment, papers);
    ui::Learner learner(session);
    ui::Window window(session);
    window.showFitting();
    window.sayLastAct();
    learner.wantMostOrdered();
    return QApplication::exec();
}

Exit refuse(const QString& words) {
    complain(QStringLiteral("riband: ") + words);
    QMessageBox::critical(nullptr, Words::tr("Riband can't open this shop"), words);
    return Exit::BadInput;
}

} // namespace

Exit openWindow(const QStringList& files) {
    try {
        return show(fileOf(files)) == 0 ? Exit::Done : Exit::No;
    } catch (const store::StoreError& error) {
        return refuse(ui::say(error));
    } catch (const std::exception& error) {
        return refuse(QString::fromUtf8(error.what()));
    }
}

} // namespace riband::app
