#include "core/foresight/fill.h"

namespace riband::foresight {

namespace {
constexpr float impossible = -1e12F;
}

Fill::Fill(const Setting& setting) : setting_{setting} {
    const std::size_t widths = std::min<std::size_t>(setting.listed.size(), mostReady);
    tables_.resize((widths + 1) * static_cast<std::size_t>(setting.shelfAtOnce + 1));
}

void Fill::prepare(const WorthTable& table, const std::array<std::int8_t, mostReady>& shelf, Size widest) {
    if (setting_.shelf == Shelf::None) {
        worth_ = table.piece.data();
        return;
    }
    const Made wanted{&table, table.version, shelf, setting_.rules.reserve(widest)};
    if (wanted == made_) return;
    made_ = wanted;
    worth_ = table.piece.data();
    layers_.clear();
    const std::size_t widths = std::min<std::size_t>(setting_.listed.size(), mostReady);
    for (std::size_t l = 0; l < widths; ++l) {
        const int there = shelf[l];
        const int room = table.target[l] - there;
        if (room <= 0) continue;
        Layer layer{static_cast<int>(l), table.grid.upTo(setting_.listed[l] + setting_.rules.kerf), room, {}};
        for (int n = 1; n <= room; ++n)
            layer.gain[static_cast<std::size_t>(n)] = table.ready[l][static_cast<std::size_t>(there + n)] -
                                                      table.ready[l][static_cast<std::size_t>(there)];
        layers_.push_back(layer);
    }
    if (layers_.empty()) return;
    const auto reserve = static_cast<std::size_t>(table.grid.upTo(setting_.rules.reserve(widest)));
    auto& first = tables_[at(0, 0)];
    first = table.piece;
    if (setting_.shelf == Shelf::Stub) std::fill(first.begin(), first.end(), 0.0F);
    std::fill(first.begin(), first.begin() + static_cast<std::ptrdiff_t>(std::min(reserve, first.size())),
              impossible);
    for (int allowed = 1; allowed <= setting_.shelfAtOnce; ++allowed)
        tables_[at(0, allowed)] = first;
    for (std::size_t n = 0; n < layers_.size(); ++n)
        addLayer(n, layers_[n]);
    best_ = tables_[at(layers_.size(), setting_.shelfAtOnce)];
    for (std::size_t i = 0; i < best_.size(); ++i)
        best_[i] = std::max(best_[i], table.piece[i]);
    worth_ = best_.data();
}

void Fill::addLayer(std::size_t number, const Layer& layer) {
    for (int allowed = 0; allowed <= setting_.shelfAtOnce; ++allowed) {
        auto& after = tables_[at(number + 1, allowed)];
        after = tables_[at(number, allowed)];
        const auto cells = after.size();
        for (int n = 1; n <= mostOf(layer, allowed); ++n) {
            const auto shift = static_cast<std::size_t>(n * layer.step);
            if (shift >= cells) break;
            const float gain = layer.gain[static_cast<std::size_t>(n)];
            const float* from = tables_[at(number, allowed - n)].data();
            float* to = after.data() + shift;
            for (std::size_t i = 0; i < cells - shift; ++i)
                to[i] = std::max(to[i], from[i] + gain);
        }
    }
}

Fill::Choice Fill::choose(const WorthTable& table, Size rest) const {
    Choice choice;
    choice.left = rest;
    if (worth_ == table.piece.data()) return choice;
    auto cell = static_cast<std::size_t>(table.grid.at(rest));
    if (best_[cell] <= table.piece[cell]) return choice;
    int allowed = setting_.shelfAtOnce;
    for (std::size_t n = layers_.size(); n-- > 0;) {
        const auto& layer = layers_[n];
        int count = 0;
        float most = tables_[at(n, allowed)][cell];
        for (int more = 1; more <= mostOf(layer, allowed); ++more) {
            const auto shift = static_cast<std::size_t>(more * layer.step);
            if (shift > cell) break;
            const float worth =
                tables_[at(n, allowed - more)][cell - shift] + layer.gain[static_cast<std::size_t>(more)];
            if (worth > most) {
                most = worth;
                count = more;
            }
        }
        const auto listed = static_cast<std::size_t>(layer.listed);
        choice.cut[listed] = count;
        choice.any = choice.any || count > 0;
        choice.left -= count * (setting_.listed[listed] + setting_.rules.kerf);
        cell -= static_cast<std::size_t>(count * layer.step);
        allowed -= count;
    }
    return choice;
}

} // namespace riband::foresight
