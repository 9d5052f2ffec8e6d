#include "core/belt/reading/phrase.h"

#include "core/belt/reading/other_belts.h"

#include <algorithm>

namespace riband::belt::reading {
namespace {

using Fault = ReadFault::Kind;
using Word = TradeWord::Kind;

ReadFault fault(Fault kind, std::string part) { return {kind, std::move(part), {}, {}}; }

std::string saidTogether(const std::vector<Token>& tokens, std::size_t first, std::size_t last) {
    std::string text;
    for (std::size_t i = first; i < last; ++i)
        text += tokens[i].said;
    return text;
}

/// Gives each token outside the mention its part in the phrase.
class Sorter {
public:
    Sorter(const Tokens& tokens, const Mention& mention, const Tables& tables)
        : tokens_{tokens.all}, end_{tokens.end}, tables_{tables}, used_(tokens_.size(), false) {
        phrase_.mention = mention;
        phrase_.construction = tokens.construction;
        std::fill(used_.begin() + static_cast<std::ptrdiff_t>(mention.first),
                  used_.begin() + static_cast<std::ptrdiff_t>(mention.last), true);
    }

    Outcome<Phrase, ReadFault> run() {
        takeTeethCode();
        for (std::size_t i = 0; i < tokens_.size(); ++i)
            if (!tokens_[i].number && !used_[i] && !takeWord(i))
                return fault(Fault::NotUnderstood, tokens_[i].said);
        takeEndingCross();
        takeOpenNumbers();
        takeCrosses();
        if (phrase_.open.size() > 3) return fault(Fault::NotUnderstood, phrase_.open.back().said);
        return std::move(phrase_);
    }

private:
    bool isFree(std::size_t i) const { return i < tokens_.size() && tokens_[i].number && !used_[i]; }
    bool isFreeBefore(std::size_t i) const { return i > 0 && isFree(i - 1); }

    /// B80XXL: the number behind B counts teeth.
    void takeTeethCode() {
        const std::size_t name = phrase_.mention.first;
        if (phrase_.mention.name != "XXL" || name < 2 || !tokens_[name - 2].is("B") || !isFree(name - 1))
            return;
        used_[name - 2] = true;
        take(name - 1, phrase_.teeth);
    }

    bool take(std::size_t i, std::optional<SaidNumber>& into) {
        if (into) return false;
        into = tokens_[i].number;
        used_[i] = true;
        return true;
    }
    bool takeBefore(std::size_t i, std::optional<SaidNumber>& into) {
        return isFreeBefore(i) && take(i - 1, into);
    }
    bool takeAfter(std::size_t i, std::optional<SaidNumber>& into) {
        return isFree(i + 1) && tokens_[i + 1].gap != Gap::Slash && take(i + 1, into);
    }

    bool takeWord(std::size_t i) {
        used_[i] = true;
        const std::string& word = tokens_[i].word;
        if (isToothLetter(word) && !phrase_.tooth) {
            phrase_.tooth = word[0];
            return true;
        }
        if (word == "M") return takeMetres(i);
        if (word == "A") return true; // "a T5 500 10": with a profile named it is no V-belt section
        const TradeWord* known = tables_.tradeWord(word);
        return known && takeKnown(i, *known);
    }

    bool takeKnown(std::size_t i, const TradeWord& word) {
        switch (word.kind) {
        case Word::Tooth:
            phrase_.tooth = word.means.front();
            return true;
        case Word::Ribbed:
            return phrase_.saidRibbed = true;
        case Word::Toothed:
            return phrase_.saidToothed = true;
        case Word::DoubleSided:
            return phrase_.doubleSided = true;
        case Word::Filler:
            return true;
        case Word::Teeth:
            return takeTeeth(i);
        case Word::RibCount:
            return takeBefore(i, phrase_.ribs) || isFiller(i);
        case Word::Quantity:
            return takeBefore(i, phrase_.quantity) || isFiller(i);
        case Word::QuantityBefore:
            return takeAfter(i, phrase_.quantity);
        case Word::Width:
            return takeSize(i, phrase_.width);
        case Word::LengthWord:
            return takeSize(i, phrase_.length);
        case Word::Construction:
            addConstruction(tokens_[i].said);
            return true;
        default:
            return false;
        }
    }

    /// "belts", "ribs" without a number beside them say nothing more.
    bool isFiller(std::size_t i) const { return !isFreeBefore(i) && tokens_[i].word.size() > 2; }

    bool takeTeeth(std::size_t i) {
        const bool symbolFirst = tokens_[i].is("Z") && isFree(i + 1) && tokens_[i].gap != Gap::None;
        if (symbolFirst) return takeAfter(i, phrase_.teeth);
        return takeBefore(i, phrase_.teeth) || (tokens_[i].is("Z") && takeAfter(i, phrase_.teeth)) ||
               tokens_[i].word.size() > 1;
    }

    /// "10 wide", "width 10", "w10".
    bool takeSize(std::size_t i, std::optional<SaidNumber>& into) {
        const bool nameOfSize = tokens_[i].is("WIDTH") || tokens_[i].is("LENGTH");
        const bool glued = isFree(i + 1) && tokens_[i + 1].gap == Gap::None;
        if ((nameOfSize || glued) && takeAfter(i, into)) return true;
        return takeBefore(i, into) || takeAfter(i, into);
    }

    /// "1.2 m" beside a profile.
    bool takeMetres(std::size_t i) {
        if (phrase_.length || !isFreeBefore(i) || tokens_[i].gap > Gap::Space) return false;
        takeBefore(i, phrase_.length);
        phrase_.length->unit = Measure::Metre;
        return true;
    }

    bool isToothLetter(const std::string& word) const {
        return phrase_.mention.kind == Mention::Kind::BarePitch && word.size() == 1 &&
               std::string_view{"HRSG"}.find(word[0]) != std::string_view::npos;
    }

    void addConstruction(const std::string& word) {
        if (!phrase_.construction.empty()) phrase_.construction += ' ';
        phrase_.construction += word;
    }

    /// "... 30 3x"
    void takeEndingCross() {
        if (end_ == Gap::Cross && isFree(tokens_.size() - 1)) take(tokens_.size() - 1, phrase_.quantity);
    }

    void takeOpenNumbers() {
        const auto [first, last] = std::pair{phrase_.mention.first, phrase_.mention.last};
        for (std::size_t i = 0; i < tokens_.size(); ++i) {
            if (!isFree(i)) continue;
            if (i < first) {
                ++phrase_.before;
                phrase_.gluedBefore = i + 1 == first && tokens_[first].gap == Gap::None;
            }
            if (i == last) {
                phrase_.gluedAfter = tokens_[i].gap == Gap::None;
                // "150/T5/50" has slashes everywhere, so they say nothing.
                phrase_.slashAfter = tokens_[i].gap == Gap::Slash && tokens_[first].gap != Gap::Slash;
            }
            phrase_.open.push_back(*tokens_[i].number);
        }
    }

    /// "3 x H8M 1200 30" and "H8M 1200 30 x3" say how many when three numbers are open.
    void takeCrosses() {
        if (phrase_.quantity || phrase_.open.empty()) return;
        phrase_.crossFirst = isFree(0) && tokens_.size() > 1 && tokens_[1].gap == Gap::Cross;
        phrase_.crossLast = isFree(tokens_.size() - 1) && tokens_.back().gap == Gap::Cross &&
                            tokens_.back().number && !phrase_.crossFirst;
        const SaidNumber& first = phrase_.open.front();
        const bool noCount = !first.isBare() || first.millionths == 0;
        if (!phrase_.crossFirst || phrase_.open.size() != 3 || !noCount) return;
        phrase_.quantity = first; // "0 x H8M 1200 30": the reader says that it is no number of belts
        phrase_.open.erase(phrase_.open.begin());
        if (phrase_.before > 0) --phrase_.before;
    }

    const std::vector<Token>& tokens_;
    Gap end_;
    const Tables& tables_;
    std::vector<bool> used_;
    Phrase phrase_;
};

} // namespace

Outcome<Phrase, ReadFault> phraseOf(const Tokens& tokens, const Tables& tables) {
    if (const auto open = openEnded(tokens.all, tables)) return *open;
    const auto mention = mentionIn(tokens.all, tables);
    if (!mention || isLightDuty(tokens.all, *mention, tables)) {
        if (const auto vBelt = vBeltIn(tokens.all, tables)) return *vBelt;
        for (const Token& token : tokens.all)
            if (!token.number && !tables.tradeWord(token.word))
                return fault(Fault::NotUnderstood, token.said);
        return fault(Fault::NoProfile, {});
    }
    if (mention->kind == Mention::Kind::NotAProfile)
        return fault(Fault::UnknownProfile, saidTogether(tokens.all, mention->first, mention->last));
    return Sorter{tokens, *mention, tables}.run();
}

} // namespace riband::belt::reading
