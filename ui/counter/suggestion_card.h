#pragma once

#include "ui/counter/way_words.h"

#include <QFrame>

#include <array>

class QCheckBox;
class QLabel;
class QVBoxLayout;

namespace riband::ui {

/// What to do, why, and what it saves: the piece to scale.
class SuggestionCard final : public QFrame {
    Q_OBJECT
public:
    explicit SuggestionCard(QWidget* parent = nullptr);
    struct About {
        QString saving; ///< may be ""
        QString basis;  ///< on what the suggestion rests
        QString shelf;  ///< what is suggested to be cut as well; ""
        bool withShelf; ///< and wanted
        bool chosen;    ///< the clerk's own way, not the suggested one
        QString why;    ///< of the clerk; ""
    };
    void show(const ShownWay& way, const About& about);
    /// While the final answer is on its way.
    void setThinking(bool thinking);
    /// Nothing can be cut: why, and what could be done instead.
    void showNone(const QString& headline, const QString& words);

signals:
    void shelfWanted(bool wanted);

private:
    void showReason(const ShownWay& way, const About& about);
    void showShelf(const About& about);
    void buildView();
    void buildBands(QVBoxLayout& column);
    void setBands(const ShownWay& way);
    QLabel *headline_, *piece_, *cost_, *reason_, *saving_, *missing_, *thinking_, *more_, *basis_;
    QCheckBox* shelf_;
    QLabel* belts_; ///< for the shelf; a line of its own, since there may be many
    struct Small {
        QLabel* name;
        BandWidget* band;
    };
    BandWidget* large_;
    std::array<Small, 3> small_{}; ///< more would push the reason off the screen; the ticket has them all
};

} // namespace riband::ui
