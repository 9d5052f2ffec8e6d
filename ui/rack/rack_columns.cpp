#include "ui/rack/rack_page.h"

#include "ui/rack/rack_model.h"
#include "ui/rack/rack_words.h"
#include "ui/words/words.h"

#include <QHeaderView>
#include <QTableView>

#include <algorithm>
#include <map>
#include <utility>

namespace riband::ui {

/// The widest text of a column, a little too wide rather than too narrow: letters are added up one by one, so
/// that 20 000 rows take no time.
int RackPage::widestOf(int column, const QFontMetrics& words) const {
    std::map<QChar, int> letters;
    int widest = 0;
    for (int row = 0; row < model_->rowCount(); ++row) {
        int width = 0;
        for (const QChar letter : model_->index(row, column).data().toString()) {
            const auto [known, isNew] = letters.try_emplace(letter, 0);
            if (isNew) known->second = words.horizontalAdvance(letter);
            width += known->second;
        }
        widest = std::max(widest, width);
    }
    return widest;
}

/// Each as wide as what stands in it, so that no code, figure or place is cut; the belt takes the rest.
void RackPage::sizeColumns() {
    table_->ensurePolished();
    auto& header = *table_->horizontalHeader();
    header.ensurePolished();
    const QFontMetrics words = table_->fontMetrics(), heads = header.fontMetrics();
    const auto advance = [&](const QString& text) { return words.horizontalAdvance(text); };
    const int figure =
        std::max(widestOf(RackModel::WidthColumn, words), advance(shown(Width::millimetres(444))));
    const std::pair<RackModel::Column, int> usual[] = {
        {RackModel::CodeColumn,
         std::max(widestOf(RackModel::CodeColumn, words), advance(QStringLiteral("00W-M")))},
        {RackModel::WidthColumn, figure},
        {RackModel::WorthColumn, advance(shown(Width::millimetres(4444)))},
        {RackModel::KeptColumn, advance(briefly({Width::millimetres(80), 2, 0}))},
        {RackModel::ReservedColumn, widestOf(RackModel::ReservedColumn, words)},
        {RackModel::KindColumn,
         std::max({advance(say(cutting::PieceKind::Remnant)), advance(say(cutting::PieceKind::Sleeve)),
                   advance(say(cutting::PieceKind::Ready))})},
        {RackModel::PlaceColumn,
         std::max(widestOf(RackModel::PlaceColumn, words), advance(QStringLiteral("B3-22")))},
        {RackModel::AgeColumn, advance(daysOld(8888))}};
    constexpr int margins = 16; // of the rows and heads of a dense table, with Qt's own
    for (const auto& [column, wide] : usual) {
        const QString head = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        header.resizeSection(column, std::max(wide, heads.horizontalAdvance(head)) + margins);
    }
}

} // namespace riband::ui
