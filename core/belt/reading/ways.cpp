#include "core/belt/reading/ways.h"

namespace riband::belt::reading {
namespace {

/// The profile with the same teeth on both sides, or nullptr if there is none.
const Profile* doubleSided(const Profile& single, const Tables& tables) {
    if (single.doubleSided) return &single;
    for (const Profile& profile : tables.profiles())
        if (profile.base == single.name) return &profile;
    return nullptr;
}

class WayFinder {
public:
    WayFinder(const Phrase& phrase, const Tables& tables) : phrase_{phrase}, tables_{tables} {}

    std::vector<Way> run() {
        switch (phrase_.mention.kind) {
        case Mention::Kind::Profile:
        case Mention::Kind::Module:
            add(phrase_.mention.name, {});
            break;
        case Mention::Kind::BarePitch:
            addShapes();
            break;
        case Mention::Kind::Letter:
            addLetter();
            break;
        case Mention::Kind::NotAProfile:
            break;
        }
        return std::move(ways_);
    }

private:
    void add(const std::string& name, const Style& style) {
        const Profile* profile = tables_.profile(name);
        if (profile && phrase_.doubleSided) profile = doubleSided(*profile, tables_);
        if (profile) ways_.push_back({profile, style});
    }

    void addShapes() {
        for (const char tooth : {'H', 'S', 'R', 'G'})
            if (!phrase_.tooth || phrase_.tooth == tooth) add(tooth + phrase_.mention.name, {});
    }

    void addLetter() {
        const std::string& letter = phrase_.mention.name;
        const bool toothedToo = letter == "L" || letter == "H";
        const bool ribbed = !phrase_.saidToothed && !phrase_.doubleSided;
        if (ribbed) add("P" + letter, {.letterOnly = true, .millimetres = false, .ribbedToo = false});
        if (toothedToo && !phrase_.saidRibbed)
            add(letter, {.letterOnly = true, .millimetres = false, .ribbedToo = ribbed});
        if (letter == "M" && !phrase_.saidRibbed)
            add("MXL", {.letterOnly = true, .millimetres = true, .ribbedToo = false});
    }

    const Phrase& phrase_;
    const Tables& tables_;
    std::vector<Way> ways_;
};

} // namespace

std::vector<Way> waysOf(const Phrase& phrase, const Tables& tables) {
    return WayFinder{phrase, tables}.run();
}

} // namespace riband::belt::reading
