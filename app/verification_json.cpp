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

} // namespace

QJsonObject jsonOf(const store::Verification& found) {
    QJsonArray disagreements;
    for (const store::Disagreement& one : found.disagreements)
        disagreements << jsonOf(one);
    return {{"agrees", found.agrees()},
            {"pieces", static_cast<qint64>(found.pieces)},
            {"movements", static_cast<qint64>(found.movements)},
            {"postings", static_cast<qint64>(found.postings)},
            {"disagreements", disagreements}};
}

void printVerification(const store::Verification& found) {
    for (const store::Disagreement& one : found.disagreements)
        print(ui::say(one));
    const QString looked = ui::Words::tr("%1 pieces, %2 movements, %3 postings")
                               .arg(found.pieces)
                               .arg(found.movements)
                               .arg(found.postings);
    print(found.agrees() ? ui::Words::tr("The book agrees: %1.").arg(looked)
                         : ui::Words::tr("The book does not agree (%1).").arg(looked));
}

} // namespace riband::app
