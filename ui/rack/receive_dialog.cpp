#include "ui/rack/receive_dialog.h"

#include "core/belt/reader.h"
#include "core/measure/text.h"
#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/sheet.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QCompleter>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

constexpr int MostSleeves = 500;

QStringList shownPlaces(store::Connection& connection) {
    QStringList list;
    for (const auto& place : store::Pieces{connection}.places())
        list << text(place);
    return list;
}

void mark(QLineEdit& field, bool wrong) {
    setSheetProperty(field, "wrong", wrong ? QStringLiteral("true") : QStringLiteral("false"));
}

} // namespace

ReceiveDialog::ReceiveDialog(Session& session, QWidget* parent)
    : QDialog{parent}, session_{session}, belt_{new QLineEdit}, width_{new QLineEdit}, cost_{new QLineEdit},
      batch_{new QLineEdit}, made_{new QLineEdit}, place_{new QLineEdit}, count_{new QSpinBox},
      kind_{new QComboBox}, understood_{label({}, "remark")}, done_{label({}, "gain")} {
    setWindowTitle(tr("Goods in"));
    setMinimumWidth(560);
    buildView();
    connect(belt_, &QLineEdit::textChanged, this, &ReceiveDialog::understand);
    for (QLineEdit* field : {width_, cost_, made_})
        connect(field, &QLineEdit::textChanged, this, &ReceiveDialog::check);
    understand();
}

void ReceiveDialog::addRow(QFormLayout& form, const QString& name, QWidget* field, const char* object) {
    field->setAccessibleName(QString{name}.remove('&'));
    field->setObjectName(QString::fromLatin1(object));
    form.addRow(name, field);
}

void ReceiveDialog::buildView() {
    belt_->setPlaceholderText(tr("belt without width, for example H8M 1200"));
    made_->setPlaceholderText(tr("day on the sleeve, if known"));
    count_->setRange(1, MostSleeves);
    for (const auto kind :
         {cutting::PieceKind::Sleeve, cutting::PieceKind::Remnant, cutting::PieceKind::Ready})
        kind_->addItem(say(kind), static_cast<int>(kind));
    session_.attempt([&] {
        place_->setCompleter(new QCompleter{shownPlaces(session_.shop().connection), place_});
    });
    understood_->setWordWrap(true);
    done_->setWordWrap(true);
    auto* form = new QFormLayout;
    addRow(*form, tr("&Belt"), belt_, "belt");
    form->addRow(QString{}, understood_);
    addRow(*form, tr("H&ow many"), count_, "count");
    addRow(*form, tr("&Width or ribs"), width_, "width");
    addRow(*form, tr("Cost of &each"), cost_, "cost");
    addRow(*form, tr("Maker's b&atch"), batch_, "batch");
    addRow(*form, tr("&Made on"), made_, "made");
    addRow(*form, tr("&Place"), place_, "place");
    addRow(*form, tr("&Kind"), kind_, "kind");
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Ok | QDialogButtonBox::Close};
    book_ = buttons->button(QDialogButtonBox::Ok);
    book_->setText(tr("Boo&k, and next"));
    connect(buttons, &QDialogButtonBox::accepted, this, &ReceiveDialog::book);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::accept);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(done_);
    column->addWidget(buttons);
}

void ReceiveDialog::understand() {
    known_.reset();
    const QString typed = belt_->text().trimmed();
    if (typed.isEmpty())
        understood_->clear();
    else {
        const auto read = belt::readBelt(typed.toStdString(), session_.tables());
        if (read) known_ = *read;
        understood_->setText(read ? tr("%1: %2 long").arg(text(belt::designation(*read)), shown(read->length))
                                  : say(read.reason(), session_.tables()));
    }
    if (known_ && !width_->isModified()) width_->setText(shownNumber(session_.tables().usualSleeve(*known_)));
    mark(*belt_, !known_ && !typed.isEmpty());
    check();
}

std::optional<shop::Delivery> ReceiveDialog::delivery() const {
    if (!known_) return std::nullopt;
    const belt::Profile* profile = session_.tables().profile(known_->profile);
    if (!profile) return std::nullopt;
    const auto width = readExtent(width_->text().toStdString(), profile->unit());
    const auto cost = readMoney(cost_->text().toStdString(), session_.currency());
    const bool noCost = cost_->text().trimmed().isEmpty();
    const auto made = readDate(made_->text().trimmed().toStdString());
    const bool noDay = made_->text().trimmed().isEmpty();
    if (!width || width->isNone() || (!cost && !noCost) || (!made && !noDay)) return std::nullopt;
    return shop::Delivery{*known_,
                          count_->value(),
                          *width,
                          noCost ? Money::minor(0) : *cost,
                          batch_->text().trimmed().toStdString(),
                          made,
                          place_->text().trimmed().toStdString(),
                          static_cast<cutting::PieceKind>(kind_->currentData().toInt())};
}

void ReceiveDialog::check() {
    const QString made = made_->text().trimmed(), cost = cost_->text().trimmed();
    mark(*made_, !made.isEmpty() && !readDate(made.toStdString()));
    mark(*cost_, !cost.isEmpty() && !readMoney(cost.toStdString(), session_.currency()));
    const Unit unit = known_ && !known_->teeth ? Unit::Rib : Unit::Micrometre;
    mark(*width_, known_ && !readExtent(width_->text().toStdString(), unit));
    book_->setEnabled(delivery().has_value());
}

void ReceiveDialog::book() {
    const auto goods = delivery();
    if (!goods) return;
    std::vector<store::PieceId> pieces;
    if (!session_.attempt([&] { pieces = shop::receive(session_.shop(), {*goods}); })) return;
    received_.insert(received_.end(), pieces.begin(), pieces.end());
    session_.attempt([&] {
        PaperTray{session_}.labels(pieces);
        QStringList codes;
        for (const auto piece : pieces)
            codes << text(store::Pieces{session_.shop().connection}.at(piece).code);
        done_->setText(tr("Booked: %1. Labels are in %2.")
                           .arg(codes.join(QStringLiteral(", ")), session_.papersFolder()));
    });
    session_.touch();
    belt_->clear();
    width_->clear();
    width_->setModified(false);
    count_->setValue(1);
    belt_->setFocus();
}

} // namespace riband::ui
