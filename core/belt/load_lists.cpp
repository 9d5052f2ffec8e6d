#include "core/belt/load.h"

#include <algorithm>

namespace riband::belt {
namespace {

const Profile& profileOf(const TableRow& row, const Tables::Data& data) {
    const auto at = data.byName.find(row["profile"].text());
    if (at == data.byName.end()) row["profile"].fail("is no profile");
    return data.profiles[at->second];
}

StandardWidth widthOf(const TableRow& row) {
    const Field width = row["width_mm"];
    if (width.millionths() == 0) width.fail("is no width");
    const Field inches = row["width_in"];
    if (!inches.empty() && inches.millionths() * 254 != width.millionths() * 10)
        inches.fail("in is not the width in millimetres");
    return {.extent = width.width(),
            .code = inches.empty() ? std::string{} : row["code"].text(),
            .label = row["label_mm"].text(),
            .inStandard = row["status"].text() == "standard",
            .confidence = row["confidence"].confidence()};
}

MadeLength lengthOf(const TableRow& row, const Profile& profile) {
    MadeLength made{.teeth = {},
                    .length = row["length_mm"].length(),
                    .code = row["code"].text(),
                    .others = row["other_codes"].words(),
                    .makers = static_cast<int>(row["makers"].words().size()),
                    .confidence = row["confidence"].confidence()};
    if (made.length.inNanometres() == 0) row["length_mm"].fail("is no length");
    if (profile.ribbed()) return made;
    const auto teeth = row["teeth"].whole();
    if (teeth < 1) row["teeth"].fail("is no number of teeth");
    made.teeth = Teeth{teeth};
    if (profile.pitch * *made.teeth != made.length) row["length_mm"].fail("is not teeth x pitch");
    return made;
}

/// Two makers' codes of one length are one belt: the codes are put together.
void join(MadeLength& into, const MadeLength& other) {
    into.others.insert(into.others.end(), other.others.begin(), other.others.end());
    into.makers += other.makers;
    into.confidence = std::min(into.confidence, other.confidence);
}

void sortLengths(ProfileRows& rows) {
    auto& lengths = rows.lengths;
    std::stable_sort(lengths.begin(), lengths.end(),
                     [](const MadeLength& a, const MadeLength& b) { return a.length < b.length; });
    std::vector<MadeLength> once;
    for (auto& length : lengths) {
        if (!once.empty() && once.back().length == length.length)
            join(once.back(), length);
        else
            once.push_back(std::move(length));
    }
    lengths = std::move(once);
}

void indexCodes(ProfileRows& rows) {
    for (std::size_t i = 0; i < rows.lengths.size(); ++i) {
        rows.byCode[rows.lengths[i].code].push_back(i);
        for (const auto& code : rows.lengths[i].others)
            if (code != rows.lengths[i].code) rows.byCode[code].push_back(i);
    }
}

} // namespace

void loadWidths(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "widths", [&](const TableRow& row) {
        if (profileOf(row, data).ribbed()) row["profile"].fail("is ribbed: its width is counted in ribs");
        rowsOf(row["profile"], data).widths.push_back(widthOf(row));
    });
    for (auto& rows : data.rows)
        std::stable_sort(rows.widths.begin(), rows.widths.end(),
                         [](const StandardWidth& a, const StandardWidth& b) { return a.extent < b.extent; });
}

void loadLengths(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "lengths", [&](const TableRow& row) {
        rowsOf(row["profile"], data).lengths.push_back(lengthOf(row, profileOf(row, data)));
    });
    for (auto& rows : data.rows) {
        sortLengths(rows);
        indexCodes(rows);
    }
}

void loadSleeves(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "sleeves", [&](const TableRow& row) {
        const bool ribbed = profileOf(row, data).ribbed();
        const Extent extent = ribbed ? Extent{Ribs{row["ribs"].whole()}} : Extent{row["width_mm"].width()};
        if (extent.isNone()) row.fail("a sleeve is wider than nothing");
        rowsOf(row["profile"], data)
            .sleeves.push_back({.lengthOver = row["length_over_mm"].lengthIfAny(),
                                .lengthUpTo = row["length_upto_mm"].lengthIfAny(),
                                .extent = extent,
                                .usual = row["usual"].text() == "yes"});
    });
    for (std::size_t i = 0; i < data.rows.size(); ++i)
        if (data.rows[i].sleeves.empty())
            throw TableFault{"sleeves", 0, data.profiles[i].name + " has no sleeve"};
}

} // namespace riband::belt
