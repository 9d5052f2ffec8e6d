#pragma once

#include <QCoreApplication>
#include <QString>

#include <string>

namespace riband::ui {

/// The one translation context of the words for what the core says.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

inline QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

} // namespace riband::ui
