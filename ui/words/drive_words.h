#pragma once

#include "core/belt/drive/load.h"
#include "core/belt/drive/remarks.h"
#include "core/belt/drive/route_choices.h"
#include "core/belt/drive/substitutes.h"

#include <QString>
#include <QStringList>

/// The words for drives, the same on screen and command line.
namespace riband::ui {

/// Two decimals and the unit: "301.99 mm".
QString shownMillimetres(double millimetres);
/// One decimal: "173.3°".
QString shownDegrees(double degrees);
/// Turns of the first pulley for one of the second: "2:1", "0.5:1".
QString shownRatio(double ratio);
QString shownShare(double share); ///< "63 %"

/// Why the drive can't be, and the least that works.
QString say(const belt::drive::DriveFault& fault, const belt::drive::TwoPulleys& drive);
/// Pulleys count from 1.
QString say(const belt::drive::RouteFault& fault);
QString say(const belt::drive::Remark& remark, const belt::drive::TwoPulleys& drive);

/// The belt that would be exactly right, with all its figures, in one line.
QString describe(const belt::drive::Run& run);
/// A belt that exists: name, distance, how far off, teeth in mesh, whether it is here.
QString describe(const belt::drive::Choice& choice);
QString describe(const belt::drive::RouteChoice& choice);
/// What is on one pulley of many.
QString describe(const belt::drive::Contact& contact, std::size_t number);
/// "20 mm instead: about 67 % of the pull".
QString describe(const belt::drive::OtherWidth& width);
/// Of a belt that is known by its length.
QString sayNotListed();
/// Why no belt is within reach, and how far the belts that exist go.
QString sayNothingFits(const belt::drive::Choices& choices);
/// Speed, pull and torques; what the width carries or that only the belt maker's data tell.
QStringList describe(const belt::drive::Pull& pull, const std::optional<belt::drive::Carry>& carry);

/// What is said with every drive: lock-out, guards, whose data decide.
QStringList driveCautions();

} // namespace riband::ui
