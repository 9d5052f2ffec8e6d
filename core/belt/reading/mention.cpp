#include "core/belt/reading/mention.h"

#include "core/measure/text.h"

#include <array>

namespace riband::belt::reading {
namespace {

using Kind = Mention::Kind;
using Found = std::optional<Mention>;

/// Looks at the tokens from one place on.
class Place {
public:
    Place(const std::vector<Token>& tokens, std::size_t at, const Tables& tables)
        : tokens_{tokens}, at_{at}, tables_{tables} {}

    /// H8M, HTD 8M, DH-8M: a letter of a tooth, a pitch and M.
    Found shapeWithPitch() const {
        const std::string letters = toothLetters();
        if (letters.empty() || !isNumber(1, Gap::Dash) || !isWord(2, "M", Gap::Dash)) return {};
        const std::string name = letters + shortDecimal(*token(1).number) + "M";
        return named(name, 3);
    }

    /// 8M. Without a tooth the pitch alone must be one of the tables.
    Found barePitch() const {
        if (!token(0).number || !isWord(1, "M", Gap::Dash)) return {};
        const std::string pitch = shortDecimal(*token(0).number) + "M";
        for (const char* tooth : {"H", "S", "R", "G"})
            if (tables_.profile(tooth + pitch)) return Mention{Kind::BarePitch, pitch, at_, at_ + 2};
        return {};
    }

    /// T5, AT 10, DT5. `glued`: only where nothing stands between the letters and the pitch.
    Found trapezoid(bool glued) const {
        const bool letters = token(0).is("T") || token(0).is("AT") || token(0).is("DT");
        if (!letters || !isNumber(1, glued ? Gap::None : Gap::Dash) || isWord(2, "M", Gap::None)) return {};
        if (countsTeeth()) return {};
        const bool both = token(0).is("DT");
        const std::string name = (both ? "T" : token(0).word) + shortDecimal(*token(1).number);
        if (!tables_.profile(name) && !glued) return {};
        return named(both ? name + "-DL" : name, 2);
    }

    /// MXL, XH, PJ. `both`: DL, DXH too, which also say that another profile has teeth on both sides.
    Found byName(bool both) const {
        const Profile* profile = token(0).number ? nullptr : tables_.profile(token(0).word);
        if (!profile || token(0).is("L") || token(0).is("H") || (profile->doubleSided && !both)) return {};
        return Mention{Kind::Profile, profile->name, at_, at_ + 1};
    }

    /// m3 of an old national belt: the module is glued to its letter and nothing is glued before.
    Found module() const {
        const bool glued = at_ > 0 && token(0).gap == Gap::None;
        if (!token(0).is("M") || glued || !isNumber(1, Gap::None)) return {};
        const std::string name = "m" + shortDecimal(*token(1).number);
        if (!tables_.profile(name)) return {};
        return Mention{Kind::Module, name, at_, at_ + 2};
    }

    Found olderPitch() const {
        if (!token(0).number || !isWord(1, "DP", Gap::Dash)) return {};
        const std::string name = shortDecimal(*token(0).number) + "DP";
        return named(name, 2);
    }

    Found letter() const {
        for (const char* one : {"J", "K", "L", "H", "M"})
            if (token(0).is(one)) return Mention{Kind::Letter, one, at_, at_ + 1};
        return {};
    }

    /// "P J": the two letters apart.
    Found spelledRib() const {
        if (!token(0).is("P") || token(1).number || token(1).gap > Gap::Dash) return {};
        const std::string name = "P" + token(1).word;
        if (!tables_.profile(name)) return {};
        return Mention{Kind::Profile, name, at_, at_ + 2};
    }

private:
    const Token& token(std::size_t ahead) const {
        static const Token none{Gap::Cross, std::nullopt, {}, {}};
        return at_ + ahead < tokens_.size() ? tokens_[at_ + ahead] : none;
    }
    bool gapUpTo(std::size_t ahead, Gap most) const {
        return token(ahead).gap <= most && token(ahead).gap != Gap::Comma;
    }
    bool isNumber(std::size_t ahead, Gap most) const {
        return token(ahead).number && gapUpTo(ahead, most) && !token(ahead).number->leadingZero &&
               !token(ahead).number->fraction;
    }
    bool isWord(std::size_t ahead, std::string_view word, Gap most) const {
        return token(ahead).is(word) && gapUpTo(ahead, most);
    }

    /// XL35T10: T belongs to the number before it where another profile is named.
    bool countsTeeth() const {
        if (at_ == 0 || !tokens_[at_ - 1].number || token(0).gap != Gap::None) return false;
        for (const Token& other : tokens_) {
            const Profile* profile = other.number ? nullptr : tables_.profile(other.word);
            if (profile && !profile->doubleSided) return true;
        }
        return false;
    }

    /// "H" for H, HTD; "DH" for DH; nothing for any other word.
    std::string toothLetters() const {
        if (token(0).number) return {};
        std::string word = token(0).word;
        if (const TradeWord* spoken = tables_.tradeWord(word);
            spoken && spoken->kind == TradeWord::Kind::Tooth)
            return spoken->means;
        const std::string tooth = word.size() == 2 && word[0] == 'D' ? word.substr(1) : word;
        return tooth == "H" || tooth == "R" || tooth == "S" || tooth == "G" ? word : std::string{};
    }

    Found named(const std::string& name, std::size_t length) const {
        const Kind kind = tables_.profile(name) ? Kind::Profile : Kind::NotAProfile;
        return Mention{kind, name, at_, at_ + length};
    }

    const std::vector<Token>& tokens_;
    std::size_t at_;
    const Tables& tables_;
};

/// "3-63-16": module, teeth and width with dashes between, and no dash before or behind.
Found moduleByNumbers(const std::vector<Token>& tokens, const Tables& tables) {
    const auto dashed = [&](std::size_t i) { return i < tokens.size() && tokens[i].gap == Gap::Dash; };
    for (std::size_t i = 0; i + 2 < tokens.size(); ++i) {
        const bool numbers = tokens[i].number && tokens[i + 1].number && tokens[i + 2].number;
        const bool three = !dashed(i) && dashed(i + 1) && dashed(i + 2) && !dashed(i + 3);
        if (!numbers || !three) continue;
        const std::string name = "m" + shortDecimal(*tokens[i].number);
        if (tables.profile(name)) return Mention{Kind::Module, name, i, i + 1};
    }
    return {};
}

template <class Look>
Found firstOf(const std::vector<Token>& tokens, const Tables& tables, Look look) {
    for (std::size_t i = 0; i < tokens.size(); ++i)
        if (auto found = look(Place{tokens, i, tables})) return found;
    return {};
}

} // namespace

std::string shortDecimal(const SaidNumber& number) {
    return printMillimetres(Length::nanometres(number.millionths));
}

std::optional<Mention> mentionIn(const std::vector<Token>& tokens, const Tables& tables) {
    // From the surest to the least sure: in "XL 35T 10" T counts teeth, in "10 T 10 500" it is the profile.
    using Look = Found (*)(const Place&);
    constexpr std::array<Look, 10> looks{[](const Place& p) { return p.shapeWithPitch(); },
                                         [](const Place& p) {
                                             auto glued = p.trapezoid(true);
                                             return glued && glued->kind == Kind::Profile ? glued : Found{};
                                         },
                                         [](const Place& p) { return p.byName(false); },
                                         [](const Place& p) { return p.barePitch(); },
                                         [](const Place& p) { return p.olderPitch(); },
                                         [](const Place& p) { return p.byName(true); },
                                         [](const Place& p) { return p.spelledRib(); },
                                         [](const Place& p) { return p.module(); },
                                         [](const Place& p) { return p.letter(); },
                                         [](const Place& p) { return p.trapezoid(false); }};
    for (const Look look : looks)
        if (auto found = firstOf(tokens, tables, look)) return found;
    if (auto found = firstOf(tokens, tables, [](const Place& p) { return p.trapezoid(true); })) return found;
    return moduleByNumbers(tokens, tables);
}

} // namespace riband::belt::reading
