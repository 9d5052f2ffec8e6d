#include "app/identify_json.h"

#include "app/identify_options.h"
#include "app/json.h"
#include "ui/words/identify_words.h"

#include <QJsonArray>

#include <cmath>

namespace riband::app {

namespace {

using namespace belt::identify;

const QJsonValue nothing{QJsonValue::Null};

/// More would be a show of exactness.
double toTenThousandths(double probability) { return std::round(probability * 1e4) / 1e4; }

QJsonValue widthJson(const Candidate& candidate, bool keepWidth) {
    if (!candidate.width) return nothing;
    const Width ribPitch = Width::micrometres(candidate.profile->pitch.inNanometres() / 1000);
    return millimetres(candidate.width->offered(keepWidth).shownWidth(ribPitch).inMicrometres());
}

QJsonObject jsonOf(const Candidate& candidate, bool keepWidth) {
    const auto& belt = candidate.belt;
    return {{"profile", textValue(candidate.profile->name)},
            {"teeth", belt && belt->teeth ? QJsonValue(static_cast<qint64>(belt->teeth->count())) : nothing},
            {"length_mm", belt ? millimetres(belt->length) : nothing},
            {"width_mm", widthJson(candidate, keepWidth)},
            {"probability", toTenThousandths(candidate.probability)}};
}

QJsonValue jsonOf(const std::optional<Next>& next) {
    if (!next) return nothing;
    return QJsonObject{{"option", optionOf(next->what)},
                       {"over", next->over > 0 ? QJsonValue(next->over) : nothing}};
}

} // namespace

QJsonObject jsonOf(const Identification& answer, const Sample& sample, bool keepWidth) {
    QJsonArray candidates;
    for (const Candidate& each : answer.candidates)
        candidates << jsonOf(each, keepWidth);
    return {{"candidates", candidates},
            {"settled", answer.settled},
            {"next", jsonOf(answer.next)},
            {"why", ui::why(answer, sample)}};
}

} // namespace riband::app
