#pragma once

#include "tests/catch.h"

#include <QByteArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <ostream>

// So that a failed comparison shows both sides.
namespace Catch {
template <>
struct StringMaker<QJsonObject> {
    static std::string convert(const QJsonObject& object) {
        return QJsonDocument(object).toJson().toStdString();
    }
};
template <>
struct StringMaker<QByteArray> {
    static std::string convert(const QByteArray& bytes) { return bytes.left(2'000).toStdString(); }
};
} // namespace Catch
