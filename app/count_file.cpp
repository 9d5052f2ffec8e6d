#include "app/count_file.h"

#include "app/json.h"
#include "app/plan_files.h"
#include "core/shop/counting/batch.h"
#include "core/shop/queries.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QJsonArray>

namespace riband::app {

namespace {

using shop::counting::Verdict;
using ui::Words;

std::optional<store::Method> methodOf(TableFile& file, const CsvTable::Row& row) {
    const std::string said = file.field(row, "method");
    if (said.empty() || said == "calliper") return store::Method::Calliper;
    if (said == "tape") return store::Method::Tape;
    if (said == "eye") return store::Method::Eye;
    file.fault(row, "method", Words::tr("Say calliper, tape or eye."));
    return std::nullopt;
}

std::optional<store::StockPiece> pieceOf(TableFile& file, const CsvTable::Row& row, const shop::Shop& shop) {
    auto piece = shop::scan(shop, file.field(row, "piece")).piece;
    if (!piece) file.fault(row, "piece", Words::tr("No piece of this shop has that code."));
    return piece;
}

/// A labelled piece may be seen without being measured, a find may not.
std::optional<shop::CollectedScan> scanOf(TableFile& file, const CsvTable::Row& row, const shop::Shop& shop) {
    shop::CollectedScan scan{.place = file.field(row, "place")};
    scan.remark = file.field(row, "remark");
    if (scan.place.empty()) file.fault(row, "place", Words::tr("Name the place."));
    const auto method = methodOf(file, row);
    std::optional<belt::Belt> belt;
    bool outOfBook = false;
    if (file.field(row, "piece").empty()) {
        belt = scan.belt = beltOf(file, row, *shop.tables);
    } else if (const auto piece = pieceOf(file, row, shop)) {
        scan.piece = piece->id;
        outOfBook = piece->gone();
        belt = store::Catalogue{shop.connection}.at(piece->belt).belt;
    }
    if (!belt) return std::nullopt;
    const bool seenOnly =
        scan.piece && file.field(row, "width_mm").empty() && file.field(row, "ribs").empty();
    if (seenOnly && outOfBook) {
        file.fault(row, "piece", Words::tr("The book has nothing of it any more. Measure it."));
        return std::nullopt;
    }
    if (!seenOnly) {
        scan.measured = pieceExtentOf(file, row, *belt, *shop.tables);
        if (!scan.measured) return std::nullopt;
    }
    if (!method || scan.place.empty()) return std::nullopt;
    scan.method = *method;
    return scan;
}

QString nameOf(Verdict verdict) {
    switch (verdict) {
    case Verdict::Agrees:
        return QStringLiteral("agrees");
    case Verdict::Within:
        return QStringLiteral("within");
    case Verdict::Again:
        return QStringLiteral("again");
    case Verdict::Differs:
        return QStringLiteral("differs");
    }
    return {};
}

QJsonObject answerOf(const shop::Shop& shop, const TableFile& file, const shop::Collected& done) {
    QJsonArray rows, missing;
    for (std::size_t i = 0; i < done.verdicts.size(); ++i) {
        const auto& row = file.rows()[i];
        const std::string code = file.field(row, "piece");
        rows << QJsonObject{{"line", static_cast<qint64>(row.line)},
                            {"piece", textValue(code)},
                            {"verdict", code.empty() ? QStringLiteral("found") : nameOf(done.verdicts[i])}};
    }
    const store::Counts counts{shop.connection};
    for (const auto& [count, piece] : done.missing)
        missing << QJsonObject{{"place", textValue(counts.find(count)->place)},
                               {"piece", textValue(store::Pieces{shop.connection}.at(piece).code)}};
    return {{"rows", rows},
            {"places", static_cast<qint64>(done.counts.size())},
            {"voided_mountings", static_cast<qint64>(done.voided.size())},
            {"missing", missing}};
}

} // namespace

QJsonObject countFile(const shop::Shop& shop, const QString& csv, bool close) {
    TableFile file(csv, {"place", "piece", "width_mm", "ribs"});
    file.refuseOthers({"place", "piece", "belt", "width_mm", "ribs", "method", "remark"});
    std::vector<shop::CollectedScan> scans;
    for (const auto& row : file.rows())
        if (auto scan = scanOf(file, row, shop)) scans.push_back(std::move(*scan));
    file.refuseFaults();
    return answerOf(shop, file, shop::collect(shop, scans, close));
}

} // namespace riband::app
