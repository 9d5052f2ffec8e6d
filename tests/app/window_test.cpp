#include "tests/app/demo_shop_file.h"
#include "tests/app/printing.h"

using namespace riband::tests;

namespace {

/// The program with its window, where nobody sees it and with settings of its own.
class Window {
public:
    Window(const Folder& folder, const QStringList& arguments) {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("QT_QPA_PLATFORM", "offscreen");
        environment.insert("XDG_CONFIG_HOME", folder.file("config"));
        environment.insert("XDG_DATA_HOME", folder.file("data"));
        process_.setProcessEnvironment(environment);
        process_.setReadChannel(QProcess::StandardError);
        process_.start(QStringLiteral(RIBAND_PROGRAM), arguments);
    }
    ~Window() { end(); }
    /// Until it has said something on standard error, or half a minute.
    QByteArray complaint() {
        QByteArray said;
        while (!said.contains("riband:") && process_.waitForReadyRead(30'000))
            said += process_.readAllStandardError();
        return said;
    }
    bool waitsForSomebody() { return !process_.waitForFinished(1'500); }
    void end() {
        process_.kill();
        process_.waitForFinished();
    }

private:
    QProcess process_;
};

} // namespace

TEST_CASE("The window opens a shop, and a shop whose window was killed still agrees", "[app][window]") {
    const DemoShop shop;
    Window window(shop.folder, {shop.file});
    CHECK(window.waitsForSomebody());
    window.end();
    CHECK(run({"verify", shop.file}).exit == 0);
}

TEST_CASE("The first start without a file makes a new shop in the person's own folder", "[app][window]") {
    const Folder folder;
    Window window(folder, {});
    CHECK(window.waitsForSomebody());
    window.end();
    const QString own = folder.file("data/Riband/Riband/shop.riband");
    REQUIRE(QFile::exists(own));
    CHECK(run({"verify", own}).exit == 0);
}

TEST_CASE("A file that is no shop is refused in words, in the window and on standard error, and not changed",
          "[app][window]") {
    const Folder folder;
    const QString letter = folder.with("letter.txt", "Dear shop");
    Window window(folder, {letter});
    CHECK(window.complaint().contains("not a shop of Riband"));
    window.end();
    CHECK(folder.content("letter.txt") == "Dear shop");
}

TEST_CASE("A shop that is not there is refused, and none is made in its place", "[app][window]") {
    const Folder folder;
    Window window(folder, {folder.file("nowhere.riband")});
    CHECK(window.complaint().contains("no such file"));
    window.end();
    CHECK_FALSE(QFile::exists(folder.file("nowhere.riband")));
}

TEST_CASE("Without a display the program says so and what to do instead", "[app][window]") {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY"})
        environment.remove(name);
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(RIBAND_PROGRAM), QStringList{});
    REQUIRE(process.waitForFinished());
    CHECK(process.exitCode() == 2);
    CHECK(process.readAllStandardError().contains("no display"));
}
