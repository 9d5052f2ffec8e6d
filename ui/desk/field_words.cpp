#include "ui/desk/field_words.h"

#include "ui/look/sheet.h"

#include <QDialog>
#include <QLayout>
#include <QLineEdit>
#include <QScreen>

#include <algorithm>

namespace riband::ui {

FieldWords::FieldWords(QWidget* parent) : QLabel{parent} {
    setTextFormat(Qt::PlainText);
    setProperty("role", "danger");
    setObjectName(QStringLiteral("fieldWords"));
    setWordWrap(true);
    hide();
}

void FieldWords::watch(QLineEdit& field, Wrong wrong) {
    watched_.push_back({&field, std::move(wrong)});
    connect(&field, &QLineEdit::textChanged, this, &FieldWords::look);
}

QString FieldWords::wrongOf(const Watched& watched) const {
    return watched.field->isEnabled() ? watched.wrong(watched.field->text().trimmed()) : QString{};
}

void FieldWords::look() {
    QString first;
    for (const Watched& each : watched_) {
        const bool judged = demanded_ || !each.field->text().trimmed().isEmpty();
        const QString expected = judged ? wrongOf(each) : QString{};
        setSheetProperty(*each.field, "wrong",
                         expected.isEmpty() ? QStringLiteral("false") : QStringLiteral("true"));
        each.field->setAccessibleDescription(expected);
        if (first.isEmpty() && !expected.isEmpty())
            first = tr("%1: %2", "field, what is expected").arg(each.field->accessibleName(), expected);
    }
    setText(first);
    setVisible(!first.isEmpty());
    if (!first.isEmpty()) makeRoom();
}

/// Wrapped words need more height than a dialog keeps for them: without it they would lie over the fields.
void FieldWords::makeRoom() {
    auto* dialog = qobject_cast<QDialog*>(window());
    if (!dialog || !dialog->layout() || !dialog->isVisible()) return;
    dialog->layout()->activate();
    const int needed = dialog->layout()->hasHeightForWidth()
                           ? dialog->layout()->totalHeightForWidth(dialog->width())
                           : dialog->layout()->totalMinimumSize().height();
    const int room = std::min(needed, dialog->screen()->availableSize().height());
    if (room > dialog->height()) dialog->resize(dialog->width(), room);
}

void FieldWords::begin() {
    demanded_ = false;
    look();
}

bool FieldWords::right() const {
    return std::all_of(watched_.begin(), watched_.end(),
                       [this](const Watched& each) { return wrongOf(each).isEmpty(); });
}

bool FieldWords::demand() {
    demanded_ = true;
    look();
    for (const Watched& each : watched_)
        if (!wrongOf(each).isEmpty()) {
            each.field->setFocus();
            each.field->selectAll();
            return false;
        }
    return true;
}

FieldWords::Wrong orEmpty(FieldWords::Wrong wrong) {
    return [wrong = std::move(wrong)](const QString& typed) {
        return typed.isEmpty() ? QString{} : wrong(typed);
    };
}

} // namespace riband::ui
