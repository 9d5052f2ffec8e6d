#pragma once

#include "core/belt/identify/instruments.h"

#include <QString>

#include <vector>

namespace riband::ui {

/// A measure as the helper asks for it.
struct AskedMeasure {
    belt::identify::Measure what;
    QString name; ///< with its key: "T&hickness in all"
    int over = 0; ///< what is offered first, where it is measured over several teeth or ribs
    bool counted() const;
};

/// In the order in which a person takes them; the shape is asked for by drawings.
std::vector<AskedMeasure> askedMeasures();

QString nameOf(belt::identify::Instrument instrument);

/// What was typed in a field: "100.1", "3,94 in", "100.1 ±0.3".
struct TypedFigure {
    double value;                ///< mm, or a count
    std::optional<double> error; ///< where one was typed with it
};
/// Nothing for what is no figure.
std::optional<TypedFigure> readFigure(const QString& typed);

} // namespace riband::ui
