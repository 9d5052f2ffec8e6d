#include "ui/window/window.h"

#include "ui/bench/bench_page.h"
#include "ui/bench/order_dialog.h"
#include "ui/counter/counter_page.h"
#include "ui/desk/book_check.h"
#include "ui/desk/labels.h"
#include "ui/desk/who_dialog.h"
#include "ui/drive/drive_dialog.h"
#include "ui/look/card_tabs.h"
#include "ui/rack/rack_page.h"
#include "ui/review/review_page.h"
#include "ui/shop/shop_page.h"
#include "ui/tally/tally_page.h"
#include "ui/which/which_dialog.h"
#include "ui/window/help_dialog.h"
#include "ui/window/scanner.h"
#include "ui/window/status_line.h"
#include "ui/window/toast.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QComboBox>
#include <QDateTime>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace riband::ui {

namespace {

// What the Counter and the Bench need to show all their buttons.
constexpr int leastWidth = 1100;
constexpr int leastHeight = 680;
constexpr int usualWidth = 1366;
constexpr int usualHeight = 768;
constexpr int titleHeight = 32; // about, of a window's frame

const QString ShadeKey = QStringLiteral("shade");

bool takesText(const QWidget* widget) {
    return qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QAbstractSpinBox*>(widget) ||
           qobject_cast<const QPlainTextEdit*>(widget) || qobject_cast<const QComboBox*>(widget) ||
           (widget && widget->property("takesKeys").toBool());
}

bool isWriting(const QKeyEvent& key) {
    return !(key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) &&
           !key.text().isEmpty() && key.text().front().isPrint() && key.key() != Qt::Key_Space;
}

/// On some desktops these edit a field (Ctrl+U clears it, Ctrl+E goes to its end); here they are the window's
/// and the page's, whatever has the focus.
bool isOurs(const QKeyEvent& key) {
    constexpr std::array ours{Qt::Key_D, Qt::Key_E, Qt::Key_U, Qt::Key_W};
    return std::find(ours.begin(), ours.end(), key.key()) != ours.end() &&
           (key.modifiers() & ~Qt::ShiftModifier) == Qt::ControlModifier;
}

} // namespace

Shade rememberedShade() {
    return QSettings{}.value(ShadeKey).toString() == QLatin1String("dark") ? Shade::Dark : Shade::Light;
}

Window::Window(Session& session, QWidget* parent)
    : QMainWindow{parent}, session_{session}, tabs_{new CardTabBar}, stack_{new QStackedWidget},
      who_{label({}, "small")}, status_{new StatusLine},
      toastRoom_{new QWidget}, toast_{new Toast{toastRoom_}}, check_{new BookCheck{session, this}} {
    setWindowTitle(text(session.settings().name).isEmpty()
                       ? tr("Riband")
                       : tr("%1 · Riband").arg(text(session.settings().name)));
    buildPages();
    buildView();
    buildActions();
    connectAll();
    showWho();
    resize(usualWidth, usualHeight);
    open(counter_);
    status_->showChecking();
    check_->start();
}

Window::~Window() { qApp->removeEventFilter(this); }

/// On a small screen the frame and its title would push the last row of keys over the edge.
void Window::showFitting() {
    const QRect room = screen()->availableGeometry();
    if (room.width() <= usualWidth || room.height() <= usualHeight + 2 * titleHeight)
        showMaximized();
    else
        show();
}

void Window::sayLastAct() {
    session_.attempt([&] {
        store::Connection& connection = session_.shop().connection;
        const auto last = store::Ledger{connection}.last();
        if (!last) return;
        const store::Movement movement = store::Ledger{connection}.at(*last).movement;
        QStringList pieces;
        for (const store::Posting& posting : movement.postings())
            if (posting.piece)
                if (const QString code = text(store::Pieces{connection}.at(*posting.piece).code);
                    !pieces.contains(code))
                    pieces << code;
        const store::Person person = store::People{connection}.at(movement.about().person);
        toast_->tell(tr("Last in the book: %1 %2, %3, %4. Labels can be printed again on the Rack (F7).",
                        "act, pieces, when, initials")
                         .arg(ui::say(movement), pieces.mid(0, 3).join(QStringLiteral(", ")),
                              shown(movement.about().at), text(person.initials)));
    });
}

void Window::buildPages() {
    counter_ = new CounterPage{session_};
    bench_ = new BenchPage{session_};
    rack_ = new RackPage{session_};
    tally_ = new TallyPage{session_};
    addPage(counter_, Qt::Key_1);
    addPage(bench_, Qt::Key_2);
    addPage(rack_, Qt::Key_3);
    addPage(tally_, Qt::Key_4);
    addPage(new ReviewPage{session_}, Qt::Key_5);
    addPage(new ShopPage{session_}, Qt::Key_6);
    tabs_->setAccessibleName(tr("Pages"));
}

/// Each page keeps its key, whoever sees which.
void Window::addPage(Page* page, Qt::Key key) {
    const QKeySequence keys{Qt::CTRL | key};
    pages_.push_back(page);
    stack_->addWidget(page);
    tabs_->addCard(page->title(), keys);
    openers_.push_back(act(page->title(), keys, [this, page] {
        if (page == tally_ && current() == page)
            tally_->countOn();
        else
            open(page);
    }));
}

QWidget* Window::buildTop() {
    auto* top = new QWidget;
    auto* row = new QHBoxLayout{top};
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(tabs_, 0, Qt::AlignBottom);
    row->addSpacing(4 * step);
    toastRoom_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    row->addWidget(toastRoom_, 1);
    row->addSpacing(4 * step);
    auto* names = new QVBoxLayout;
    names->setSpacing(0);
    auto* shopName = label(text(session_.settings().name), "strong");
    shopName->setAlignment(Qt::AlignRight);
    names->addWidget(shopName);
    who_->setAlignment(Qt::AlignRight);
    names->addWidget(who_);
    row->addLayout(names);
    connect(&session_, &Session::settingsChanged, shopName,
            [this, shopName] { shopName->setText(text(session_.settings().name)); });
    return top;
}

void Window::buildView() {
    auto* ground = new QWidget;
    auto* column = new QVBoxLayout{ground};
    column->setContentsMargins(5 * step, 2 * step, 5 * step, 2 * step);
    column->setSpacing(0);
    column->addWidget(buildTop());
    auto* card = surface("card");
    auto* inside = new QVBoxLayout{card};
    inside->setContentsMargins(0, 0, 0, 0);
    inside->addWidget(stack_);
    column->addWidget(card, 1);
    column->addSpacing(2 * step);
    column->addWidget(status_);
    // Said, not left to the pages: while a page changes, its words may ask for more height than they end up
    // with.
    ground->setMinimumSize(leastWidth, leastHeight);
    setCentralWidget(ground);
}

QAction* Window::act(const QString& name, const QKeySequence& key, const std::function<void()>& does) {
    auto* action = new QAction{name, this};
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, does);
    addAction(action);
    return action;
}

void Window::buildActions() {
    buildWhich();
    buildDrive();
    act(tr("Help on this page"), Qt::Key_F1, [this] { showHelp(); });
    act(tr("Who acts"), Qt::CTRL | Qt::Key_U, [this] { changeWho(); });
    act(tr("Light or dark"), Qt::Key_F11, [this] { switchShade(); });
    act(tr("Leave Riband"), Qt::CTRL | Qt::Key_Q, [this] { close(); });
}

/// The helper over any page; what it finds goes into the page's field for a belt, or to the Counter.
void Window::buildWhich() {
    which_ = new WhichDialog{session_, this};
    act(tr("Which belt is this?"), Qt::CTRL | Qt::Key_W, [this] {
        if (current()->wantsBelt())
            which_->bringFor(tr("the %1", "a page").arg(current()->title()));
        else
            which_->bring();
    });
    connect(which_, &WhichDialog::taken, this,
            [this](const MeasuredBelt& measured) { current()->takeBelt(beltWords(measured)); });
    connect(which_, &WhichDialog::sent, this, [this](const MeasuredBelt& measured) {
        open(counter_);
        counter_->takeMeasured(measured);
    });
    connect(which_, &WhichDialog::compared, this, [this](const MeasuredBelt& measured) {
        open(counter_);
        counter_->noteMeasured(measured);
    });
}

/// Opens over any page; the belt that is chosen there goes to the Counter.
void Window::buildDrive() {
    drive_ = new DriveDialog{session_, this};
    const auto bring = [this] {
        const Inquiry& said = counter_->inquiry();
        drive_->bring(said.open().empty() ? said.reading() : nullptr);
    };
    act(drive_->windowTitle(), Qt::CTRL | Qt::Key_D, bring);
    connect(counter_, &CounterPage::driveWanted, this, bring);
    connect(drive_, &DriveDialog::sent, this, [this](const belt::Reading& reading) {
        open(counter_);
        counter_->want(reading);
    });
}

void Window::connectAll() {
    connect(tabs_, &QTabBar::currentChanged, this,
            [this](int index) { open(pages_[static_cast<std::size_t>(index)]); });
    connect(&session_, &Session::personChanged, this, &Window::showWho);
    connect(&session_, &Session::told, toast_, &Toast::tell);
    connect(&session_, &Session::warned, toast_, &Toast::warn);
    connect(&session_, &Session::pieceWanted, this, [this](store::PieceId piece) {
        open(rack_);
        rack_->showPiece(piece);
    });
    connect(&session_, &Session::ticketWanted, this, [this](store::TicketId ticket) {
        open(bench_);
        bench_->showTicket(ticket);
    });
    connect(&session_, &Session::orderWanted, this, &Window::openOrder);
    connect(&session_, &Session::takeUpWanted, this, [this](store::OrderId order) {
        open(counter_);
        counter_->takeUp(order);
    });
    for (Page* page : pages_)
        connect(page, &Page::waitingChanged, this, &Window::showTabs);
    connectBook();
    scanner_ = new Scanner{[this](const QString& code) { return openScanned(session_, code); },
                           [] { return QDateTime::currentMSecsSinceEpoch(); }, this};
    scanner_->leaveAlone(&counter_->line());
    scanner_->leaveAlone(&bench_->codeField());
    scanner_->leaveAlone(&tally_->line());
    scanner_->leaveAlone(&tally_->settleLine());
    qApp->installEventFilter(this);
    qApp->installEventFilter(scanner_); // the last one installed sees the keys first
}

void Window::connectBook() {
    connect(check_, &BookCheck::done, status_, qOverload<const store::Verification&>(&StatusLine::show));
    connect(check_, &BookCheck::failed, status_, &StatusLine::showFailure);
    connect(&session_, &Session::changed, this, [this] {
        if (current()) current()->refresh();
        bench_->count();
        check_->start();
    });
}

Page* Window::current() const { return static_cast<Page*>(stack_->currentWidget()); }

void Window::open(Page* page) {
    stack_->setCurrentWidget(page);
    const auto at = std::find(pages_.begin(), pages_.end(), page) - pages_.begin();
    const QSignalBlocker quiet{tabs_};
    tabs_->setCurrentIndex(static_cast<int>(at));
    page->refresh();
    showTabs();
}

void Window::showTabs() {
    for (std::size_t i = 0; i < pages_.size(); ++i)
        tabs_->setWaiting(static_cast<int>(i), pages_[i]->waiting());
}

void Window::changeWho() {
    WhoDialog dialog{session_.shop().connection, session_.person().id, this};
    if (dialog.exec() != QDialog::Accepted) return;
    session_.attempt([&] { session_.actAs(dialog.person()); });
    rememberWhoActs(session_.person().id);
}

/// Cards that are not for who acts now are put away.
void Window::showWho() {
    const store::Person& person = session_.person();
    who_->setText(text(person.name.empty() ? person.initials : person.name));
    if (current() && !session_.reaches(current()->least())) open(counter_);
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        const bool theirs = session_.reaches(pages_[i]->least());
        openers_[i]->setEnabled(theirs);
        tabs_->setCardVisible(static_cast<int>(i), theirs);
    }
}

void Window::showHelp() { HelpDialog{*current(), actions(), this}.exec(); }

/// While a dialog is open the window's own keys sleep: it explains itself.
bool Window::showHelpOf(QWidget* front) {
    auto* dialog = qobject_cast<QDialog*>(front);
    if (!dialog || dialog->whatsThis().isEmpty()) return false;
    HelpDialog{*dialog}.exec();
    return true;
}

void Window::switchShade() {
    const Shade shade = Look::currentShade() == Shade::Dark ? Shade::Light : Shade::Dark;
    Look::apply(*qApp, shade);
    QSettings{}.setValue(ShadeKey, shade == Shade::Dark ? QStringLiteral("dark") : QStringLiteral("light"));
}

void Window::openOrder(store::OrderId order) { OrderDialog{session_, order, this}.exec(); }

/// What is on the slip must not go with the window.
void Window::closeEvent(QCloseEvent* event) {
    counter_->keepSlip();
    QMainWindow::closeEvent(event);
}

/// What is typed while no field has the focus goes to the page, so that nobody needs to click first.
bool Window::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && isOurs(*static_cast<QKeyEvent*>(event))) {
        event->ignore();
        return true;
    }
    if (event->type() != QEvent::KeyPress || !watched->isWidgetType()) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const auto* widget = static_cast<const QWidget*>(watched);
    if (key->key() == Qt::Key_F1 && key->modifiers() == Qt::NoModifier && widget->window() != this)
        return showHelpOf(widget->window());
    if (widget->window() != this || !isWriting(*key) || takesText(QApplication::focusWidget())) return false;
    if (takesText(widget)) return false;
    current()->typed(key->text());
    return true;
}

} // namespace riband::ui
