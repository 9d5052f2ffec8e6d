#include "core/belt/drive/open_belt.h"
#include "tests/catch.h"

#include <algorithm>
#include <cmath>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>
#include <numbers>
#include <stdexcept>
#include <utility>
#include <vector>

using namespace riband::belt::drive;

namespace {

constexpr double pi = std::numbers::pi;

/// A thread round two discs of many corners, measured with a ruler: no angle, no arc, no formula of the
/// belt. The convex hull of the corners is where the thread lies.
struct Point {
    double x, y;
};
double cross(Point o, Point a, Point b) { return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x); }

std::vector<Point> hull(std::vector<Point> points) {
    std::sort(points.begin(), points.end(), [](Point a, Point b) {
        return std::pair{a.x, a.y} < std::pair{b.x, b.y};
    });
    std::vector<Point> around;
    for (int side = 0; side < 2; ++side) {
        const std::size_t begin = around.size();
        for (const Point p : points) {
            while (around.size() >= begin + 2 && cross(around[around.size() - 2], around.back(), p) <= 0)
                around.pop_back();
            around.push_back(p);
        }
        around.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return around;
}

double threadLength(double diameter1, double diameter2, double distance) {
    constexpr int corners = 4000;
    std::vector<Point> points;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * pi * i / corners;
        points.push_back({diameter1 / 2 * std::cos(angle), diameter1 / 2 * std::sin(angle)});
        points.push_back({distance + diameter2 / 2 * std::cos(angle), diameter2 / 2 * std::sin(angle)});
    }
    const std::vector<Point> round = hull(points);
    double length = 0;
    for (std::size_t i = 0; i < round.size(); ++i) {
        const Point a = round[i], b = round[(i + 1) % round.size()];
        length += std::hypot(b.x - a.x, b.y - a.y);
    }
    return length;
}

/// The distance at which that thread is as long as the belt, by the root finder of the GNU Scientific
/// Library.
double threadDistance(double diameter1, double diameter2, double length) {
    struct Asked {
        double d1, d2, length;
    } asked{diameter1, diameter2, length};
    gsl_function excess{[](double distance, void* p) {
                            const auto* a = static_cast<const Asked*>(p);
                            return threadLength(a->d1, a->d2, distance) - a->length;
                        },
                        &asked};
    gsl_root_fsolver* solver = gsl_root_fsolver_alloc(gsl_root_fsolver_brent);
    gsl_root_fsolver_set(solver, &excess, std::abs(diameter1 - diameter2) / 2, length);
    double low = 0, high = length;
    for (int step = 0; step < 100 && high - low > 1e-7; ++step) {
        gsl_root_fsolver_iterate(solver);
        low = gsl_root_fsolver_x_lower(solver);
        high = gsl_root_fsolver_x_upper(solver);
    }
    const double root = gsl_root_fsolver_root(solver);
    gsl_root_fsolver_free(solver);
    return root;
}

} // namespace

TEST_CASE("The length of an open belt over equal pulleys is twice the distance and one turn") {
    CHECK(openBeltLength(68.132, 68.132, 492.9785) == Approx(2 * 492.9785 + pi * 68.132).epsilon(1e-12));
    CHECK_THROWS_AS(openBeltLength(100, 20, 39), std::invalid_argument);
}

TEST_CASE("A belt that can't go round the larger pulley has no distance") {
    CHECK_FALSE(centreDistance(100, 100, pi * 100));
    CHECK_FALSE(centreDistance(100, 20, 300));
    CHECK(centreDistance(100, 100, pi * 100 + 2).value() == Approx(1));
}

TEST_CASE("The distance of plain shafts agrees with figures worked by another program") {
    struct Worked {
        const char* belt;
        double length, shaft1, shaft2, offset, distance;
    };
    const Worked worked[] = {
        {"H8M 1200", 1200, 60, 60, 4.066, 492.9785}, {"H8M 1200", 1200, 80, 50, 4.066, 484.8925},
        {"H5M 300", 300, 20, 20, 2.652, 110.2526},   {"H14M 2310", 2310, 100, 100, 7.417, 974.6192},
        {"XL 130", 330.2, 25, 25, 1.524, 121.0423},  {"L 390", 990.6, 50, 40, 2.286, 417.4025},
        {"T5 500", 500, 30, 30, 1.7, 197.5354},      {"T10 1000", 1000, 60, 60, 3.5, 394.7566},
        {"T10 1000", 1000, 60, 60, 3.43, 394.9766},
    };
    for (const Worked& w : worked) {
        INFO(w.belt << " on " << w.shaft1 << "/" << w.shaft2);
        const double c = centreDistance(w.shaft1 + 2 * w.offset, w.shaft2 + 2 * w.offset, w.length).value();
        CHECK(std::abs(c - w.distance) < 6e-5);
    }
}

TEST_CASE("The distance is that at which a thread round two discs is as long as the belt") {
    gsl_set_error_handler_off();
    const double drives[][3] = {{68.132, 68.132, 1200}, {88.132, 58.132, 1200}, {25.3, 25.3, 300},
                                {200, 30, 900},         {30, 200, 900},         {114.8, 114.8, 2310},
                                {120, 30, 400},         {28.05, 28.05, 330.2}};
    for (const auto& [d1, d2, length] : drives) {
        INFO(d1 << "/" << d2 << " " << length);
        CHECK(std::abs(centreDistance(d1, d2, length).value() - threadDistance(d1, d2, length)) < 2e-3);
    }
}

TEST_CASE("The distance gives the length back") {
    for (const double d1 : {20.0, 47.5, 110.0})
        for (const double d2 : {20.0, 60.0, 180.0})
            for (const double length : {650.0, 1200.0, 4000.0}) {
                const double c = centreDistance(d1, d2, length).value();
                CHECK(openBeltLength(d1, d2, c) == Approx(length).epsilon(1e-12));
            }
}
