#include "ui/papers/paper_table.h"

#include "ui/look/figures.h"
#include "ui/papers/paper_words.h"

namespace riband::ui {

namespace {

constexpr double rowHeight = 19, headLine = 15, gap = 10;

/// The room of each column from `area`'s left on.
std::vector<QRectF> cellsOf(const PaperTable& table, const QRectF& area) {
    int shares = 0;
    for (const PaperTable::Column& column : table.columns)
        shares += column.share;
    std::vector<QRectF> cells;
    double x = area.left();
    for (const PaperTable::Column& column : table.columns) {
        const double width = area.width() * column.share / shares;
        cells.emplace_back(x, area.top(), width - gap, area.height());
        x += width;
    }
    cells.back().setRight(area.right());
    return cells;
}

void paintLine(QPainter& painter, double y, const QRectF& area, double strength) {
    painter.setPen(QPen{Look::paper().line, strength});
    painter.drawLine(QPointF{area.left(), y}, QPointF{area.right(), y});
    painter.setPen(Look::paper().ink);
}

Block headRow(const PaperTable& table) {
    const double height = (table.tallHead ? 2 * headLine : rowHeight) + 3;
    return {height,
            [table](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(11, QFont::DemiBold));
                painter.setPen(Look::paper().ink2);
                const auto cells = cellsOf(table, area);
                for (std::size_t i = 0; i < cells.size(); ++i) {
                    const auto side = table.columns[i].figures ? Qt::AlignRight : Qt::AlignLeft;
                    if (table.tallHead)
                        painter.drawText(cells[i].adjusted(0, 0, 0, -3),
                                         side | Qt::AlignBottom | Qt::TextWordWrap, table.columns[i].name);
                    else
                        paintFitted(painter, cells[i], side | Qt::AlignVCenter, table.columns[i].name, 9);
                }
                paintLine(painter, area.bottom() - 1, area, 1.5);
            },
            true};
}

Block row(const PaperTable& table, const PaperTable::Row& line) {
    return {rowHeight, [table, line](QPainter& painter, const QRectF& area) {
                if (line.sum || line.ruled) paintLine(painter, area.top(), area, 1);
                const auto cells = cellsOf(table, area);
                for (std::size_t i = 0; i < cells.size(); ++i) {
                    // Of each cell: one whose words had to be fitted in leaves the others as they are.
                    painter.setFont(paperFont(12, line.sum ? QFont::DemiBold : QFont::Normal));
                    const QString& cell = line.cells[static_cast<qsizetype>(i)];
                    if (table.columns[i].figures)
                        paintFigures(painter, cells[i], Qt::AlignRight | Qt::AlignVCenter, cell);
                    else
                        paintFitted(painter, cells[i], Qt::AlignLeft | Qt::AlignVCenter, cell, 9);
                }
            }};
}

} // namespace

std::vector<Block> tableBlocks(const PaperTable& table) {
    std::vector<Block> blocks{headRow(table)};
    for (const PaperTable::Row& line : table.rows)
        blocks.push_back(row(table, line));
    blocks.push_back({gap, [](QPainter&, const QRectF&) {}});
    return blocks;
}

Block headBlock(const QString& words) {
    return {38,
            [words](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(17, QFont::Bold));
                paintFitted(painter, area, Qt::AlignLeft | Qt::AlignVCenter, words);
            },
            true};
}

Block titleBlock(const QString& shop, const QString& title, const QStringList& remarks) {
    constexpr double remarkLine = 20;
    return {72 + remarkLine * static_cast<double>(remarks.size()),
            [=](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(15));
                painter.setPen(Look::paper().ink2);
                paintFitted(painter, {area.left(), area.top(), area.width(), 22},
                            Qt::AlignLeft | Qt::AlignVCenter, shop);
                painter.setPen(Look::paper().ink);
                painter.setFont(paperFont(26, QFont::Bold));
                paintFitted(painter, {area.left(), area.top() + 22, area.width(), 38},
                            Qt::AlignLeft | Qt::AlignVCenter, title);
                painter.setFont(paperFont(12));
                painter.setPen(Look::paper().ink2);
                double y = area.top() + 60;
                for (const QString& remark : remarks) {
                    painter.setFont(paperFont(12)); // of each: one that had to be fitted in leaves the next
                    paintFitted(painter, {area.left(), y, area.width(), remarkLine},
                                Qt::AlignLeft | Qt::AlignVCenter, remark);
                    y += remarkLine;
                }
            }};
}

} // namespace riband::ui
