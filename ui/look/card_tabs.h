#pragma once

#include <QKeySequence>
#include <QTabBar>

namespace riband::ui {

/// The tabs of the index cards: the present card stands in front. Each shows its name, a count of what waits
/// there, and its key. Draws only; the keys are listened to by whoever owns the actions.
class CardTabBar final : public QTabBar {
    Q_OBJECT
public:
    explicit CardTabBar(QWidget* parent = nullptr);
    int addCard(const QString& name, const QKeySequence& key);
    /// For setTabVisible, which leaves the room of the bar as it was.
    void setCardVisible(int index, bool visible);
    /// 0 shows nothing.
    void setWaiting(int index, int count);
    int waiting(int index) const;

protected:
    void paintEvent(QPaintEvent* event) override;
    QSize tabSizeHint(int index) const override;
    QSize minimumTabSizeHint(int index) const override;

private:
    struct Card {
        QKeySequence key;
        int waiting = 0;
    };
    void paintCard(QPainter& painter, int index) const;
    void nameForAll(int index);
    Card card(int index) const;
    void setCard(int index, const Card& card);
};

} // namespace riband::ui
