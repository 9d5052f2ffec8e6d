#include "ui/rack/rack_reader.h"

#include "ui/desk/apart.h"

namespace riband::ui {

void RackReader::read() {
    using Rows = std::shared_ptr<std::vector<shop::RackRow>>;
    const auto asked = std::make_shared<int>();
    asked_ = asked;
    readApart<Rows>(
        session_, this,
        [](const shop::Shop& shop) { return std::make_shared<std::vector<shop::RackRow>>(shop::rack(shop)); },
        [this, asked](const Rows& rows) {
            if (asked != asked_) return; // something changed in between and it was asked again
            asked_.reset();
            emit done(rows);
        });
}

} // namespace riband::ui
