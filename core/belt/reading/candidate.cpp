#include "core/belt/reading/candidate.h"

namespace riband::belt::reading {
namespace {

constexpr std::int64_t mostBelts = 9999;

/// Without a cross or a third number only a small number counts belts: 900 behind H8M 1200 is a width.
bool mayCountBelts(const Phrase& phrase, const SaidNumber& number) {
    const bool said = phrase.open.size() == 3 || phrase.crossFirst || phrase.crossLast;
    return number.isBare() && number.wholePart() >= 1 && number.wholePart() <= (said ? 999 : 99);
}

/// The role of the open number `i` by its digit of `code` in base 3: length, width, quantity.
int roleOf(int code, std::size_t i) {
    for (; i > 0; --i)
        code /= 3;
    return code % 3;
}

/// Puts the number `index` in its role; false if the role is taken or not to be given.
bool give(int& role, int index, bool open) {
    if (role >= 0 || !open) return false;
    role = index;
    return true;
}

} // namespace

std::vector<Roles> rolesOf(const Phrase& phrase, bool lengthSaid, bool widthSaid) {
    std::vector<Roles> all;
    const int count = static_cast<int>(phrase.open.size());
    int codes = 1;
    for (int i = 0; i < count; ++i)
        codes *= 3;
    for (int code = 0; code < codes; ++code) {
        Roles roles;
        bool fits = true;
        for (int i = 0; i < count && fits; ++i) {
            const auto index = static_cast<std::size_t>(i);
            const bool atEdge = i == 0 || i == count - 1;
            switch (roleOf(code, index)) {
            case 0:
                fits = give(roles.length, i, !lengthSaid);
                break;
            case 1:
                fits = give(roles.width, i, !widthSaid);
                break;
            default:
                fits = give(roles.quantity, i,
                            !phrase.quantity && atEdge && mayCountBelts(phrase, phrase.open[index]));
            }
        }
        if (fits && (lengthSaid || roles.length >= 0)) all.push_back(roles);
    }
    return all;
}

Outcome<std::int64_t, ReadFault> quantityOf(const Phrase& phrase, const Roles& roles) {
    if (roles.quantity >= 0) return phrase.open[static_cast<std::size_t>(roles.quantity)].wholePart();
    if (!phrase.quantity) return std::int64_t{1};
    const SaidNumber& said = *phrase.quantity;
    const bool wrong = !said.whole() || said.negative || said.unit != Measure::None || said.wholePart() < 1 ||
                       said.wholePart() > mostBelts;
    if (wrong) return ReadFault{ReadFault::Kind::QuantityImpossible, said.said, {}, {}};
    return said.wholePart();
}

void keepFault(Attempt& attempt, ReadFault fault, int score) {
    if (score <= attempt.faultScore) return;
    attempt.fault = std::move(fault);
    attempt.faultScore = score;
}

std::vector<Belt> nearestMade(const Profile& profile, Length length, const Tables& tables) {
    std::vector<Belt> belts;
    for (const MadeLength* made : tables.around(profile.name, length))
        belts.push_back({profile.name, made->teeth, made->length, {}});
    return belts;
}

} // namespace riband::belt::reading
