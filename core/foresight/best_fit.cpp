#include "core/foresight/best_fit.h"

#include <stdexcept>

namespace riband::foresight {

namespace {

/// What is left of a piece after cutting the lines; negative if the piece can't take them.
std::int64_t leftOf(const CutRules& rules, Size piece, const std::vector<Line>& lines) {
    std::int64_t left = std::int64_t{piece} - rules.trim;
    Size widest = 0;
    for (const auto& line : lines) {
        left -= std::int64_t{line.quantity} * (line.width + rules.kerf);
        widest = std::max(widest, line.width);
    }
    return left >= rules.reserve(widest) ? left : -1;
}

} // namespace

Answer BestFit::answer(const Order& order) {
    std::erase_if(rack_, [&](const auto& e) { return order.day - e.opened > setting_->ageLimitDays; });
    Answer answer;
    auto lines = order.lines;
    std::sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.width > b.width; });
    while (!lines.empty()) {
        if (leftOf(setting_->rules, setting_->sleeve, lines) >= 0) {
            cutFrom(answer, lines, order.day);
            break;
        }
        cutFrom(answer, asMuchAsFits(lines), order.day);
    }
    while (std::ssize(rack_) > setting_->rackLimit) {
        const auto smallest = std::min_element(rack_.begin(), rack_.end(),
                                               [](const auto& a, const auto& b) { return a.size < b.size; });
        answer.scrap.push_back(smallest->name);
        rack_.erase(smallest);
    }
    return answer;
}

std::vector<Line> BestFit::asMuchAsFits(std::vector<Line>& lines) const {
    std::vector<Line> part;
    for (auto& line : lines) {
        part.push_back({line.width, 0});
        while (line.quantity > 0) {
            ++part.back().quantity;
            if (leftOf(setting_->rules, setting_->sleeve, part) < 0) {
                --part.back().quantity;
                break;
            }
            --line.quantity;
        }
        if (part.back().quantity == 0) part.pop_back();
    }
    std::erase_if(lines, [](const Line& line) { return line.quantity == 0; });
    if (part.empty()) throw std::invalid_argument("a belt is too wide for any sleeve");
    return part;
}

void BestFit::cutFrom(Answer& answer, const std::vector<Line>& lines, double day) {
    auto best = rack_.end();
    for (auto each = rack_.begin(); each != rack_.end(); ++each)
        if (leftOf(setting_->rules, each->size, lines) >= 0 &&
            (best == rack_.end() || each->size < best->size))
            best = each;
    Mounting mounting;
    double opened = day;
    Size size = setting_->sleeve;
    if (best == rack_.end()) {
        mounting.piece = nextName_++;
        mounting.opensSleeve = true;
    } else {
        mounting.piece = best->name;
        opened = best->opened;
        size = best->size;
        rack_.erase(best);
    }
    for (const auto& line : lines)
        mounting.cuts.push_back({line.width, line.quantity, For::Order});
    mounting.left = static_cast<Size>(leftOf(setting_->rules, size, lines));
    keepRest(mounting, opened);
    answer.mountings.push_back(std::move(mounting));
}

void BestFit::keepRest(Mounting& mounting, double opened) {
    if (mounting.left < setting_->leastUseful()) return;
    mounting.keepAs = nextName_++;
    rack_.push_back({*mounting.keepAs, mounting.left, opened});
}

void BestFit::scrapBelow(Size least) {
    std::erase_if(rack_, [least](const Piece& piece) { return piece.size < least; });
}

double BestFit::held() const {
    double held = 0;
    for (const Piece& piece : rack_)
        held += piece.size;
    return held;
}

} // namespace riband::foresight
