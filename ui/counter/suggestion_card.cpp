#include "ui/counter/suggestion_card.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace riband::ui {

SuggestionCard::SuggestionCard(QWidget* parent)
    : QFrame{parent}, headline_{label({}, "head")}, piece_{label({}, "remark")}, cost_{label({}, "remark")},
      reason_{label({})}, saving_{label({}, "gain")}, missing_{label({}, "warn")},
      thinking_{label(tr("still looking for a better way …"), "small")}, more_{label({}, "remark")},
      large_{new BandWidget{BandSize::Large}} {
    setProperty("surface", "advice");
    setAccessibleName(tr("Suggestion"));
    buildView();
    setVisible(false);
}

void SuggestionCard::buildView() {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(4 * step, 3 * step, 5 * step, 3 * step);
    column->setSpacing(2 * step);
    auto* top = new QHBoxLayout;
    top->setSpacing(4 * step);
    top->addWidget(headline_);
    top->addWidget(piece_, 1);
    top->addWidget(cost_);
    column->addLayout(top);
    buildBands(*column);
    for (QLabel* words : {missing_, reason_}) {
        words->setWordWrap(true);
        column->addWidget(words);
    }
    auto* bottom = new QHBoxLayout;
    bottom->addWidget(saving_, 1);
    bottom->addWidget(thinking_);
    column->addLayout(bottom);
    thinking_->setVisible(false);
}

/// Made once: a widget that is made anew at every key costs more than all the rest of it.
void SuggestionCard::buildBands(QVBoxLayout& column) {
    large_->setMinimumHeight(116);
    column.addWidget(large_);
    for (Small& small : small_) {
        small = {label({}, "remark"), new BandWidget{BandSize::Small}};
        small.band->setMinimumHeight(24);
        column.addWidget(small.name);
        column.addWidget(small.band);
    }
    column.addWidget(more_);
}

void SuggestionCard::setBands(const ShownWay& way) {
    const bool one = way.bands.size() == 1;
    if (one) large_->show(way.bands.front());
    large_->setVisible(one);
    for (std::size_t i = 0; i < small_.size(); ++i) {
        const bool used = !one && i < way.bands.size();
        if (used) {
            small_[i].name->setText(way.bandNames[i]);
            small_[i].band->show(way.bands[i]);
        }
        small_[i].name->setVisible(used);
        small_[i].band->setVisible(used);
    }
    const bool more = way.bands.size() > small_.size();
    if (more) more_->setText(tr("and %n more", nullptr, static_cast<int>(way.bands.size() - small_.size())));
    more_->setVisible(more);
}

void SuggestionCard::show(const ShownWay& way, const QString& saving, bool chosen) {
    headline_->setText(way.headline);
    piece_->setText(way.piece);
    cost_->setText(way.cost);
    setBands(way);
    missing_->setText(way.missing);
    missing_->setVisible(!way.missing.isEmpty());
    reason_->setText(chosen ? tr("Your own choice: %1 of worth more than the suggested way.").arg(way.extra)
                            : way.reason);
    reason_->setVisible(true);
    saving_->setText(chosen ? tr("↑ back to the suggested way") : saving);
    saving_->setVisible(!saving_->text().isEmpty());
    setAccessibleDescription(
        QStringList{way.headline, way.piece, reason_->text(), saving_->text()}.join(QStringLiteral(". ")));
    setVisible(true);
}

void SuggestionCard::showNone(const QString& headline, const QString& words) {
    setBands({});
    headline_->setText(headline);
    piece_->clear();
    cost_->clear();
    missing_->setVisible(false);
    reason_->setText(words);
    reason_->setVisible(!words.isEmpty());
    saving_->setVisible(false);
    setAccessibleDescription(headline + QStringLiteral(". ") + words);
    setThinking(false);
    setVisible(true);
}

void SuggestionCard::setThinking(bool thinking) { thinking_->setVisible(thinking); }

} // namespace riband::ui
