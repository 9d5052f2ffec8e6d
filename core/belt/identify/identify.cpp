#include "core/belt/identify/identify.h"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace riband::belt::identify {
namespace {

constexpr double nearlyAll = .99;
constexpr double worthTelling = .01;
constexpr double inDoubt = .05;
constexpr std::size_t mostAnswers = 1000; ///< weighed for the next measurement; the rest has next to nothing

/// What is asked: of belts or, while nothing tells a length, of profiles.
struct Ranked {
    std::vector<std::size_t> order; ///< likeliest first
    const std::vector<double>* probabilities;
    double of(std::size_t rank) const { return (*probabilities)[order[rank]]; }
};

Ranked ranked(const std::vector<double>& probabilities) {
    Ranked ranked{std::vector<std::size_t>(probabilities.size()), &probabilities};
    std::iota(ranked.order.begin(), ranked.order.end(), 0);
    const auto head = std::min(probabilities.size(), mostAnswers);
    std::partial_sort(ranked.order.begin(), ranked.order.begin() + static_cast<std::ptrdiff_t>(head),
                      ranked.order.end(), [&](std::size_t a, std::size_t b) {
                          return probabilities[a] != probabilities[b] ? probabilities[a] > probabilities[b]
                                                                      : a < b;
                      });
    ranked.order.resize(head);
    return ranked;
}

bool tellsLength(const Sample& sample) {
    return !sample.openEnded && std::any_of(sample.measured.begin(), sample.measured.end(),
                                            [](const Measurement& each) { return tellsLength(each.what); });
}

std::optional<OldWidth> widthOf(const Sample& sample, const Profile& profile, const std::optional<Belt>& belt,
                                const Tables& tables) {
    if (const Measurement* ribs = sample.find(Measure::RibCount); ribs && profile.ribbed())
        return OldWidth{Ribs{static_cast<std::int64_t>(ribs->value)}, {}, {}, {}, false};
    const Measurement* width = sample.find(Measure::Width);
    if (!width) return std::nullopt;
    // Tolerances go by length; without one, that of a metre.
    const Belt told = belt.value_or(Belt{profile.name, std::nullopt, Length::millimetres(1000), ""});
    return oldWidth(told, width->value, width->error, tables);
}

/// Puts one answer after the other into the identification.
class Telling {
public:
    Telling(const Sample& sample, const Prior& prior, const Wishes& wishes)
        : sample_{sample}, prior_{prior}, wishes_{wishes},
          posterior_{weigh(sample, prior)}, sizes_{sizesFor(sample, prior)} {}

    Identification tell() {
        const Ranked profiles = ranked(posterior_.profiles);
        tellProfiles(profiles);
        answer_.lengthAsked = tellsLength(sample_);
        const Ranked asked = answer_.lengthAsked ? ranked(posterior_.belts) : profiles;
        tellCandidates(asked);
        answer_.disagreements = disagreementsOf(sample_, prior_);
        const bool asksEnough = answer_.lengthAsked || sample_.openEnded;
        answer_.settled = !answer_.contradictory() && asksEnough && asked.of(0) >= wishes_.certain;
        if (!answer_.settled && !answer_.contradictory()) askFurther(profiles);
        return std::move(answer_);
    }

private:
    void tellProfiles(const Ranked& profiles) {
        for (std::size_t rank = 0; rank < profiles.order.size() && profiles.of(rank) >= worthTelling; ++rank)
            answer_.profiles.emplace_back(sizes_[profiles.order[rank]].profile, profiles.of(rank));
        answer_.profileSettled = profiles.of(0) >= wishes_.certain;
        if (profiles.of(1) >= inDoubt)
            answer_.apart = apart(prior_.sizes()[profiles.order[0]], prior_.sizes()[profiles.order[1]]);
    }

    void tellCandidates(const Ranked& asked) {
        double sum = 0;
        answer_.among = 0;
        answer_.together = 0;
        for (std::size_t rank = 0; rank < asked.order.size() && sum < nearlyAll; ++rank) {
            sum += asked.of(rank);
            ++answer_.among;
            if (rank >= wishes_.most) continue;
            answer_.together = sum;
            answer_.candidates.push_back(candidate(asked.order[rank], asked.of(rank)));
        }
    }

    Candidate candidate(std::size_t index, double probability) const {
        const std::size_t profile = answer_.lengthAsked ? prior_.profileOf(index) : index;
        Candidate candidate{sizes_[profile].profile, {}, probability, true, Supply::NoSleeve, {}};
        if (answer_.lengthAsked) {
            candidate.belt = prior_.belt(index);
            candidate.listed = prior_.belts()[index].listed;
        }
        candidate.supply = supplyOf(*candidate.profile, sample_.openEnded, prior_.tables());
        candidate.width = widthOf(sample_, *candidate.profile, candidate.belt, prior_.tables());
        return candidate;
    }

    /// First which profile, as long as a measurement tells more of it; then which belt. Once a length is
    /// measured both at once.
    void askFurther(const Ranked& profiles) {
        if (!answer_.lengthAsked && !answer_.profileSettled) ask(profiles, false);
        if (!answer_.next && !sample_.openEnded) ask(ranked(posterior_.belts), true);
    }

    void ask(const Ranked& asked, bool ofBelts) {
        answer_.next = nextMeasure(inquiryOf(asked, ofBelts), sample_, wishes_.errors, wishes_.certain);
    }

    Inquiry inquiryOf(const Ranked& asked, bool ofBelts) const {
        Inquiry inquiry{{}, ofBelts};
        double sum = 0;
        for (std::size_t rank = 0; rank < asked.order.size() && asked.of(rank) > 1e-6; ++rank) {
            const std::size_t index = asked.order[rank];
            const std::size_t profile = ofBelts ? prior_.profileOf(index) : index;
            const Extension belt = ofBelts ? extensionOf(prior_.belts()[index]) : Extension{0, 0};
            inquiry.answers.push_back({asked.of(rank), &sizes_[profile], belt});
            sum += asked.of(rank);
        }
        for (Answer& each : inquiry.answers)
            each.probability /= sum;
        return inquiry;
    }

    const Sample& sample_;
    const Prior& prior_;
    const Wishes& wishes_;
    Posterior posterior_;
    std::vector<Sizes> sizes_;
    Identification answer_{};
};

} // namespace

Supply supplyOf(const Profile& profile, bool openEnded, const Tables& tables) {
    if (openEnded) return Supply::ByTheMetre;
    if (tables.widestSleeve(profile.name).isNone()) return Supply::NoSleeve;
    return profile.doubleSided ? Supply::DoubleSidedSleeve : Supply::FromSleeve;
}

Identification identify(const Sample& sample, const Prior& prior, const Wishes& wishes) {
    if (faultOf(sample)) throw std::invalid_argument("a sample to identify has a fault");
    return Telling{sample, prior, wishes}.tell();
}

} // namespace riband::belt::identify
