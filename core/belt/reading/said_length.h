#pragma once

#include "core/belt/reading/tokens.h"

namespace riband::belt::reading {

/// How a number became a length.
enum class Basis : std::uint8_t { Millimetres, Inches, Code, Tenths, Hundredths, Count };

/// One length that a number may mean.
struct LengthRead {
    std::optional<Teeth> teeth; ///< toothed
    Length length = Length::nanometres(0);
    bool listed = false;
    Basis basis = Basis::Millimetres;
    std::optional<Reading::Remark> remark;
};

/// All lengths of a toothed profile that the number may mean; none if it is no whole number of teeth.
std::vector<LengthRead> toothedLengths(const SaidNumber& number, const Profile& profile,
                                       const Tables& tables);
/// The length of so many teeth.
LengthRead lengthOfTeeth(std::int64_t teeth, Basis basis, const Profile& profile, const Tables& tables);

/// The length codes of the inch profiles: tenths of an inch (XL, L, H, XH, XXH), tenths, hundredths or teeth
/// (MXL), teeth (XXL).
std::vector<LengthRead> inchLengths(const SaidNumber& number, const Profile& profile, const Tables& tables);
std::vector<LengthRead> mxlLengths(const SaidNumber& number, const Profile& profile, const Tables& tables);

/// The ribbed lengths that a number may mean. `letterOnly`: J, not PJ, so the number may be tenths of an
/// inch; `inchForm`: it stands as in 470J6, where it can be nothing else.
std::vector<LengthRead> ribbedLengths(const SaidNumber& number, const Profile& profile, bool letterOnly,
                                      bool inchForm, const Tables& tables);

/// The whole number of pitches nearest to a length, where it is not further off than `slack`.
std::optional<std::int64_t> teethNear(Length length, Length pitch, Length slack);

} // namespace riband::belt::reading
