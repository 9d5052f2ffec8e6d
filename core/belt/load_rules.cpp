#include "core/belt/load.h"

namespace riband::belt {
namespace {

ToleranceRule ruleOf(const TableRow& row) {
    ToleranceRule rule;
    rule.profiles = row["profiles"].words();
    rule.plus = row["plus_mm"].width();
    rule.minus = row["minus_mm"].width();
    rule.standard = row["standard"].text();
    rule.confidence = row["confidence"].confidence();
    return rule;
}

void checkProfiles(const TableRow& row, const ToleranceRule& rule, const Tables::Data& data) {
    for (const auto& name : rule.profiles)
        if (name != "*" && !data.byName.contains(name)) row["profiles"].fail("names no profile");
}

TradeWord::Kind wordKind(const Field& field) {
    using Kind = TradeWord::Kind;
    static const std::map<std::string, Kind, std::less<>> kinds{
        {"tooth", Kind::Tooth},         {"ribbed", Kind::Ribbed},
        {"toothed", Kind::Toothed},     {"v-belt", Kind::VBelt},
        {"v-belt too", Kind::VBeltToo}, {"open-ended", Kind::OpenEnded},
        {"teeth", Kind::Teeth},         {"ribs", Kind::RibCount},
        {"quantity", Kind::Quantity},   {"quantity before", Kind::QuantityBefore},
        {"width", Kind::Width},         {"length", Kind::LengthWord},
        {"unit", Kind::Unit},           {"double-sided", Kind::DoubleSided},
        {"filler", Kind::Filler},       {"construction", Kind::Construction},
        {"number", Kind::Number}};
    const auto at = kinds.find(field.text());
    if (at == kinds.end()) field.fail("is no kind of word");
    return at->second;
}

} // namespace

void loadTolerances(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "width_tolerances", [&](const TableRow& row) {
        ToleranceRule rule = ruleOf(row);
        checkProfiles(row, rule, data);
        rule.body = row["body"].text();
        rule.widthFrom = row["width_min_mm"].widthIfAny();
        rule.widthUpTo = row["width_max_mm"].widthIfAny();
        rule.lengthOver = row["length_over_mm"].lengthIfAny();
        rule.lengthUpTo = row["length_upto_mm"].lengthIfAny();
        data.widthRules.push_back(std::move(rule));
    });
    eachRow(texts, "length_tolerances", [&](const TableRow& row) {
        ToleranceRule rule = ruleOf(row);
        checkProfiles(row, rule, data);
        rule.lengthOver = row["over_mm"].lengthIfAny();
        rule.lengthUpTo = row["upto_mm"].lengthIfAny();
        // Two equal pulleys: a belt longer by x moves them apart by half of x.
        const Ribs times{row["times"].whole()};
        rule.plus = rule.plus * times;
        rule.minus = rule.minus * times;
        data.lengthRules.push_back(std::move(rule));
    });
}

void loadPulls(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "pulls", [&](const TableRow& row) {
        const ReferencePull pull{.width = row["reference_width_mm"].width(),
                                 .newtons = row["pull_n"].decimal(),
                                 .kilogramsPerMetre = row["mass_kg_m"].decimal(),
                                 .exponent = row["exponent"].decimal(),
                                 .standard = row["standard"].text(),
                                 .confidence = row["confidence"].confidence()};
        if (pull.width.inMicrometres() == 0) row["reference_width_mm"].fail("is no width");
        if (!(pull.exponent > 0)) row["exponent"].fail("is no exponent");
        rowsOf(row["profile"], data).pull = pull;
    });
}

void loadShelfLife(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "shelf_life", [&](const TableRow& row) {
        const Tables::ShelfLife life{static_cast<int>(row["years"].whole()),
                                     static_cast<int>(row["extension_years"].whole())};
        data.lives.push_back({row["body"].text(), life});
    });
    if (data.lives.empty()) throw TableFault{"shelf_life", 0, "the table has no rows"};
}

void loadTradeWords(const TableTexts& texts, Tables::Data& data) {
    eachRow(texts, "trade_words", [&](const TableRow& row) {
        const auto kind = wordKind(row["kind"]);
        if (kind == TradeWord::Kind::Number) row["means"].whole();
        if (!data.words.emplace(row["word"].text(), TradeWord{kind, row["means"].text()}).second)
            row["word"].fail("stands twice");
    });
}

} // namespace riband::belt
