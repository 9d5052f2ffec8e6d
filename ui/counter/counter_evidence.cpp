#include "ui/counter/counter_page.h"

#include "core/store/measuring.h"
#include "ui/counter/advice.h"
#include "ui/counter/choice_list.h"
#include "ui/counter/evidence_choices.h"
#include "ui/counter/evidence_strip.h"
#include "ui/words/tr.h"

#include <QAction>
#include <QLineEdit>

// What the Counter knows of the customer's belt beside the words, and how it stops a sale that would not run.

namespace riband::ui {

void CounterPage::buildEvidence() {
    auto* enter = new QAction{tr("Pulley and tape"), this};
    enter->setShortcut(Qt::Key_F5);
    connect(enter, &QAction::triggered, strip_, &EvidenceStrip::enter);
    addAction(enter);
    connect(strip_, &EvidenceStrip::changed, this, [this] {
        evidence_.askAnew();
        evidence_.setPulley(strip_->pulley());
        evidence_.setTape(strip_->tape());
        showUnderstood();
    });
    connect(strip_, &EvidenceStrip::left, this, [this] {
        line_->setFocus();
        showEvidence();
    });
    connect(line_, &QLineEdit::textChanged, this, [this, before = QString{}](const QString& words) mutable {
        evidence_.askAnew();
        const bool typedOver = words.size() == 1 && before.size() > 2; // all was selected: another belt
        if (words.isEmpty() || typedOver) dropEvidence();
        before = words;
    });
    readTapeError();
}

void CounterPage::readTapeError() {
    session_.attempt([&] { evidence_.setTapeError(store::readMeasuring(session_.shop().connection).tape); });
}

void CounterPage::dropEvidence() {
    evidence_.clear();
    strip_->clear();
}

bool CounterPage::disagrees() const {
    const auto wanted = inquiry_.wanted();
    return wanted && evidence_.stops(wanted->belt);
}

/// What speaks against the belt takes the place of other choices: it comes first.
void CounterPage::showEvidence() {
    const belt::Reading* reading = inquiry_.open().empty() ? inquiry_.reading() : nullptr;
    const auto findings =
        reading && !evidence_.isEmpty() ? evidence_.of(reading->belt) : std::vector<Evidence::Finding>{};
    strip_->show(evidence_, findings);
    if (!inquiry_.wanted()) return; // first what is asked of the words
    const Choices rather = evidenceChoices(*reading, findings, disagrees(), *here_, session_.tables());
    if (!rather.choices.empty()) choices_->show(rather);
}

void CounterPage::takeMeasured(const MeasuredBelt& measured) {
    const belt::Reading* before = inquiry_.open().empty() ? inquiry_.reading() : nullptr;
    const std::optional<belt::Belt> said = before ? std::optional{before->belt} : std::nullopt;
    QString words = beltWords(measured);
    if (measured.belt) {
        belt::Reading reading{*measured.belt, measured.width};
        if (before) {
            reading.quantity = before->quantity;
            if (!reading.width && before->width &&
                before->belt.teeth.has_value() == reading.belt.teeth.has_value())
                reading.width = before->width;
        }
        words = wordsFor(reading, session_.tables()).value_or(words);
    }
    evidence_.setMeasured(measured, said);
    line_->setText(words);
    showUnderstood(); // the words may be the same as before
    line_->setFocus();
}

void CounterPage::noteMeasured(const MeasuredBelt& measured) {
    evidence_.setMeasured(measured, std::nullopt);
    showUnderstood();
}

} // namespace riband::ui
