#include "ui/which/gauge_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/which/card_outline.h"
#include "ui/which/gauge_view.h"
#include "ui/which/screen_scale.h"
#include "ui/words/tr.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr QSize gaugeSize{1240, 690};

/// Each once; double-sided ones have the tooth of their single-sided one.
std::vector<const belt::Profile*> inOrder(const belt::Tables& tables, const std::vector<std::string>& first) {
    std::vector<const belt::Profile*> profiles;
    const auto add = [&](const belt::Profile* profile) {
        if (profile && profile->doubleSided) profile = tables.profile(profile->base);
        if (profile && std::find(profiles.begin(), profiles.end(), profile) == profiles.end())
            profiles.push_back(profile);
    };
    for (const std::string& name : first)
        add(tables.profile(name));
    for (const belt::Profile& profile : tables.profiles())
        add(&profile);
    return profiles;
}

} // namespace

GaugeDialog::GaugeDialog(const belt::Tables& tables, const std::vector<std::string>& first, QWidget* parent)
    : QDialog{parent}, profiles_{inOrder(tables, first)}, stack_{new QStackedWidget},
      outline_{new CardOutline}, view_{new GaugeView}, scroll_{new QScrollArea}, find_{new QLineEdit},
      about_{label({})} {
    setWindowTitle(tr("Gauge on the screen"));
    setWhatsThis(tr("Hold the belt against the screen: teeth and pitch stand there at true size. Once for "
                    "each screen its scale is set against a bank card."));
    setObjectName(QStringLiteral("gauge"));
    buildView();
    resize(gaugeSize);
    if (screenScale::kept(*screen()))
        showGauge();
    else
        calibrate();
}

void GaugeDialog::buildView() {
    stack_->addWidget(buildGauge());
    stack_->addWidget(buildCalibration());
    about_->setWordWrap(true);
    anew_ = new KeyButton{tr("Set the scale anew"), Qt::Key_F6};
    connect(anew_, &QAbstractButton::clicked, this, &GaugeDialog::calibrate);
    keep_ = new KeyButton{tr("It is as wide as the card"), {}, KeyButton::Rank::Likely};
    keep_->setShownKey(Qt::Key_Return);
    keep_->setFocusPolicy(Qt::TabFocus);
    connect(keep_, &QAbstractButton::clicked, this, &GaugeDialog::keepScale);
    auto* keys = new QHBoxLayout;
    keys->addWidget(anew_);
    keys->addStretch();
    keys->addWidget(keep_);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(5 * step, 4 * step, 5 * step, 4 * step);
    column->setSpacing(3 * step);
    column->addWidget(about_);
    column->addWidget(stack_, 1);
    column->addLayout(keys);
}

QWidget* GaugeDialog::buildGauge() {
    find_->setPlaceholderText(tr("go to a profile, for example H8M"));
    find_->setAccessibleName(tr("Go to a profile"));
    connect(find_, &QLineEdit::textEdited, this, &GaugeDialog::find);
    scroll_->setWidget(view_);
    scroll_->setWidgetResizable(true);
    scroll_->setAccessibleName(tr("Gauge"));
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(find_);
    column->addWidget(scroll_, 1);
    return box;
}

QWidget* GaugeDialog::buildCalibration() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout{box};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(outline_, 1);
    return box;
}

bool GaugeDialog::calibrating() const { return stack_->currentIndex() == 1; }

void GaugeDialog::calibrate() {
    outline_->setScale(screenScale::kept(*screen()).value_or(screenScale::told(*screen())));
    about_->setText(tr(
        "Lay any bank card (ID-1, 85.60 mm wide) with its left edge on the left line. ← and → move the right "
        "line until it stands at the card's right edge; with Ctrl by five pixels, with Shift by half a "
        "one. The scale is kept for this screen."));
    stack_->setCurrentIndex(1);
    anew_->setVisible(false);
    keep_->setVisible(true);
    keep_->setShownKey(Qt::Key_Return);
    outline_->setFocus();
}

void GaugeDialog::keepScale() {
    screenScale::keep(*screen(), outline_->scale());
    showGauge();
}

void GaugeDialog::showGauge() {
    about_->setText(tr(
        "Hold the belt against the screen, teeth down, on its row: the right one stays in step to the last "
        "mark. Then compare the form from the side. If a bank card is not 85.60 mm by these rules, set the "
        "scale anew."));
    view_->show(profiles_, *screenScale::kept(*screen()));
    stack_->setCurrentIndex(0);
    anew_->setVisible(true);
    keep_->setVisible(false);
    find_->setFocus();
}

void GaugeDialog::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && calibrating())
        keepScale();
    else if (!enter) // in the field it would only close the dialog
        QDialog::keyPressEvent(event);
}

void GaugeDialog::find(const QString& typed) {
    const QString wanted = typed.trimmed();
    for (const belt::Profile* profile : profiles_)
        if (!wanted.isEmpty() && text(profile->name).startsWith(wanted, Qt::CaseInsensitive)) {
            scroll_->verticalScrollBar()->setValue(static_cast<int>(view_->topOf(profile->name)));
            return;
        }
}

} // namespace riband::ui
