#pragma once

#include "core/belt/table_rows.h"
#include "core/belt/tables_data.h"

/// One function a table. Each throws TableFault where a row breaks a rule. Profiles come first: the others
/// name them.
namespace riband::belt {

void loadProfiles(const TableTexts& texts, Tables::Data& data); ///< with tooth shapes and smallest pulleys
void loadWidths(const TableTexts& texts, Tables::Data& data);
void loadLengths(const TableTexts& texts, Tables::Data& data);
void loadTolerances(const TableTexts& texts, Tables::Data& data);
void loadSleeves(const TableTexts& texts, Tables::Data& data);
void loadPulls(const TableTexts& texts, Tables::Data& data);
void loadShelfLife(const TableTexts& texts, Tables::Data& data);
void loadTradeWords(const TableTexts& texts, Tables::Data& data);

/// The rows of the profile that this field names.
ProfileRows& rowsOf(const Field& profile, Tables::Data& data);

} // namespace riband::belt
