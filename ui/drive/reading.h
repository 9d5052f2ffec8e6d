#pragma once

#include "ui/drive/answer.h"

namespace riband::ui {

/// What is typed can't be answered (yet). Thrown while a question is read, and caught in answerTo.
struct Unclear {
    QString words;
    bool wrong;
    DriveField field;
    int row = -1;
};
[[noreturn]] inline void refuse(DriveField field, const QString& words, int row = -1) {
    throw Unclear{words, true, field, row};
}
[[noreturn]] inline void ask(DriveField field, const QString& words) { throw Unclear{words, false, field}; }

/// nullptr: none was typed, the pulleys are plain.
const belt::Profile* readProfile(const QString& typed, const belt::Tables& tables);
std::optional<Extent> readWidthOf(const QString& typed, const belt::Profile* profile);
/// The belt as the shop has it: of the usual construction if there is one of it.
belt::Belt asStocked(const belt::Belt& usual, const std::vector<belt::drive::Stocked>& stock);
/// What is here of the profile; nothing, and the answer says so, while it is being read.
std::vector<belt::drive::Stocked> readStock(const StockOf& stock, const std::string& profile,
                                            DriveAnswer& answer);
DriveAnswer unclear(const Unclear& why);

} // namespace riband::ui
