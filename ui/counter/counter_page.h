#pragma once

#include "ui/counter/evidence.h"
#include "ui/counter/inquiry.h"
#include "ui/counter/order_in_hand.h"
#include "ui/counter/order_slip.h"
#include "ui/desk/list_file.h"
#include "ui/desk/page.h"
#include "ui/desk/reading.h"
#include "ui/desk/stock_reader.h"

class QAction;
class QLineEdit;
class QListView;
class QStackedWidget;

namespace riband::ui {

class Advice;
class ChoiceList;
class EvidenceStrip;
struct Choice;
class PickForm;
class SuggestionCard;
class UnderstoodStrip;
class WaysModel;

/// Where a customer is served: one line to type or scan anything, what it means, which piece to cut and why,
/// the order beside it.
class CounterPage final : public Page {
    Q_OBJECT
public:
    explicit CounterPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Counter"); }
    QString help() const override;
    void refresh() override;
    void typed(const QString& text) override;

    /// Puts words on the line as if they were typed.
    void say(const QString& words);
    /// Puts a belt on the line; Ctrl+Z brings back what was there.
    void want(const belt::Reading& reading);
    QLineEdit& line() { return *line_; }
    const Inquiry& inquiry() const { return inquiry_; }
    const OrderInHand& order() const { return hand_; }
    /// Puts a belt that was measured on the line, with the width and the number that were said before.
    void takeMeasured(const MeasuredBelt& measured);
    /// A parked or quoted order goes on; said, and nothing done, if another is in hand.
    void takeUp(store::OrderId order);
    /// The window closes: what is on the slip is parked, so that it is not lost.
    void keepSlip();
    /// So much is known of the customer's old belt; the line stays as it is.
    void noteMeasured(const MeasuredBelt& measured);
    EvidenceStrip& evidence() { return *strip_; }
    /// No answer is on its way.
    bool settled() const;

signals:
    /// What would another belt do to the distance of the pulleys?
    void driveWanted();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildActions();
    QAction* act(const QString& name, const QKeySequence& key, void (CounterPage::*does)());
    void buildView();
    QWidget* buildLeft();
    QWidget* buildAdvice();
    void buildHint();
    QWidget* buildWays();
    void connectAll();

    // counter_evidence.cpp
    void buildEvidence();
    void readTapeError();
    void showEvidence();
    bool disagrees() const;
    void dropEvidence();

    void lineChanged(const QString& words);
    void beginAnew(const QString& words);
    void askChoices();
    void showUnderstood();
    void showReading();
    void showAdvice();
    void showSuggestion(const shop::Outlook& outlook, const shop::Way& way);
    void showNothingHere();
    void showSubstitutes();
    void sayWhy();
    void shelfOrNot();
    void showSlip();
    void enableActs();
    void warnUnclear(const QString& undone);
    bool chooseWay(int by);
    bool lacks() const;
    std::optional<SlipLine> pending() const;

    // counter_acts.cpp
    void enter();
    void escape();
    void take(const Choice& choice);
    bool addLine();
    void editLine();
    void chooseAbove();
    void chooseBelow();
    void removeLine();
    void pickOrType();
    void printTicket();
    void saveOrderLines();
    void saveWays();
    void saveShown(const ListRows& list);
    void start();

    // counter_order.cpp
    void orderAndTicket();
    void quote();
    void park();
    void takeUp();
    void editCustomer();
    using KeepAside = store::OrderId (*)(const shop::Shop&, const shop::Draft&,
                                         std::optional<store::OrderId>);
    std::optional<store::OrderId> keepAside(KeepAside keep);
    QString fromShelf(const store::Order& order) const;
    void keepPapers(const shop::Ordered& done);
    void learnFrom(store::OrderId order);
    bool priced();
    bool forbids(const SlipLine& line) const;
    const SlipLine* forbiddenLine() const;
    bool mayBeCut();
    QString gaveWay(const shop::Ordered& done) const;

    Session& session_;
    Inquiry inquiry_;
    OrderInHand hand_;
    Evidence evidence_;
    Reading* choosing_; ///< what the words leave open
    StockReader* here_; ///< what could be offered instead
    Advice* advice_;
    std::optional<store::TicketId> lastTicket_;
    std::optional<store::OrderId> lastAside_; ///< parked or quoted
    bool toldUnpriced_ = false;               ///< that a line of the slip has no price
    bool toldForbidden_ = false;              ///< that a line of the slip must not be cut here

    SlipActions actions_{};
    QAction *takeUp_ = nullptr, *pick_ = nullptr, *print_ = nullptr, *why_ = nullptr, *shelf_ = nullptr;
    QLineEdit* line_;
    UnderstoodStrip* understood_;
    EvidenceStrip* strip_;
    ChoiceList* choices_;
    QStackedWidget* below_;
    SuggestionCard* card_;
    QWidget* hint_;
    QWidget* waysBox_ = nullptr;
    WaysModel* waysModel_;
    QListView* ways_;
    PickForm* pickForm_;
    OrderSlip* slip_ = nullptr;
};

} // namespace riband::ui
