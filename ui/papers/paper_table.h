#pragma once

#include "ui/papers/leaves.h"

#include <QStringList>

namespace riband::ui {

/// A table on paper: a head that is said again on no other page, and rows that are never cut in two.
struct PaperTable {
    struct Column {
        QString name;
        int share; ///< of the width, beside the other columns'
        bool figures = false;
    };
    struct Row {
        QStringList cells;
        bool sum = false;   ///< strong, under a line
        bool ruled = false; ///< under a line
    };
    std::vector<Column> columns;
    std::vector<Row> rows;
    bool tallHead = false; ///< names of columns may take two lines
};
std::vector<Block> tableBlocks(const PaperTable& table);

/// The head of a part; stays with what follows.
Block headBlock(const QString& words);
/// The head of the paper: shop, title, remarks, each on a line.
Block titleBlock(const QString& shop, const QString& title, const QStringList& remarks);

} // namespace riband::ui
