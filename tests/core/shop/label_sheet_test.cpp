#include "core/shop/label_sheet.h"

#include "tests/catch.h"

namespace riband::shop {

TEST_CASE("A sheet holds the labels that are whole on its paper", "[shop][labels]") {
    store::ShopSettings settings; // A4: 210 x 297 mm
    settings.labels = {Width::micrometres(63'500),
                       Width::millimetres(38),
                       3,
                       7,
                       Width::millimetres(7),
                       Width::millimetres(15),
                       Width::micrometres(2'500),
                       Width::millimetres(0),
                       true};
    // 7 + 3 x 63.5 + 2 x 2.5 = 202.5; 15 + 7 x 38 = 281
    CHECK(labelsThatFit(settings).columns == 3);
    CHECK(labelsThatFit(settings).rows == 7);
    CHECK(labelsFit(settings));
    settings.labels.rows = 8; // 319
    CHECK_FALSE(labelsFit(settings));
    settings.labels.rows = 7;
    settings.paper = "Letter"; // 279.4 high
    CHECK(labelsThatFit(settings).rows == 6);
    CHECK_FALSE(labelsFit(settings));
    settings.labels.sheet = false; // a roll
    CHECK(labelsFit(settings));
}

} // namespace riband::shop
