#include "ui/counter/understood_strip.h"

#include "ui/desk/labels.h"
#include "ui/drawing/tooth.h"
#include "ui/words/identify_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStringList>

namespace riband::ui {

namespace {
/// To a thousandth: enough to tell 9.425 from 9.525.
QString pitchOf(const belt::Profile& profile) {
    return shown(Length::micrometres((profile.pitch.inNanometres() + 500) / 1000));
}
} // namespace

QString lookAlikeWarning(const std::string& profile, const belt::Tables& tables) {
    QStringList names;
    const belt::Profile* own = tables.profile(profile);
    for (const belt::Profile* other :
         tables.lookAlikes(profile)) // who does not know the name knows its pitch
        names << (own && other->pitch != own->pitch ? UnderstoodStrip::tr("%1 (pitch %2)", "profile, pitch")
                                                          .arg(text(other->name), pitchOf(*other))
                                                    : text(other->name));
    if (names.isEmpty()) return {};
    if (names.size() == 1) return UnderstoodStrip::tr("not for %1 pulleys").arg(names.front());
    const QString last = names.takeLast();
    return UnderstoodStrip::tr("not for %1 or %2 pulleys").arg(names.join(QStringLiteral(", ")), last);
}

UnderstoodStrip::UnderstoodStrip(const belt::Tables& tables, QWidget* parent)
    : QWidget{parent}, tables_{tables}, tooth_{new ToothWidget}, beware_{label({}, "warn")}, remarks_{label(
                                                                                                 {},
                                                                                                 "remark")} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(3 * step);
    tooth_->setFixedSize(tooth_->sizeHint());
    row->addWidget(tooth_, 0, Qt::AlignTop);
    profile_ = addPart(row, false);
    length_ = addPart(row, true);
    width_ = addPart(row, true);
    quantity_ = addPart(row, true);
    auto* warnings = new QVBoxLayout;
    warnings->setSpacing(2);
    for (QLabel* words : {beware_, remarks_}) {
        words->setWordWrap(true);
        words->setAlignment(Qt::AlignRight | Qt::AlignTop);
        warnings->addWidget(words);
    }
    warnings->addStretch();
    row->addLayout(warnings, 1);
    clear();
}

UnderstoodStrip::Part UnderstoodStrip::addPart(QHBoxLayout* row, bool divided) {
    if (divided) {
        QFrame* divider = surface("line");
        divider->setFixedWidth(1);
        divider->setFixedHeight(44);
        divider->setStyleSheet(QStringLiteral("max-height: 44px; min-height: 44px;"));
        row->addWidget(divider, 0, Qt::AlignTop);
    }
    Part part{new QWidget, label({}, "head"), label({}, "remark")};
    auto* column = new QVBoxLayout{part.box};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(part.main);
    column->addWidget(part.remark);
    column->addStretch();
    row->addWidget(part.box);
    return part;
}

void UnderstoodStrip::show(const belt::Reading& reading, const QString& made, const QStringList& hard) {
    const belt::Profile* profile = tables_.profile(reading.belt.profile);
    if (!profile) return clear();
    tooth_->show(profile);
    profile_.main->setText(text(profile->name));
    profile_.remark->setText(text(profile->standard));
    showSizes(reading, *profile);
    quantity_.main->setText(tr("%n belts", nullptr, static_cast<int>(reading.quantity)));
    quantity_.remark->setText(tr("one order line"));
    showRemarks(reading, made, hard);
    setVisible(true);
}

void UnderstoodStrip::showSizes(const belt::Reading& reading, const belt::Profile& profile) {
    const belt::Belt& belt = reading.belt;
    length_.main->setText(belt.teeth ? tr("%n teeth", nullptr, static_cast<int>(belt.teeth->count()))
                                     : shown(belt.length));
    length_.remark->setText(belt.teeth ? shown(belt.length) : tr("effective length"));
    if (!reading.width) {
        width_.main->setText(profile.ribbed() ? tr("how many ribs?") : tr("how wide?"));
        width_.remark->clear();
        return;
    }
    width_.main->setText(profile.ribbed() ? shown(*reading.width) : tr("%1 wide").arg(shown(*reading.width)));
    if (profile.ribbed()) {
        const Width wide = reading.width->shownWidth(Width::micrometres(profile.pitch.inNanometres() / 1000));
        width_.remark->setText(tr("%1, cut in the groove").arg(shown(Extent{wide})));
        return;
    }
    const auto tolerance = tables_.widthTolerance(belt, reading.width->width());
    width_.remark->setText(tolerance ? tr("%1 allowed").arg(shown(*tolerance)) : tr("no tolerance known"));
    width_.remark->setToolTip(tolerance ? text(tolerance->standard) : QString{});
}

void UnderstoodStrip::showRemarks(const belt::Reading& reading, const QString& made,
                                  const QStringList& hard) {
    QStringList warnings = hard;
    if (const QString alike = lookAlikeWarning(reading.belt.profile, tables_); !alike.isEmpty())
        warnings << alike;
    beware_->setText(warnings.join(QLatin1Char('\n')));
    QStringList remarks;
    for (const auto remark : reading.remarks)
        remarks << say(remark, reading);
    if (const belt::Profile* profile = tables_.profile(reading.belt.profile))
        if (const QString supply = say(belt::identify::supplyOf(*profile, false, tables_)); !supply.isEmpty())
            remarks << supply;
    if (!made.isEmpty()) remarks << made;
    remarks_->setText(remarks.join(QLatin1Char('\n')));
}

void UnderstoodStrip::clear() {
    tooth_->show(nullptr);
    for (QLabel* words : {profile_.main, profile_.remark, length_.main, length_.remark, width_.main,
                          width_.remark, quantity_.main, quantity_.remark, beware_, remarks_})
        words->clear();
    setVisible(false);
}

} // namespace riband::ui
