#include "app/advise_stream.h"
#include "app/commands.h"
#include "app/options.h"
#include "ui/words/tr.h"

#include <QJsonDocument>

#include <fstream>
#include <iostream>
#include <string>

namespace riband::app {

namespace {

Usage usage() {
    return {QStringLiteral("advise"),
            ui::Words::tr("Decides what to cut for the orders of one belt, without a shop file."),
            {},
            {{"stream", ui::Words::tr("One JSON object a line on standard input, one a line back.")},
             {"from", ui::Words::tr("Reads the lines from a file; “-” is standard input."), "FILE"}}};
}

void say(const QByteArray& line) { std::cout << line.constData() << std::endl; }

/// The other side reads standard output alone: it is told there as well.
void sayError(const BadInput& error) {
    say(QJsonDocument(QJsonObject{{"error", QString::fromUtf8(error.what())}})
            .toJson(QJsonDocument::Compact));
}

void talk(std::istream& from) {
    AdviseStream stream;
    std::string line;
    try {
        while (!stream.isDone() && std::getline(from, line))
            say(stream.answer(QByteArray::fromStdString(line)));
        if (!stream.isDone()) throw BadInput(ui::Words::tr("The input ended before “end”."));
    } catch (const BadInput& error) {
        sayError(error);
        throw;
    }
}

} // namespace

Exit advise(const QStringList& arguments) {
    const Options options(usage(), arguments);
    if (!options.has(QStringLiteral("stream")))
        throw BadInput(ui::Words::tr("Say --stream; there is no other way yet."));
    const QString from =
        options.has(QStringLiteral("from")) ? options.value(QStringLiteral("from")) : QStringLiteral("-");
    if (from == QLatin1String("-")) {
        talk(std::cin);
    } else {
        std::ifstream file(from.toStdString());
        if (!file) throw BadInput(ui::Words::tr("“%1” can't be read.").arg(from));
        talk(file);
    }
    return Exit::Done;
}

} // namespace riband::app
