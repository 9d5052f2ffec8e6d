#pragma once

#include "core/measure/extent.h"
#include "ui/look/look.h"

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

class QPainter;

namespace riband::ui {

/// A piece on the bench, to scale: the far edge left, the blade right. The same hatches everywhere: trim
/// diagonal, belts for the order plain, belts for the shelf dotted, what stays in ground tone, what is lost
/// crossed.
struct BandPicture {
    enum class Part { Trim, Belt, ShelfBelt, Kept, Lost };
    struct Strip {
        Part part;
        Extent extent;
        QString label;  ///< "30"
        QString remark; ///< "first cut"
    };
    Extent piece;
    std::vector<Strip> strips;  ///< from the blade on: trim, belts in the order of cutting, rest
    std::int64_t fullScale = 0; ///< count that fills the width; 0: the piece does
};

enum class BandSize { Large, Small };
/// In pixels of 1/96 inch; a painter for paper is scaled to these. The rule under a large band counts from
/// the trimmed edge, where the display of the cutter is zeroed, so a belt's far edge stands at its stop.
void paintBand(QPainter& painter, const QRectF& area, const BandPicture& picture, const Look& look,
               BandSize size);
/// What the picture shows, in words, for those who can't see it.
QString describe(const BandPicture& picture);

class BandWidget final : public QWidget {
    Q_OBJECT
public:
    explicit BandWidget(BandSize size, QWidget* parent = nullptr);
    using QWidget::show;
    void show(BandPicture picture);
    void clear();
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    BandSize size_;
    std::optional<BandPicture> picture_;
};

} // namespace riband::ui
