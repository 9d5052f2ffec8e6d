#include "core/shop/counting/today.h"

#include "core/shop/counting/count.h"
#include "core/store/traffic.h"

#include <algorithm>
#include <numeric>
#include <set>

namespace riband::shop {

namespace {

using counting::Exposure;
using counting::Proof;
using counting::toleranceOf;

constexpr std::size_t mostProofs = 5'000;
constexpr auto year = std::chrono::hours{24 * 365};

double yearsBetween(Moment from, Moment until) {
    return std::max(0.0, std::chrono::duration<double>(until - from) / std::chrono::duration<double>(year));
}

/// The cuts of one piece, oldest first.
using Cuts = std::vector<store::CutOf>;

Exposure between(const Cuts& cuts, Moment from, Moment until) {
    Exposure exposure{{}, yearsBetween(from, until)};
    for (const store::CutOf& cut : cuts)
        if (cut.at > from && cut.at <= until) ++exposure.cuts[cut.person];
    return exposure;
}

class Reading {
public:
    explicit Reading(const Shop& shop)
        : shop_{shop}, now_{shop.now()}, rules_{store::Settings{shop.connection}.read().counting} {
        for (const store::CutOf& cut : store::cutsOfPieces(shop.connection))
            cuts_[cut.piece].push_back(cut);
        for (const store::Scan& scan : store::Counts{shop.connection}.allScans())
            if (scan.piece) scans_[*scan.piece].push_back(scan);
    }

    CountOutlook outlook() {
        CountOutlook outlook{{}, counting::Doubt::learn(proofs())};
        const std::map<store::BeltId, Money> moved = movedByPiece();
        for (const store::StockPiece& piece : pieces_)
            outlook.candidates.push_back(candidateOf(piece, moved, outlook.doubt));
        return outlook;
    }

private:
    /// Scans of one count are one proof; the book was wrong if the last of them says so.
    std::vector<Proof> proofs() const {
        std::vector<Proof> proofs;
        for (const auto& [piece, scans] : scans_) {
            Moment before = receivedOf(piece);
            for (std::size_t i = 0; i < scans.size(); ++i) {
                if (i + 1 < scans.size() && scans[i + 1].count == scans[i].count) continue;
                const auto tolerance = toleranceOf(rules_, scans[i].measured.unit(), scans[i].method);
                proofs.push_back(
                    {between(cutsOf(piece), before, scans[i].at), std::abs(scans[i].gap()) > tolerance});
                before = scans[i].at;
            }
        }
        if (proofs.size() > mostProofs) proofs.erase(proofs.begin(), proofs.end() - mostProofs);
        return proofs;
    }

    Moment receivedOf(store::PieceId piece) const {
        return store::Pieces{shop_.connection}.at(piece).received;
    }
    const Cuts& cutsOf(store::PieceId piece) const {
        static const Cuts none;
        const auto found = cuts_.find(piece);
        return found == cuts_.end() ? none : found->second;
    }

    /// What each belt sold in a year, shared by its pieces; reads the pieces.
    std::map<store::BeltId, Money> movedByPiece() {
        pieces_ = store::Pieces{shop_.connection}.all();
        std::map<store::BeltId, std::int64_t> count;
        for (const store::StockPiece& piece : pieces_)
            ++count[piece.belt];
        std::map<store::BeltId, Money> moved;
        for (const store::StockedBelt& belt : store::Catalogue{shop_.connection}.all())
            belts_.emplace(belt.id, belt);
        for (const auto& [belt, width] : store::soldSince(shop_.connection, now_ - year))
            if (width > 0 && count.contains(belt)) {
                const store::StockedBelt& kept = belts_.at(belt);
                const Money sold = kept.price * Extent::of(kept.unit, width);
                moved.emplace(belt, Money::minor(roundedQuotient(sold.inMinor(), count.at(belt))));
            }
        return moved;
    }

    counting::Candidate candidateOf(const store::StockPiece& piece,
                                    const std::map<store::BeltId, Money>& moved,
                                    const counting::Doubt& doubt) const {
        const auto scanned = scans_.find(piece.id);
        const bool counted = scanned != scans_.end();
        const bool asItCame = !counted && piece.kind == cutting::PieceKind::Sleeve;
        const Moment since = counted ? scanned->second.back().at : Moment{piece.received};
        const auto share = moved.find(piece.belt);
        const Exposure exposure = between(cutsOf(piece.id), since, now_);
        return {
            .piece = piece.id,
            .place = piece.place,
            .value = piece.cost > Money::minor(0) ? piece.cost : belts_.at(piece.belt).price * piece.extent,
            .moved = share == moved.end() ? Money::minor(0) : share->second,
            .doubt = doubt.of(exposure),
            .days = counted || asItCame ? std::optional{static_cast<int>(
                                              std::chrono::floor<std::chrono::days>(now_ - since).count())}
                                        : std::nullopt,
            .ready = piece.kind == cutting::PieceKind::Ready,
            .cuts = std::accumulate(exposure.cuts.begin(), exposure.cuts.end(), std::int64_t{0},
                                    [](std::int64_t sum, const auto& of) { return sum + of.second; }),
            .asItCame = asItCame};
    }

    const Shop& shop_;
    Moment now_;
    store::CountRules rules_;
    std::map<store::PieceId, Cuts> cuts_;
    std::map<store::PieceId, std::vector<store::Scan>> scans_;
    std::vector<store::StockPiece> pieces_;
    std::map<store::BeltId, store::StockedBelt> belts_;
};

} // namespace

CountOutlook countOutlook(const Shop& shop) { return Reading{shop}.outlook(); }

std::vector<counting::PlaceTask> countToday(const Shop& shop, int minutes) {
    CountOutlook outlook = countOutlook(shop);
    std::set<std::string> open, fresh;
    for (const store::Count& count : store::Counts{shop.connection}.open())
        open.insert(count.place);
    for (const counting::Candidate& candidate : outlook.candidates)
        fresh.insert(candidate.place);
    for (const counting::Candidate& candidate : outlook.candidates)
        if (candidate.days != 0) fresh.erase(candidate.place);
    std::erase_if(outlook.candidates, [&](const counting::Candidate& c) {
        return c.place.empty() || open.contains(c.place) || fresh.contains(c.place);
    });
    return planDay(outlook.candidates, store::Settings{shop.connection}.read().counting, minutes);
}

} // namespace riband::shop
