#pragma once

#include "core/belt/drive/load.h"
#include "core/belt/drive/remarks.h"
#include "core/belt/drive/route_choices.h"
#include "core/belt/drive/said_pulley.h"
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
QString shownShift(double shift); ///< of a distance: "2.00 mm farther", "as wanted"
QString shownMove(double move);   ///< of the pulley that can be set: "4.11 mm back", "0.51 mm on"
/// "here, up to 101 mm wide (steel cord)"; `stock` is not empty.
QString shownStock(const std::vector<belt::drive::Stocked>& stock);

/// Why the drive can't be, and the least that works.
QString say(const belt::drive::DriveFault& fault, const belt::drive::TwoPulleys& drive);
QString say(belt::drive::PulleyFault fault, const belt::Profile* profile);
/// A name that is no profile, or may be several (belt::profilesSaid).
QString sayNotOneProfile(const std::vector<const belt::Profile*>& may);
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
