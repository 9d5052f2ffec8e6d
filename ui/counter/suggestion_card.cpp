#include "ui/counter/suggestion_card.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QRegularExpression>
#include <QVBoxLayout>

namespace riband::ui {

SuggestionCard::SuggestionCard(QWidget* parent)
    : QFrame{parent}, headline_{label({}, "head")}, piece_{label({}, "remark")}, cost_{label({}, "remark")},
      reason_{label({})}, saving_{label({}, "gain")}, missing_{label({}, "warn")},
      thinking_{label(tr("still looking for a better way …"), "small")}, more_{label({}, "remark")},
      basis_{label({}, "small")}, shelf_{new QCheckBox}, belts_{label({})}, large_{new BandWidget{
                                                                                BandSize::Large}} {
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
    shelf_->setFocusPolicy(Qt::TabFocus); // the line keeps the focus when it is clicked
    shelf_->setAccessibleName(tr("Cut these as well, onto the shelf"));
    connect(shelf_, &QCheckBox::clicked, this, &SuggestionCard::shelfWanted);
    belts_->setWordWrap(true);
    auto* shelf = new QHBoxLayout;
    shelf->addWidget(shelf_);
    shelf->addWidget(belts_, 1);
    column->addLayout(shelf);
    auto* bottom = new QHBoxLayout;
    bottom->addWidget(saving_, 1);
    bottom->addWidget(basis_);
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

void SuggestionCard::show(const ShownWay& way, const About& about) {
    headline_->setText(way.headline);
    piece_->setText(way.piece);
    cost_->setText(way.cost);
    setBands(way);
    missing_->setText(way.missing);
    missing_->setVisible(!way.missing.isEmpty());
    showReason(way, about);
    showShelf(about);
    setAccessibleDescription(QStringList{way.headline, way.piece, reason_->text(),
                                         about.shelf.isEmpty() ? QString{} : shelf_->accessibleName(),
                                         saving_->text()}
                                 .filter(QRegularExpression{QStringLiteral(".")})
                                 .join(QStringLiteral(". ")));
    setVisible(true);
}

void SuggestionCard::showReason(const ShownWay& way, const About& about) {
    QString words = way.reason;
    if (about.chosen) {
        words = tr("Your own choice: %1 over the suggested way.").arg(way.extra) + QLatin1Char(' ');
        words += about.why.isEmpty() ? tr("F3 says why.") : tr("Because: %1.").arg(about.why);
    }
    reason_->setText(words);
    reason_->setVisible(true);
    saving_->setText(about.chosen ? tr("↑ back to the suggested way") : about.saving);
    saving_->setVisible(!saving_->text().isEmpty());
    basis_->setText(about.basis);
    basis_->setVisible(!about.chosen && way.cuts && !about.basis.isEmpty());
}

void SuggestionCard::showShelf(const About& about) {
    shelf_->setText(tr("Cut these as well, onto the shelf (F6):"));
    belts_->setText(about.shelf);
    shelf_->setAccessibleName(tr("Cut these as well, onto the shelf: %1").arg(about.shelf));
    shelf_->setChecked(about.withShelf);
    shelf_->setVisible(!about.shelf.isEmpty());
    belts_->setVisible(!about.shelf.isEmpty());
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
    basis_->setVisible(false);
    shelf_->setVisible(false);
    belts_->setVisible(false);
    setAccessibleDescription(headline + QStringLiteral(". ") + words);
    setThinking(false);
    setVisible(true);
}

void SuggestionCard::setThinking(bool thinking) {
    thinking_->setVisible(thinking);
    if (thinking) basis_->setVisible(false);
}

} // namespace riband::ui
