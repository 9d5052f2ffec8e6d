#include "core/belt/tables.h"
#include "resources/table_texts.h"
#include "tests/catch.h"
#include "ui/counter/counter_page.h"
#include "ui/desk/session.h"
#include "ui/rack/rack_page.h"
#include "ui/window/window.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QTest>
#include <QThreadPool>

#include <cstdio>

namespace riband::ui {

namespace {

template <class Act>
double ms(Act act) {
    QElapsedTimer timer;
    timer.start();
    act();
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

void print(const char* what, double took) { std::printf("%-44s %8.1f ms\n", what, took); }

} // namespace

/// Run by hand on a large shop: RIBAND_LARGE_SHOP=demo.riband ui_window_test "[.large]". Says how long a
/// person waits; judges nothing, since machines differ.
TEST_CASE("How long a person waits in a large shop", "[.large]") {
    const QString file = qEnvironmentVariable("RIBAND_LARGE_SHOP");
    REQUIRE_FALSE(file.isEmpty());
    store::Connection connection{file.toStdString()};
    const auto person = store::People{connection}.present().front().id;
    const auto tables = belt::Tables::load(tableTexts()).value();
    const auto now = [] {
        return std::chrono::time_point_cast<Moment::duration>(std::chrono::system_clock::now());
    };
    Session session{std::move(connection), tables, person, now, QStringLiteral("/nowhere")};
    std::unique_ptr<Window> window;
    print("window built and shown", ms([&] {
              window = std::make_unique<Window>(session);
              window->show();
              QApplication::processEvents();
          }));
    double longest = 0;
    const QString belt =
        QString::fromStdString(store::Catalogue{session.shop().connection}.all().front().designation);
    for (const QChar letter : "3 x " + belt + " 30")
        longest = std::max(longest, ms([&] {
                               QTest::keyClick(&window->counter().line(), letter.toLatin1());
                               QApplication::processEvents();
                           }));
    print("longest key on the Counter, redrawn", longest);
    print("final suggestion", ms([&] {
              while (!window->counter().settled()) {
                  QThreadPool::globalInstance()->waitForDone(1);
                  QApplication::processEvents();
              }
          }));
    print("the Rack opened", ms([&] {
              window->open(&window->rack());
              QApplication::processEvents();
          }));
    auto* field = window->rack().findChild<QLineEdit*>();
    for (const char* words : {"h", "h8", "h8m", "", "offcut"})
        print(words[0] ? words : "the filter emptied", ms([&] {
                  field->setText(QString::fromLatin1(words));
                  QApplication::processEvents();
              }));
}

} // namespace riband::ui
