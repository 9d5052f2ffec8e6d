#pragma once

#include "core/foresight/parallel.h"
#include "ui/drawing/charts.h"
#include "ui/review/behind.h"

namespace riband::ui {

/// What a report shows, made in the worker that read it: pictures, and the same as a table.
struct ReportView {
    struct Chart {
        ChartWidget::Paint paint;
        QString words; ///< what it shows, for those who can't see it
        int height;    ///< least, in pixels
    };
    QString headline;
    QStringList remarks;
    std::vector<Chart> charts;
    shop::ReportTable table;
    Behind behind{}; ///< what stands behind the figures of the table
};

ReportView::Chart chartOf(const FlowPicture& picture);
ReportView::Chart chartOf(const BarRows& bars);
ReportView::Chart chartOf(const TrendPicture& picture);

// The reports of the page.
ReportView flowView(const shop::Shop& shop, const shop::Period& period);   ///< of 100 mm that went
ReportView paretoView(const shop::Shop& shop, const shop::Period& period); ///< belts by what they lost
ReportView groupsView(const shop::Shop& shop, const shop::Period& period); ///< profiles, people, places
// The same groups beside the period before and the same days a year earlier.
ReportView comparedBelts(const shop::Shop& shop, const shop::Period& period);
ReportView comparedGroups(const shop::Shop& shop, const shop::Period& period);
ReportView trendView(const shop::Shop& shop, const shop::Period& period); ///< months, and what chance does
ReportView overridesView(const shop::Shop& shop, const shop::Period& period); ///< does the suggestion pay?
/// The same, with every override replayed both ways. Throws foresight::Stopped.
ReportView playedView(const shop::Shop& shop, const shop::Period& period, const foresight::Work& work);
/// How far the yield is from what could have been had.
ReportView hindsightView(const shop::Shop& shop, const shop::Period& period);
ReportView stockView(const shop::Shop& shop, const shop::Period& period);
ReportView marginView(const shop::Shop& shop, const shop::Period& period);
ReportView shrinkageView(const shop::Shop& shop, const shop::Period& period); ///< what counting found lost
ReportView accuracyView(const shop::Shop& shop, const shop::Period& period);  ///< how often the book is right
ReportView dayView(const shop::Shop& shop, const shop::Period& period);       ///< of the period's last day

} // namespace riband::ui
