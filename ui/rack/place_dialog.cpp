#include "ui/rack/place_dialog.h"

#include "core/belt/reader.h"
#include "core/shop/places.h"
#include "ui/desk/completion.h"
#include "ui/desk/field_words.h"
#include "ui/rack/rack_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr auto levels = {store::PlaceLevel::Room, store::PlaceLevel::Bay, store::PlaceLevel::Shelf,
                         store::PlaceLevel::Bin};

bool ofName(shop::PlaceFault fault) {
    using shop::PlaceFault;
    return fault == PlaceFault::NoName || fault == PlaceFault::BadName || fault == PlaceFault::NameTaken;
}

} // namespace

PlaceDialog::PlaceDialog(Session& session, const store::Place& place, QWidget* parent)
    : QDialog{parent}, session_{session}, place_{place}, name_{new QLineEdit{text(place.name)}},
      parent_{new QLineEdit}, belt_{new QLineEdit}, level_{new QComboBox},
      front_{new QCheckBox{tr("Within easy &reach: narrow remnants go there first")}}, wrong_{
                                                                                           new FieldWords} {
    setWindowTitle(place.id.value() == 0 ? tr("New place") : tr("Place %1").arg(text(place.name)));
    setWhatsThis(
        tr("The name is what stands on the label and is scanned. A room holds bays, a bay shelves, a "
           "shelf bins; a smaller one that is named like it, B3-2 in B3, goes into it by itself. A "
           "place that is kept for a belt takes only that; one within easy reach is for narrow "
           "remnants first."));
    setMinimumWidth(520);
    session_.attempt([&] {
        places_ = store::Places{session_.shop().connection}.all();
        if (place.fixedFor)
            belt_->setText(
                text(store::Catalogue{session_.shop().connection}.at(*place.fixedFor).designation));
    });
    for (const store::Place& each : places_)
        if (each.id == place.parent) parent_->setText(text(each.name));
    buildView();
    watchFields();
}

void PlaceDialog::buildView() {
    for (const store::PlaceLevel level : levels)
        level_->addItem(say(level), static_cast<int>(level));
    level_->setCurrentIndex(static_cast<int>(place_.level));
    front_->setChecked(place_.front);
    front_->setObjectName(QStringLiteral("front"));
    parent_->setPlaceholderText(tr("nowhere"));
    belt_->setPlaceholderText(tr("whatever comes"));
    QStringList larger, belts;
    for (const store::Place& each : places_)
        if (each.level != store::PlaceLevel::Bin && each.id != place_.id) larger << text(each.name);
    session_.attempt([&] {
        for (const store::StockedBelt& belt : store::Catalogue{session_.shop().connection}.all())
            belts << text(belt.designation);
    });
    offerBelow(*parent_, new QCompleter{larger, parent_});
    offerBelow(*belt_, new QCompleter{belts, belt_});
    auto* form = new QFormLayout;
    const auto row = [&](const QString& name, QWidget* field, const char* object) {
        field->setAccessibleName(QString{name}.remove('&'));
        field->setObjectName(QString::fromLatin1(object));
        form->addRow(name, field);
    };
    row(tr("&Name"), name_, "name");
    row(tr("&Level"), level_, "level");
    row(tr("&Stands in"), parent_, "parent");
    row(tr("&Kept for the belt"), belt_, "belt");
    form->addRow({}, front_);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Save | QDialogButtonBox::Cancel};
    connect(buttons, &QDialogButtonBox::accepted, this, &PlaceDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->addLayout(form);
    column->addWidget(wrong_);
    column->addWidget(buttons);
    name_->setFocus();
}

void PlaceDialog::watchFields() {
    wrong_->watch(*name_, [this](const QString& typed) { return wrongName(typed); });
    wrong_->watch(*parent_, [this](const QString& typed) { return wrongParent(typed); });
    wrong_->watch(*belt_, orEmpty([this](const QString& typed) { return wrongBelt(typed); }));
    connect(level_, &QComboBox::currentIndexChanged, wrong_, &FieldWords::look);
}

QString PlaceDialog::wrongName(const QString&) {
    std::optional<shop::PlaceFault> fault;
    session_.attempt([&] { fault = shop::faultOf(session_.shop(), place()); });
    return fault && ofName(*fault) ? say(*fault) : QString{};
}

QString PlaceDialog::wrongParent(const QString& typed) {
    if (!typed.isEmpty() && !placeNamed(typed))
        return tr("No place has this name. Type the name of a larger one, or nothing.");
    std::optional<shop::PlaceFault> fault;
    session_.attempt([&] { fault = shop::faultOf(session_.shop(), place()); });
    return fault && !ofName(*fault) ? say(*fault) : QString{};
}

QString PlaceDialog::wrongBelt(const QString& typed) {
    const auto read = belt::readBelt(typed.toStdString(), session_.tables());
    if (!read) return say(read.reason(), session_.tables());
    std::optional<store::StockedBelt> kept;
    session_.attempt([&] { kept = store::Catalogue{session_.shop().connection}.find(*read); });
    return kept ? QString{} : tr("The shop does not keep this belt. Choose one of the list.");
}

const store::Place* PlaceDialog::placeNamed(const QString& name) const {
    const std::string typed = name.trimmed().toStdString();
    const auto found = std::find_if(places_.begin(), places_.end(),
                                    [&](const store::Place& each) { return each.name == typed; });
    return found == places_.end() ? nullptr : &*found;
}

store::Place PlaceDialog::place() const {
    store::Place made = place_;
    made.name = name_->text().trimmed().toStdString();
    made.level = static_cast<store::PlaceLevel>(level_->currentData().toInt());
    const store::Place* parent = placeNamed(parent_->text());
    made.parent = parent ? std::optional{parent->id} : std::nullopt;
    made.front = front_->isChecked();
    made.fixedFor.reset();
    if (const auto read = belt::readBelt(belt_->text().trimmed().toStdString(), session_.tables()))
        if (const auto kept = store::Catalogue{session_.shop().connection}.find(*read))
            made.fixedFor = kept->id;
    return made;
}

void PlaceDialog::accept() {
    if (wrong_->demand()) QDialog::accept();
}

} // namespace riband::ui
