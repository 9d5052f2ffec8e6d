#include "tests/core/belt/drive/measured.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_integration.h>
#include <gsl/gsl_roots.h>
#include <memory>
#include <numbers>
#include <numeric>

namespace riband::belt::drive::testing {

namespace {

constexpr double pi = std::numbers::pi;

double reach(double cosine, double sine, const Disc& disc) {
    return disc.x * cosine + disc.y * sine + disc.radius;
}

/// The disc that reaches farthest in a direction.
std::size_t farthest(double angle, const std::vector<Disc>& discs) {
    const double cosine = std::cos(angle), sine = std::sin(angle);
    std::size_t best = 0;
    for (std::size_t i = 1; i < discs.size(); ++i)
        if (reach(cosine, sine, discs[i]) > reach(cosine, sine, discs[best])) best = i;
    return best;
}

/// The integral of the reach of one disc.
double pieceOf(const Disc& disc, double from, double to) {
    gsl_function reached{[](double angle, void* of) {
                             return reach(std::cos(angle), std::sin(angle), *static_cast<const Disc*>(of));
                         },
                         const_cast<Disc*>(&disc)};
    static gsl_integration_glfixed_table* const points = gsl_integration_glfixed_table_alloc(8);
    return gsl_integration_glfixed(&reached, from, to, points);
}

using Place = std::array<double, 2>;

constexpr int corners = 40'000; // of the polygon that stands for a disc

Place cornerOf(const Disc& disc, int number) {
    const double angle = 2 * pi * number / corners;
    return {disc.x + disc.radius * std::cos(angle), disc.y + disc.radius * std::sin(angle)};
}

Place minus(Place a, Place b) { return {a[0] - b[0], a[1] - b[1]}; }
double distanceOf(Place a, Place b) { return std::hypot(b[0] - a[0], b[1] - a[1]); }
double turned(Place a, Place b) { return std::atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]); }

/// How far a place is to the right of the line from `from` to `to`, in some unit.
double right(Place from, Place to, Place place) {
    const Place way = minus(to, from), there = minus(place, from);
    return way[1] * there[0] - way[0] * there[1];
}

/// A ruler along two discs: by which corners it lies.
struct Ruler {
    int from, to;
    double length;
};

/// Laid on two corners and turned on as long as a neighbouring corner sticks out over it.
Ruler layRuler(const Disc& a, const Disc& b) {
    Ruler ruler{0, 0, 0};
    const auto settle = [&](const Disc& disc, int& corner, Place from, Place to) {
        const double out = disc.back ? -1 : 1; // an inner disc lies to the left, so sticks out to the right
        const auto sticksOut = [&](int number) { return out * right(from, to, cornerOf(disc, number)); };
        const int start = corner;
        while (sticksOut(corner + 1) > sticksOut(corner))
            ++corner;
        while (sticksOut(corner - 1) > sticksOut(corner))
            --corner;
        return corner != start;
    };
    Place from{a.x, a.y}, to{b.x, b.y}; // about; then on corners, until none sticks out
    for (bool moved = true, onCorners = false; moved; onCorners = true) {
        const bool first = settle(a, ruler.from, from, to), second = settle(b, ruler.to, from, to);
        moved = first || second || !onCorners;
        from = cornerOf(a, ruler.from);
        to = cornerOf(b, ruler.to);
    }
    ruler.length = distanceOf(from, to);
    return ruler;
}

} // namespace

double perimeter(const std::vector<Disc>& discs) {
    constexpr int cells = 1440;
    double sum = 0, from = 0;
    std::size_t owner = farthest(0, discs);
    const auto close = [&](double to) {
        sum += pieceOf(discs[owner], from, to);
        from = to;
    };
    for (int cell = 1; cell <= cells; ++cell) {
        const double to = 2 * pi * cell / cells;
        while (farthest(to, discs) != owner) { // another disc takes over within the cell: find where
            double here = from, there = to;
            for (int halving = 0; halving < 60; ++halving) {
                const double middle = std::midpoint(here, there);
                (farthest(middle, discs) == owner ? here : there) = middle;
            }
            close(there);
            owner = farthest(there, discs);
        }
        close(to);
    }
    return sum;
}

double distanceOf(double diameter1, double diameter2, double length) {
    struct Asked {
        double d1, d2, length;
    } asked{diameter1, diameter2, length};
    gsl_function excess{[](double apart, void* p) {
                            const auto* a = static_cast<const Asked*>(p);
                            return perimeter({{0, 0, a->d1 / 2}, {apart, 0, a->d2 / 2}}) - a->length;
                        },
                        &asked};
    const std::unique_ptr<gsl_root_fsolver, decltype(&gsl_root_fsolver_free)> solver{
        gsl_root_fsolver_alloc(gsl_root_fsolver_brent), gsl_root_fsolver_free};
    gsl_root_fsolver_set(solver.get(), &excess, std::abs(diameter1 - diameter2) / 2, length);
    for (int step = 0; step < 100; ++step) {
        gsl_root_fsolver_iterate(solver.get());
        const double low = gsl_root_fsolver_x_lower(solver.get());
        const double high = gsl_root_fsolver_x_upper(solver.get());
        if (gsl_root_test_interval(low, high, 1e-7, 0) == GSL_SUCCESS) break;
    }
    return gsl_root_fsolver_root(solver.get());
}

std::vector<std::size_t> hullOrder(const std::vector<Disc>& discs) {
    constexpr int directions = 7200;
    std::vector<std::size_t> order;
    for (int k = 0; k < directions; ++k) {
        const std::size_t here = farthest(2 * pi * k / directions, discs);
        if (order.empty() || order.back() != here) order.push_back(here);
    }
    if (order.size() > 1 && order.front() == order.back()) order.pop_back();
    std::rotate(order.begin(), std::min_element(order.begin(), order.end()), order.end());
    return order;
}

Thread threadByRuler(const std::vector<Disc>& discs) {
    const std::size_t count = discs.size();
    std::vector<Ruler> rulers;
    for (std::size_t i = 0; i < count; ++i)
        rulers.push_back(layRuler(discs[i], discs[(i + 1) % count]));
    Thread thread{0, {}};
    for (std::size_t i = 0; i < count; ++i) {
        const Ruler &in = rulers[(i + count - 1) % count], &out = rulers[i];
        const int way = discs[i].back ? -1 : 1;
        const int passed = ((way * (out.from - in.to)) % corners + corners) % corners;
        thread.length += out.length + passed * distanceOf(cornerOf(discs[i], 0), cornerOf(discs[i], 1));
        thread.turned.push_back(2 * pi * passed / corners);
    }
    return thread;
}

Laid lay(const std::vector<Place>& line, const std::vector<Disc>& discs) {
    Laid laid{0, 1e300, 0, std::vector<double>(discs.size(), 0)};
    const std::size_t count = line.size();
    for (std::size_t i = 0; i < count; ++i) {
        const auto &a = line[i], &b = line[(i + 1) % count], &c = line[(i + 2) % count];
        laid.length += std::hypot(b[0] - a[0], b[1] - a[1]);
        laid.sharpest = std::max(laid.sharpest, std::abs(turned(minus(b, a), minus(c, b))));
        for (std::size_t d = 0; d < discs.size(); ++d) {
            const Place centre{discs[d].x, discs[d].y};
            laid.windings[d] += turned(minus(a, centre), minus(b, centre)) / (2 * pi);
            laid.clearance = std::min(laid.clearance, distanceOf(a, centre) - discs[d].radius);
        }
    }
    return laid;
}

} // namespace riband::belt::drive::testing
