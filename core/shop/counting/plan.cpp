#include "core/shop/counting/plan.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace riband::shop::counting {

namespace {

// Common practice, no source.
constexpr int secondsToPlace = 60, secondsToMeasure = 25, secondsToSee = 10;
constexpr int grain = 5; ///< seconds
constexpr int longestDay = 8 * 60;

double weightOf(const Candidate& candidate) {
    return static_cast<double>(candidate.value.inMinor() + candidate.moved.inMinor());
}

int limitOf(Class of, const store::CountRules& rules) {
    return of == Class::A ? rules.daysA : of == Class::B ? rules.daysB : rules.daysC;
}

/// The gain of proving one piece: the value in doubt, and the value itself once its time is over.
void add(PlaceTask& task, const Candidate& candidate, Class of, const store::CountRules& rules) {
    const int limit = std::max(1, limitOf(of, rules));
    const double share = static_cast<double>(candidate.days.value_or(2 * limit)) / limit;
    const double value = std::max(1.0, static_cast<double>(candidate.value.inMinor()));
    task.pieces += 1;
    task.overdue += share >= 1 ? 1 : 0;
    task.wrong += candidate.doubt;
    task.value = task.value + candidate.value;
    task.seconds += candidate.ready ? secondsToSee : secondsToMeasure;
    const double gain = value * (candidate.doubt + (share >= 1 ? 0.1 * share : 0));
    task.gain += gain;
    task.why.push_back({candidate.piece, of, candidate.doubt, candidate.days, share >= 1, candidate.cuts,
                        gain, candidate.asItCame});
}

std::vector<PlaceTask> tasksOf(const std::vector<Candidate>& candidates, const store::CountRules& rules) {
    const std::vector<Class> classes = classesOf(candidates);
    std::map<std::string, PlaceTask> byPlace;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        PlaceTask& task = byPlace[candidates[i].place];
        task.place = candidates[i].place;
        add(task, candidates[i], classes[i], rules);
    }
    std::vector<PlaceTask> tasks;
    for (auto& [place, task] : byPlace) {
        task.seconds += secondsToPlace;
        std::stable_sort(task.why.begin(), task.why.end(),
                         [](const PieceTask& a, const PieceTask& b) { return a.gain > b.gain; });
        tasks.push_back(std::move(task));
    }
    std::sort(tasks.begin(), tasks.end(),
              [](const PlaceTask& a, const PlaceTask& b) { return a.gain * b.seconds > b.gain * a.seconds; });
    return tasks;
}

/// best[t] with the first i tasks; which of them are taken is read back from the last to the first.
std::vector<PlaceTask> knapsack(const std::vector<PlaceTask>& tasks, int capacity) {
    const auto size = static_cast<std::size_t>(capacity) + 1;
    std::vector<double> best(size, 0);
    std::vector<std::vector<bool>> taken;
    for (const PlaceTask& task : tasks) {
        const auto cost = static_cast<std::size_t>((task.seconds + grain - 1) / grain);
        std::vector<bool> row(size, false);
        for (std::size_t t = size; t-- > cost;)
            if (best[t - cost] + task.gain > best[t]) {
                best[t] = best[t - cost] + task.gain;
                row[t] = true;
            }
        taken.push_back(std::move(row));
    }
    std::vector<PlaceTask> chosen;
    std::size_t t = size - 1;
    for (std::size_t i = tasks.size(); i-- > 0;) {
        if (!taken[i][t]) continue;
        chosen.push_back(tasks[i]);
        t -= static_cast<std::size_t>((tasks[i].seconds + grain - 1) / grain);
    }
    std::reverse(chosen.begin(), chosen.end());
    return chosen;
}

} // namespace

std::vector<Class> classesOf(const std::vector<Candidate>& candidates) {
    std::vector<std::size_t> order(candidates.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return weightOf(candidates[a]) > weightOf(candidates[b]);
    });
    double all = 0, before = 0;
    for (const Candidate& candidate : candidates)
        all += weightOf(candidate);
    std::vector<Class> classes(candidates.size(), Class::C);
    for (const std::size_t i : order) {
        classes[i] = before < 0.8 * all ? Class::A : before < 0.95 * all ? Class::B : Class::C;
        before += weightOf(candidates[i]);
    }
    return classes;
}

std::vector<PlaceTask> planDay(const std::vector<Candidate>& candidates, const store::CountRules& rules,
                               int minutes) {
    const std::vector<PlaceTask> tasks = tasksOf(candidates, rules);
    if (tasks.empty() || minutes <= 0) return {};
    std::vector<PlaceTask> chosen = knapsack(tasks, std::min(minutes, longestDay) * 60 / grain);
    if (chosen.empty()) chosen.push_back(tasks.front());
    return chosen;
}

} // namespace riband::shop::counting
