#pragma once

#include "core/measure/width.h"

namespace riband {

/// The unit in which a belt is stocked, cut and sold.
enum class Unit : std::uint8_t {
    Micrometre, ///< toothed belts: any width can be cut
    Rib,        ///< V-ribbed belts: cut in the groove, whole ribs only
};

/// How wide a piece or a belt is, in the unit in which its belt is stocked. Never negative. Sums and
/// comparisons of different units are a programming error and throw std::logic_error.
class Extent {
public:
    constexpr Extent(Width width)
        : unit_{Unit::Micrometre}, count_{width.inMicrometres()} {}         // NOLINT: says its unit
    constexpr Extent(Ribs ribs) : unit_{Unit::Rib}, count_{ribs.count()} {} // NOLINT: says its unit
    static constexpr Extent of(Unit unit, std::int64_t count) {
        return unit == Unit::Rib ? Extent{Ribs{count}} : Extent{Width::micrometres(count)};
    }
    static constexpr Extent none(Unit unit) { return of(unit, 0); }

    constexpr Unit unit() const { return unit_; }
    constexpr std::int64_t count() const { return count_; }
    constexpr bool isNone() const { return count_ == 0; }
    /// Throws std::logic_error if the extent is in ribs.
    constexpr Width width() const {
        require(Unit::Micrometre);
        return Width::micrometres(count_);
    }
    /// Throws std::logic_error if the extent is in micrometres.
    constexpr Ribs ribs() const {
        require(Unit::Rib);
        return Ribs{count_};
    }
    /// The width in millimetres that a drawing shows: ribs times their pitch.
    constexpr Width shownWidth(Width ribPitch) const {
        return unit_ == Unit::Rib ? ribPitch * Ribs{count_} : Width::micrometres(count_);
    }

    friend constexpr bool operator==(Extent, Extent) = default;
    friend constexpr std::strong_ordering operator<=>(Extent a, Extent b) {
        a.require(b.unit_);
        return a.count_ <=> b.count_;
    }
    friend constexpr Extent operator+(Extent a, Extent b) {
        a.require(b.unit_);
        return of(a.unit_, a.count_ + b.count_);
    }
    friend constexpr Extent operator-(Extent a, Extent b) {
        a.require(b.unit_);
        return of(a.unit_, a.count_ - b.count_);
    }
    friend constexpr Extent operator*(Extent a, std::int64_t belts) { return of(a.unit_, a.count_ * belts); }

private:
    constexpr void require(Unit unit) const {
        if (unit != unit_) throw std::logic_error("millimetres and ribs were mixed");
    }
    Unit unit_;
    std::int64_t count_;
};

} // namespace riband
