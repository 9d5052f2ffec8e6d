#include "tests/ui/which/which_desk.h"

#include "core/belt/reader.h"
#include "core/store/people.h"
#include "resources/table_texts.h"
#include "tests/ui/priced.h"
#include "ui/words/identify_words.h"

#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QPixmap>
#include <QTest>
#include <QThreadPool>
#include <QTimer>

namespace riband::ui {

namespace {

std::shared_ptr<const belt::Tables> theTables() {
    static const auto loaded = belt::Tables::load(tableTexts());
    return loaded.value();
}

} // namespace

WhichDesk::WhichDesk() : time_{*readMoment("2026-03-02T09:00:00.000Z")} {
    store::Connection made{folder_.filePath("shop.riband").toStdString(), store::Connection::Mode::Create};
    const auto person = store::People{made}.add("JT", "Jo Tarn", store::Role::Owner);
    const auto now = [this] { return time_ += std::chrono::minutes{1}; };
    session_ =
        std::make_unique<Session>(std::move(made), theTables(), person, now, folder_.filePath("papers"));
    for (const auto& [name, extent] : {std::pair<const char*, Extent>{"H8M 1200", mm(470)},
                                       {"S8M 960", mm(300)},
                                       {"XL 414", mm(250)},
                                       {"PJ 1194", Ribs{60}}}) {
        shop::Delivery goods{.belt = belt(name), .extent = extent};
        goods.place = "B3-2";
        shop::receive(session_->shop(), {goods});
        givePrice(connection(), goods.belt);
    }
    counter_ = std::make_unique<CounterPage>(*session_);
    which_ = std::make_unique<WhichDialog>(*session_);
    QObject::connect(which_.get(), &WhichDialog::sent, counter_.get(), &CounterPage::takeMeasured);
    QObject::connect(which_.get(), &WhichDialog::compared, counter_.get(), &CounterPage::noteMeasured);
    counter_->resize(1320, 680);
    counter_->show();
    counter_->line().setFocus();
    settle();
}

WhichDesk::~WhichDesk() { settle(); }

belt::Belt WhichDesk::belt(const std::string& designation) const {
    return belt::readBelt(designation, session_->tables()).value();
}

std::size_t WhichDesk::openOrders() {
    return store::Orders{connection()}.inState(store::OrderState::Open).size();
}

void WhichDesk::settle() {
    do {
        QThreadPool::globalInstance()->waitForDone();
        QApplication::processEvents();
    } while (!counter_->settled() || !which_->settled());
}

void WhichDesk::say(const QString& words) {
    counter_->activateWindow();
    counter_->line().setFocus();
    QTest::keyClicks(&counter_->line(), words);
    settle();
}

void WhichDesk::into(QWidget& owner, const char* field, const QString& words) {
    auto* edit = owner.findChild<QLineEdit*>(field);
    REQUIRE(edit != nullptr);
    edit->setFocus();
    QTest::keyClicks(edit, words);
    settle();
}

void WhichDesk::bring() {
    which_->bring();
    which_->activateWindow();
    settle();
    REQUIRE(which_->isVisible());
}

void WhichDesk::measure(belt::identify::Measure what, const QString& figure) {
    QLineEdit& field = which_->form().field(what).figure();
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, figure);
    settle();
}

void WhichDesk::press(Qt::Key key, Qt::KeyboardModifiers modifiers) {
    QWidget* front = which_->isVisible() ? static_cast<QWidget*>(which_.get()) : counter_.get();
    if (QApplication::activeWindow() != front) front->activateWindow();
    QApplication::processEvents();
    QWidget* at = QApplication::focusWidget();
    QTest::keyClick(at && front->isAncestorOf(at) ? at : front, key, modifiers);
    settle();
}

void WhichDesk::answering(const std::function<void(QDialog&)>& answer) {
    auto* look = new QTimer{which_.get()};
    look->setInterval(5);
    const QWidget* helper = which_.get();
    QObject::connect(look, &QTimer::timeout, look, [look, answer, helper] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog || dialog == helper) return;
        look->deleteLater();
        look->stop();
        answer(*dialog);
        if (dialog->isVisible()) dialog->reject(); // an answer that was refused must not hang the test
    });
    look->start();
}

std::string WhichDesk::best() {
    REQUIRE(which_->answer() != nullptr);
    return nameOf(which_->answer()->found.candidates.front()).toStdString();
}

void keepPicture(QWidget& widget, const QString& name) {
    const QDir folder{QStringLiteral(RIBAND_BINARY_DIR "/scenes")};
    folder.mkpath(".");
    QApplication::processEvents();
    CHECK(widget.grab().save(folder.filePath(name + ".png")));
}

} // namespace riband::ui
