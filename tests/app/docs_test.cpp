#include "tests/app/printing.h"
#include "tests/app/program.h"

#include <QRegularExpression>

using namespace riband::tests;

// docs/commands.md is a script: its ```csv NAME blocks are files, its ```console blocks calls with their
// answers.

namespace {

struct Call {
    QString line;
    QStringList answer;
};

/// The days of the demo shop move with the calendar.
QString timeless(QString line) {
    static const QRegularExpression day("\\d{4}-\\d{2}-\\d{2}(T[0-9:.]+Z)?");
    return line.replace(day, "DAY");
}

QStringList documentLines() {
    QFile file(QStringLiteral(RIBAND_SOURCE_DIR "/docs/commands.md"));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QString::fromUtf8(file.readAll()).split('\n');
}

/// Writes the files of the page into the folder and gives its calls in order.
std::vector<Call> readDocument(const Folder& folder) {
    std::vector<Call> calls;
    QString csv;
    QByteArray content;
    bool console = false;
    for (const QString& line : documentLines()) {
        if (line.startsWith("```csv ")) {
            csv = line.mid(7);
            content.clear();
        } else if (line == "```console") {
            console = true;
        } else if (line == "```") {
            if (!csv.isEmpty()) folder.with(csv, content);
            csv.clear();
            console = false;
        } else if (!csv.isEmpty()) {
            content += line.toUtf8() + "\n";
        } else if (console && line.startsWith("$ ")) {
            calls.push_back({line, {}});
        } else if (console) {
            calls.back().answer << timeless(line);
        }
    }
    return calls;
}

QStringList answerTo(const Call& call, const Folder& folder) {
    QStringList words = QProcess::splitCommand(call.line.mid(2));
    words.removeFirst();
    QDir::setCurrent(folder.file(""));
    const Answer answer = run(words);
    QStringList lines;
    for (const QString& line : QString::fromUtf8(answer.out + answer.err).remove('\r').split('\n'))
        if (!line.isEmpty()) lines << timeless(line).replace(QDir::currentPath(), "…");
    if (answer.exit != 0) lines << QStringLiteral("[exit %1]").arg(answer.exit);
    return lines;
}

/// "..." at the end stands for all that follows.
QStringList cutLike(const QStringList& documented, QStringList lines) {
    if (!documented.isEmpty() && documented.last() == "..." && lines.size() >= documented.size())
        lines = lines.mid(0, documented.size() - 1) << "...";
    return lines;
}

} // namespace

TEST_CASE("Every call of docs/commands.md answers as the page says", "[app][docs]") {
    const Folder folder;
    const auto calls = readDocument(folder);
    REQUIRE(calls.size() >= 15);
    for (const Call& call : calls) {
        INFO(call.line.toStdString());
        const QStringList lines = cutLike(call.answer, answerTo(call, folder));
        CHECK(lines.join('\n').toStdString() == call.answer.join('\n').toStdString());
    }
}

TEST_CASE("docs/commands.md tells of every verb that the program has", "[app][docs]") {
    const QString page = documentLines().join('\n');
    const QString help = QString::fromUtf8(run({"--help"}).out);
    static const QRegularExpression verb("^    (\\w+) ", QRegularExpression::MultilineOption);
    int verbs = 0;
    for (auto found = verb.globalMatch(help); found.hasNext(); ++verbs)
        CHECK(page.contains("$ riband " + found.next().captured(1) + " "));
    CHECK(verbs >= 9);
}
