#include "core/belt/drive/remarks.h"

namespace riband::belt::drive {

namespace {

using Kind = Remark::Kind;

constexpr int fullMesh = 6;

bool toothed(const TwoPulleys& drive) { return drive.profile && !drive.profile->ribbed(); }

bool underSmallest(const Pulley& pulley, const Profile& profile) {
    return profile.smallestPulley && pulley.teeth && *pulley.teeth < *profile.smallestPulley;
}

void remarkOnPulley(int number, const Pulley& pulley, const Profile& profile, std::vector<Remark>& remarks) {
    if (underSmallest(pulley, profile))
        remarks.push_back({Kind::PulleyUnderSmallest, number, profile.smallestPulley});
    if (pulley.teeth) return;
    const auto outside = teethOfOutside(profile, pulley.pitchDiameter);
    remarks.push_back({outside ? Kind::LooksLikeOutside : Kind::NoWholeTeeth, number, outside});
}

} // namespace

std::vector<Remark> remarksOn(const TwoPulleys& drive, const Run& run) {
    std::vector<Remark> remarks;
    if (toothed(drive)) {
        remarkOnPulley(1, drive.first, *drive.profile, remarks);
        remarkOnPulley(2, drive.second, *drive.profile, remarks);
    }
    if (run.mesh && *run.teethInMesh() < fullMesh) remarks.push_back({Kind::FewTeeth});
    const double least = leastCentre(drive);
    if (run.centre <= least + 15) remarks.push_back({Kind::TooClose});
    if (run.centre >= 4 * least) remarks.push_back({Kind::VeryFar});
    return remarks;
}

} // namespace riband::belt::drive
