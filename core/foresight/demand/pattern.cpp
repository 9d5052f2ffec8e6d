#include "core/foresight/demand/series.h"

namespace riband::foresight {

namespace {

constexpr double seldom = 1.32;
constexpr double uneven = 0.49;

Pattern classOf(double interval, double variation) {
    if (interval < seldom) return variation < uneven ? Pattern::Smooth : Pattern::Erratic;
    return variation < uneven ? Pattern::Intermittent : Pattern::Lumpy;
}

} // namespace

PatternFigures patternOf(const Series& series) {
    double demands = 0, sum = 0, squares = 0;
    for (const double size : series)
        if (size > 0) {
            ++demands;
            sum += size;
            squares += size * size;
        }
    if (demands == 0) return {};
    const double mean = sum / demands;
    const double variation = squares / demands / (mean * mean) - 1;
    const double interval = static_cast<double>(series.size()) / demands;
    return {classOf(interval, variation), interval, variation};
}

} // namespace riband::foresight
