#include "tests/ui/desk_fixture.h"

#include "core/belt/reader.h"
#include "core/store/verify.h"
#include "resources/table_texts.h"
#include "tests/ui/priced.h"
#include "ui/counter/counter_page.h"
#include "ui/drive/drive_dialog.h"
#include "ui/which/which_dialog.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QDialog>
#include <QLineEdit>
#include <QTest>
#include <QThreadPool>
#include <QTimer>

namespace riband::ui {

namespace {

std::shared_ptr<const belt::Tables> tables() {
    static const auto loaded = belt::Tables::load(tableTexts());
    return loaded.value();
}

store::PersonId furnish(store::Connection& connection) {
    store::ShopSettings settings;
    settings.name = "Lockside Drives";
    settings.address = "4 Lock Lane\nHarwick";
    settings.cutters.front().cutter = {
        "bench cutter", {{"thin", 30, 30, 520, 60, 900}, {"thick", 80, 80, 520, 120, 1200}},
        true,           false,
        true,           10};
    store::Settings{connection}.write(settings);
    return store::People{connection}.add("JT", "Jo Tarn", store::Role::Owner);
}

} // namespace

DeskShop::DeskShop() : time_{*readMoment("2026-03-02T09:00:00.000Z")} {
    store::Connection made{file().toStdString(), store::Connection::Mode::Create};
    const auto person = furnish(made);
    const auto now = [this] { return time_ += std::chrono::minutes{1}; };
    session_ = std::make_unique<Session>(std::move(made), tables(), person, now, papers());
    piece("H8M 1200", mm(101), cutting::PieceKind::Remnant);
    piece("H8M 1200", um(128'500), cutting::PieceKind::Remnant);
    piece("H8M 1200", mm(470));
    piece("T10 1250", mm(380));
    piece("PJ 1194", Ribs{6}, cutting::PieceKind::Ready);
    piece("PJ 1194", Ribs{60});
    piece("XL 414", mm(250));
}

belt::Belt DeskShop::belt(const std::string& designation) const {
    return belt::readBelt(designation, session_->tables()).value();
}

store::PieceId DeskShop::piece(const std::string& designation, Extent extent, cutting::PieceKind kind) {
    shop::Delivery goods{.belt = belt(designation), .extent = extent};
    goods.kind = kind;
    goods.place = "B3-2";
    const store::PieceId received = shop::receive(session_->shop(), {goods}).front();
    givePrice(connection(), goods.belt);
    return received;
}

std::vector<store::Order> DeskShop::orders(store::OrderState state) {
    return store::Orders{connection()}.inState(state);
}

std::vector<std::string> DeskShop::disagreements() {
    std::vector<std::string> words;
    for (const auto& disagreement : store::verify(connection()).disagreements)
        words.push_back(say(disagreement).toStdString());
    return words;
}

DeskWindow::DeskWindow(DeskShop& shop) : window_{shop.session()} {
    window_.show();
    window_.activateWindow();
    QApplication::processEvents();
    counter().line().setFocus();
}

void DeskWindow::settle() {
    do {
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
    } while (!counter().settled() || !window_.drive().settled() || !window_.which().settled());
}

void DeskWindow::type(const QString& words) {
    QTest::keyClicks(&counter().line(), words);
    settle();
}

void DeskWindow::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    // Off screen nobody gives the window back its focus when a dialog closes.
    if (!QApplication::activeWindow()) window_.activateWindow();
    QApplication::processEvents();
    QWidget* at = QApplication::focusWidget();
    QTest::keyClick(at ? at : &window_, key, modifiers);
    settle();
}

void DeskWindow::answering(const std::function<void(QDialog&)>& answer) {
    delete look_;
    auto* look = new QTimer{&window_};
    look_ = look;
    look->setInterval(5);
    QObject::connect(look, &QTimer::timeout, look, [this, look, answer] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        look_ = nullptr; // the answer may itself be asked something
        look->deleteLater();
        look->stop();
        answer(*dialog);
        if (dialog->isVisible())
            dialog->done(QDialog::Rejected); // an answer that was refused must not hang the test
    });
    look->start();
}

} // namespace riband::ui
