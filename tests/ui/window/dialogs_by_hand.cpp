#include "core/belt/reader.h"
#include "core/shop/counting/count.h"
#include "core/shop/expected.h"
#include "resources/table_texts.h"
#include "resources/translations.h"
#include "tests/catch.h"
#include "ui/counter/counter_page.h"
#include "ui/desk/page.h"
#include "ui/desk/session.h"
#include "ui/rack/rack_page.h"
#include "ui/tally/tally_page.h"
#include "ui/window/window.h"

#include <QApplication>
#include <QDialog>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QLineEdit>
#include <QPixmap>
#include <QTemporaryDir>
#include <QTest>
#include <QThreadPool>
#include <QTimer>

namespace riband::ui {

namespace {

constexpr int Patience = 20'000;

/// A copy of a shop, so that what is done for a picture is not kept.
class CopiedShop {
public:
    explicit CopiedShop(const QString& file) {
        const QString copy = folder_.filePath(QStringLiteral("shop.riband"));
        REQUIRE(QFile::copy(file, copy));
        store::Connection connection{copy.toStdString()};
        const auto people = store::People{connection}.present();
        const auto owner = std::find_if(people.begin(), people.end(), [](const store::Person& each) {
            return each.role == store::Role::Owner;
        });
        REQUIRE(owner != people.end());
        const auto person = owner->id;
        const Moment now =
            store::Ledger{connection}.at(*store::Ledger{connection}.last()).movement.about().at +
            std::chrono::minutes{20};
        session_ = std::make_unique<Session>(
            std::move(connection), belt::Tables::load(tableTexts()).value(), person, [now] { return now; },
            folder_.filePath("papers"));
    }
    Session& session() { return *session_; }
    const shop::Shop& shop() const { return session_->shop(); }
    QString path(const QString& name) const { return folder_.filePath(name); }

private:
    QTemporaryDir folder_;
    std::unique_ptr<Session> session_;
};

void wait(int least = 50) {
    QElapsedTimer timer;
    timer.start();
    do {
        QThreadPool::globalInstance()->waitForDone(10);
        QApplication::processEvents();
    } while (timer.elapsed() < least);
}

/// What a person sees: dialogs of a page, one after the other.
class Pictures {
public:
    Pictures(CopiedShop& shop, QSize size, Shade shade)
        : window_{shop.session()},
          suffix_{
              QStringLiteral("-%1-%2.png").arg(size.width()).arg(shade == Shade::Dark ? "dark" : "light")} {
        window_.resize(size);
        window_.show();
        window_.activateWindow();
        wait();
    }
    Window& window() { return window_; }

    void keep(QWidget& widget, const QString& name) const {
        const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
        folder.mkpath(".");
        wait(200);
        CHECK(widget.grab().save(folder.filePath("demo-" + name + suffix_)));
    }

    /// Opens by its key what opens, does `act` in it, and keeps it.
    void open(
        const QString& name, Qt::Key key, Qt::KeyboardModifiers modifiers,
        const std::function<void(QDialog&)>& act = [](QDialog&) {}) {
        bool shown = false;
        auto* look = new QTimer{&window_};
        QObject::connect(look, &QTimer::timeout, look, [&, look] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            if (!dialog) return;
            look->stop();
            shown = true;
            dialog->activateWindow();
            wait(300);
            act(*dialog);
            keep(*dialog, name);
            dialog->reject();
        });
        look->start(10);
        press(key, modifiers);
        look->stop();
        INFO(name.toStdString());
        CHECK(shown);
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        // Off screen nobody gives the window back its focus when a dialog closes.
        if (!QApplication::activeWindow()) window_.activateWindow();
        QApplication::processEvents();
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at ? at : &window_, key, modifiers);
        wait();
    }

    void type(const QString& words) {
        window_.open(&window_.counter());
        window_.counter().line().setFocus();
        window_.counter().line().clear();
        QTest::keyClicks(&window_.counter().line(), words);
        CHECK(QTest::qWaitFor([&] { return window_.counter().settled(); }, Patience));
    }

private:
    Window window_;
    QString suffix_;
};

void expectSome(const shop::Shop& shop) {
    const auto belts = store::Catalogue{shop.connection}.all();
    const auto line = [&](std::size_t i, int sleeves, int cost) {
        const store::StockedBelt& belt = belts[i % belts.size()];
        return shop::ExpectedGoods{
            .belt = belt.belt, .sleeves = sleeves, .extent = belt.newSleeve, .costEach = Money::minor(cost)};
    };
    const Date today = dayOf(shop.now());
    shop::expect(
        shop,
        {"Mill Supply", "P-1042", today - std::chrono::days{2}, {line(0, 2, 3'850), line(3, 1, 5'700)}});
    shop::expect(shop, {"Northgate Rubber", "P-1047", today + std::chrono::days{5}, {line(1, 1, 3'320)}});
    shop::expect(
        shop,
        {"Mill Supply", "P-1051", std::nullopt, {line(5, 3, 3'900), line(2, 1, 3'640), line(4, 2, 6'400)}});
}

/// Counts the first place, one piece of it 3 mm short and one not at all.
void countSome(const shop::Shop& shop) {
    const auto pieces = store::Pieces{shop.connection}.all();
    const auto placed = std::find_if(pieces.begin(), pieces.end(),
                                     [](const store::StockPiece& piece) { return piece.place == "E3-1"; });
    REQUIRE(placed != pieces.end());
    const std::string place = placed->place;
    const store::CountId count = shop::beginCount(shop, place);
    bool first = true;
    int seen = 0;
    for (const store::StockPiece& piece : pieces) {
        if (piece.place != place || ++seen == 2) continue;
        const Extent there =
            first && piece.extent.unit() == Unit::Micrometre && piece.extent > Extent{Width::millimetres(10)}
                ? piece.extent - Width::micrometres(2'500)
                : piece.extent;
        first = false;
        for (int i = 0; i < 2; ++i)
            shop::note(shop, count, piece.id, there, store::Method::Calliper);
    }
    shop::closeCount(shop, count);
}

} // namespace

/// Run by hand on a demo shop: RIBAND_DEMO_SHOP=demo.riband ui_window_test "[.dialogs]". Keeps pictures of
/// what opens over the pages in the build's folder `scenes`, for people to look at.
TEST_CASE("What opens over the pages of the demo shop", "[.dialogs]") {
    const QString file = qEnvironmentVariable("RIBAND_DEMO_SHOP");
    REQUIRE_FALSE(file.isEmpty());
    const QSize size = GENERATE(QSize{1366, 768}, QSize{1920, 1080});
    const Shade shade = GENERATE(Shade::Light, Shade::Dark);
    CopiedShop shop{file};
    loadTranslation();
    Look::apply(*qApp, shade);
    {
        Pictures pictures{shop, size, shade};
        pictures.type("3 x H8M 1200 30");
        pictures.keep(pictures.window(), "counter");
        for (const char* line : {"2 x H8M 1200 30", "H8M 1200 50", "T10 1250 25", "2 x T10 1250 30"}) {
            pictures.type(QString::fromLatin1(line));
            pictures.press(Qt::Key_F9);
        }
        pictures.press(Qt::Key_2, Qt::ControlModifier);
        pictures.keep(pictures.window(), "bench");
        pictures.open("together", Qt::Key_F8, Qt::NoModifier, [](QDialog&) { wait(6'000); });
        expectSome(shop.shop());
        pictures.press(Qt::Key_3, Qt::ControlModifier);
        CHECK(QTest::qWaitFor([&] { return pictures.window().rack().weighed(); }, Patience));
        pictures.keep(pictures.window(), "rack");
        pictures.open("expected", Qt::Key_F8, Qt::ShiftModifier);
        pictures.open("goods-in", Qt::Key_F8, Qt::NoModifier, [](QDialog& dialog) {
            QTest::keyClicks(dialog.findChild<QLineEdit*>("belt"), "H8M 1200");
            QTest::keyClick(dialog.findChild<QLineEdit*>("belt"), Qt::Key_Return);
        });
        const QString csv = shop.path("stock.csv");
        QFile stock{csv};
        REQUIRE(stock.open(QIODevice::WriteOnly));
        stock.write(
            "Bezeichnung;Breite;Fach;Bemerkung\nT10 1250;47,5;L1;x\nXL 414;30;L2;\nunknown 7;12;L3;\n");
        stock.close();
        pictures.open("take-over", Qt::Key_O, Qt::ControlModifier, [csv](QDialog& dialog) {
            QTest::keyClicks(dialog.findChild<QLineEdit*>("path"), csv);
            QTest::keyClick(dialog.findChild<QLineEdit*>("path"), Qt::Key_Return);
            wait(500);
        });
        pictures.press(Qt::Key_4, Qt::ControlModifier);
        pictures.keep(pictures.window(), "count");
        pictures.press(Qt::Key_F5);
        pictures.keep(pictures.window(), "count-place");
        pictures.press(Qt::Key_Escape);
        countSome(shop.shop());
        pictures.press(Qt::Key_F4);
        pictures.keep(pictures.window(), "reconcile");
    }
    Look::apply(*qApp, Shade::Light);
}

} // namespace riband::ui
