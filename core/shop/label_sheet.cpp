#include "core/shop/label_sheet.h"

namespace riband::shop {

namespace {

struct Paper {
    Width wide, high;
};

Paper paperOf(const store::ShopSettings& settings) {
    if (settings.paper == "Letter") return {Width::micrometres(215'900), Width::micrometres(279'400)};
    return {Width::millimetres(210), Width::millimetres(297)}; // A4, ISO 216
}

/// The first stands behind the edge, each other behind a gap.
int fitting(Width side, Width edge, Width label, Width gap) {
    const std::int64_t room = side.inMicrometres() - edge.inMicrometres() + gap.inMicrometres();
    const std::int64_t each = label.inMicrometres() + gap.inMicrometres();
    return room < each ? 0 : static_cast<int>(room / each);
}

} // namespace

LabelsThatFit labelsThatFit(const store::ShopSettings& settings) {
    const store::LabelStock& labels = settings.labels;
    const Paper paper = paperOf(settings);
    return {fitting(paper.wide, labels.left, labels.width, labels.across),
            fitting(paper.high, labels.top, labels.height, labels.down)};
}

bool labelsFit(const store::ShopSettings& settings) {
    if (!settings.labels.sheet) return true;
    const LabelsThatFit most = labelsThatFit(settings);
    return settings.labels.columns <= most.columns && settings.labels.rows <= most.rows;
}

} // namespace riband::shop
