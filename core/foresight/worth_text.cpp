#include "core/foresight/worth_text.h"

#include <charconv>
#include <cmath>
#include <sstream>

namespace riband::foresight {

namespace {

template <class Number>
void add(std::string& text, Number number) {
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
    if (!text.empty()) text += ' ';
    text.append(digits.data(), end);
}

/// Numbers with a space between.
class Numbers {
public:
    explicit Numbers(const std::string& text) : at_{text.data()}, end_{text.data() + text.size()} {}
    template <class Number>
    bool next(Number& number) {
        while (at_ != end_ && *at_ == ' ')
            ++at_;
        const auto read = std::from_chars(at_, end_, number);
        if (read.ec != std::errc{}) return false;
        at_ = read.ptr;
        return true;
    }
    bool atEnd() const { return at_ == end_; }

private:
    const char* at_;
    const char* end_;
};

bool isCurve(const WorthTable& table) {
    float before = 0;
    for (std::size_t i = 0; i < table.piece.size(); ++i) {
        const float worth = table.piece[i];
        const auto width = static_cast<float>(static_cast<Size>(i + 1) * table.grid.cell());
        if (!std::isfinite(worth) || worth < before - 1 || worth > width) return false;
        before = worth;
    }
    return true;
}

} // namespace

std::string print(const WorthTable& table) {
    std::string text;
    add(text, table.grid.cell());
    add(text, table.piece.size());
    for (const float worth : table.piece)
        add(text, worth);
    for (std::size_t l = 0; l < mostReady; ++l) {
        add(text, table.target[l]);
        for (const float worth : table.ready[l])
            add(text, worth);
    }
    return text;
}

std::optional<WorthTable> readWorthTable(const Setting& setting, const std::string& text) {
    WorthTable table{setting};
    Numbers numbers{text};
    Size cell = 0;
    std::size_t cells = 0;
    if (!numbers.next(cell) || !numbers.next(cells)) return std::nullopt;
    if (cell != table.grid.cell() || cells != table.piece.size()) return std::nullopt;
    for (float& worth : table.piece)
        if (!numbers.next(worth)) return std::nullopt;
    for (std::size_t l = 0; l < mostReady; ++l) {
        if (!numbers.next(table.target[l])) return std::nullopt;
        if (table.target[l] < 0 || table.target[l] > shelfLimit) return std::nullopt;
        for (float& worth : table.ready[l])
            if (!numbers.next(worth) || !std::isfinite(worth)) return std::nullopt;
    }
    if (!numbers.atEnd() || !isCurve(table)) return std::nullopt;
    return table;
}

std::string print(const Setting& setting) {
    std::ostringstream text;
    text.imbue(std::locale::classic());
    const auto& rules = setting.rules;
    text << (setting.ribs ? "ribs" : "um") << " sleeve " << setting.sleeve << " listed";
    for (const Size width : setting.listed)
        text << ' ' << width;
    text << " trim " << rules.trim << " kerf " << rules.kerf << " end " << rules.end << " stub " << rules.stub
         << " mounting " << rules.mountingCost << " rack " << setting.rackLimit << " shelf "
         << static_cast<int>(setting.shelf) << ' ' << setting.shelfRoom << " interest " << setting.interest
         << " holding " << setting.holdingCost;
    if (setting.shelfAtOnce > 0) text << " at once " << setting.shelfAtOnce;
    return text.str();
}

} // namespace riband::foresight
