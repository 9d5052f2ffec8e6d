#pragma once

#include "core/foresight/buying/record.h"
#include "core/foresight/dice.h"

namespace riband::foresight {

/// A year that could have been: the record's own weeks drawn anew in runs of four (a block bootstrap,
/// Kuensch, Annals of Statistics 17, 1989), so that what comes together in a month stays together. The same
/// dice, the same year: alternatives are compared on the same ones.
std::vector<Order> resampled(const Record& record, Dice dice);

/// A year as the outlook expects it after learning the record: its pace, widths, quantities and lines.
std::vector<Order> expectedYear(const Setting& setting, const Record& record, Dice dice);

/// The last year of a record, or all of it if it is shorter; days count from its beginning.
Record lastYear(const Record& record);

} // namespace riband::foresight
