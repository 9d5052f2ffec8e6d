#include "ui/counter/counter_page.h"
#include "ui/desk/page.h"
#include "ui/drive/drive_dialog.h"
#include "ui/rack/rack_page.h"
#include "ui/which/which_dialog.h"
#include "ui/window/window.h"

#include <QApplication>
#include <QDeadlineTimer>
#include <QPixmap>
#include <QThreadPool>

namespace riband::ui {

namespace {

/// Lets the searches end that were begun, and what they say be shown.
void settle(Window& window) {
    const QDeadlineTimer patience{5000};
    do {
        QThreadPool::globalInstance()->waitForDone(50);
        QApplication::processEvents();
    } while (!(window.counter().settled() && window.drive().settled() && window.which().settled() &&
               window.rack().weighed()) &&
             !patience.hasExpired());
    QApplication::processEvents();
}

} // namespace

std::vector<QString> grabPages(Session& session, const QDir& folder, const QString& said, QSize size) {
    const Shade before = Look::currentShade();
    std::vector<QString> files;
    Window window{session};
    window.resize(size);
    window.setAttribute(Qt::WA_DontShowOnScreen);
    window.show();
    window.counter().say(said);
    for (const auto& [shade, name] : {std::pair{Shade::Light, "light"}, std::pair{Shade::Dark, "dark"}}) {
        Look::apply(*qApp, shade);
        for (Page* page : window.pages()) {
            window.open(page);
            settle(window);
            const QString file = folder.filePath(
                QStringLiteral("%1-%2.png").arg(page->objectName(), QString::fromLatin1(name)));
            if (window.grab().save(file)) files.push_back(file);
        }
    }
    Look::apply(*qApp, before);
    return files;
}

} // namespace riband::ui
