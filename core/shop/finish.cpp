#include "core/shop/finish.h"

#include "core/shop/offers.h"

#include <algorithm>

namespace riband::shop {

namespace {

constexpr std::size_t mostBelts = 3;
constexpr std::ptrdiff_t mostAlike = 3;

/// Tries every choice of up to three belts; the first found with the most width is kept, so wider and fewer
/// belts win when the widths are tried wide first.
class Search {
public:
    Search(const cutting::Rules& rules, std::vector<Extent> widths, const std::vector<Extent>& onShelf,
           Extent widest, Extent left)
        : rules_{rules}, widths_{std::move(widths)}, onShelf_{onShelf}, widest_{widest}, left_{left},
          bestWidth_{Extent::none(rules.unit())} {}

    std::vector<Extent> best() {
        extend(0, bestWidth_, widest_);
        std::sort(best_.begin(), best_.end());
        return best_;
    }

private:
    bool shelfTakes(Extent width) const {
        return std::count(onShelf_.begin(), onShelf_.end(), width) +
                   std::count(chosen_.begin(), chosen_.end(), width) <
               mostAlike;
    }

    bool fits(Extent width, Extent widest) const {
        const Extent kerfs = rules_.kerf * static_cast<std::int64_t>(chosen_.size());
        return width + kerfs + rules_.reserve(widest) <= left_;
    }

    void extend(std::size_t from, Extent width, Extent widest) {
        if (!chosen_.empty() && !fits(width, widest)) return;
        if (width > bestWidth_) {
            bestWidth_ = width;
            best_ = chosen_;
        }
        if (chosen_.size() == mostBelts) return;
        for (std::size_t i = from; i < widths_.size(); ++i) {
            if (!shelfTakes(widths_[i])) continue;
            chosen_.push_back(widths_[i]);
            extend(i, width + widths_[i], std::max(widest, widths_[i]));
            chosen_.pop_back();
        }
    }

    const cutting::Rules& rules_;
    std::vector<Extent> widths_; ///< wide first
    const std::vector<Extent>& onShelf_;
    Extent widest_, left_;
    std::vector<Extent> chosen_, best_;
    Extent bestWidth_;
};

} // namespace

std::vector<Extent> finishOf(const cutting::Rules& rules, const std::vector<Extent>& listed,
                             const std::vector<Extent>& onShelf, Extent widest, Extent left) {
    if (listed.empty() || usableWorth(rules, listed)->of(left.count()) != 0) return {};
    std::vector<Extent> widths = listed;
    std::sort(widths.rbegin(), widths.rend());
    return Search{rules, std::move(widths), onShelf, widest, left}.best();
}

} // namespace riband::shop
