#pragma once

#include "ui/counter/choices.h"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace riband::ui {

/// Shows what to pick from. With the focus a digit picks, or an arrow and Enter; Alt and the digit pick from
/// anywhere on the page.
class ChoiceList final : public QWidget {
    Q_OBJECT
public:
    explicit ChoiceList(QWidget* parent = nullptr);
    void show(const Choices& choices);
    bool isEmpty() const { return choices_.choices.empty(); }
    bool pick(std::size_t number); ///< from 0; false if there is no such choice
    /// The digit that was struck just before, if this key follows it as only a scanner's does: then the digit
    /// was the first of a code and no choice. Given once.
    QString takeDigitBefore(const QKeyEvent& key);

signals:
    void picked(const riband::ui::Choice& choice);
    void left(); ///< Escape: back to the line
    /// Something else is typed or scanned: no choice, the line begins anew with it.
    void typed(const QString& words);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    bool moveBy(int key);
    void addButton(std::size_t number);
    int columnsFor(const Choices& choices) const;
    Choices choices_;
    QLabel *heading_, *keys_;
    QGridLayout* buttons_;
    int columns_ = 1;
    int current_ = -1; ///< chosen by an arrow; before one is pressed Enter picks nothing of several
    QString digit_;
    quint64 struck_ = 0; ///< when, by the window system; 0: it does not say
};

} // namespace riband::ui
