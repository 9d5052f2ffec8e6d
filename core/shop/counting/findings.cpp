#include "core/shop/counting/findings.h"

#include "core/shop/counting/count.h"
#include "core/shop/promises.h"
#include "core/shop/queries.h"
#include "core/shop/spread.h"

#include <algorithm>
#include <cstdlib>

namespace riband::shop {

namespace {

using counting::cutsSince;
using counting::Difference;
using counting::Evidence;
using counting::toleranceOf;
using counting::undoneSince;
using counting::Verdict;
using counting::wasMeasuredSince;
using Kind = Difference::Kind;

/// Reads once what all findings share.
class Look {
public:
    explicit Look(const Shop& shop)
        : shop_{shop}, counts_{shop.connection}, pieces_{shop.connection},
          settings_{store::Settings{shop.connection}.read()} {
        readScans();
        readMissing();
    }

    std::vector<Difference>& differences() { return differences_; }

    Finding findingOf(const Difference& difference) {
        Finding finding{.difference = difference,
                        .place = counts_.find(difference.count)->place,
                        .piece = {},
                        .belt = beltOf(difference.belt).designation,
                        .value = Money::minor(0),
                        .aboveLimit = false,
                        .proposals = {}};
        if (difference.piece) finding.piece = pieces_.at(*difference.piece);
        finding.value = valueOf(finding);
        finding.aboveLimit = finding.value > settings_.counting.approveOver;
        finding.proposals = explain(difference, evidenceFor(difference));
        return finding;
    }

private:
    void readScans() {
        for (const store::Scan& scan : counts_.unsettled()) {
            const std::int64_t tolerance = toleranceOf(settings_.counting, scan.measured.unit(), scan.method);
            if (scan.piece && !isBelieved(scan)) continue;
            Difference difference{.kind = scan.piece ? Kind::Differs : Kind::Find,
                                  .count = scan.count,
                                  .scan = scan.id,
                                  .piece = scan.piece,
                                  .belt = scan.belt,
                                  .unit = scan.measured.unit(),
                                  .book = scan.book.count(),
                                  .measured = scan.measured.count(),
                                  .gap = scan.gap(),
                                  .tolerance = tolerance};
            if (scan.piece) addSince(scan, difference);
            differences_.push_back(difference);
        }
    }

    /// What was booked since it was scanned.
    void addSince(const store::Scan& scan, Difference& difference) {
        const auto life = store::Ledger{shop_.connection}.historyOf(*scan.piece);
        difference.ready = pieces_.at(*scan.piece).kind == cutting::PieceKind::Ready;
        difference.measuredSince = wasMeasuredSince(life, scan);
        const std::int64_t undone = undoneSince(life, scan);
        if (undone == 0) return;
        difference.book += undone;
        difference.gap -= undone;
        // What was taken back was what it differed by.
        if (std::abs(difference.gap) <= difference.tolerance) difference.measuredSince = true;
    }

    /// Measured twice and the same; or the count was closed over it.
    bool isBelieved(const store::Scan& scan) const {
        const auto looks = counting::looksOf(counts_.scansOf(scan.count), *scan.piece);
        return verdictOf(looks, settings_.counting, scan.measured.unit()) == Verdict::Differs;
    }

    void readMissing() {
        for (const store::MissingPiece& missing : counts_.unsettledMissing()) {
            const store::StockPiece piece = pieces_.at(missing.piece);
            differences_.push_back({.kind = Kind::Missing,
                                    .count = missing.count,
                                    .scan = {},
                                    .piece = piece.id,
                                    .belt = piece.belt,
                                    .unit = piece.extent.unit(),
                                    .book = piece.extent.count(),
                                    .measured = 0,
                                    .gap = -piece.extent.count(),
                                    .tolerance = 0,
                                    .ready = piece.kind == cutting::PieceKind::Ready});
        }
    }

    const store::StockedBelt& beltOf(store::BeltId id) {
        auto found = belts_.find(id);
        if (found == belts_.end())
            found = belts_.emplace(id, store::Catalogue{shop_.connection}.at(id)).first;
        return found->second;
    }

    Money valueOf(const Finding& finding) {
        const Difference& d = finding.difference;
        const std::int64_t width = std::abs(d.gap);
        const store::StockedBelt& belt = beltOf(d.belt);
        if (finding.piece && finding.piece->cost > Money::minor(0) && width <= finding.piece->extent.count())
            return spread(finding.piece->cost, {width, finding.piece->extent.count() - width}).front();
        if (belt.sleeveCost > Money::minor(0) && !belt.newSleeve.isNone())
            return Money::minor(roundedQuotient(belt.sleeveCost.inMinor() * width, belt.newSleeve.count()));
        return belt.price * Extent::of(d.unit, width);
    }

    Evidence evidenceFor(const Difference& difference) {
        Evidence evidence{settings_.rulesFor(difference.unit), {}, {}, {}, {}, {}, {}};
        for (const Extent listed : beltOf(difference.belt).listed)
            evidence.listed.push_back(listed.count());
        addPlanned(difference, evidence);
        addLines(difference, evidence);
        for (const Difference& other : differences_)
            if (other.belt == difference.belt) evidence.others.push_back(other);
        if (difference.scan && difference.piece) addLife(difference, evidence);
        return evidence;
    }

    void addPlanned(const Difference& difference, Evidence& evidence) {
        if (!promises_) promises_ = Promises::read(shop_, settings_);
        for (const auto& [piece, promises] : promises_->all()) {
            if (pieces_.at(piece).belt != difference.belt) continue;
            for (const Promise& promise : promises)
                evidence.planned.push_back(
                    {promise.mounting, piece, trimOf(promise), promise.width.count() - trimOf(promise)});
        }
    }

    std::int64_t trimOf(const Promise& promise) const {
        return settings_.rulesFor(promise.width.unit()).trim.count();
    }

    void addLines(const Difference& difference, Evidence& evidence) {
        if (!missing_) missing_ = shop::missing(shop_);
        for (const Missing& row : *missing_)
            if (row.line.belt == difference.belt)
                evidence.lines.push_back({row.line.id, row.line.extent.count(), row.belts});
    }

    void addLife(const Difference& difference, Evidence& evidence) {
        const auto life = store::Ledger{shop_.connection}.historyOf(*difference.piece);
        evidence.bookedSince = cutsSince(life, *counts_.scan(*difference.scan));
        if (difference.book != 0 || life.empty()) return;
        for (const store::Settlement& settled : counts_.settlementsOf(life.back().id))
            if (!settled.scan && settled.piece == difference.piece && !counts_.isCountered(settled.id))
                evidence.lostBefore = settled.id;
    }

    const Shop& shop_;
    store::Counts counts_;
    store::Pieces pieces_;
    store::ShopSettings settings_;
    std::map<store::BeltId, store::StockedBelt> belts_;
    std::optional<Promises> promises_;
    std::optional<std::vector<Missing>> missing_;
    std::vector<Difference> differences_;
};

bool sameThing(const Difference& a, const Difference& b) {
    return a.count == b.count && a.scan == b.scan && (a.scan || a.piece == b.piece);
}

} // namespace

bool needsApproval(const Finding& finding, const counting::Proposal& proposal) {
    using store::Explanation;
    const bool nothingLost = proposal.what == Explanation::BookedLate ||
                             proposal.what == Explanation::LostLabel || proposal.what == Explanation::Swapped;
    return finding.aboveLimit && !nothingLost;
}

std::vector<Finding> findings(const Shop& shop) {
    Look look{shop};
    std::vector<Finding> found;
    for (const Difference& difference : look.differences())
        found.push_back(look.findingOf(difference));
    std::stable_sort(found.begin(), found.end(),
                     [](const Finding& a, const Finding& b) { return a.value > b.value; });
    return found;
}

std::optional<Finding> findingOf(const Shop& shop, const Difference& difference) {
    Look look{shop};
    for (const Difference& open : look.differences())
        if (sameThing(open, difference)) return look.findingOf(open);
    return std::nullopt;
}

} // namespace riband::shop
