#pragma once

#include <QPainter>
#include <QRectF>

#include <functional>
#include <memory>
#include <vector>

class QPagedPaintDevice;

namespace riband::ui {

/// Something that stands on a paper and is never cut in two. Measures in pixels of 1/96 inch.
struct Block {
    double height;
    std::function<void(QPainter&, const QRectF&)> paint;
    bool keepWithNext = false; ///< a heading
};

/// Blocks under each other that stay together.
Block stacked(std::vector<Block> rows);

/// Two beside each other, the left one with `share` of the width.
Block beside(Block left, Block right, double share = .5);

/// Which blocks stand on which page: as many as fit, in their order; a block higher than a page has one for
/// itself.
std::vector<std::vector<std::size_t>> paginate(const std::vector<Block>& blocks, double pageHeight);

/// A painter on a paged device in pixels of 1/96 inch, (0, 0) at the corner of the paper whatever margins the
/// device has.
class PaperPainter {
public:
    explicit PaperPainter(QPagedPaintDevice& device);
    QPainter& painter() { return *painter_; }
    QSizeF size() const { return size_; } ///< of the whole paper
    void nextPage();

private:
    void place();
    QPagedPaintDevice& device_;
    QSizeF size_;
    std::unique_ptr<QPainter> painter_;
};

/// Paints the blocks page after page, with `foot` at the left and "page x of y" at the right of each. Returns
/// the pages.
int paintLeaves(QPagedPaintDevice& device, const std::vector<Block>& blocks, const QString& foot);
/// The width that a block has on the device's paper.
double leafWidth(const QPagedPaintDevice& device);

} // namespace riband::ui
