#include "ui/rack/goods_line_form.h"

#include "core/belt/reader.h"
#include "core/measure/text.h"
#include "core/shop/kept.h"
#include "core/shop/limits.h"
#include "core/shop/place_advice.h"
#include "ui/desk/completion.h"
#include "ui/desk/field_words.h"
#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/rack/rack_words.h"
#include "ui/which/which_dialog.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QAction>
#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int MostSleeves = 500;
constexpr qsizetype ShortestCode = 8;

QStringList shownPlaces(store::Connection& connection) {
    QStringList list;
    for (const auto& place : store::Pieces{connection}.places())
        list << text(place);
    return list;
}

/// What scanners read off a carton: long, without spaces, nearly all of it digits.
bool looksScanned(const QString& text) {
    const auto digits = std::count_if(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
    return text.size() >= ShortestCode && !text.contains(QLatin1Char(' ')) && digits * 5 >= text.size() * 4;
}

} // namespace

GoodsLineForm::GoodsLineForm(Session& session, For what, QWidget* parent)
    : QWidget{parent}, session_{session}, belt_{new QLineEdit}, width_{new QLineEdit},
      labelled_{new QLineEdit}, cost_{new QLineEdit}, batch_{new QLineEdit}, made_{new QLineEdit},
      place_{new QLineEdit}, count_{new QSpinBox}, kind_{new QComboBox}, understood_{label({}, "remark")},
      costless_{label({}, "warn")}, advice_{label({}, "remark")}, wrong_{new FieldWords} {
    buildView(what);
    connect(belt_, &QLineEdit::textChanged, this, &GoodsLineForm::understand);
    watchFields();
    for (QLineEdit* field : {width_, labelled_, cost_, made_})
        connect(field, &QLineEdit::textChanged, this, &GoodsLineForm::check);
    connect(width_, &QLineEdit::editingFinished, this, &GoodsLineForm::advise);
    connect(kind_, &QComboBox::currentIndexChanged, this, &GoodsLineForm::advise);
    connect(width_, &QLineEdit::textChanged, this, &GoodsLineForm::propose);
    connect(kind_, &QComboBox::currentIndexChanged, this, &GoodsLineForm::propose);
    auto* which = new QAction{tr("Which belt is this?"), this};
    which->setShortcut(Qt::CTRL | Qt::Key_W);
    connect(which, &QAction::triggered, this, &GoodsLineForm::identify);
    addAction(which);
    understand();
}

/// A sleeve without a label, or with one that can't be read: its belt is measured.
void GoodsLineForm::identify() {
    if (!which_) {
        which_ = new WhichDialog{session_, this};
        connect(which_, &WhichDialog::taken, this, [this](const MeasuredBelt& measured) {
            belt_->setText(beltWords(measured));
            belt_->setFocus();
        });
    }
    which_->bringFor(tr("the line", "of a delivery"));
}

void GoodsLineForm::watchFields() {
    const auto width = [this](const QString& typed) { return wrongWidth(typed); };
    wrong_->watch(*belt_, [this](const QString& typed) { return wrongBelt(typed); });
    wrong_->watch(*width_, width);
    wrong_->watch(*labelled_, orEmpty(width));
    wrong_->watch(*cost_, [this](const QString& typed) {
        const QString wrong = orEmpty([this](const QString& amount) {
            return wrongAmount(amount, session_.currency(), shop::dearestSleeve);
        })(typed);
        if (!wrong.isEmpty() || saysCost() || costLeftOut_ || !usualCost()) return wrong;
        return tr(
            "No cost is typed, and the shop knows what this belt costs. Type it, or press Enter once more "
            "to go on without.");
    });
    wrong_->watch(*place_, [this](const QString& typed) {
        bool can = true;
        session_.attempt([&] { can = shop::canBePlace(session_.shop(), typed.toStdString()); });
        return can ? QString{} : wrongPlace(typed.toStdString());
    });
    wrong_->watch(*made_, orEmpty([this](const QString& typed) {
        return wrongDay(typed, session_.today(), shop::lastMade(session_.shop()));
    }));
}

QString GoodsLineForm::wrongBelt(const QString& typed) const {
    if (known_) return {};
    if (typed.isEmpty())
        return tr("Type profile and length, for example H8M 1200, or scan the supplier's label.");
    if (looksScanned(typed))
        return tr("The code is tied to no belt yet. Press Enter, then say the belt once.");
    const auto read = belt::readBelt(typed.toStdString(), session_.tables());
    return read ? QString{} : say(read.reason(), session_.tables());
}

/// Judged once the belt is known: it says whether ribs are counted.
QString GoodsLineForm::wrongWidth(const QString& typed) const {
    return unit() ? ui::wrongExtent(typed, *unit(), shop::widestPiece(*unit())) : QString{};
}

void GoodsLineForm::addRow(QFormLayout& form, const QString& name, QWidget* field, const char* object) {
    field->setAccessibleName(QString{name}.remove('&'));
    field->setObjectName(QString::fromLatin1(object));
    form.addRow(name, field);
}

void GoodsLineForm::buildView(For what) {
    belt_->setPlaceholderText(tr("type, scan, or measure (Ctrl+W)"));
    made_->setPlaceholderText(tr("day, if known"));
    labelled_->setPlaceholderText(tr("if not what was measured"));
    setFocusProxy(belt_);
    count_->setRange(1, MostSleeves);
    for (const auto kind :
         {cutting::PieceKind::Sleeve, cutting::PieceKind::Remnant, cutting::PieceKind::Ready})
        kind_->addItem(say(kind), static_cast<int>(kind));
    session_.attempt([&] {
        offerBelow(*place_, new QCompleter{shownPlaces(session_.shop().connection), place_});
    });
    understood_->setWordWrap(true);
    costless_->setWordWrap(true);
    costless_->setObjectName(QStringLiteral("costless"));
    costless_->setMinimumHeight(pressHeight); // of its two lines: the fields below stay where they are
    advice_->setWordWrap(true);
    auto* form = new QFormLayout{this};
    form->setContentsMargins(0, 0, 0, 0);
    addRow(*form, tr("&Belt"), belt_, "belt");
    form->addRow(QString{}, understood_);
    addRow(*form, tr("H&ow many"), count_, "count");
    addRow(*form, what == For::Arrived ? tr("&Width or ribs, measured") : tr("&Width or ribs"), width_,
           "width");
    addRow(*form, tr("La&bel says"), labelled_, "labelled");
    addRow(*form, tr("Cost of &each"), cost_, "cost");
    form->addRow(costless_);
    addRow(*form, tr("Maker's b&atch"), batch_, "batch");
    addRow(*form, tr("&Made on"), made_, "made");
    addRow(*form, tr("&Place"), place_, "place");
    form->addRow(QString{}, advice_);
    addRow(*form, tr("&Kind"), kind_, "kind");
    form->addRow(wrong_);
    if (what == For::Arrived) return;
    for (QWidget* field : std::initializer_list<QWidget*>{labelled_, batch_, made_, place_, advice_, kind_})
        form->setRowVisible(field, false);
}

void GoodsLineForm::understand() {
    known_.reset();
    const QString typed = belt_->text().trimmed();
    if (typed.isEmpty()) {
        understood_->setText(
            code_.isEmpty() ? QString{} : tr("Say the belt: the code %1 will be tied to it.").arg(code_));
        return check();
    }
    const auto read = belt::readBelt(typed.toStdString(), session_.tables());
    if (read) {
        known_ = *read;
        const QString found = tr("%1: %2 long").arg(text(belt::designation(*read)), shown(read->length));
        understood_->setText(code_.isEmpty() ? found : tr("%1 · code %2").arg(found, code_));
    } else if (looksScanned(typed)) {
        std::optional<shop::KnownCode> meaning;
        session_.attempt([&] { meaning = shop::knownCode(session_.shop(), typed.toStdString()); });
        if (meaning) return scanned(*meaning, typed);
    }
    if (!known_) understood_->clear();
    if (known_ && !width_->isModified()) width_->setText(shownNumber(session_.tables().usualSleeve(*known_)));
    advise();
    propose();
    check();
}

void GoodsLineForm::scanned(const shop::KnownCode& known, const QString& code) {
    code_ = code;
    width_->setModified(false);
    belt_->setText(text(known.belt.designation)); // understood anew
    if (known.extent) width_->setText(shownNumber(*known.extent));
    check();
}

/// Fills in the place that suits, unless a person wrote one.
void GoodsLineForm::advise() {
    const auto extent = extentIn(*width_);
    std::vector<shop::PlaceAdvice> places;
    std::string best;
    if (known_ && extent)
        session_.attempt([&] {
            const auto kept = store::Catalogue{session_.shop().connection}.find(*known_);
            const auto kind = static_cast<cutting::PieceKind>(kind_->currentData().toInt());
            if (kept) places = shop::advisePlaces(session_.shop(), *kept, kind, *extent);
            best = shop::placeFor(session_.shop(), *known_, kind, *extent, beside_);
        });
    advice_->setText(saidOf(places));
    if (!place_->isModified()) place_->setText(text(best));
}

/// What a sleeve of this width cost last.
std::optional<Money> GoodsLineForm::usualCost() const {
    const auto extent = extentIn(*width_);
    const auto kind = static_cast<cutting::PieceKind>(kind_->currentData().toInt());
    if (!known_ || !extent || kind != cutting::PieceKind::Sleeve) return std::nullopt;
    std::optional<store::StockedBelt> kept;
    session_.attempt([&] { kept = store::Catalogue{session_.shop().connection}.find(*known_); });
    if (!kept || kept->sleeveCost <= Money::minor(0) || kept->newSleeve.isNone()) return std::nullopt;
    return Money::minor(
        roundedQuotient(kept->sleeveCost.inMinor() * extent->count(), kept->newSleeve.count()));
}

/// Fills in what it cost last, for who is told what stock costs, unless a person wrote something.
void GoodsLineForm::propose() {
    if (cost_->isModified()) return;
    const auto cost = session_.costsIn() ? usualCost() : std::nullopt;
    cost_->setText(cost ? text(printMoney(*cost, session_.currency())) : QString{});
}

bool GoodsLineForm::saysCost() const {
    const auto cost = readMoney(cost_->text().toStdString(), session_.currency());
    return cost && *cost > Money::minor(0);
}

/// That a cost is not known is said before the line is added, with what will be missing then.
void GoodsLineForm::sayCostless() {
    const bool costless = known_ && !saysCost();
    costless_->setText(costless
                           ? tr("No cost: what is cut from it will be in no margin, and it has no worth in "
                                "money. Type what one cost if the note or the invoice says it.")
                           : QString{});
}

std::optional<Unit> GoodsLineForm::unit() const {
    const belt::Profile* profile = known_ ? session_.tables().profile(known_->profile) : nullptr;
    return profile ? std::optional{profile->unit()} : std::nullopt;
}

std::optional<Extent> GoodsLineForm::extentIn(const QLineEdit& field) const {
    if (!unit()) return std::nullopt;
    const auto extent = readExtent(field.text().toStdString(), *unit());
    if (!extent || extent->isNone()) return std::nullopt;
    return *extent;
}

std::optional<shop::Delivery> GoodsLineForm::line() const {
    if (!wrong_->right()) return std::nullopt;
    const auto extent = extentIn(*width_);
    const auto labelled = extentIn(*labelled_);
    const auto cost = readMoney(cost_->text().toStdString(), session_.currency());
    const auto made = readDate(made_->text().trimmed().toStdString());
    return shop::Delivery{.belt = *known_,
                          .sleeves = count_->value(),
                          .extent = *extent,
                          .costEach = cost ? *cost : Money::minor(0),
                          .batch = batch_->text().trimmed().toStdString(),
                          .made = made,
                          .place = place_->text().trimmed().toStdString(),
                          .kind = static_cast<cutting::PieceKind>(kind_->currentData().toInt()),
                          .labelled = labelled == extent ? std::nullopt : labelled,
                          .supplierCode = code_.toStdString()};
}

std::optional<shop::Delivery> GoodsLineForm::demand() {
    if (!known_ && looksScanned(belt_->text().trimmed())) {
        next();
        return std::nullopt;
    }
    if (wrong_->demand()) return line();
    // That the cost is empty is said once, when nothing else is wrong.
    costLeftOut_ = true;
    if (!wrong_->right()) costLeftOut_ = false;
    return std::nullopt;
}

void GoodsLineForm::lieBeside(std::vector<shop::Delivery> lines) { beside_ = std::move(lines); }

bool GoodsLineForm::isEmpty() const { return belt_->text().trimmed().isEmpty(); }

void GoodsLineForm::check() {
    sayCostless();
    wrong_->look();
    emit edited();
}

void GoodsLineForm::show(const shop::ExpectedGoods& goods) {
    next();
    belt_->setText(text(belt::designation(goods.belt)));
    width_->setText(shownNumber(goods.extent));
    width_->setModified(true);
    count_->setValue(std::clamp(goods.sleeves, 1, MostSleeves));
    const bool costs = goods.costEach > Money::minor(0);
    cost_->setText(costs ? text(printMoney(goods.costEach, session_.currency())) : QString{});
    cost_->setModified(costs);
    propose();
    costLeftOut_ = !costs; // by who noted it
    advise();
    check();
}

void GoodsLineForm::show(const shop::Delivery& line) {
    show(shop::ExpectedGoods{line.belt, line.sleeves, line.extent, line.costEach});
    kind_->setCurrentIndex(kind_->findData(static_cast<int>(line.kind)));
    labelled_->setText(line.labelled ? shownNumber(*line.labelled) : QString{});
    batch_->setText(text(line.batch));
    made_->setText(line.made ? text(printDate(*line.made)) : QString{});
    place_->setText(text(line.place));
    place_->setModified(true);
    code_ = text(line.supplierCode);
    understand();
    check();
}

void GoodsLineForm::next() {
    // A code that was scanned and not known waits for its belt.
    const QString typed = belt_->text().trimmed();
    code_ = !known_ && looksScanned(typed) ? typed : QString{};
    for (QLineEdit* field : {belt_, width_, labelled_, cost_, place_}) {
        field->clear();
        field->setModified(false);
    }
    count_->setValue(1);
    costLeftOut_ = false;
    advice_->clear();
    wrong_->begin();
    understand();
    belt_->setFocus();
}

} // namespace riband::ui
