#include "ui/which/answer_card.h"

#include "ui/counter/understood_strip.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/look/sheet.h"
#include "ui/words/identify_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStringList>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

using belt::identify::Identification;

/// What a person ought to know of the likeliest belt beside its sizes.
QStringList notesOn(const Identifier::Answer& answer, const belt::Tables& tables) {
    QStringList notes;
    if (answer.found.contradictory() || answer.found.candidates.empty()) return notes;
    const auto& best = answer.found.candidates.front();
    if (best.width && best.width->standard) notes << say(*best.width);
    if (const QString wear = sayWear(answer.sample, best); !wear.isEmpty()) notes << wear;
    if (const QString beware = lookAlikeWarning(best.profile->name, tables); !beware.isEmpty())
        notes << AnswerCard::tr("%1: %2.", "a profile and what it is not for")
                     .arg(text(best.profile->name), beware);
    return notes;
}

QString headlineOf(const Identification& found) {
    if (found.contradictory()) return AnswerCard::tr("The measures disagree");
    const auto& best = found.candidates.front();
    return AnswerCard::tr("%1, %2", "a belt and its chance").arg(nameOf(best), shownChance(best.probability));
}

} // namespace

AnswerCard::AnswerCard(const belt::Tables& tables, QWidget* parent)
    : QFrame{parent}, tables_{tables}, headline_{label({}, "head")}, state_{label({}, "ok")}, why_{label({})},
      notes_{label({}, "remark")}, next_{new KeyButton{tr("Measure that next"), Qt::Key_F3}} {
    setProperty("surface", "advice");
    setAccessibleName(tr("Answer"));
    buildView();
}

void AnswerCard::buildView() {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(4 * step, 3 * step, 4 * step, 3 * step);
    column->setSpacing(2 * step);
    auto* top = new QHBoxLayout;
    top->addWidget(headline_, 1);
    top->addWidget(state_);
    column->addLayout(top);
    for (QLabel* words : {why_, notes_}) {
        words->setWordWrap(true);
        column->addWidget(words);
    }
    column->addWidget(next_, 0, Qt::AlignLeft);
    column->addStretch(); // a long why must not push the headline about
}

void AnswerCard::setNotes(const QStringList& notes) {
    notes_->setText(notes.join(QLatin1Char(' ')));
    notes_->setVisible(!notes.isEmpty());
}

void AnswerCard::show(const Identifier::Answer& answer) {
    const Identification& found = answer.found;
    headline_->setText(headlineOf(found));
    const bool contradictory = found.contradictory();
    state_->setText(contradictory   ? tr("one is wrong")
                    : found.settled ? tr("settled")
                                    : tr("not settled yet"));
    setSheetProperty(*state_, "role",
                     contradictory   ? QStringLiteral("danger")
                     : found.settled ? QStringLiteral("ok")
                                     : QStringLiteral("warn"));
    why_->setText(why(found, answer.sample));
    setNotes(notesOn(answer, tables_));
    next_->setVisible(found.next.has_value());
    setAccessibleDescription(
        QStringList{headline_->text(), state_->text(), why_->text(), notes_->text()}.join(
            QStringLiteral(". ")));
}

void AnswerCard::showWords(const QString& headline, const QString& words) {
    headline_->setText(headline);
    state_->clear();
    why_->setText(words);
    setNotes({});
    next_->setVisible(false);
    setAccessibleDescription(headline + QStringLiteral(". ") + words);
}

} // namespace riband::ui
