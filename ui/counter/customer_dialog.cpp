#include "ui/counter/customer_dialog.h"

#include "ui/desk/completion.h"
#include "ui/desk/field_words.h"
#include "ui/look/look.h"
#include "ui/words/due_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCompleter>
#include <QDateTime>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QStringListModel>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr std::size_t MostNames = 8;

Moment at(Date day, QTime time) {
    const QDate date = QDate{1970, 1, 1}.addDays(day.time_since_epoch().count());
    return Moment{std::chrono::milliseconds{QDateTime{date, time}.toMSecsSinceEpoch()}};
}

/// "2026-12-01", "16:00" (of today) or both, in the time of the place.
std::optional<Moment> dueOn(const QString& typed, Date today) {
    const QStringList parts = typed.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::optional<Date> day;
    QTime time;
    for (const QString& part : parts) {
        if (part.contains(QLatin1Char(':')) && !time.isValid())
            time = QTime::fromString(part, QStringLiteral("H:mm"));
        else if (!day)
            day = readDate(part.toStdString());
        else
            return std::nullopt;
    }
    if (parts.size() != (day ? 1 : 0) + (time.isValid() ? 1 : 0) || parts.isEmpty()) return std::nullopt;
    return at(day.value_or(today), time.isValid() ? time : endOfDay());
}

QString dueText(Moment due) {
    const auto local = QDateTime::fromMSecsSinceEpoch(due.time_since_epoch().count());
    return local.toString(local.time() == endOfDay() ? QStringLiteral("yyyy-MM-dd")
                                                     : QStringLiteral("yyyy-MM-dd H:mm"));
}

} // namespace

CustomerDialog::CustomerDialog(Session& session, const OrderInHand& hand, QWidget* parent)
    : QDialog{parent}, session_{session}, name_{new QLineEdit}, phone_{new QLineEdit}, due_{new QLineEdit},
      note_{new QLineEdit}, words_{new FieldWords}, names_{new QStringListModel{this}} {
    setWindowTitle(tr("Customer"));
    setWhatsThis(tr("Who the order is for, when it is wanted, and what to note on it. All of it may stay "
                    "empty."));
    setMinimumWidth(480);
    buildView(hand);
    connect(name_, &QLineEdit::textEdited, this, &CustomerDialog::lookUp);
}

void CustomerDialog::buildView(const OrderInHand& hand) {
    name_->setText(text(hand.customer));
    phone_->setText(text(hand.phone));
    note_->setText(text(hand.note));
    if (hand.due) due_->setText(dueText(*hand.due));
    name_->setPlaceholderText(tr("empty: walk-in"));
    due_->setPlaceholderText(tr("%1, or 16:00, or both").arg(text(printDate(session_.today()))));
    auto* completer = new QCompleter{names_, this};
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    completer->setFilterMode(Qt::MatchContains); // offers, and chooses none by itself
    offerBelow(*name_, completer);
    connect(completer, qOverload<const QString&>(&QCompleter::activated), this, [this](const QString& name) {
        for (const auto& customer : found_)
            if (text(customer.name) == name) phone_->setText(text(customer.phone));
    });
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QLineEdit* edit) {
        edit->setAccessibleName(QString{name}.remove('&'));
        form->addRow(name, edit);
    };
    row(tr("&Name"), name_);
    row(tr("&Phone"), phone_);
    row(tr("&Wanted by"), due_);
    row(tr("N&ote"), note_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &CustomerDialog::finish);
    words_->watch(*due_, orEmpty([this](const QString& typed) {
        return dueOn(typed, session_.today()) ? QString{}
                                              : tr("Write a day (%1), a time of today (16:00), or both.")
                                                    .arg(text(printDate(session_.today())));
    }));
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(words_);
    column->addWidget(buttons);
}

void CustomerDialog::finish() {
    if (words_->demand()) accept();
}

void CustomerDialog::lookUp(const QString& typed) {
    if (typed.trimmed().isEmpty()) return;
    session_.attempt([&] {
        found_ =
            store::Orders{session_.shop().connection}.customersLike(typed.trimmed().toStdString(), MostNames);
    });
    QStringList names;
    for (const auto& customer : found_) {
        names << text(customer.name);
        if (names.back().compare(typed.trimmed(), Qt::CaseInsensitive) == 0 && phone_->text().isEmpty())
            phone_->setText(text(customer.phone));
    }
    names_->setStringList(names);
}

void CustomerDialog::writeTo(OrderInHand& hand) const {
    hand.customer = name_->text().trimmed().toStdString();
    hand.phone = phone_->text().trimmed().toStdString();
    hand.note = note_->text().trimmed().toStdString();
    hand.due = dueOn(due_->text(), session_.today());
}

} // namespace riband::ui
