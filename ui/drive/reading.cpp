#include "ui/drive/reading.h"

#include "core/belt/said_profile.h"
#include "core/measure/text.h"
#include "ui/words/drive_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

const belt::Profile* readProfile(const QString& typed, const belt::Tables& tables) {
    if (typed.trimmed().isEmpty()) return nullptr;
    const auto may = belt::profilesSaid(typed.toStdString(), tables);
    if (may.size() == 1) return may.front();
    refuse(DriveField::Profile, QStringLiteral("“%1”: %2").arg(typed.trimmed(), sayNotOneProfile(may)));
}

std::optional<Extent> readWidthOf(const QString& typed, const belt::Profile* profile) {
    if (typed.trimmed().isEmpty()) return std::nullopt;
    const auto width = readExtent(typed.toStdString(), profile ? profile->unit() : Unit::Micrometre);
    if (!width)
        refuse(DriveField::Width, QStringLiteral("“%1”: %2").arg(typed.trimmed(), say(width.reason())));
    if (width->isNone()) refuse(DriveField::Width, Words::tr("A width is more than nothing."));
    return *width;
}

belt::Belt asStocked(const belt::Belt& usual, const std::vector<belt::drive::Stocked>& stock) {
    const auto same =
        std::find_if(stock.begin(), stock.end(), [&](const auto& stocked) { return stocked.belt == usual; });
    return stock.empty() || same != stock.end() ? usual : stock.front().belt;
}

std::vector<belt::drive::Stocked> readStock(const StockOf& stock, const std::string& profile,
                                            DriveAnswer& answer) {
    if (const auto* here = stock(profile)) return *here;
    answer.stockRead = false;
    answer.notes << Words::tr("What is here is still being looked up.");
    return {};
}

DriveAnswer unclear(const Unclear& why) {
    DriveAnswer answer;
    answer.open = why.words;
    answer.wrong = why.wrong;
    answer.field = why.field;
    answer.row = why.row;
    return answer;
}

} // namespace riband::ui
