#include "ui/shop/entry.h"

#include "ui/look/sheet.h"

#include <QFormLayout>

namespace riband::ui {

Entry::Entry(const QString& name, Reads reads, QWidget* parent)
    : QLineEdit{parent}, name_{name}, reads_{std::move(reads)} {
    setAccessibleName(QString{name}.remove('&'));
    connect(this, &QLineEdit::textChanged, this, [this] {
        setSheetProperty(*this, "wrong", isRight() ? QStringLiteral("false") : QStringLiteral("true"));
    });
}

void Entry::addTo(QFormLayout& form, const QString& unit) {
    form.addRow(unit.isEmpty() ? name_ : tr("%1 (%2)", "name, unit").arg(name_, unit), this);
}

} // namespace riband::ui
