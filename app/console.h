#pragma once

#include <QJsonValue>
#include <QString>

#include <stdexcept>

namespace riband::app {

/// What a command tells the caller.
enum class Exit : int {
    Done = 0,
    No = 1,       ///< understood, but the answer is no
    BadInput = 2, ///< told on stderr, with line and column where there are any
};

/// What was given can't be used. `what` is for the person who gave it: several lines, one a fault.
class BadInput : public std::runtime_error {
public:
    explicit BadInput(const QString& what) : std::runtime_error{what.toStdString()} {}
};

void print(const QString& line);
void printJson(const QJsonObject& object);
void printJson(const QJsonArray& array);
/// On stderr.
void complain(const QString& line);

} // namespace riband::app
