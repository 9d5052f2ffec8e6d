#include "ui/rack/places_part.h"

#include "core/shop/places.h"
#include "ui/desk/labels.h"
#include "ui/desk/paper_tray.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/place_dialog.h"
#include "ui/rack/rack_words.h"
#include "ui/words/tr.h"

#include <QAction>
#include <QCollator>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLocale>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {
enum Column { NameColumn, LevelColumn, PiecesColumn, BeltColumn, FrontColumn };
constexpr int NumberRole = Qt::UserRole;
} // namespace

PlacesPart::PlacesPart(Session& session, QWidget* parent)
    : QWidget{parent}, session_{session}, tree_{new QTreeWidget} {
    buildView();
    connect(tree_, &QTreeWidget::itemActivated, this, &PlacesPart::change);
}

void PlacesPart::buildView() {
    tree_->setHeaderLabels({tr("Place"), tr("Level"), tr("Pieces"), tr("Kept for"), tr("Reach")});
    tree_->headerItem()->setTextAlignment(PiecesColumn, Qt::AlignRight | Qt::AlignVCenter);
    tree_->setAccessibleName(tr("Places of the shop"));
    tree_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    tree_->setTabKeyNavigation(false);
    tree_->setExpandsOnDoubleClick(false);
    tree_->setUniformRowHeights(true);
    tree_->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    tree_->header()->setStretchLastSection(true);
    const auto act = [this](const QString& name, const QKeySequence& key, void (PlacesPart::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        addAction(action);
        return new KeyButton{action};
    };
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(act(tr("New place"), Qt::CTRL | Qt::Key_N, &PlacesPart::add));
    buttons->addWidget(act(tr("Change"), Qt::Key_F2, &PlacesPart::change));
    buttons->addWidget(act(tr("Label"), Qt::Key_F7, &PlacesPart::label));
    buttons->addWidget(act(tr("Print"), QKeySequence::Print, &PlacesPart::print));
    buttons->addWidget(act(tr("Take out"), Qt::CTRL | Qt::Key_Delete, &PlacesPart::remove));
    buttons->addStretch();
    auto* words = ui::label(
        tr("Where pieces lie. A place that is kept for a belt is proposed for nothing else; narrow remnants "
           "go within easy reach first. Shift and the arrows choose several, Ctrl+A all, for their labels."),
        "remark");
    words->setWordWrap(true);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(words);
    column->addWidget(tree_, 1);
    column->addLayout(buttons);
    setFocusProxy(tree_);
}

void PlacesPart::fill(QTreeWidgetItem& holder, const store::Place& place) {
    auto* item = new QTreeWidgetItem{&holder};
    item->setText(NameColumn, text(place.name));
    item->setText(LevelColumn, say(place.level));
    item->setText(PiecesColumn, place.pieces == 0 ? QString{} : QLocale{}.toString(place.pieces));
    item->setTextAlignment(PiecesColumn, Qt::AlignRight | Qt::AlignVCenter);
    if (place.fixedFor)
        item->setText(BeltColumn,
                      text(store::Catalogue{session_.shop().connection}.at(*place.fixedFor).designation));
    item->setText(FrontColumn, place.front ? tr("in front") : QString{});
    item->setData(NameColumn, NumberRole, static_cast<qlonglong>(place.id.value()));
    for (const store::Place& each : places_)
        if (each.parent == place.id) fill(*item, each);
}

void PlacesPart::refresh() {
    const store::Place* before = current();
    const auto kept = before ? std::optional{before->id} : std::nullopt;
    tree_->clear();
    session_.attempt([&] {
        places_ = store::Places{session_.shop().connection}.all();
        QCollator counting; // B3-2 before B3-10
        counting.setNumericMode(true);
        std::stable_sort(places_.begin(), places_.end(), [&](const auto& a, const auto& b) {
            return counting.compare(text(a.name), text(b.name)) < 0;
        });
        for (const store::Place& place : places_)
            if (!place.parent) fill(*tree_->invisibleRootItem(), place);
    });
    tree_->expandAll();
    QTreeWidgetItem* shown = tree_->topLevelItem(0);
    for (QTreeWidgetItem* each = shown; each; each = tree_->itemBelow(each))
        if (kept && each->data(NameColumn, NumberRole).toLongLong() == kept->value()) shown = each;
    if (shown) tree_->setCurrentItem(shown);
}

std::vector<store::Place> PlacesPart::chosen() const {
    std::vector<store::Place> chosen;
    for (const QTreeWidgetItem* item : tree_->selectedItems())
        for (const store::Place& place : places_)
            if (place.id.value() == item->data(NameColumn, NumberRole).toLongLong()) chosen.push_back(place);
    return chosen;
}

const store::Place* PlacesPart::current() const {
    const QTreeWidgetItem* item = tree_->currentItem();
    for (const store::Place& place : places_)
        if (item && place.id.value() == item->data(NameColumn, NumberRole).toLongLong()) return &place;
    return nullptr;
}

/// A new one stands beside the chosen one, until a person says otherwise.
void PlacesPart::add() {
    const store::Place* beside = current();
    ask({store::PlaceId{0},
         {},
         beside ? beside->parent : std::nullopt,
         beside ? beside->level : store::PlaceLevel::Bin,
         std::nullopt,
         false,
         0});
}

void PlacesPart::change() {
    if (const store::Place* place = current()) ask(*place);
}

void PlacesPart::ask(store::Place place) {
    PlaceDialog dialog{session_, place, this};
    std::optional<shop::PlaceFault> fault;
    do {
        if (dialog.exec() != QDialog::Accepted) return;
        const bool done = session_.attempt([&] {
            fault = place.id.value() == 0 ? shop::addPlace(session_.shop(), dialog.place())
                                          : shop::changePlace(session_.shop(), dialog.place());
        });
        if (!done) return;
        if (fault) session_.warn(say(*fault)); // somebody else was faster
    } while (fault);
    session_.touch();
    refresh();
    // The next key is meant for the place that was just named.
    for (QTreeWidgetItem* item :
         tree_->findItems(text(dialog.place().name), Qt::MatchExactly | Qt::MatchRecursive))
        tree_->setCurrentItem(item);
    session_.tell(tr("%1 is saved.").arg(text(dialog.place().name)));
}

void PlacesPart::remove() {
    const store::Place* place = current();
    if (!place) return;
    const QString name = text(place->name);
    std::optional<shop::PlaceFault> fault;
    if (!session_.attempt([&] { fault = shop::removePlace(session_.shop(), place->id); })) return;
    if (fault) return session_.warn(name + QStringLiteral(": ") + say(*fault));
    session_.touch();
    refresh();
    session_.tell(tr("%1 is taken out.").arg(name));
}

void PlacesPart::label() {
    if (chosen().empty()) return;
    session_.attempt(
        [&] { session_.tell(tr("The labels are in %1.").arg(PaperTray{session_}.placeLabels(chosen()))); });
}

void PlacesPart::print() {
    session_.attempt([&] { PaperTray{session_}.printPlaceLabels(chosen(), this); });
}

PlacesDialog::PlacesDialog(Session& session, QWidget* parent) : QDialog{parent} {
    setWindowTitle(tr("Places"));
    setWhatsThis(tr("The places of the rack as a tree: rooms, bays, shelves, bins, with how many pieces lie "
                    "in each, the belt that one is kept for, and which are within easy reach."));
    auto* part = new PlacesPart{session};
    auto* fault = ui::label({}, "warn");
    fault->setWordWrap(true);
    connect(&session, &Session::warned, fault, &QLabel::setText);
    connect(&session, &Session::told, fault, &QLabel::clear);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(4 * step, 4 * step, 4 * step, 4 * step);
    column->addWidget(part, 1);
    column->addWidget(fault);
    resize(860, 620);
    part->refresh();
    part->setFocus();
}

} // namespace riband::ui
