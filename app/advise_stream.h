#pragma once

#include "core/foresight/advisor.h"

#include <QByteArray>
#include <QJsonObject>

#include <map>
#include <optional>

namespace riband::app {

/// The talk with a program that plays the shop: a JSON object a line in, one out (docs/foresight.md, "The
/// stream").
class AdviseStream {
public:
    /// The line to answer with. Throws BadInput for a line that can't be used; the talk is over then.
    QByteArray answer(const QByteArray& line);
    bool isDone() const { return done_; }

private:
    QJsonObject begin(const QJsonObject& said);
    QJsonObject order(const QJsonObject& said);
    foresight::Size sizeOf(double spoken);
    QJsonValue spoken(foresight::Size size) const;
    QJsonObject mountingSaid(const foresight::Mounting& mounting) const;
    QJsonObject answerSaid(const foresight::Answer& answer) const;

    std::unique_ptr<foresight::Advisor> advisor_;
    bool ribs_ = false;
    double lastDay_ = 0;
    std::map<foresight::Size, double>
        spoken_; ///< widths as they came: an inch width may have half a micrometre
    bool done_ = false;
};

/// The reason in words, with its figure.
QString inWords(const foresight::Reason& why, bool ribs);

} // namespace riband::app
