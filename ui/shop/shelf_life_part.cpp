#include "ui/shop/shelf_life_part.h"

#include "core/shop/shelf_life.h"
#include "ui/desk/labels.h"

#include <QFormLayout>
#include <QSpinBox>

namespace riband::ui {

namespace {

QString nameOf(const std::string& body) {
    if (body == "rubber") return ShelfLifePart::tr("Rubber");
    return body == "polyurethane" ? ShelfLifePart::tr("Polyurethane") : ShelfLifePart::tr("EPDM");
}

} // namespace

ShelfLifePart::ShelfLifePart(Session& session, QWidget* parent) : SettingsPart{parent}, session_{session} {
    auto* form = new QFormLayout{this};
    auto* words =
        label(tr("How long a belt may lie from the day it was made, by its body, and how much an inspection "
                 "that finds it sound adds once. ISO 2230:2002 says 7 and 3 years for rubber, 5 and 2 for "
                 "polyurethane, 10 and 5 for EPDM. The body of a belt is set under Belts and widths."),
              "remark");
    words->setWordWrap(true);
    form->addRow(words);
    const auto field = [&](const QString& name, int least) {
        auto* spin = new QSpinBox;
        spin->setRange(least, shop::longestShelfLife);
        spin->setAccessibleName(name);
        connect(spin, &QSpinBox::valueChanged, this, &SettingsPart::edited);
        form->addRow(name, spin);
        return spin;
    };
    for (const char* body : shop::shelfBodies) {
        const QString name = nameOf(body);
        fields_.push_back({body, field(tr("%1, years", "body").arg(name), 1),
                           field(tr("%1, years more after an inspection", "body").arg(name), 0)});
    }
}

void ShelfLifePart::show(const store::ShopSettings&) {
    session_.attempt([&] {
        const shop::ShelfLife lives{session_.shop()};
        for (const Fields& each : fields_) {
            const store::ShelfYears life = lives.of(std::string{each.body});
            each.years->setValue(life.years);
            each.extension->setValue(life.extension);
        }
    });
}

/// They are kept beside the other settings, by `keep`.
bool ShelfLifePart::write(store::ShopSettings&) const { return true; }

void ShelfLifePart::keep(const shop::Shop& shop) const {
    store::ShelfLives lives;
    for (const Fields& each : fields_)
        lives[each.body] = {each.years->value(), each.extension->value()};
    shop::setShelfLives(shop, lives);
}

} // namespace riband::ui
