#pragma once

#include "core/belt/reader.h"

#include <QString>

#include <optional>

namespace riband::ui {

/// A belt that is wanted, so far that it could be ordered.
struct Wanted {
    belt::Belt belt;
    Extent extent;
    std::int64_t quantity;
};

/// What stands on the Counter's line and what it means. No widget; never guesses: while it asks, nothing is
/// wanted.
class Inquiry {
public:
    enum class State { Empty, Fault, Asks, Complete };
    explicit Inquiry(const belt::Tables& tables) : tables_{&tables} {}

    void say(const QString& text);
    /// Settles on one of several readings, until other words are said.
    void choose(std::size_t reading);

    State state() const;
    const QString& said() const { return said_; }
    const belt::Understanding& understanding() const { return understanding_; }
    /// What is still to be asked: of the reader, or the width of a chosen reading.
    std::optional<belt::Question> question() const;
    /// The readings to choose from: empty once there is one.
    std::vector<belt::Reading> open() const;
    /// The reading there is, or the likeliest of those to choose from.
    const belt::Reading* reading() const;
    std::optional<Wanted> wanted() const;

private:
    const belt::Tables* tables_;
    QString said_;
    belt::Understanding understanding_;
    std::optional<std::size_t> chosen_;
};

/// Words that read back to this reading alone: the shop's own way to write it, else the printed form. Nothing
/// if neither does.
std::optional<QString> wordsFor(const belt::Reading& reading, const belt::Tables& tables);

} // namespace riband::ui
