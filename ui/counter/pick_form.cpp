#include "ui/counter/pick_form.h"

#include "core/measure/text.h"
#include "ui/counter/lengths_model.h"
#include "ui/counter/profiles_delegate.h"
#include "ui/counter/profiles_model.h"
#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QScopedValueRollback>
#include <QSpinBox>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int MostBelts = 9999;
} // namespace

PickForm::PickForm(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, profiles_{new ProfilesModel{this}},
      lengths_{new LengthsModel{this}}, profileName_{new QLineEdit}, lengthName_{new QLineEdit},
      widthText_{new QLineEdit}, profileList_{new QListView}, lengthList_{new QListView},
      widthList_{new QListWidget}, quantity_{new QSpinBox} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4 * step);
    row->addWidget(buildProfiles(), 5);
    row->addWidget(buildLengths(), 4);
    row->addWidget(buildWidths(), 2);
    setFocusProxy(profileName_);
    connectAll();
}

QWidget* PickForm::buildProfiles() {
    profileName_->setPlaceholderText(tr("profile, for example H8M"));
    profileName_->setAccessibleName(tr("Profile by name"));
    profileList_->setModel(profiles_);
    profileList_->setItemDelegate(new ProfilesDelegate{profileList_});
    profileList_->setAccessibleName(tr("Profiles by drawing"));
    profileList_->setViewMode(QListView::IconMode);
    profileList_->setMovement(QListView::Static);
    profileList_->setResizeMode(QListView::Adjust);
    profileList_->setUniformItemSizes(true);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(profileName_);
    column->addWidget(profileList_, 1);
    return box;
}

QWidget* PickForm::buildLengths() {
    lengthName_->setPlaceholderText(tr("length or teeth"));
    lengthName_->setAccessibleName(tr("Length or teeth"));
    lengthList_->setModel(lengths_);
    lengthList_->setAccessibleName(tr("Lengths that exist"));
    lengthList_->setUniformItemSizes(true);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(lengthName_);
    column->addWidget(lengthList_, 1);
    return box;
}

QWidget* PickForm::buildWidths() {
    widthText_->setPlaceholderText(tr("width or ribs"));
    widthText_->setAccessibleName(tr("Width or ribs"));
    widthList_->setAccessibleName(tr("Usual widths"));
    quantity_->setRange(1, MostBelts);
    quantity_->setPrefix(tr("belts: "));
    quantity_->setAccessibleName(tr("How many belts"));
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(widthText_);
    column->addWidget(widthList_, 1);
    column->addWidget(quantity_);
    return box;
}

void PickForm::connectAll() {
    connect(profileName_, &QLineEdit::textEdited, this, &PickForm::findProfile);
    connect(lengthName_, &QLineEdit::textEdited, this, &PickForm::findLength);
    connect(profileList_->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &PickForm::profileChanged);
    connect(lengthList_->selectionModel(), &QItemSelectionModel::currentChanged, this, &PickForm::tell);
    connect(widthText_, &QLineEdit::textEdited, this, &PickForm::tell);
    connect(widthList_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0 && !showing_) setWidth(widths_[static_cast<std::size_t>(row)]);
    });
    connect(quantity_, &QSpinBox::valueChanged, this, &PickForm::tell);
}

void PickForm::refresh() {
    const QScopedValueRollback quiet{showing_, true};
    std::vector<std::string> kept;
    here_.clear();
    session_.attempt([&] {
        std::map<store::BeltId, store::StockedBelt> belts;
        for (auto& belt : store::Catalogue{session_.shop().connection}.all()) {
            kept.push_back(belt.belt.profile);
            belts.emplace(belt.id, std::move(belt));
        }
        for (const auto& piece : store::Pieces{session_.shop().connection}.all()) {
            const auto& belt = belts.at(piece.belt);
            const auto at = here_.try_emplace(belt.designation, Extent::none(belt.unit)).first;
            at->second = at->second + (piece.extent - piece.reserved);
        }
    });
    const belt::Profile* present = profile();
    const std::string name = present ? present->name : std::string{};
    profiles_->setProfiles(session_.tables().profiles(), kept);
    const int row = name.empty() ? -1 : profiles_->rowOf(name);
    if (row >= 0) profileList_->setCurrentIndex(profiles_->index(row, 0));
}

const belt::Profile* PickForm::profile() const {
    const int row = profileList_->currentIndex().row();
    return row < 0 ? nullptr : &profiles_->profile(row);
}

std::optional<belt::Belt> PickForm::belt() const {
    const int row = lengthList_->currentIndex().row();
    if (row < 0) return std::nullopt;
    return lengths_->belt(row);
}

std::optional<Extent> PickForm::width() const {
    const belt::Profile* of = profile();
    if (!of) return std::nullopt;
    const auto read = readExtent(widthText_->text().toStdString(), of->unit());
    if (!read || read->isNone()) return std::nullopt;
    return *read;
}

void PickForm::profileChanged() {
    const belt::Profile* chosen = profile();
    if (!chosen) return;
    {
        const QScopedValueRollback quiet{showing_, true};
        if (!profileName_->hasFocus()) profileName_->setText(text(chosen->name));
        lengths_->setLengths(*chosen, session_.tables().lengths(chosen->name), here_);
        fillWidths(*chosen);
    }
    tell();
}

void PickForm::fillWidths(const belt::Profile& of) {
    widthList_->clear();
    widths_.clear();
    for (const auto& width : session_.tables().widths(of.name)) {
        widths_.push_back(width.extent);
        widthList_->addItem(shown(width.extent));
    }
}

void PickForm::findProfile(const QString& typed) {
    for (int row = 0; row < profiles_->rowCount(); ++row)
        if (text(profiles_->profile(row).name).startsWith(typed, Qt::CaseInsensitive)) {
            profileList_->setCurrentIndex(profiles_->index(row, 0));
            return;
        }
}

void PickForm::findLength(const QString& typed) {
    const int row = lengths_->rowOfText(typed.trimmed());
    if (row >= 0) lengthList_->setCurrentIndex(lengths_->index(row, 0));
}

void PickForm::setWidth(Extent extent) {
    widthText_->setText(shownNumber(extent));
    tell();
}

void PickForm::tell() {
    if (showing_ || !profile()) return;
    const auto chosen = belt();
    if (!chosen) {
        emit picked(text(profile()->name));
        return;
    }
    const belt::Reading reading{*chosen, width(), quantity_->value(), profile()->doubleSided, {}, {}, {}, {}};
    emit picked(wordsFor(reading, session_.tables()).value_or(text(belt::designation(reading.belt))));
}

void PickForm::show(const Inquiry& inquiry) {
    const belt::Reading* reading = inquiry.reading();
    if (!reading) return;
    const QScopedValueRollback quiet{showing_, true};
    const int row = profiles_->rowOf(reading->belt.profile);
    if (row < 0) return;
    profileList_->setCurrentIndex(profiles_->index(row, 0));
    const int length = lengths_->rowOf(reading->belt);
    if (length >= 0) {
        lengthList_->setCurrentIndex(lengths_->index(length, 0));
        if (!lengthName_->hasFocus())
            lengthName_->setText(lengths_->index(length, 0).data(LengthsModel::CodeRole).toString());
    }
    if (reading->width && !widthText_->hasFocus()) widthText_->setText(shownNumber(*reading->width));
    quantity_->setValue(static_cast<int>(std::min<std::int64_t>(reading->quantity, MostBelts)));
}

void PickForm::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape)
        emit done();
    else
        QWidget::keyPressEvent(event);
}

} // namespace riband::ui
