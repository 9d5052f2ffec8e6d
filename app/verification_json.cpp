#include "app/verification_json.h"

#include "app/console.h"
#include "app/json.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QJsonArray>

namespace riband::app {

namespace {

QJsonObject jsonOf(const store::Disagreement& one) {
    return {{"where", textValue(one.where)},
            {"book", static_cast<qint64>(one.book)},
            {"found", static_cast<qint64>(one.found)},
            {"what", ui::say(one)}};
}

QJsonObject jsonOf(const store::CountHole& hole) {
    return {{"place", textValue(hole.place)},
            {"where", textValue(hole.where)},
            {keyOf("book", hole.unit), inUnit(hole.unit, hole.book)},
            {keyOf("found", hole.unit), inUnit(hole.unit, hole.found)},
            {"what", ui::say(hole)}};
}

} // namespace

QJsonObject jsonOf(const store::Verification& found) {
    QJsonArray disagreements;
    for (const store::Disagreement& one : found.disagreements)
        disagreements << jsonOf(one);
    QJsonArray holes;
    for (const store::CountHole& hole : found.holes)
        holes << jsonOf(hole);
    return {{"agrees", found.agrees()},
            {"pieces", static_cast<qint64>(found.pieces)},
            {"movements", static_cast<qint64>(found.movements)},
            {"postings", static_cast<qint64>(found.postings)},
            {"disagreements", disagreements},
            {"count_holes", holes}};
}

void printVerification(const store::Verification& found) {
    for (const store::Disagreement& one : found.disagreements)
        print(ui::say(one));
    for (const store::CountHole& hole : found.holes)
        print(ui::Words::tr("Count hole: %1").arg(ui::say(hole)));
    const QString looked = ui::Words::tr("%1 pieces, %2 movements, %3 postings")
                               .arg(found.pieces)
                               .arg(found.movements)
                               .arg(found.postings);
    print(found.agrees() ? ui::Words::tr("The book agrees: %1.").arg(looked)
                         : ui::Words::tr("The book does not agree (%1).").arg(looked));
}

} // namespace riband::app
