#pragma once

#include "core/cutting/problem.h"

namespace riband::cutting::testing {

/// One-dimensional packing as a cutting problem: bins are sleeves without trim, end or stub, and what is left
/// of one is worth nothing, so the worth spent is the capacity times the bins. One unit is a micrometre.
///
/// The classes by their published recipes, from memory: E. Falkenauer, J. Heuristics 2 (1996) 5-30; A.
/// Scholl, R. Klein, C. Jürgens, Comput. Oper. Res. 24 (1997) 627-645, first set. Seeds are ours, so no
/// instance is one of theirs.
struct PackingClass {
    const char* name;
    int items;
    std::int64_t capacity;
    std::int64_t low, high; ///< of the items, uniform; 0: Falkenauer's triplets
};
inline constexpr PackingClass packingClasses[] = {
    {"Falkenauer uniform, 120 items", 120, 150, 20, 100},
    {"Falkenauer triplets, 60 items", 60, 1000, 0, 0},
    {"Falkenauer triplets, 15 items", 15, 1000, 0, 0}, // small enough for a general solver
    {"Scholl 10 items of 20-100 in 120", 10, 120, 20, 100},
    {"Scholl 50 items of 1-100 in 100", 50, 100, 1, 100},
    {"Scholl 50 items of 20-100 in 120", 50, 120, 20, 100},
    {"Scholl 50 items of 30-100 in 150", 50, 150, 30, 100},
    {"Scholl 100 items of 20-100 in 150", 100, 150, 20, 100},
};

Problem packingProblem(const PackingClass& of, std::uint64_t seed);
/// The points of its worth.
std::vector<Worth::Point> packingWorth(const PackingClass& of);

} // namespace riband::cutting::testing
