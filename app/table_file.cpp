#include "app/table_file.h"

#include "app/console.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <cstdio>

namespace riband::app {

namespace {

constexpr qint64 largestFile = 64 << 20;
constexpr qsizetype mostFaultsTold = 50;

void openForReading(QFile& file, const QString& path) {
    if (path == QLatin1String("-")) {
        if (!file.open(stdin, QIODevice::ReadOnly)) throw BadInput(ui::Words::tr("No standard input."));
        return;
    }
    if (QFileInfo(path).isDir()) throw BadInput(ui::Words::tr("%1 is a folder, not a file.").arg(path));
    if (!file.open(QIODevice::ReadOnly))
        throw BadInput(ui::Words::tr("%1 can't be read: %2").arg(path, file.errorString()));
}

} // namespace

QString shownName(const QString& path) {
    return path == QLatin1String("-") ? ui::Words::tr("standard input") : path;
}

namespace {

CsvTable tableOf(const QString& path, const std::string& text) {
    const auto table = CsvTable::read(text);
    if (!table) throw BadInput(shownName(path) + QStringLiteral(": ") + ui::say(table.reason()));
    return table.value();
}

} // namespace

CsvTable spreadsheetOf(const QString& path) { return tableOf(path, asUtf8(contentOf(path).toStdString())); }

QByteArray contentOf(const QString& path) {
    QFile file(path);
    openForReading(file, path);
    QByteArray bytes = file.read(largestFile + 1);
    if (bytes.size() > largestFile)
        throw BadInput(ui::Words::tr("%1 is over 64 MiB. Split it.").arg(shownName(path)));
    return bytes;
}

TableFile::TableFile(const QString& path, const std::vector<std::string>& needed)
    : name_{shownName(path)}, table_{tableOf(path, contentOf(path).toStdString())} {
    require(needed);
}

void TableFile::require(const std::vector<std::string>& needed) const {
    for (const std::string& column : needed)
        if (!has(column))
            throw BadInput(name_ + QStringLiteral(": ") +
                           ui::say(CsvFault{CsvFault::Kind::MissingColumn, 1, 0, column}));
}

void TableFile::refuseOthers(const std::vector<std::string>& known) const {
    const auto& head = table_.head();
    for (std::size_t i = 0; i < head.size(); ++i)
        if (std::find(known.begin(), known.end(), head[i]) == known.end())
            throw BadInput(ui::Words::tr("%1: line 1, column %2: the column “%3” is not known here.")
                               .arg(name_)
                               .arg(i + 1)
                               .arg(ui::text(head[i])));
}

std::string TableFile::field(const CsvTable::Row& row, std::string_view column) const {
    const auto index = table_.column(column);
    return index ? csvValue(row.fields[*index]) : std::string{};
}

void TableFile::fault(const CsvTable::Row& row, std::string_view column, const QString& why) {
    const auto index = table_.column(column);
    faults_ << ui::Words::tr("%1: line %2, column %3 (%4): %5")
                   .arg(name_)
                   .arg(row.line)
                   .arg(index.value_or(0) + 1)
                   .arg(QString::fromUtf8(column.data(), static_cast<qsizetype>(column.size())), why);
}

void TableFile::fault(const CsvTable::Row& row, std::string_view column, TextFault why) {
    fault(row, column, ui::say(why));
}

std::optional<std::int64_t> TableFile::count(const CsvTable::Row& row, std::string_view column,
                                             std::int64_t most) {
    bool whole = false;
    const qlonglong number = QString::fromStdString(field(row, column)).toLongLong(&whole);
    if (whole && number >= 1 && number <= most) return number;
    fault(row, column, ui::Words::tr("A whole number from 1 to %1 is needed.").arg(most));
    return std::nullopt;
}

void TableFile::refuseFaults() const {
    if (!faulty()) return;
    QStringList told = faults_.mid(0, mostFaultsTold);
    if (faults_.size() > mostFaultsTold)
        told << ui::Words::tr("... and %1 more.").arg(faults_.size() - mostFaultsTold);
    throw BadInput(told.join(QLatin1Char('\n')));
}

} // namespace riband::app
