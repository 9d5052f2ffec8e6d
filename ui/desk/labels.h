#pragma once

#include <QFrame>
#include <QLabel>

namespace riband::ui {

/// A label in one of the roles of the style sheet ("head", "remark", "warn" ...; "" is plain text). Its words
/// are shown as they are, never as markup.
QLabel* label(const QString& words, const char* role = "", QWidget* parent = nullptr);
/// A frame in one of its surfaces ("card", "sunk", "advice", "line" ...).
QFrame* surface(const char* name, QWidget* parent = nullptr);

} // namespace riband::ui
