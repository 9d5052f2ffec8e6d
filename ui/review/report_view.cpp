#include "ui/review/report_view.h"

namespace riband::ui {

namespace {
constexpr int flowHeight = 172, keyRow = 24, trendHeight = 260;
} // namespace

ReportView::Chart chartOf(const FlowPicture& picture) {
    return {[picture](QPainter& painter, const QRectF& area, const Look& look) {
                paintFlow(painter, area, picture, look);
            },
            describe(picture), flowHeight + keyRow * static_cast<int>(picture.streams.size() + 1) / 2 + 16};
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
