#pragma once

#include "ui/desk/session.h"
#include "ui/look/look.h"

#include <QDir>
#include <QMainWindow>

#include <vector>

class QLabel;
class QStackedWidget;

namespace riband::ui {

class BenchPage;
class BookCheck;
class CardTabBar;
class CounterPage;
class DriveDialog;
class Page;
class RackPage;
class Scanner;
class StatusLine;
class TallyPage;
class Toast;
class WhichDialog;

/// The program's window: pages as index cards, the state of the book below. `session` outlives it.
class Window final : public QMainWindow {
    Q_OBJECT
public:
    explicit Window(Session& session, QWidget* parent = nullptr);
    ~Window() override;

    CounterPage& counter() { return *counter_; }
    DriveDialog& drive() { return *drive_; }
    BenchPage& bench() { return *bench_; }
    RackPage& rack() { return *rack_; }
    TallyPage& tally() { return *tally_; }
    void open(Page* page);
    Page* current() const;
    const std::vector<Page*>& pages() const { return pages_; }
    WhichDialog& which() { return *which_; }
    const Toast& toast() const { return *toast_; }
    const StatusLine& status() const { return *status_; }
    /// As large as usual, or the whole of a small screen.
    void showFitting();
    /// Says which act is the last in the book: after the power failed one knows what is still to be done.
    void sayLastAct();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void buildPages();
    void addPage(Page* page, Qt::Key key);
    void buildView();
    QWidget* buildTop();
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, const std::function<void()>& does);
    void connectAll();
    void connectBook();
    void showTabs();
    void changeWho();
    void showWho();
    void buildWhich();
    void showHelp();
    bool showHelpOf(QWidget* front);
    void switchShade();
    void openOrder(store::OrderId order);
    void buildDrive();

    Session& session_;
    std::vector<Page*> pages_;
    std::vector<QAction*> openers_; ///< of the pages, in their order
    CounterPage* counter_ = nullptr;
    DriveDialog* drive_ = nullptr;
    BenchPage* bench_ = nullptr;
    RackPage* rack_ = nullptr;
    TallyPage* tally_ = nullptr;
    CardTabBar* tabs_;
    QStackedWidget* stack_;
    QLabel* who_;
    StatusLine* status_;
    QWidget* toastRoom_;
    Toast* toast_;
    BookCheck* check_;
    Scanner* scanner_ = nullptr;
    WhichDialog* which_ = nullptr;
};

/// The shade that was last chosen on this computer.
Shade rememberedShade();

/// Draws every page in both shades into PNG files ("counter-light.png" ...) without showing a window; the
/// Counter with `said` on its line. The paths of the files.
std::vector<QString> grabPages(Session& session, const QDir& folder, const QString& said,
                               QSize size = {1366, 768});

} // namespace riband::ui
