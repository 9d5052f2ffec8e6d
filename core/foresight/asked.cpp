#include "core/foresight/asked.h"

namespace riband::foresight {

Asked::Asked(const Setting& setting, std::span<const Line> lines) : count_{static_cast<int>(lines.size())} {
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto found = std::lower_bound(setting.listed.begin(), setting.listed.end(), lines[i].width);
        const bool isListed = found != setting.listed.end() && *found == lines[i].width &&
                              found - setting.listed.begin() < mostReady;
        items_[i] = {lines[i].width, lines[i].width + setting.rules.kerf, lines[i].quantity,
                     isListed ? static_cast<int>(found - setting.listed.begin()) : -1};
        stride_[i] = parts_;
        parts_ *= lines[i].quantity + 1;
    }
    if (count_ < 2) return;
    for (int part = 0; part < parts_; ++part) {
        Size size = 0, widest = 0;
        for (int i = 0; i < count_; ++i) {
            const int belts = this->belts(part, i);
            size += belts * items_[static_cast<std::size_t>(i)].step;
            if (belts > 0) widest = std::max(widest, items_[static_cast<std::size_t>(i)].width);
        }
        size_.push_back(size);
        widest_.push_back(widest);
    }
    for (int whole = parts_ - 1; whole > 0; --whole)
        addPairs(whole);
}

/// Counts up through the parts within a whole, line by line as a mileage counter does: no part outside is
/// looked at.
void Asked::addPairs(int whole) {
    std::array<int, mostLines> most{}, belts{};
    for (int i = 0; i < count_; ++i)
        most[static_cast<std::size_t>(i)] = this->belts(whole, i);
    for (int part = 0;;) {
        int line = 0;
        for (; line < count_; ++line) {
            const auto i = static_cast<std::size_t>(line);
            if (belts[i] < most[i]) break;
            part -= belts[i] * stride_[i];
            belts[i] = 0;
        }
        if (line == count_) return;
        ++belts[static_cast<std::size_t>(line)];
        part += stride_[static_cast<std::size_t>(line)];
        unsigned more = 0;
        for (std::size_t i = 0; i < most.size(); ++i)
            more |= belts[i] < most[i] ? 1U << i : 0U;
        pairs_.push_back({static_cast<std::uint8_t>(whole), static_cast<std::uint8_t>(part),
                          static_cast<std::uint8_t>(more)});
    }
}

int Asked::belts(int part, int line) const {
    const auto i = static_cast<std::size_t>(line);
    return part / stride_[i] % (items_[i].quantity + 1);
}

std::vector<Asked> weighable(const Setting& setting, const std::vector<Line>& lines) {
    std::vector<Asked> all;
    std::vector<Line> group;
    int parts = 1;
    const auto close = [&] {
        if (!group.empty()) all.emplace_back(setting, group);
        group.clear();
        parts = 1;
    };
    for (auto line : lines) {
        while (line.quantity > 0) {
            const int most = mostParts / parts - 1;
            if (std::ssize(group) == mostLines || most < std::min(line.quantity, mostParts - 1)) {
                if (!group.empty()) {
                    close();
                    continue;
                }
            }
            const int count = std::min(line.quantity, most);
            group.push_back({line.width, count});
            parts *= count + 1;
            line.quantity -= count;
            if (line.quantity > 0) close();
        }
    }
    close();
    return all;
}

} // namespace riband::foresight
