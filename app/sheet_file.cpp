#include "app/sheet_file.h"

#include "app/console.h"
#include "app/table_file.h"
#include "ui/words/sheet_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::app {

namespace {

using ui::Words;
constexpr std::size_t mostFaultsTold = 50;

shop::SheetUnit unitOf(const QString& said) {
    if (said.isEmpty() || said == QLatin1String("mm")) return shop::SheetUnit::Millimetre;
    if (said == QLatin1String("cm")) return shop::SheetUnit::Centimetre;
    if (said == QLatin1String("in")) return shop::SheetUnit::Inch;
    throw BadInput(Words::tr("“%1” is no unit here; say mm, cm or in.").arg(said));
}

shop::SheetField fieldOf(const QString& name) {
    if (name.isEmpty()) return shop::SheetField::Ignored;
    if (const auto field = shop::fieldNamed(name.toStdString())) return *field;
    throw BadInput(Words::tr("“%1” is no field of this table.").arg(name));
}

/// What the heads say, and over it what the person says.
class Matching {
public:
    Matching(const CsvTable& table, const QString& path)
        : table_{table}, path_{path}, told_(table.head().size()) {
        match = shop::guessMatch(table.head());
    }
    void tell(const QString& assignment) {
        const auto sign = assignment.lastIndexOf(QLatin1Char('='));
        const auto column = sign < 0 ? std::nullopt : table_.column(assignment.left(sign).toStdString());
        if (!column)
            throw BadInput(Words::tr("%1: there is no column for “%2”.").arg(shownName(path_), assignment));
        const shop::SheetField field = fieldOf(assignment.mid(sign + 1));
        std::replace(match.columns.begin(), match.columns.end(), field, shop::SheetField::Ignored);
        match.columns[*column] = field;
        told_[*column] = true;
    }
    void refuseOthers() const {
        for (std::size_t i = 0; i < told_.size(); ++i)
            if (match.columns[i] == shop::SheetField::Ignored && !told_[i])
                throw BadInput(Words::tr("%1: line 1, column %2: the column “%3” is not known here.")
                                   .arg(shownName(path_))
                                   .arg(i + 1)
                                   .arg(ui::text(table_.head()[i])));
    }
    void require(const std::vector<shop::SheetField>& needed) const {
        for (const shop::SheetField field : needed)
            if (!match.column(field))
                throw BadInput(
                    shownName(path_) + QStringLiteral(": ") +
                    ui::say(CsvFault{CsvFault::Kind::MissingColumn, 1, 0, std::string{shop::nameOf(field)}}));
        if (const auto gap = shop::gapOf(match))
            throw BadInput(shownName(path_) + QStringLiteral(": ") + ui::say(*gap));
    }
    shop::SheetMatch match;

private:
    const CsvTable& table_;
    QString path_;
    std::vector<bool> told_;
};

void refuseFaults(const shop::Shop& shop, const CsvTable& table, const shop::Sheet& sheet,
                  const QString& path) {
    if (sheet.faults.empty()) return;
    QStringList told;
    for (std::size_t i = 0; i < std::min(sheet.faults.size(), mostFaultsTold); ++i)
        told << shownName(path) + QStringLiteral(": ") + ui::say(sheet.faults[i], table.head(), *shop.tables);
    if (sheet.faults.size() > mostFaultsTold)
        told << Words::tr("... and %1 more.").arg(sheet.faults.size() - mostFaultsTold);
    throw BadInput(told.join(QLatin1Char('\n')));
}

} // namespace

shop::Sheet readSpreadsheet(const shop::Shop& shop, const QString& path, const SheetHints& hints,
                            const std::vector<shop::SheetField>& needed) {
    const CsvTable table = spreadsheetOf(path);
    Matching matching{table, path};
    for (const QString& column : hints.columns)
        matching.tell(column);
    matching.match.unit = unitOf(hints.unit);
    matching.refuseOthers();
    matching.require(needed);
    shop::Sheet sheet = shop::readSheet(shop, table, matching.match);
    refuseFaults(shop, table, sheet, path);
    return sheet;
}

} // namespace riband::app
