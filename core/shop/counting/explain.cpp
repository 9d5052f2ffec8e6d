// Bayes' rule: each thing that can happen in a shop has a prior, and says how large the gap must then be. The
// gap is measured with an error, taken as normal with half the tolerance as its deviation; what would need
// more than the tolerance is left out. Where a happening could have been any of n things (n waiting lines, n
// listed widths), each has its share of the prior, so that a coincidence among many weighs less than one
// among few. What nobody can explain may have any size up to the piece's own.
#include "core/shop/counting/explain.h"

#include "core/shop/counting/slip.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace riband::shop::counting {

namespace {

using store::Explanation;
using Kind = Difference::Kind;

constexpr int mostBelts = 4; ///< of one sale that nobody wrote down

struct Prior {
    Explanation what;
    double share;
};
/// Of a hundred differences, so many are of each kind (common practice, no source). Only their order matters
/// where two explain a gap equally well.
constexpr Prior priors[] = {{Explanation::CutNotRecorded, 0.28},
                            {Explanation::CutFromOther, 0.12},
                            {Explanation::LineNotTicketed, 0.10},
                            {Explanation::Swapped, 0.12},
                            {Explanation::SaleWithoutOrder, 0.06},
                            {Explanation::Transposed, 0.06},
                            {Explanation::TrimForgotten, 0.08},
                            {Explanation::EdgeWaste, 0.03},
                            {Explanation::LostLabel, 0.50},
                            {Explanation::BookedLate, 0.30},
                            {Explanation::Found, 0.10},
                            {Explanation::Unexplained, 0.10}};

double priorOf(Explanation what) {
    for (const Prior& prior : priors)
        if (prior.what == what) return prior.share;
    return 0;
}

class Explainer {
public:
    Explainer(const Difference& difference, const Evidence& evidence) : d_{difference}, e_{evidence} {}

    std::vector<Proposal> all() {
        if (d_.measuredSince) return {{.what = Explanation::BookedLate, .likelihood = 1}};
        bookedLate();
        if (!d_.ready && d_.book != 0) cuts(); // of nothing nothing is cut off
        partners();
        unexplained();
        return ranked();
    }

private:
    double deviation() const {
        const double both =
            std::hypot(static_cast<double>(d_.tolerance), static_cast<double>(partnerTolerance_));
        return d_.unit == Unit::Rib ? 0.25 : std::max(1.0, both / 2);
    }
    /// How likely a measured gap is if the true one is `gap`, a unit of width.
    double density(std::int64_t gap) const {
        const double off = static_cast<double>(d_.gap - gap) / deviation();
        return std::exp(-off * off / 2) / (deviation() * std::sqrt(2 * std::numbers::pi));
    }
    /// The same, and a trim of another time was not booked either: two mistakes, so their priors are
    /// multiplied.
    void addWithTrim(const Proposal& proposal, std::int64_t gap, std::size_t among) {
        add(proposal, gap, among);
        const std::int64_t trim = e_.rules.trim.count();
        if (trim <= 2 * d_.tolerance) return; // the one can't be told from the other
        add(proposal, gap, among, -trim);
    }
    bool reaches(std::int64_t gap) const {
        return std::abs(d_.gap - gap) <= d_.tolerance + partnerTolerance_;
    }

    /// A thing that one of `among` could be, and that would make this gap, with a forgotten trim `besides`.
    void add(Proposal proposal, std::int64_t gap, std::size_t among, std::int64_t besides = 0) {
        if (!reaches(gap + besides)) return;
        proposal.unexplained = d_.gap - gap;
        proposal.likelihood = priorOf(proposal.what) * density(gap + besides) /
                              static_cast<double>(std::max<std::size_t>(among, 1));
        if (besides != 0) proposal.likelihood *= priorOf(Explanation::TrimForgotten);
        found_.push_back(proposal);
    }

    void cuts() {
        recordedCuts();
        waitingLines();
        unwrittenSales();
        slips();
        waste();
    }

    void bookedLate() {
        if (d_.kind != Kind::Differs) return;
        for (const std::int64_t taken : e_.bookedSince)
            add({.what = Explanation::BookedLate}, -taken, e_.bookedSince.size());
    }

    void recordedCuts() {
        for (const Evidence::Planned& cut : e_.planned) {
            if (d_.piece == cut.piece)
                ownCut(cut);
            else if (d_.kind == Kind::Differs)
                for (const std::int64_t trim : {cut.trim, std::int64_t{0}})
                    add({.what = Explanation::CutFromOther, .mounting = cut.mounting, .withTrim = trim > 0},
                        -trim - cut.belts, e_.planned.size());
        }
    }

    /// Of a piece that is missing, all of it may have gone into its cut: what the cut leaves can't be held.
    void ownCut(const Evidence::Planned& cut) {
        const Proposal proposal{
            .what = Explanation::CutNotRecorded, .mounting = cut.mounting, .withTrim = true};
        const std::int64_t rest = d_.book - cut.trim - cut.belts;
        if (d_.kind == Kind::Differs && d_.measured >= e_.rules.stub.count())
            addWithTrim(proposal, -cut.trim - cut.belts, 1);
        else if (d_.kind == Kind::Missing && rest >= 0 && rest < e_.rules.stub.count())
            add(proposal, d_.gap, 1);
    }

    void waitingLines() {
        if (d_.kind != Kind::Differs) return;
        for (const Evidence::Line& line : e_.lines)
            for (const std::int64_t trim : {e_.rules.trim.count(), std::int64_t{0}})
                for (std::int64_t belts = 1; belts <= line.belts; ++belts)
                    lineCut({.what = Explanation::LineNotTicketed,
                             .line = line.line,
                             .belts = belts,
                             .each = line.each,
                             .withTrim = trim > 0},
                            -trim - belts * (line.each + e_.rules.kerf.count()),
                            e_.lines.size() * static_cast<std::size_t>(line.belts));
    }

    void lineCut(const Proposal& proposal, std::int64_t gap, std::size_t among) {
        proposal.withTrim ? addWithTrim(proposal, gap, among) : add(proposal, gap, among);
    }

    void unwrittenSales() {
        if (d_.kind != Kind::Differs) return;
        for (const std::int64_t each : e_.listed)
            for (std::int64_t belts = 1; belts <= mostBelts; ++belts)
                add({.what = Explanation::SaleWithoutOrder, .belts = belts, .each = each, .withTrim = true},
                    -e_.rules.trim.count() - belts * (each + e_.rules.kerf.count()),
                    e_.listed.size() * mostBelts);
    }

    void slips() {
        if (d_.kind != Kind::Differs) return;
        const std::vector<std::int64_t> meant = transpositionsOf(d_.book, d_.unit);
        for (const std::int64_t figure : meant)
            add({.what = Explanation::Transposed}, figure - d_.book, meant.size());
    }

    void waste() {
        if (d_.kind != Kind::Differs) return;
        add({.what = Explanation::TrimForgotten}, -e_.rules.trim.count(), 1);
        if (d_.gap >= 0 || -d_.gap > e_.rules.end.count()) return;
        found_.push_back(
            {.what = Explanation::EdgeWaste,
             .likelihood = priorOf(Explanation::EdgeWaste) /
                           static_cast<double>(std::max<std::int64_t>(e_.rules.end.count(), 1))});
    }

    bool isPartner(const Difference& other) const {
        if (other == d_ || other.measuredSince) return false;
        if (d_.kind == Kind::Differs) return other.kind == Kind::Differs;
        return (d_.kind == Kind::Missing && other.kind == Kind::Find) ||
               (d_.kind == Kind::Find && other.kind == Kind::Missing);
    }

    void partners() {
        std::size_t among = 0;
        for (const Difference& other : e_.others)
            among += isPartner(other) ? 1 : 0;
        const Explanation what = d_.kind == Kind::Differs ? Explanation::Swapped : Explanation::LostLabel;
        for (const Difference& other : e_.others) {
            if (!isPartner(other)) continue;
            partnerTolerance_ = other.tolerance; // both were measured, each with an error of its own
            add({.what = what, .other = other}, -other.gap, among);
            partnerTolerance_ = 0;
        }
    }

    void unexplained() {
        const std::int64_t range = std::max({d_.book, std::abs(d_.gap), std::int64_t{1}});
        const auto rest = [&](Explanation what) {
            return Proposal{.what = what,
                            .likelihood = priorOf(what) / static_cast<double>(range),
                            .unexplained = d_.gap};
        };
        const bool inNoBook = d_.kind == Kind::Find || (d_.kind == Kind::Differs && d_.book == 0);
        Proposal last = rest(inNoBook ? Explanation::Found : Explanation::Unexplained);
        if (inNoBook) last.settlement = e_.lostBefore;
        found_.push_back(last);
    }

    std::vector<Proposal> ranked() {
        double sum = 0;
        for (const Proposal& proposal : found_)
            sum += proposal.likelihood;
        for (Proposal& proposal : found_)
            proposal.likelihood /= sum;
        std::stable_sort(found_.begin(), found_.end(),
                         [](const Proposal& a, const Proposal& b) { return a.likelihood > b.likelihood; });
        return std::move(found_);
    }

    const Difference& d_;
    const Evidence& e_;
    std::vector<Proposal> found_;
    std::int64_t partnerTolerance_ = 0; ///< of the other measurement that a proposal rests on
};

} // namespace

bool sameAct(const Proposal& a, const Proposal& b) {
    return a.what == b.what && a.mounting == b.mounting && a.line == b.line && a.belts == b.belts &&
           a.each == b.each && a.withTrim == b.withTrim && a.other == b.other && a.settlement == b.settlement;
}

std::vector<Proposal> explain(const Difference& difference, const Evidence& evidence) {
    return Explainer{difference, evidence}.all();
}

} // namespace riband::shop::counting
