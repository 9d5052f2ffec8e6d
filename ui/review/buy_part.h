#pragma once

#include "ui/review/buy_model.h"
#include "ui/review/review_part.h"

class QAction;
class QCheckBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QTableView;

namespace riband::ui {

class LongWork;
class Session;

/// The purchase list: what to buy, why, and the best for a budget.
class BuyPart final : public ReviewPart {
    Q_OBJECT
public:
    explicit BuyPart(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("What to buy"); }
    QString fileName() const override { return QStringLiteral("purchase"); }
    bool onlyForOwner() const override { return true; }
    /// The list is of today, whatever the period.
    void show(const shop::Period& period) override;
    shop::ReportTable table() const override;
    bool settled() const override;

private:
    void buildActions();
    void buildView();
    QWidget* buildBudget();
    void reckon();
    void showPurchase(Purchase purchase);
    void fill();
    void showWhy();
    bool mayExpect(const std::vector<shop::Expectation>& deliveries);
    void expectIt();
    void showWhatCanBeTakenBack();
    bool mayTakeBack(const shop::ExpectedList& list);
    void takeItBack();
    void makePdf();
    void printList();

    Session& session_;
    LongWork* work_;
    BuyModel* model_;
    QLineEdit* budget_;
    QCheckBox* every_;
    QLabel *sum_, *name_, *why_, *forecast_;
    QProgressBar* progress_;
    QTableView* table_;
    QAction *reckon_ = nullptr, *stop_ = nullptr, *pdf_ = nullptr, *print_ = nullptr, *expect_ = nullptr,
            *takeBack_ = nullptr;
    std::shared_ptr<const Purchase> purchase_;
};

} // namespace riband::ui
