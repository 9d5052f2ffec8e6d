#include "app/commands.h"
#include "app/identify_json.h"
#include "app/identify_options.h"
#include "app/open_shop.h"
#include "app/standard_tables.h"
#include "core/shop/wanted_before.h"
#include "core/store/measuring.h"
#include "ui/words/identify_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::app {

namespace {

using namespace belt::identify;
using ui::Words;

/// What the shop knows: what it sold, and how well it measures.
struct ShopKnows {
    Prior prior;
    Instruments measuring{};
};

ShopKnows shopKnows(const Options& options) {
    if (!options.has("shop")) return {Prior{standardTables()}};
    OpenShop open(options.value("shop"), store::Connection::Mode::ReadOnly);
    return {Prior{standardTables(), shop::wantedBefore(open.connection())},
            store::readMeasuring(open.connection())};
}

void printCandidate(const Candidate& candidate, bool keepWidth) {
    QString line =
        QStringLiteral("%1 %2").arg(ui::shownChance(candidate.probability), 9).arg(ui::nameOf(candidate));
    if (candidate.belt && candidate.belt->teeth)
        line += Words::tr(", %1 teeth").arg(candidate.belt->teeth->count());
    if (candidate.belt) line += Words::tr(", %1 long").arg(ui::shown(candidate.belt->length));
    if (candidate.width) line += Words::tr(", %1 wide").arg(ui::shown(candidate.width->offered(keepWidth)));
    if (!candidate.listed) line += Words::tr(", in no list");
    print(line);
}

/// Lines of "0 %" would tell nobody anything.
constexpr double worthALine = .005;

void printAnswer(const Identification& answer, const Sample& sample, bool keepWidth) {
    std::size_t told = 0;
    for (const Candidate& candidate : answer.candidates)
        if (candidate.probability >= worthALine || told == 0) {
            printCandidate(candidate, keepWidth);
            ++told;
        }
    if (answer.among > told) print(Words::tr("          and %1 more").arg(answer.among - told));
    if (const auto& width = answer.candidates.front().width; width && width->standard) print(ui::say(*width));
    print(ui::why(answer, sample));
}

Exit exitOf(const Identification& answer) {
    if (answer.contradictory()) return Exit::BadInput;
    return answer.settled ? Exit::Done : Exit::No;
}

} // namespace

Exit identify(const QStringList& arguments) {
    const Options options(identifyUsage(), arguments);
    const auto [prior, measuring] = shopKnows(options);
    Wishes wishes;
    wishes.errors = errorsOf(options, measuring);
    const Sample sample = sampleOf(options, wishes.errors);
    if (const auto fault = faultOf(sample)) throw BadInput(ui::say(*fault));
    const Identification answer = belt::identify::identify(sample, prior, wishes);
    const bool keepWidth = options.has("keep-width");
    if (options.json()) printJson(jsonOf(answer, sample, keepWidth));
    if (answer.contradictory())
        complain(QStringLiteral("riband identify: ") + ui::why(answer, sample));
    else if (!options.json())
        printAnswer(answer, sample, keepWidth);
    return exitOf(answer);
}

} // namespace riband::app
