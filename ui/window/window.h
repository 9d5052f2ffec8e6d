#pragma once

#include "ui/desk/session.h"
#include "ui/look/look.h"

#include <QDir>
#include <QMainWindow>

#include <vector>

class QStackedWidget;

namespace riband::ui {

class BenchPage;
class CardTabs;
class CounterPage;
class Page;
class RackPage;
class ShopPage;
class StatusLine;
class Toast;

/// The program's window: pages as index cards, the state of the book below. `session` outlives it.
class Window final : public QMainWindow {
    Q_OBJECT
public:
    explicit Window(Session& session, QWidget* parent = nullptr);
    ~Window() override;

    CounterPage& counter() { return *counter_; }
    BenchPage& bench() { return *bench_; }
    RackPage& rack() { return *rack_; }
    void open(Page* page);
    const std::vector<Page*>& pages() const { return pages_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void buildView();
    void buildActions();
    void connectAll();
    void addPage(Page* page);
    void refreshTabs();
    void showHelp();
    void switchShade();
    Page* current() const;

    Session& session_;
    CardTabs* tabs_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    StatusLine* status_ = nullptr;
    Toast* toast_ = nullptr;
    CounterPage* counter_ = nullptr;
    BenchPage* bench_ = nullptr;
    RackPage* rack_ = nullptr;
    ShopPage* shop_ = nullptr;
    std::vector<Page*> pages_;
};

/// The shade that was last chosen on this computer.
Shade rememberedShade();

/// Draws every page in both shades into PNG files ("counter-light.png" ...) without showing a window; the
/// Counter with `said` on its line. The paths of the files.
std::vector<QString> grabPages(Session& session, const QDir& folder, const QString& said,
                               QSize size = {1366, 768});

} // namespace riband::ui
