#pragma once

#include "ui/which/identifier.h"

#include <QFrame>

class QLabel;

namespace riband::ui {

class KeyButton;

/// The answer in words: what it is, how sure, why, and the one measurement that would tell most.
class AnswerCard final : public QFrame {
    Q_OBJECT
public:
    explicit AnswerCard(const belt::Tables& tables, QWidget* parent = nullptr);
    void show(const Identifier::Answer& answer);
    /// Nothing is measured, or something typed is no figure.
    void showWords(const QString& headline, const QString& words);
    KeyButton& measureNext() { return *next_; }

private:
    void buildView();
    void setNotes(const QStringList& notes);
    const belt::Tables& tables_;
    QLabel *headline_, *state_, *why_, *notes_;
    KeyButton* next_;
};

} // namespace riband::ui
