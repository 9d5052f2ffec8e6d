#pragma once

#include "core/shop/cut.h"
#include "core/shop/whose.h"
#include "ui/desk/page.h"
#include "ui/desk/session.h"

class QAction;
class QHBoxLayout;
class QLayout;
class QLineEdit;
class QListView;

namespace riband::ui {

class BenchModel;
class KeyButton;
class MountingView;

/// The person at the cutter: what waits, how to set up, where to stop, what was really cut.
class BenchPage final : public Page {
    Q_OBJECT
public:
    explicit BenchPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Bench"); }
    QString help() const override;
    void refresh() override;
    int waiting() const override { return waiting_; }
    /// Reads how many mountings wait, also while the page is behind.
    void count();
    void showTicket(store::TicketId ticket);
    void typed(const QString& words) override;
    /// Reads codes by itself.
    QLineEdit& codeField() { return *code_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, void (BenchPage::*does)());
    void buildView();
    QLayout* buildKeys();
    void rankKeys(bool forbidden);
    void choose(int row); ///< the first if there is none such
    void showCurrent();
    const store::MountingId* currentMounting() const;

    // bench_codes.cpp
    void takeCode();
    void chooseByCode(const std::string& code);
    QString notWaiting(const shop::Scanned& found, const QString& typed) const;

    // bench_acts.cpp
    void enter();
    bool stillWaits(const shop::BenchMounting& mounting);
    void recordCut();
    void recordMiscut();
    void openOrder();
    void openOrders();
    void cutTogether();
    void changeCutter();
    void giveUp();
    void saveShownList();
    void printTicket();
    QString wordsFor(const shop::BenchMounting& mounting, const shop::CutDone& done) const;
    static QStringList orderWords(const std::vector<shop::OrderAfter>& orders);
    void bookMiscut(const shop::BenchMounting& mounting, const shop::Miscut& miscut,
                    const shop::Replanned& done);

    Session& session_;
    BenchModel* model_;
    QWidget* side_ = nullptr;
    QListView* list_;
    QLineEdit* code_;
    MountingView* view_;
    QHBoxLayout* keys_ = nullptr;
    KeyButton *recordKey_ = nullptr, *orderKey_ = nullptr;
    QAction *record_ = nullptr, *miscut_ = nullptr, *order_ = nullptr, *orders_ = nullptr, *print_ = nullptr,
            *together_ = nullptr, *giveUp_ = nullptr, *save_ = nullptr, *cutter_ = nullptr;
    KeyButton* otherCutter_ = nullptr; ///< not there while the shop has one cutter
    int waiting_ = 0;
    bool enterSleeps_ = false; ///< until another mounting is chosen by hand
    bool forbidden_ = false;   ///< the chosen mounting must not be cut here
};

} // namespace riband::ui
