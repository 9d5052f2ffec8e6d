#pragma once

#include "core/belt/identify/instruments.h"
#include "core/belt/identify/taped.h"
#include "core/belt/tables.h"
#include "ui/counter/measured_belt.h"

#include <QString>

#include <vector>

namespace riband::ui {

/// What is known of the customer's belt beside the words: the profile of his pulley, a length by tape, what
/// the old belt measured. Says when one of them disagrees with what was said. No widget.
class Evidence {
public:
    /// `tapeError`: mm, standard error of the shop's tape.
    explicit Evidence(const belt::Tables& tables, double tapeError = belt::identify::Instruments{}.tape)
        : tables_{&tables}, tapeError_{tapeError} {}

    void setPulley(const QString& typed) { pulley_ = typed.trimmed(); }
    void setTape(const QString& typed) { tape_ = typed.trimmed(); }
    void setTapeError(double millimetres) { tapeError_ = millimetres; }
    /// `said`: what was said before the measured belt took its place on the line.
    void setMeasured(const MeasuredBelt& measured, std::optional<belt::Belt> said);
    /// The clerk was told and sells it all the same.
    void overrule() { overruled_ = true; }
    /// Another belt is asked about; what the clerk overruled was about this one.
    void askAnew() { overruled_ = false; }
    void clear();
    bool isEmpty() const { return pulley_.isEmpty() && tape_.isEmpty() && !measured_; }

    /// What was typed as the pulley's profile is one; true if nothing was.
    bool pulleyIsKnown() const { return pulley_.isEmpty() || pulley(); }
    /// "8M: this may be H8M, ...": what is the matter with it; "" if it is known.
    QString pulleyFault() const;
    bool tapeIsFigure() const { return tape_.isEmpty() || tapeFigure(); }

    struct Finding {
        enum class Kind { Fits, Warns, Stops };
        Kind kind;
        QString words;
        /// Belts that would be right instead, with the length that was said where it is made; the nearest
        /// ones else.
        std::vector<belt::Belt> rather{};
    };
    std::vector<Finding> of(const belt::Belt& wanted) const;
    /// Something known says that this belt will not run, and the clerk has not overruled it.
    bool stops(const belt::Belt& wanted) const;

private:
    const belt::Profile* pulley() const;
    std::vector<const belt::Profile*> pulleys() const; ///< that may be meant
    std::optional<double> tapeFigure() const;
    void ofPulley(const belt::Belt& wanted, std::vector<Finding>& found) const;
    void ofTape(const belt::Belt& wanted, std::vector<Finding>& found) const;
    void ofMeasured(const belt::Belt& wanted, std::vector<Finding>& found) const;

    const belt::Tables* tables_;
    double tapeError_;
    QString pulley_, tape_;
    std::optional<MeasuredBelt> measured_;
    std::optional<belt::Belt> said_;
    bool overruled_ = false;
};

/// Belts of another profile for a drive of this length: the same length if it is made, else the made ones
/// around it.
std::vector<belt::Belt> ofProfile(const belt::Profile& profile, Length length, const belt::Tables& tables);

} // namespace riband::ui
