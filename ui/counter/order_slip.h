#pragma once

#include "ui/counter/order_in_hand.h"
#include "ui/counter/price_lines.h"
#include "ui/desk/list_file.h"
#include "ui/desk/session.h"

#include <QWidget>

#include <array>

class QAction;
class QGridLayout;
class QLabel;
class QListView;
class QVBoxLayout;

namespace riband::ui {

class KeyButton;
class SlipModel;

/// The actions that are written on the slip; the page owns them.
struct SlipActions {
    QAction *order, *quote, *park, *customer, *edit, *remove;
};

/// The order as a slip of paper: lines, how the present one is priced, the total, and what to do with it.
class OrderSlip final : public QWidget {
    Q_OBJECT
public:
    OrderSlip(Session& session, const SlipActions& actions, QWidget* parent = nullptr);
    void show(const OrderInHand& hand, const std::optional<SlipLine>& pending);
    /// The line that Change and Remove act on; none if there is none.
    std::optional<std::size_t> chosenLine() const { return chosen_; }
    /// Chooses the line so many further down.
    void choose(int by);
    QListView& list() { return *list_; }
    /// The large key orders; where something must not be cut here it quotes instead.
    void rankKeys(bool forbidden);
    /// What stands on the slip.
    ListRows lines() const;

private:
    void buildView(const SlipActions& actions);
    QWidget* buildButtons(const SlipActions& actions);
    void setChosen(std::optional<std::size_t> line);
    void showHead(const OrderInHand& hand);
    void showPrice();
    void buildBreakdown();
    void showBreakdown(const std::vector<PriceLine>& lines);

    Session& session_;
    SlipModel* model_;
    QGridLayout* keys_ = nullptr;
    KeyButton *order_ = nullptr, *quote_ = nullptr, *park_ = nullptr, *customer_ = nullptr;
    QListView* list_;
    QLabel *title_, *who_, *total_, *net_, *tax_, *taxName_;
    struct Amount {
        QLabel *what, *amount;
    };
    QWidget* breakdownBox_ = nullptr;
    std::array<Amount, 4> breakdown_{}; ///< width, cutting, quantity, least price
    std::size_t added_ = 0;
    std::optional<std::size_t> chosen_;
};

} // namespace riband::ui
