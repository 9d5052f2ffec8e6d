#include "core/belt/drive/said_pulley.h"

namespace riband::belt::drive {

namespace {

Outcome<Pulley, PulleyFault> byTeeth(const Profile* profile, Teeth teeth, Side side) {
    if (!profile) return PulleyFault::TeethNeedProfile;
    if (profile->ribbed()) return PulleyFault::RibsHaveNoTeeth;
    if (side == Side::Back && !profile->doubleSided) return PulleyFault::BackHasNoTeeth;
    return pulleyOf(*profile, teeth);
}

std::optional<PulleyFault> faultOf(const SaidPulley& said) {
    if (said.teeth.has_value() == said.diameter.has_value()) return PulleyFault::NothingOrBoth;
    if (said.diameter && !(*said.diameter > 0)) return PulleyFault::NotPositive;
    return std::nullopt;
}

} // namespace

Outcome<Pulley, PulleyFault> pulleyAsSaid(const Profile* profile, const SaidPulley& said) {
    if (const auto fault = faultOf(said)) return *fault;
    if (said.teeth) return byTeeth(profile, *said.teeth, said.side);
    return pulleyOf(profile, *said.diameter);
}

Outcome<Pulley, PulleyFault> pulleyOfLayout(const Profile* profile, const SaidPulley& said) {
    if (const auto fault = faultOf(said)) return *fault;
    if (said.teeth) return byTeeth(profile, *said.teeth, said.side);
    const bool inside = said.side == Side::Inside;
    if (!profile || (profile->ribbed() && inside)) return pulleyOf(profile, *said.diameter);
    const auto roller =
        inside ? rollerUnderTeeth(*profile, *said.diameter) : rollerOnBack(*profile, *said.diameter);
    if (!roller) return PulleyFault::NoThickness;
    return *roller;
}

} // namespace riband::belt::drive
