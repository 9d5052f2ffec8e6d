#include "ui/desk/reading.h"

#include "tests/ui/desk_fixture.h"
#include "ui/desk/long_work.h"

#include <QFile>
#include <QTest>
#include <QThread>

#include <atomic>

namespace riband::ui {

namespace {

std::size_t piecesHere(const shop::Shop& shop) { return store::Pieces{shop.connection}.all().size(); }

bool ends(const Reading& reading) {
    return QTest::qWaitFor([&] { return !reading.running(); }, 60'000);
}

/// What the session complains of.
struct Warned {
    explicit Warned(Session& session) {
        QObject::connect(&session, &Session::warned, [this](const QString& said) { words << said; });
    }
    QStringList words;
};

} // namespace

TEST_CASE("Another thread reads, and the window's thread shows", "[desk]") {
    DeskShop shop;
    Reading reading{shop.session(), nullptr};
    const QThread* window = QThread::currentThread();
    std::size_t shown = 0;
    reading.start(
        [window](const shop::Shop& own) {
            return QThread::currentThread() == window ? std::size_t{0} : piecesHere(own);
        },
        [&](std::size_t pieces) { shown = QThread::currentThread() == window ? pieces : 0; });
    CHECK(reading.running());
    CHECK(ends(reading));
    CHECK(shown == piecesHere(shop.session().shop()));
}

TEST_CASE("Only what was asked last is shown", "[desk]") {
    DeskShop shop;
    Reading reading{shop.session(), nullptr};
    QStringList shown;
    std::atomic_bool askedBoth =
        false; // else the first could be there, and shown, before the second is asked
    for (const char* name : {"first", "second"})
        reading.start(
            [name, &askedBoth](const shop::Shop&) {
                while (!askedBoth)
                    QThread::yieldCurrentThread();
                return name;
            },
            [&](const char* said) { shown << QString::fromLatin1(said); });
    askedBoth = true;
    CHECK(ends(reading));
    QTest::qWait(50); // the first may be slower than the second
    CHECK(shown == QStringList{"second"});
}

TEST_CASE("One who can't wait reads at once, and once", "[desk]") {
    DeskShop shop;
    Reading reading{shop.session(), nullptr};
    int shown = 0;
    reading.start(piecesHere, [&](std::size_t) { ++shown; });
    reading.now();
    CHECK(shown == 1);
    CHECK_FALSE(reading.running());
    reading.now();
    QTest::qWait(50);
    CHECK(shown == 1);
}

TEST_CASE("What can't be read is said, and who waits for it is told", "[desk]") {
    DeskShop shop;
    const Warned warned{shop.session()};
    Reading reading{shop.session(), nullptr};
    int shown = 0, failed = 0;
    const auto show = [&](std::size_t) { ++shown; };
    const auto fail = [&] { ++failed; };
    SECTION("the file is gone") {
        REQUIRE(QFile::rename(shop.file(), shop.file() + ".away"));
        reading.start(piecesHere, show, fail);
        CHECK(ends(reading));
    }
    SECTION("the shop refuses") {
        reading.start(
            [](const shop::Shop&) -> std::size_t {
                throw shop::Refusal{shop::Refusal::Why::NoSuchBelt, "ZZ 9"};
            },
            show, fail);
        CHECK(ends(reading));
    }
    SECTION("the shop refuses one who can't wait") {
        reading.start(
            [](const shop::Shop&) -> std::size_t {
                throw shop::Refusal{shop::Refusal::Why::NoSuchBelt, "ZZ 9"};
            },
            show, fail);
        reading.now();
    }
    CHECK(shown == 0);
    CHECK(failed == 1);
    CHECK(warned.words.size() == 1);
}

TEST_CASE("Long work whose shop can't be read ends", "[desk]") {
    DeskShop shop;
    const Warned warned{shop.session()};
    LongWork work{shop.session(), nullptr};
    int ended = 0;
    QObject::connect(&work, &LongWork::ended, [&] { ++ended; });
    REQUIRE(QFile::rename(shop.file(), shop.file() + ".away"));
    work.start([](const shop::Shop& own, const foresight::Work&) { return piecesHere(own); },
               [](std::size_t) {});
    CHECK(QTest::qWaitFor([&] { return !work.running(); }, 60'000));
    CHECK(ended == 1);
    CHECK(warned.words.size() == 1);
}

} // namespace riband::ui
