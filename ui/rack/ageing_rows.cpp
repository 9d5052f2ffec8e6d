#include "ui/rack/ageing_rows.h"

#include "ui/words/tr.h"

#include <algorithm>
#include <set>

namespace riband::ui {

namespace {

/// The names of the places that are meant, and of all that stand in them.
class Meant {
public:
    Meant(const QString& typed, const std::vector<store::Place>& places) {
        for (const store::Place& place : places)
            byId_.emplace(place.id, &place);
        const auto isIt = [&](const store::Place& place) {
            const QString name = text(place.name);
            return name.compare(typed, Qt::CaseInsensitive) == 0 ||
                   name.startsWith(typed + QLatin1Char('-'), Qt::CaseInsensitive); // named as one in it
        };
        const auto begins = [&](const store::Place& place) {
            return text(place.name).startsWith(typed, Qt::CaseInsensitive);
        };
        // While a name is not typed to its end its first letters do; then it is B3, not B30.
        const bool whole = std::any_of(places.begin(), places.end(), isIt);
        for (const store::Place& place : places)
            if (holds(place, [&](const store::Place& each) { return whole ? isIt(each) : begins(each); }))
                names_.insert(place.name);
    }
    bool has(const store::StockPiece& piece) const { return names_.contains(piece.place); }

private:
    template <class Is>
    bool holds(const store::Place& place, const Is& is) const {
        for (const store::Place* at = &place; at; at = at->parent ? byId_.at(*at->parent) : nullptr)
            if (is(*at)) return true;
        return false;
    }
    std::map<store::PlaceId, const store::Place*> byId_;
    std::set<std::string> names_;
};

} // namespace

AgeingRows rowsAt(const AgeingRows& rows, const std::string& typed, const std::vector<store::Place>& places) {
    if (typed.empty()) return rows;
    const Meant meant{text(typed), places};
    AgeingRows here = rows;
    std::erase_if(here.ageing, [&](const shop::AgeingPiece& aged) { return !meant.has(aged.piece); });
    std::erase_if(here.burdens, [&](const shop::Burden& burden) { return !meant.has(burden.piece); });
    return here;
}

} // namespace riband::ui
