#pragma once

#include "ui/counter/choices.h"

namespace riband::ui {

/// What could be sold in place of a belt that is not here, never of another profile: the lengths beside it
/// with what the pulleys would have to do, those that are here first; other widths of the belt itself that
/// can be cut; and the drive, to see whether it can take another length.
Choices substituteChoices(const belt::Reading& reading, const Session& session);

} // namespace riband::ui
