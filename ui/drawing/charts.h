#pragma once

#include "ui/drawing/band.h"

#include <functional>

namespace riband::ui {

// The charts of the owner's review. They are painted here, not by a chart library: a fate of width has one
// hatch everywhere (band.h), so that a chart reads in grey and beside a ticket, and paper and screen are
// drawn by the same code. Areas are in pixels of 1/96 inch.

/// Where every 100 of what went came to, to scale: a band of all of it, and what was lost drawn out below.
struct FlowPicture {
    struct Stream {
        QString name;
        double amount; ///< not negative; any unit
        BandPicture::Part part;
        QString figure; ///< behind the name in the key
    };
    std::vector<Stream> streams; ///< those kept or sold first, then what was lost
    QString head;                ///< "Of 100 mm that went …"
};
void paintFlow(QPainter& painter, const QRectF& area, const FlowPicture& picture, const Look& look);
double heightOf(const FlowPicture& picture, double width); ///< with its whole key
QString describe(const FlowPicture& picture);

/// Bars under each other, the longest as wide as there is room.
struct BarRows {
    struct Row {
        QString name;
        double amount; ///< bars grow right; a negative one is drawn hollow
        QString figure;
        QString remark; ///< at the far right: what adds up, a warning
        BandPicture::Part part = BandPicture::Part::Trim;
    };
    std::vector<Row> rows;
    QString head;
    QString none; ///< said where there are no rows
};
void paintBars(QPainter& painter, const QRectF& area, const BarRows& bars, const Look& look);
double heightOf(const BarRows& bars); ///< with all rows
QString describe(const BarRows& bars);

/// Points in time with the band between which chance alone would keep them.
struct TrendPicture {
    struct Point {
        QString name;
        std::optional<double> value;
        double low, high;
        bool news;
    };
    std::vector<Point> points;
    QString head;
    QString none;                          ///< said where a point has no value; its room has no band
    std::function<QString(double)> figure; ///< words for a value of the axis
};
void paintTrend(QPainter& painter, const QRectF& area, const TrendPicture& picture, const Look& look);
QString describe(const TrendPicture& picture);

/// Shows what `paint` paints, in the present look, and says it in words.
class ChartWidget final : public QWidget {
public:
    using Paint = std::function<void(QPainter&, const QRectF&, const Look&)>;
    explicit ChartWidget(const QString& name, QWidget* parent = nullptr);
    using QWidget::show;
    void show(Paint paint, const QString& words, int leastHeight);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Paint paint_;
};

} // namespace riband::ui
