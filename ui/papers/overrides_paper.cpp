#include "ui/papers/overrides_paper.h"

#include "ui/papers/leaves.h"
#include "ui/papers/paper_table.h"
#include "ui/papers/paper_words.h"
#include "ui/words/report_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

/// A row of the report by the names of its columns; "" for a column that is not there.
class Fields {
public:
    Fields(const shop::ReportTable& table, const std::vector<std::string>& row) : table_{table}, row_{row} {}
    QString operator[](const char* column) const {
        const auto at = std::find(table_.columns.begin(), table_.columns.end(), column);
        if (at == table_.columns.end()) return {};
        QString field = QString::fromStdString(row_[static_cast<std::size_t>(at - table_.columns.begin())]);
        return field.replace(QLatin1Char('-'), QChar{0x2212});
    }
    /// With its doubt; "" where there is none, as where nothing was done otherwise.
    QString doubted(const char* column, const char* doubt, int places = 2) const {
        const QString figure = (*this)[column];
        if (figure.isEmpty() || isZero()) return {};
        return PaperWords::tr("%1 ± %2").arg(shownNumber(numberIn(column), places),
                                             shownNumber(numberIn(doubt), places));
    }
    /// "2 of 14"; "" where none was offered.
    QString share(const char* column, const char* of) const {
        const QString all = (*this)[of];
        return all.isEmpty() || all == QLatin1String("0")
                   ? QString{}
                   : PaperWords::tr("%1 of %2").arg((*this)[column], all);
    }

private:
    double numberIn(const char* column) const {
        const auto at = std::find(table_.columns.begin(), table_.columns.end(), column);
        return QString::fromStdString(row_[static_cast<std::size_t>(at - table_.columns.begin())]).toDouble();
    }
    bool isZero() const {
        return (*this)["overridden"] == QLatin1String("0") && (*this)["shelf_refused"] == QLatin1String("0");
    }
    const shop::ReportTable& table_;
    const std::vector<std::string>& row_;
};

/// Each figure stands with its doubt: twelve columns would leave none of them room.
PaperTable paperOf(const shop::ReportTable& table) {
    const bool cost =
        std::find(table.columns.begin(), table.columns.end(), "expected_cost") != table.columns.end();
    PaperTable paper{{{columnWord("kind"), 30},
                      {columnWord("group"), 60},
                      {columnWord("suggested"), 40, true},
                      {columnWord("overridden"), 28, true},
                      {PaperWords::tr("Shelf refused"), 34, true}},
                     {}};
    if (cost) paper.columns.push_back({PaperWords::tr("Expected cost"), 44, true});
    paper.columns.push_back({PaperWords::tr("Replayed cost, mm"), 44, true});
    if (cost) paper.columns.push_back({PaperWords::tr("Replayed cost"), 44, true});
    paper.columns.push_back({columnWord("told"), 36, true});
    paper.tallHead = true;
    std::string kind;
    for (const auto& row : table.rows) {
        const Fields field{table, row};
        PaperTable::Row& line = paper.rows.emplace_back();
        line.ruled = row[0] != kind;
        line.cells << (line.ruled ? groupWord(row[0]) : QString{})
                   << (row[1].empty() ? namelessGroup(row[0]) : groupWord(row[1])) << field["suggested"]
                   << field["overridden"] << field.share("shelf_refused", "shelf_offered");
        if (cost) line.cells << field.doubted("expected_cost", "expected_doubt");
        line.cells << field.doubted("replayed_mm", "doubt_mm", 1);
        if (cost) line.cells << field.doubted("replayed_cost", "doubt_cost");
        line.cells << groupWord(field["told"].toStdString());
        kind = row[0];
    }
    return paper;
}

/// What people said who did otherwise.
PaperTable ownWordsOf(const shop::ReportTable& decisions) {
    PaperTable paper{{{columnWord("at"), 36},
                      {columnWord("order"), 24},
                      {columnWord("belt"), 40},
                      {columnWord("person"), 20},
                      {columnWord("reason"), 44},
                      {columnWord("words"), 110}},
                     {}};
    const auto column = [&](const char* name) {
        return static_cast<std::size_t>(std::find(decisions.columns.begin(), decisions.columns.end(), name) -
                                        decisions.columns.begin());
    };
    const std::size_t words = column("words");
    for (const auto& row : decisions.rows) {
        if (row[words].empty()) continue;
        PaperTable::Row& line = paper.rows.emplace_back();
        for (const char* name : {"at", "order", "belt", "person"})
            line.cells << text(row[column(name)]);
        line.cells << groupWord(row[column("reason")]) << text(row[words]);
    }
    return paper;
}

} // namespace

int paintOverrides(QPagedPaintDevice& device, const shop::ReportTable& table,
                   const shop::ReportTable& decisions, const QStringList& words, const QString& period,
                   const store::ShopSettings& shop) {
    std::vector<Block> blocks{titleBlock(QString::fromStdString(shop.name),
                                         PaperWords::tr("Suggested and taken, %1").arg(period), words)};
    for (Block& block : tableBlocks(paperOf(table)))
        blocks.push_back(std::move(block));
    if (const PaperTable own = ownWordsOf(decisions); !own.rows.empty()) {
        blocks.push_back(headBlock(PaperWords::tr("In their own words")));
        for (Block& block : tableBlocks(own))
            blocks.push_back(std::move(block));
    }
    return paintLeaves(device, blocks, QString::fromStdString(shop.name));
}

} // namespace riband::ui
