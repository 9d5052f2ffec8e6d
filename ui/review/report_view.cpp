#include "ui/review/report_view.h"

namespace riband::ui {

namespace {
constexpr int trendHeight = 260;
constexpr double leastWidth = 800; ///< of a chart on the smallest screen
} // namespace

ReportView::Chart chartOf(const FlowPicture& picture) {
    return {[picture](QPainter& painter, const QRectF& area, const Look& look) {
                paintFlow(painter, area, picture, look);
            },
            describe(picture), static_cast<int>(heightOf(picture, leastWidth)) + 16};
}

ReportView::Chart chartOf(const BarRows& bars) {
    return {[bars](QPainter& painter, const QRectF& area, const Look& look) {
                paintBars(painter, area, bars, look);
            },
            describe(bars), static_cast<int>(heightOf(bars)) + 8};
}

ReportView::Chart chartOf(const TrendPicture& picture) {
    return {[picture](QPainter& painter, const QRectF& area, const Look& look) {
                paintTrend(painter, area, picture, look);
            },
            describe(picture), trendHeight};
}

} // namespace riband::ui
