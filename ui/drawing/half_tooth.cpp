#include "ui/drawing/half_tooth.h"

#include "ui/drawing/arcs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

/// Each shape is built from the figures of its standard. Where these are missing the nearest size of the same
/// shape is scaled by the pitch, and the result says that it is approximate.
namespace riband::ui {
namespace {

using belt::Profile;
using belt::ToothForm;
using belt::ToothShape;

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

/// Takes a figure of the table, or a supposed one and remembers that.
double orSuppose(const std::optional<double>& figure, double supposed, bool& approximate) {
    if (figure) return *figure;
    approximate = true;
    return supposed;
}

QPainterPath startOnLand(double pitch) {
    QPainterPath path;
    path.moveTo(-pitch / 2, 0);
    return path;
}

/// Straight flanks that include 2 beta and are `S` apart at the land; rounded by rr there and ra at the tip.
HalfTooth trapezoid(const ToothForm& form, double pitch) {
    HalfTooth half{startOnLand(pitch), 0};
    half.height = orSuppose(form.height, .25 * pitch, half.approximate);
    const double lean = std::tan(radians(orSuppose(form.flankAngleDegrees, 40, half.approximate) / 2));
    // Of the 50 degree teeth of AT the tip is half a pitch wide, of the 40 degree ones the root a little
    // more.
    const bool wide = form.flankAngleDegrees.value_or(40) > 45;
    const double usual = wide ? .5 * pitch + 2 * half.height * lean : .53 * pitch;
    const double root = orSuppose(form.rootWidth, usual, half.approximate) / 2;
    const double tip = std::max(.1 * root, root - half.height * lean);
    roundedTo(half.path, {{{-pitch / 2, 0}},
                          {{-root, 0}, form.rootRadius.value_or(0)},
                          {{-tip, half.height}, form.tipRadius.value_or(0)},
                          {{0, half.height}}});
    return half;
}

/// ISO 13050 H8M, for the sizes whose joints no table gives.
const std::vector<ToothForm::Point> jointsOfH8M{{-3.30, 0}, {-2.55, -.65}, {-2.47, -1.17}, {0, -3.38}};
constexpr double rootOfH8M = .76, tipOfH8M = 2.59, heightOfH8M = 3.38;

/// Land, root arc r1 to the flank, flank, tip arc r2 to the tip, through the published joints. The centre of
/// the tip arc is not quite on the axis (2 degrees), as these joints have it.
QPainterPath throughJoints(const std::vector<QPointF>& joints, double rootRadius, double tipRadius,
                           double pitch) {
    QPainterPath path = startOnLand(pitch);
    path.lineTo(joints[0]);
    arcTo(path, centreRightOf(joints[0], joints[1], rootRadius), joints[1]);
    path.lineTo(joints[2]);
    arcTo(path, centreRightOf(joints[3], joints[2], tipRadius), joints[3]);
    return path;
}

HalfTooth halfRound(const ToothForm& form, double pitch) {
    const bool given = form.joints.size() == 4 && form.rootRadius && form.tipRadius;
    const double scale = given ? 1 : pitch / 8;
    bool approximate = !given;
    const double height = orSuppose(form.height, heightOfH8M * scale, approximate);
    const double down = given ? 1 : height / heightOfH8M;
    std::vector<QPointF> joints;
    for (const auto& joint : given ? form.joints : jointsOfH8M)
        joints.emplace_back(joint.x * scale, -joint.y * down);
    return {throughJoints(joints, given ? *form.rootRadius : rootOfH8M * scale,
                          given ? *form.tipRadius : tipOfH8M * scale, pitch),
            height, approximate};
}

/// Where a root arc of radius rr that touches the land (y = 0) touches y = h - C x^2 as well.
double touchOnParabola(double height, double c, double rr) {
    double near = 0, far = std::sqrt(height / c);
    for (int i = 0; i < 60; ++i) {
        const double x = (near + far) / 2;
        const double centre = height - c * x * x + rr / std::sqrt(1 + 4 * c * c * x * x);
        (centre > rr ? near : far) = x;
    }
    return (near + far) / 2;
}

/// Two parabolas side by side with a shallow dimple between them. The tables give C, rr and the root width;
/// how far the lobes stand from the axis follows: the root arc ends on the land at half the root width.
HalfTooth dimpled(const ToothForm& form, double pitch) {
    HalfTooth half{startOnLand(pitch), 0};
    half.height = orSuppose(form.height, .41 * pitch, half.approximate);
    const double c = orSuppose(form.parabola, 8.76 / pitch, half.approximate);
    const double rr = orSuppose(form.rootRadius, .125 * pitch, half.approximate);
    const double root = orSuppose(form.rootWidth, .687 * pitch, half.approximate) / 2;
    const double touch = touchOnParabola(half.height, c, rr);
    const double slope = 2 * c * touch;
    const double centre = touch + rr * slope / std::hypot(1, slope);
    const double lobe = std::max(0.0, root - centre);
    const auto on = [&](double x) { return QPointF{x - lobe, half.height - c * x * x}; };
    half.path.lineTo(-centre - lobe, 0);
    arcTo(half.path, {-centre - lobe, rr}, on(-touch));
    // A parabola is exactly one quadratic curve: its handle is where the two end tangents meet.
    half.path.quadTo(QPointF{-touch / 2 - lobe, half.height}, on(0));
    half.path.quadTo(QPointF{-lobe / 2, half.height}, on(lobe));
    return half;
}

/// Flanks are arcs R1 that stand upright at the land, half the root width from the axis; the nose is an arc
/// R5 about the axis; rr and ra round the corners. Constants of S8M serve by pitch where a size has none.
HalfTooth flatTopped(const ToothForm& form, double pitch) {
    HalfTooth half{startOnLand(pitch), 0};
    const double by8 = pitch / 8;
    half.height = orSuppose(form.height, 3.05 * by8, half.approximate);
    const double root = orSuppose(form.rootWidth, 5.20 * by8, half.approximate) / 2;
    const double r1 = orSuppose(form.flankRadius, 5.30 * by8, half.approximate);
    const double rr = orSuppose(form.rootRadius, .80 * by8, half.approximate);
    const double ra = orSuppose(form.tipRadius, .80 * by8, half.approximate);
    const double r5 = orSuppose(form.noseRadius, 4.04 * by8, half.approximate);
    const QPointF flank{r1 - root, 0}, nose{0, half.height - r5};
    const QPointF rootArc{flank.x() - std::sqrt((r1 + rr) * (r1 + rr) - rr * rr), rr};
    QPointF tipArc = lowerMeeting(flank, r1 - ra, nose, r5 - ra);
    half.path.lineTo(rootArc.x(), 0);
    arcTo(half.path, rootArc, towards(rootArc, flank, rr));
    arcTo(half.path, flank, towards(flank, tipArc, r1));
    arcTo(half.path, tipArc, towards(nose, tipArc, r5));
    arcTo(half.path, nose, {0, half.height});
    return half;
}

/// No standard gives the height of a rib: flanks of the rib angle, rounded at the tip and in the groove by
/// about what ISO 9982 allows the pulley, which leaves this height.
HalfTooth rib(const ToothForm& form, double pitch) {
    HalfTooth half{startOnLand(pitch), 0, true};
    const double beta = radians(form.ribAngleDegrees.value_or(40) / 2);
    const double groove = .10 * pitch, tip = .13 * pitch;
    const double sharp = pitch / 2 / std::tan(beta);
    const double lost = 1 / std::sin(beta) - 1; // of the sharp corner's height, for a radius of 1
    half.height = sharp - (groove + tip) * lost;
    const double top = -groove * lost; // of the sharp corner in the groove
    const double cosine = std::cos(beta), sine = std::sin(beta);
    const QPointF grooveArc{-pitch / 2, groove}, tipArc{0, half.height - tip};
    Q_ASSERT(std::abs(top + sharp - half.height - tip * lost) < 1e-9);
    arcTo(half.path, grooveArc, grooveArc + QPointF{groove * cosine, -groove * sine});
    half.path.lineTo(tipArc + QPointF{-tip * cosine, tip * sine});
    arcTo(half.path, tipArc, {0, half.height});
    return half;
}

} // namespace

HalfTooth halfTooth(const Profile& profile) {
    const double pitch = profile.pitch.inMillimetres();
    switch (profile.shape) {
    case ToothShape::Trapezoid:
        return trapezoid(profile.form, pitch);
    case ToothShape::HalfRound:
    case ToothShape::FullRound:
        return halfRound(profile.form, pitch);
    case ToothShape::DimpledRound:
        return dimpled(profile.form, pitch);
    case ToothShape::FlatTopRound:
        return flatTopped(profile.form, pitch);
    case ToothShape::Rib:
        return rib(profile.form, pitch);
    }
    return trapezoid(profile.form, pitch);
}

} // namespace riband::ui
