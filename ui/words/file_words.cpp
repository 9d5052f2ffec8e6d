#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

QString whatIsWrong(const CsvFault& fault) {
    using Kind = CsvFault::Kind;
    const QString name = text(fault.name);
    switch (fault.kind) {
    case Kind::TooLarge:
        return Words::tr("the file is too large for a table. Split it.");
    case Kind::LineTooLong:
        return Words::tr("the row is over 64 KiB. Is this a CSV file?");
    case Kind::NulCharacter:
        return Words::tr("a NUL character. Is this a CSV file?");
    case Kind::NotUtf8:
        return Words::tr("not UTF-8. Save the file with UTF-8 as its character set.");
    case Kind::OpenQuote:
        return Words::tr("a quote that is not closed, or text behind a closed one.");
    case Kind::WrongFields:
        return Words::tr("more or fewer fields than the head line has.");
    case Kind::MissingColumn:
        return Words::tr("the column “%1” is missing in the head line.").arg(name);
    case Kind::DoubleColumn:
        return Words::tr("the column “%1” stands twice in the head line.").arg(name);
    case Kind::NoHead:
        return Words::tr("the file is empty; it needs a head line that names its columns.");
    }
    return {};
}

QString placed(std::size_t line, std::size_t column, const QString& what) {
    if (line == 0) return what;
    if (column == 0) return Words::tr("line %1: %2").arg(line).arg(what);
    return Words::tr("line %1, column %2: %3").arg(line).arg(column).arg(what);
}

} // namespace

QString say(const CsvFault& fault) { return placed(fault.line, fault.column, whatIsWrong(fault)); }

QString say(const belt::TableFault& fault) {
    const QString what = placed(fault.line, 0, text(fault.what));
    return Words::tr("The table “%1” of this program is damaged: %2. Install Riband again.")
        .arg(text(fault.file), what);
}

QString say(TextFault fault) {
    switch (fault) {
    case TextFault::Empty:
        return Words::tr("Nothing is typed here yet.");
    case TextFault::NotANumber:
        return Words::tr("This is not a number.");
    case TextFault::Negative:
        return Words::tr("This must not be negative.");
    case TextFault::TooFine:
        return Words::tr("Too many decimals, or a part of a rib.");
    case TextFault::TooLarge:
        return Words::tr("This is too large to be meant.");
    case TextFault::UnknownUnit:
        return Words::tr("The unit is not known here. Use mm, cm, m or inch.");
    }
    return {};
}

} // namespace riband::ui
