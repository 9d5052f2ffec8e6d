#pragma once

#include "core/shop/shop.h"

#include <QJsonObject>

#include <cstdio>
#include <string>
#include <vector>

namespace riband::app {

/// Rows as CSV (RFC 4180, CR LF, no field that a spreadsheet would run) or as one JSON array, row by row, so
/// that a ledger of any length needs little memory. In JSON an empty text is null.
class TableWriter {
public:
    TableWriter(std::FILE* to, bool json) : to_{to}, json_{json} {}
    void head(std::vector<std::string> columns);
    void row(const std::vector<std::string>& fields);
    /// Throws BadInput if not all could be written (a full disk, a closed pipe).
    void finish();

private:
    void write(const std::string& text);
    void csvRow(const std::vector<std::string>& fields);
    void jsonRow(const std::vector<std::string>& fields);
    std::FILE* to_;
    bool json_;
    bool any_ = false;
    std::vector<std::string> columns_;
};

/// piece,belt,kind,width_mm,ribs,received,made,place,batch,cost; `riband plan` and `riband import stock` read
/// it.
void exportStock(const shop::Shop& shop, TableWriter& writer);
/// movement,at,act,person,belt,account,piece,order,width_mm,ribs,cost,reason,note,undoes: a row a posting.
void exportLedger(const shop::Shop& shop, TableWriter& writer);

} // namespace riband::app
