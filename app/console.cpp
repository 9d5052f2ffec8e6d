#include "app/console.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTextStream>

#include <cstdio>

namespace riband::app {

namespace {

void write(FILE* to, const QString& line) {
    QTextStream stream(to);
    stream << line << '\n';
}

} // namespace

void print(const QString& line) { write(stdout, line); }

void printJson(const QJsonObject& object) {
    QTextStream(stdout) << QString::fromUtf8(QJsonDocument(object).toJson());
}

void printJson(const QJsonArray& array) {
    QTextStream(stdout) << QString::fromUtf8(QJsonDocument(array).toJson());
}

void complain(const QString& line) { write(stderr, line); }

} // namespace riband::app
