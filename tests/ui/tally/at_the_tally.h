#pragma once

#include "tests/ui/desk_fixture.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/tally/plan_view.h"
#include "ui/tally/tally_page.h"

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>
#include <QThreadPool>

namespace riband::ui {

/// The Tally as a scanner and keys reach it.
class TallyDesk : public DeskWindow {
public:
    explicit TallyDesk(DeskShop& shop) : DeskWindow{shop}, shop_{shop} {
        press(Qt::Key_4, Qt::ControlModifier);
    }
    /// As a scanner does: the words and Enter.
    void scan(const QString& words) {
        if (!QApplication::activeWindow()) window().activateWindow(); // off screen no dialog gives it back
        QApplication::processEvents();
        QTest::keyClicks(QApplication::focusWidget(), words);
        press(Qt::Key_Return);
    }
    void measure(const store::StockPiece& piece, const QString& width) {
        scan(QString::fromStdString(piece.code));
        scan(width);
    }
    TallyPage& page() { return window().tally(); }
    /// The keys of a dialog act as soon as its window is the active one.
    void answering(const std::function<void(QDialog&)>& answer) {
        DeskWindow::answering([answer](QDialog& dialog) {
            dialog.activateWindow();
            QApplication::processEvents();
            answer(dialog);
        });
    }
    /// Says that the place is done, though not all of it was seen.
    void closeAnyway() {
        answering([](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        press(Qt::Key_F3);
    }
    void takeBackNewest() {
        answering([](QDialog& dialog) {
            QTest::keyClick(&dialog, Qt::Key_F6);
            QTest::keyClick(&dialog, Qt::Key_Escape);
        });
        press(Qt::Key_F6);
    }
    QString typed() { return qobject_cast<QLineEdit*>(QApplication::focusWidget())->text(); }
    /// Waits until the day's plan stands.
    void planned() {
        do {
            QThreadPool::globalInstance()->waitForDone();
            QApplication::processEvents();
        } while (!page().plan().settled());
    }
    int planLines() { return page().plan().findChild<QListWidget*>()->count(); }
    /// All that can be read on the page.
    QString words() {
        QString all;
        for (const auto* label : page().findChildren<QLabel*>())
            if (label->isVisible()) all += label->text() + QLatin1Char('\n');
        for (const auto* list : page().findChildren<QListWidget*>())
            for (int row = 0; list->isVisible() && row < list->count(); ++row)
                all += list->item(row)->text() + QLatin1Char('\n');
        return all;
    }
    store::StockPiece piece(const std::string& belt, std::size_t index = 0) {
        const auto kept = store::Catalogue{shop_.connection()}.find(shop_.belt(belt));
        return store::Pieces{shop_.connection()}.ofBelt(kept->id).at(index);
    }
    void keep(const QString& name) {
        const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
        folder.mkpath(".");
        for (const QSize size : {QSize{1920, 1080}, QSize{1366, 768}}) {
            window().resize(size);
            settle();
            CHECK(window().size() == size);
            for (const auto* button : page().findChildren<KeyButton*>()) {
                INFO(button->text().toStdString());
                CHECK(button->width() >= button->sizeHint().width());
            }
            CHECK(window().grab().save(
                folder.filePath(QStringLiteral("tally-%1-%2.png").arg(name).arg(size.width()))));
        }
        Look::apply(*qApp, Shade::Dark);
        settle();
        CHECK(window().grab().save(folder.filePath(QStringLiteral("tally-%1-dark.png").arg(name))));
        Look::apply(*qApp, Shade::Light);
    }

private:
    DeskShop& shop_;
};

inline void countAllButOne(TallyDesk& desk) {
    desk.scan("b3-2"); // as people type it
    desk.measure(desk.piece("H8M 1200", 0), "101");
    desk.measure(desk.piece("H8M 1200", 1), "128.4");
    desk.measure(desk.piece("H8M 1200", 2), "470");
    desk.measure(desk.piece("PJ 1194", 0), "");
    desk.measure(desk.piece("PJ 1194", 1), "60");
    desk.measure(desk.piece("XL 414"), "250");
}

} // namespace riband::ui
