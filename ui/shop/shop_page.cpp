#include "ui/shop/shop_page.h"

#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/places_part.h"
#include "ui/shop/advice_part.h"
#include "ui/shop/belts_part.h"
#include "ui/shop/book_part.h"
#include "ui/shop/count_part.h"
#include "ui/shop/cutter_part.h"
#include "ui/shop/entry.h"
#include "ui/shop/labels_part.h"
#include "ui/shop/name_part.h"
#include "ui/shop/people_part.h"
#include "ui/shop/price_part.h"
#include "ui/shop/rules_part.h"
#include "ui/shop/shelf_life_part.h"

#include <QAction>
#include <QHBoxLayout>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace riband::ui {

namespace {
constexpr int TitlesWidth = 240;
constexpr int MostWidth = 860; // lines of a form are not read any better for being longer
} // namespace

ShopPage::ShopPage(Session& session, QWidget* parent)
    : Page{parent}, session_{session}, titles_{new QListWidget}, stack_{new QStackedWidget} {
    setObjectName(QStringLiteral("shop"));
    buildParts();
    buildActions();
    buildView();
    connect(titles_, &QListWidget::currentRowChanged, stack_, &QStackedWidget::setCurrentIndex);
    titles_->setCurrentRow(0);
    showSettings();
}

void ShopPage::addPart(const QString& title, QWidget* part, Fills fills) {
    titles_->addItem(title);
    auto* holder = new QWidget;
    auto* column = new QVBoxLayout{holder};
    column->setContentsMargins(0, 0, 0, 0);
    part->setMaximumWidth(MostWidth);
    column->addWidget(part, fills == Fills::All ? 1 : 0);
    if (fills == Fills::Top) {
        part->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
        column->addStretch();
    }
    stack_->addWidget(holder);
}

void ShopPage::buildParts() {
    for (SettingsPart* part : std::initializer_list<SettingsPart*>{
             new NamePart, new LabelsPart, new PricePart{session_}, new RulesPart, new AdvicePart{session_},
             new CountPart, new CutterPart, new ShelfLifePart{session_}}) {
        settings_.push_back(part);
        addPart(part->title(), part, dynamic_cast<CutterPart*>(part) ? Fills::All : Fills::Top);
        connect(part, &SettingsPart::edited, this, [this] { setEdited(true); });
    }
    belts_ = new BeltsPart{session_};
    addPart(tr("Belts and widths"), belts_, Fills::All);
    places_ = new PlacesPart{session_};
    addPart(tr("Places"), places_, Fills::All);
    people_ = new PeoplePart{session_};
    addPart(tr("People"), people_, Fills::All);
    addPart(tr("Book and backup"), new BookPart{session_}, Fills::All);
}

void ShopPage::buildActions() {
    const auto act = [this](const QString& name, const QKeySequence& key, void (ShopPage::*does)()) {
        auto* action = new QAction{name, this};
        action->setShortcut(key);
        connect(action, &QAction::triggered, this, does);
        addAction(action);
        return action;
    };
    save_ = act(tr("Save"), QKeySequence::Save, &ShopPage::save);
    revert_ = act(tr("As before"), Qt::CTRL | Qt::Key_R, &ShopPage::revert);
}

void ShopPage::buildView() {
    titles_->setAccessibleName(tr("Parts of the shop"));
    auto* left = new QVBoxLayout;
    left->setSpacing(2 * step);
    left->addWidget(titles_, 1);
    left->addWidget(new KeyButton{save_, KeyButton::Rank::Likely});
    left->addWidget(new KeyButton{revert_});
    auto* side = new QWidget;
    side->setFixedWidth(TitlesWidth);
    left->setContentsMargins(0, 0, 0, 0);
    side->setLayout(left);
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(5 * step, 5 * step, 5 * step, 5 * step);
    row->setSpacing(6 * step);
    row->addWidget(side);
    row->addWidget(stack_, 1);
}

QString ShopPage::help() const {
    return tr("How this shop works: what stands on its papers, how it prices, what a cut loses, its cutters "
              "and their shafts, its belts, its places. Ctrl+S saves; what is on tickets already stays as it "
              "was planned.");
}

void ShopPage::refresh() {
    if (!edited_) showSettings();
    belts_->refresh();
    places_->refresh();
    people_->refresh();
}

void ShopPage::showSettings() {
    for (SettingsPart* part : settings_)
        part->show(session_.settings());
    setEdited(false);
}

void ShopPage::setEdited(bool edited) {
    edited_ = edited;
    save_->setEnabled(edited);
    revert_->setEnabled(edited);
}

void ShopPage::save() {
    store::ShopSettings settings = session_.settings();
    for (std::size_t i = 0; i < settings_.size(); ++i)
        if (!settings_[i]->write(settings)) {
            titles_->setCurrentRow(static_cast<int>(i));
            const QString field = Entry::firstWrong(*settings_[i]);
            session_.warn((field.isEmpty() ? settings_[i]->wrong() : field) + QLatin1Char(' ') +
                          tr("Nothing was saved."));
            return;
        }
    if (!session_.attempt([&] {
            for (const SettingsPart* part : settings_)
                part->keep(session_.shop());
            session_.save(settings);
        }))
        return;
    showSettings();
    session_.tell(tr("Saved."));
}

void ShopPage::revert() { showSettings(); }

} // namespace riband::ui
