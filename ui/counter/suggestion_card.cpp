#include "ui/counter/suggestion_card.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr std::size_t MostBands = 3; // more would push the reason off the screen; the ticket has them all
} // namespace

SuggestionCard::SuggestionCard(QWidget* parent)
    : QFrame{parent}, headline_{label({}, "head")}, piece_{label({}, "remark")}, cost_{label({}, "remark")},
      reason_{label({})}, saving_{label({}, "gain")}, missing_{label({}, "warn")},
      thinking_{label(tr("still looking for a better way …"), "small")}, bands_{new QVBoxLayout} {
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
    column->addLayout(bands_);
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

void SuggestionCard::setBands(const ShownWay& way) {
    while (QLayoutItem* item = bands_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const bool several = way.bands.size() > 1;
    for (std::size_t i = 0; i < way.bands.size() && i < MostBands; ++i) {
        if (several) bands_->addWidget(label(way.bandNames[i], "remark"));
        auto* band = new BandWidget{several ? BandSize::Small : BandSize::Large};
        band->show(way.bands[i]);
        band->setMinimumHeight(several ? 24 : 116);
        bands_->addWidget(band);
    }
    if (way.bands.size() > MostBands)
        bands_->addWidget(
            label(tr("and %n more", nullptr, static_cast<int>(way.bands.size() - MostBands)), "remark"));
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
