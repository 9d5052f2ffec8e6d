#include "core/shop/sheet.h"

#include "core/shop/limits.h"
#include "core/shop/sleeve_guess.h"

#include <map>
#include <set>

namespace riband::shop {

namespace {

using Field = SheetField;
using Problem = SheetFault::Problem;
constexpr int mostSleeves = 500;

bool digitEnds(std::string_view text) { return !text.empty() && text.back() >= '0' && text.back() <= '9'; }

/// What is read once for the whole table: belts by their text, codes, what the shop keeps.
class Known {
public:
    explicit Known(const Shop& shop)
        : shop_{shop}, currency{store::Settings{shop.connection}.read().prices.currency}, lastDay{lastMade(
                                                                                              shop)} {
        for (const store::StockedBelt& belt : store::Catalogue{shop.connection}.all())
            kept_.insert(belt.designation);
    }

    const Outcome<belt::Belt, belt::ReadFault>& belt(const std::string& text) {
        const auto found = belts_.find(text);
        if (found != belts_.end()) return found->second;
        return belts_.emplace(text, belt::readBelt(text, *shop_.tables)).first->second;
    }
    const std::optional<KnownCode>& code(const std::string& text) {
        const auto found = codes_.find(text);
        if (found != codes_.end()) return found->second;
        return codes_.emplace(text, knownCode(shop_, text)).first->second;
    }
    bool keeps(const belt::Belt& belt) const { return kept_.contains(belt::designation(belt)); }
    bool canBePlace(const std::string& name) const { return shop::canBePlace(shop_, name); }
    const belt::Tables& tables() const { return *shop_.tables; }
    const SleeveWidths& sleeves(const belt::Belt& belt) {
        const auto [found, isNew] = sleeves_.try_emplace(belt::designation(belt));
        if (isNew) found->second = sleeveWidths(shop_, belt);
        return found->second;
    }

private:
    const Shop& shop_;
    std::map<std::string, Outcome<belt::Belt, belt::ReadFault>> belts_;
    std::map<std::string, std::optional<KnownCode>> codes_;
    std::set<std::string> kept_;
    std::map<std::string, SleeveWidths> sleeves_;

public:
    const Currency currency;
    const Date lastDay; ///< of what is here
};

/// One row while it is read; its faults go to the sheet.
class RowReader {
public:
    RowReader(const CsvTable::Row& row, const SheetMatch& match, Known& known,
              std::vector<SheetFault>& faults)
        : row_{row}, match_{match}, known_{known}, faults_{faults} {}

    std::optional<SheetRow> read() {
        const std::size_t before = faults_.size();
        const auto received = day(Field::Received), made = day(Field::Made);
        const Money cost = this->cost();
        const int sleeves = this->sleeves();
        if (!known_.canBePlace(text(Field::Place))) fault(Field::Place, Problem::NoPlace);
        const auto belt = this->belt();
        if (!belt) return std::nullopt;
        const auto extent = this->extent(*belt);
        const auto labelled = this->labelled(*belt);
        const auto kind = this->kind(*belt, extent, labelled);
        if (faults_.size() != before || !extent || !kind) return std::nullopt;
        return SheetRow{row_.line,
                        Delivery{.belt = *belt,
                                 .sleeves = sleeves,
                                 .extent = *extent,
                                 .costEach = cost,
                                 .batch = inOneLine(text(Field::Batch)),
                                 .made = made ? made : received,
                                 .place = text(Field::Place),
                                 .kind = *kind,
                                 .labelled = labelled == extent ? std::nullopt : labelled,
                                 .supplierCode = text(Field::SupplierCode)},
                        text(Field::Piece), !known_.keeps(*belt), !match_.column(Field::Kind)};
    }

private:
    std::string text(Field field) const {
        const auto column = match_.column(field);
        return column ? csvValue(row_.fields[*column]) : std::string{};
    }
    template <class Why>
    void fault(Field field, Why why) {
        const std::size_t column = match_.column(field).value_or(0);
        faults_.push_back({row_.line, column, std::move(why), csvValue(row_.fields[column])});
    }
    Unit unitOf(const belt::Belt& belt) const {
        const belt::Profile* profile = known_.tables().profile(belt.profile);
        return profile ? profile->unit() : Unit::Micrometre;
    }

    std::optional<Date> day(Field field) {
        const std::string said = text(field);
        if (said.empty()) return std::nullopt;
        const auto date = readDate(said);
        if (!date)
            fault(field, Problem::NoDay);
        else if (*date > known_.lastDay)
            fault(field, Problem::FutureDay);
        return date;
    }

    Money cost() {
        const std::string said = text(Field::Cost);
        if (said.empty()) return Money::minor(0);
        const auto money = readMoney(said, known_.currency);
        if (!money)
            fault(Field::Cost, money.reason());
        else if (*money < Money::minor(0))
            fault(Field::Cost, TextFault::Negative);
        else if (*money > dearestSleeve)
            fault(Field::Cost, Problem::TooDear);
        else
            return *money;
        return Money::minor(0);
    }

    int sleeves() {
        const std::string said = text(Field::Sleeves);
        if (said.empty()) return 1;
        const auto count = readRibs(said); // a whole number, as exact as ribs are
        if (count && count->count() >= 1 && count->count() <= mostSleeves && digitEnds(said))
            return static_cast<int>(count->count());
        fault(Field::Sleeves, Problem::BadCount);
        return 1;
    }

    std::optional<belt::Belt> belt() {
        std::string said = text(Field::Belt);
        if (said.empty() && match_.column(Field::Profile))
            said = text(Field::Profile) + ' ' + text(Field::Length);
        if (const std::string code = text(Field::SupplierCode); said.empty() && !code.empty()) {
            const auto& known = known_.code(code);
            if (known) return known->belt.belt;
            fault(Field::SupplierCode, Problem::UnknownCode);
            return std::nullopt;
        }
        if (const std::string construction = text(Field::Construction); !construction.empty())
            said += ' ' + construction;
        const auto& read = known_.belt(said);
        if (read) return *read;
        fault(match_.column(Field::Belt) ? Field::Belt : Field::Profile, read.reason());
        return std::nullopt;
    }

    Read<Extent> measured(std::string said, Unit unit) const {
        if (unit == Unit::Micrometre && digitEnds(said) && match_.unit != SheetUnit::Millimetre)
            said += match_.unit == SheetUnit::Inch ? " in" : " cm";
        return readExtent(said, unit);
    }

    std::optional<Extent> extent(const belt::Belt& belt) {
        const Unit unit = unitOf(belt);
        const bool ribbed = unit == Unit::Rib;
        Field asked = ribbed ? Field::Ribs : Field::Width;
        const Field other = ribbed ? Field::Width : Field::Ribs;
        if (!text(other).empty()) {
            // "6 ribs" may stand in the one column that the table has for both.
            if (ribbed && text(asked).empty() && readRibs(text(other)) && !digitEnds(text(other)))
                asked = other;
            else {
                fault(other, ribbed ? Problem::CountRibs : Problem::NoRibs);
                return std::nullopt;
            }
        }
        if (text(asked).empty() && known_.code(text(Field::SupplierCode)))
            if (const auto usual = known_.code(text(Field::SupplierCode))->extent) return usual;
        return width(asked, unit);
    }

    std::optional<Extent> width(Field field, Unit unit) {
        const auto read = measured(text(field), unit);
        if (!read)
            fault(field, read.reason());
        else if (read->isNone())
            fault(field, Problem::Nothing);
        else if (*read > widestPiece(unit))
            fault(field, Problem::TooWide);
        else
            return *read;
        return std::nullopt;
    }

    std::optional<Extent> labelled(const belt::Belt& belt) {
        if (text(Field::Labelled).empty()) return std::nullopt;
        return width(Field::Labelled, unitOf(belt));
    }

    std::optional<cutting::PieceKind> kind(const belt::Belt& belt, const std::optional<Extent>& extent,
                                           const std::optional<Extent>& labelled) {
        using cutting::PieceKind;
        const std::string said = text(Field::Kind);
        if (!match_.column(Field::Kind)) {
            if (!extent) return PieceKind::Sleeve; // the width is the fault, not the kind
            const SleeveWidths& sleeves = known_.sleeves(belt);
            const bool sleeve = isSleeve(sleeves, *extent) || (labelled && isSleeve(sleeves, *labelled));
            return sleeve ? PieceKind::Sleeve : PieceKind::Remnant;
        }
        if (said == "sleeve") return PieceKind::Sleeve;
        if (said == "remnant" || said == "offcut") return PieceKind::Remnant;
        if (said == "ready") return PieceKind::Ready;
        fault(Field::Kind, Problem::UnknownKind);
        return std::nullopt;
    }

    const CsvTable::Row& row_;
    const SheetMatch& match_;
    Known& known_;
    std::vector<SheetFault>& faults_;
};

} // namespace

std::vector<Delivery> Sheet::deliveries() const {
    std::vector<Delivery> all;
    for (const SheetRow& row : rows)
        all.push_back(row.delivery);
    return all;
}

Sheet readSheet(const Shop& shop, const CsvTable& table, const SheetMatch& match, const GoOn& goOn) {
    constexpr std::size_t between = 256; // rows from one question to the next
    Known known{shop};
    Sheet sheet;
    for (std::size_t i = 0; i < table.rows().size(); ++i) {
        if (goOn && i % between == 0 &&
            !goOn(static_cast<double>(i) / static_cast<double>(table.rows().size()))) {
            sheet.stopped = true;
            return sheet;
        }
        if (auto row = RowReader{table.rows()[i], match, known, sheet.faults}.read())
            sheet.rows.push_back(std::move(*row));
    }
    return sheet;
}

} // namespace riband::shop
