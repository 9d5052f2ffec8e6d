#include "core/foresight/best_fit.h"

#include <stdexcept>
#include <utility>

namespace riband::foresight {

namespace {

/// What cutting the lines takes of a piece.
std::int64_t takenBy(const CutRules& rules, const std::vector<Line>& lines) {
    std::int64_t taken = rules.trim;
    for (const auto& line : lines)
        taken += std::int64_t{line.quantity} * (line.width + rules.kerf);
    return taken;
}

/// The least piece that can take them.
std::int64_t neededFor(const CutRules& rules, const std::vector<Line>& lines) {
    Size widest = 0;
    for (const auto& line : lines)
        widest = std::max(widest, line.width);
    return takenBy(rules, lines) + rules.reserve(widest);
}

} // namespace

void BestFit::clearAged(double day) {
    std::erase_if(rack_, [&](const auto& e) { return day - e.opened > setting_->ageLimitDays; });
}

/// Cuts the lines in one mounting or, if no sleeve takes them all, in several; tells each with its lines.
template <class Told>
void BestFit::cutOut(std::vector<Line> lines, double day, Told told) {
    std::sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) { return a.width > b.width; });
    while (!lines.empty()) {
        const bool all = neededFor(setting_->rules, lines) <= setting_->sleeve;
        const std::vector<Line> part = all ? std::exchange(lines, {}) : asMuchAsFits(lines);
        told(part, cutFrom(smallestFor(part), part, day));
    }
}

template <class Told>
void BestFit::keepLimit(Told told) {
    while (std::ssize(rack_) > setting_->rackLimit) {
        const auto smallest = std::min_element(rack_.begin(), rack_.end(),
                                               [](const auto& a, const auto& b) { return a.size < b.size; });
        told(smallest->name);
        rack_.erase(smallest);
    }
}

Answer BestFit::answer(const Order& order) {
    clearAged(order.day);
    Answer answer;
    cutOut(order.lines, order.day, [&](const std::vector<Line>& lines, const Cut& cut) {
        Mounting mounting{cut.piece, cut.opensSleeve, {}, cut.left, cut.keepAs};
        for (const auto& line : lines)
            mounting.cuts.push_back({line.width, line.quantity, For::Order});
        answer.mountings.push_back(std::move(mounting));
    });
    keepLimit([&](PieceName name) { answer.scrap.push_back(name); });
    return answer;
}

std::optional<std::size_t> BestFit::serve(const std::vector<Line>& lines, double day, std::size_t most) {
    clearAged(day);
    const auto ignore = [](PieceName) {};
    if (neededFor(setting_->rules, lines) <= setting_->sleeve) {
        const auto piece = smallestFor(lines);
        const std::size_t opened = piece == rack_.end() ? 1 : 0;
        if (opened > most) return std::nullopt;
        cutFrom(piece, lines, day);
        keepLimit(ignore);
        return opened;
    }
    const BestFit before = *this;
    std::size_t opened = 0;
    cutOut(lines, day, [&](const auto&, const Cut& cut) { opened += cut.opensSleeve ? 1 : 0; });
    keepLimit(ignore);
    if (opened <= most) return opened;
    *this = before;
    return std::nullopt;
}

std::vector<Line> BestFit::asMuchAsFits(std::vector<Line>& lines) const {
    std::vector<Line> part;
    for (auto& line : lines) {
        part.push_back({line.width, 0});
        while (line.quantity > 0) {
            ++part.back().quantity;
            if (neededFor(setting_->rules, part) > setting_->sleeve) {
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

/// The end of the rack if a sleeve must be opened.
std::vector<BestFit::Piece>::iterator BestFit::smallestFor(const std::vector<Line>& lines) {
    const std::int64_t needed = neededFor(setting_->rules, lines);
    auto best = rack_.end();
    for (auto each = rack_.begin(); each != rack_.end(); ++each)
        if (each->size >= needed && (best == rack_.end() || each->size < best->size)) best = each;
    return best;
}

BestFit::Cut BestFit::cutFrom(std::vector<Piece>::iterator piece, const std::vector<Line>& lines,
                              double day) {
    const bool opens = piece == rack_.end();
    const Piece from = opens ? Piece{nextName_++, setting_->sleeve, day} : *piece;
    if (!opens) rack_.erase(piece);
    Cut cut{from.name, opens, static_cast<Size>(from.size - takenBy(setting_->rules, lines)), {}};
    if (cut.left < setting_->leastUseful()) return cut;
    cut.keepAs = nextName_++;
    rack_.push_back({*cut.keepAs, cut.left, from.opened});
    return cut;
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
