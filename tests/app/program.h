#pragma once

#include <QByteArray>
#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QStringList>
#include <QTemporaryDir>

namespace riband::tests {

/// What the program said to one call.
struct Answer {
    int exit;
    QByteArray out;
    QByteArray err;
    QJsonObject json() const { return QJsonDocument::fromJson(out).object(); }
};

/// Runs the built program to its end. An exit of -1: it crashed or hung.
inline Answer run(const QStringList& arguments, const QByteArray& input = {}) {
    QProcess process;
    process.start(QStringLiteral(RIBAND_PROGRAM), arguments);
    process.write(input);
    process.closeWriteChannel();
    const bool ended = process.waitForFinished(120'000) && process.exitStatus() == QProcess::NormalExit;
    if (!ended) process.kill();
    return {ended ? process.exitCode() : -1, process.readAllStandardOutput(), process.readAllStandardError()};
}

/// A folder for the files of one test.
class Folder {
public:
    QString file(const QString& name) const { return folder_.filePath(name); }
    /// Writes a file and gives its path.
    QString with(const QString& name, const QByteArray& content) const {
        QFile file(folder_.filePath(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size()) qFatal("no test file");
        return file.fileName();
    }
    QByteArray content(const QString& name) const {
        QFile file(folder_.filePath(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

private:
    QTemporaryDir folder_;
};

/// The same value with the text that people write: compares JSON as values.
inline QJsonObject jsonOf(const char* text) { return QJsonDocument::fromJson(text).object(); }

} // namespace riband::tests
