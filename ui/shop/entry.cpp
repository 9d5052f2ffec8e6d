#include "ui/shop/entry.h"

#include "ui/look/sheet.h"

#include <QFormLayout>

namespace riband::ui {

Entry::Entry(const QString& name, Reads reads, const QString& expected, QWidget* parent)
    : Entry{name, std::move(reads), [expected](const std::string&) { return expected; }, parent} {}

Entry::Entry(const QString& name, Reads reads, Expected expected, QWidget* parent)
    : QLineEdit{parent}, name_{name}, reads_{std::move(reads)}, expected_{std::move(expected)} {
    setAccessibleName(QString{name}.remove('&'));
    connect(this, &QLineEdit::textChanged, this, [this] {
        const bool right = isRight();
        setSheetProperty(*this, "wrong", right ? QStringLiteral("false") : QStringLiteral("true"));
        const QString wanted = right ? QString{} : expected_(typed());
        setAccessibleDescription(wanted);
        setToolTip(wanted);
    });
}

QString Entry::firstWrong(const QWidget& form) {
    for (auto* entry : form.findChildren<Entry*>()) {
        if (entry->isRight() || !entry->isEnabled()) continue;
        entry->setFocus();
        entry->selectAll();
        return tr("%1: %2", "field, what is expected")
            .arg(entry->accessibleName(), entry->expected_(entry->typed()));
    }
    return {};
}

void Entry::addTo(QFormLayout& form, const QString& unit) {
    form.addRow(unit.isEmpty() ? name_ : tr("%1 (%2)", "name, unit").arg(name_, unit), this);
}

} // namespace riband::ui
