#include "ui/papers/overrides_paper.h"

#include "ui/papers/leaves.h"
#include "ui/papers/paper_table.h"
#include "ui/papers/paper_words.h"
#include "ui/words/report_words.h"
#include "ui/words/words.h"

namespace riband::ui {

int paintOverrides(QPagedPaintDevice& device, const shop::ReportTable& table, const QString& verdict,
                   const shop::Period& period, const store::ShopSettings& shop) {
    constexpr std::size_t named = 2; // the kind of group and its name stand on the left
    PaperTable paper;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        paper.columns.push_back({columnWord(table.columns[i]), i == named - 1 ? 3 : 2, i >= named});
    for (const auto& row : table.rows) {
        PaperTable::Row& line = paper.rows.emplace_back();
        for (std::size_t i = 0; i < row.size(); ++i)
            line.cells << (i < named ? groupWord(row[i]) : QString::fromStdString(row[i]));
    }
    std::vector<Block> blocks{titleBlock(
        QString::fromStdString(shop.name),
        PaperWords::tr("Suggested and taken, %1 to %2")
            .arg(shown(dayOf(period.from)), shown(dayOf(period.until - std::chrono::milliseconds{1}))),
        verdict)};
    for (Block& block : tableBlocks(paper))
        blocks.push_back(std::move(block));
    return paintLeaves(device, blocks, QString::fromStdString(shop.name));
}

} // namespace riband::ui
