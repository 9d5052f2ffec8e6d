#include "tests/core/belt/identify/every_belt.h"

#include <iostream>

/// Prints the tables of docs/identify.md.
int main() {
    using namespace riband::belt::identify;
    std::cout << asTable(measureEveryBelt(Talk::AtOnce, Hand{1})) << '\n'
              << asTable(measureEveryBelt(Talk::AsAsked, Hand{2}));
}
