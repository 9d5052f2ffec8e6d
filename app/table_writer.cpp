#include "app/console.h"
#include "app/export.h"
#include "core/measure/csv.h"
#include "ui/words/tr.h"

#include <QJsonDocument>

namespace riband::app {

void TableWriter::write(const std::string& text) { std::fwrite(text.data(), 1, text.size(), to_); }

void TableWriter::head(std::vector<std::string> columns) {
    columns_ = std::move(columns);
    if (json_)
        write("[");
    else
        csvRow(columns_);
}

void TableWriter::row(const std::vector<std::string>& fields) { json_ ? jsonRow(fields) : csvRow(fields); }

void TableWriter::csvRow(const std::vector<std::string>& fields) {
    std::string line;
    for (const std::string& field : fields)
        line += (&field == &fields.front() ? "" : ",") + csvField(field);
    write(line + "\r\n");
}

void TableWriter::jsonRow(const std::vector<std::string>& fields) {
    QJsonObject object;
    for (std::size_t i = 0; i < fields.size(); ++i)
        object.insert(QString::fromStdString(columns_[i]),
                      fields[i].empty() ? QJsonValue(QJsonValue::Null)
                                        : QJsonValue(QString::fromStdString(fields[i])));
    write((any_ ? ",\n" : "\n") + QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString());
    any_ = true;
}

void TableWriter::finish() {
    if (json_) write("\n]\n");
    if (std::fflush(to_) != 0 || std::ferror(to_))
        throw BadInput(ui::Words::tr("The table could not be written to its end."));
}

} // namespace riband::app
