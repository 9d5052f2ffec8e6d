#include "app/demo/walk_in.h"

#include "app/demo/band_text.h"
#include "app/plan_words.h"
#include "core/belt/reader.h"
#include "core/shop/cut.h"
#include "core/store/verify.h"
#include "ui/desk/paper_tray.h"
#include "ui/window/window.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDir>

#include <algorithm>

namespace riband::app {

namespace {

using ui::Words;

/// One customer, step by step; each step prints what a person would see.
class WalkIn {
public:
    WalkIn(ui::Session& session, const std::function<void(const QString&)>& tell)
        : session_{session}, tray_{session}, tell_{tell} {}

    bool serve() {
        const auto reading = understand();
        if (!reading) return false;
        if (!suggest(*reading)) return false;
        picture(*reading);
        const shop::Ordered ordered = order(*reading);
        bench(ordered);
        shop::handOver(session_.shop(), ordered.order);
        say(Words::tr("The belts are paid and handed over."));
        return verify();
    }

private:
    void head(const QString& words) { tell_(QStringLiteral("\n") + words); }
    void say(const QString& words) { tell_(QStringLiteral("  ") + words); }

    std::optional<belt::Reading> understand() {
        head(Words::tr("1. A walk-in says “%1”.").arg(words_));
        const auto understood = belt::understand(words_.toStdString(), session_.tables());
        for (const auto& reading : understood.readings)
            say(understood.question ? ui::tellApart(reading, *understood.question, session_.tables())
                                    : ui::text(belt::designation(reading.belt)));
        if (understood.question) say(ui::say(*understood.question));
        const auto meant = std::find_if(understood.readings.begin(), understood.readings.end(),
                                        [](const auto& reading) { return reading.belt.profile == "H8M"; });
        if (meant == understood.readings.end() || !meant->width) return std::nullopt;
        say(Words::tr("The tooth is a plain half-round: %1, %2 of them, %3 wide.")
                .arg(ui::text(belt::designation(meant->belt)))
                .arg(meant->quantity)
                .arg(ui::shown(*meant->width)));
        return *meant;
    }

    void way(const shop::Outlook& outlook, const shop::Way& way) {
        for (const QString& line : wordsOf({outlook.belt.designation, outlook.problem, way.plan}))
            say(line);
        for (std::size_t i = 0; i < way.plan.mountings.size(); ++i)
            say(bandText(outlook.problem, way, i));
        say(ui::say(way.reason));
        if (const QString shelf = shelfWords(outlook, way); !shelf.isEmpty()) say(shelf);
    }

    bool suggest(const belt::Reading& reading) {
        head(Words::tr("2. What to cut"));
        const auto outlook =
            shop::lookAt(session_.shop(), reading.belt, {{*reading.width, reading.quantity}});
        const auto suggestion = shop::suggest(outlook);
        way(outlook, suggestion.best);
        for (const auto& other : suggestion.others) {
            say(Words::tr("Or, at %1 of width more:")
                    .arg(ui::shown(Extent::of(outlook.belt.unit, std::max<std::int64_t>(0, other.extra)))));
            way(outlook, other);
        }
        return suggestion.best.plan.unserved.empty();
    }

    void picture(const belt::Reading& reading) {
        const QString said =
            QStringLiteral("%1 x %2 %3")
                .arg(reading.quantity)
                .arg(ui::text(belt::designation(reading.belt)), ui::shownNumber(*reading.width));
        const auto files = ui::grabPages(session_, QDir{session_.papersFolder()}, said);
        head(Words::tr("3. The pages at this moment"));
        for (const QString& file : files)
            say(file);
    }

    shop::Ordered order(const belt::Reading& reading) {
        head(Words::tr("4. The order and its ticket"));
        const shop::Ordered ordered = shop::order(
            session_.shop(),
            {.lines =
                 {{reading.belt, *reading.width, reading.quantity, words_.toStdString(), std::nullopt, {}}},
             .customer = "",
             .phone = "",
             .due = std::nullopt,
             .note = ""});
        const auto booked = store::Orders{session_.shop().connection}.at(ordered.order);
        for (const auto& line : booked.lines)
            say(Words::tr("Order %1: %2 %3")
                    .arg(ui::text(booked.code), ui::shown(line.price.total, session_.currency()),
                         ui::text(std::string{session_.currency().code()})));
        say(tray_.order(ordered.order));
        if (ordered.ticket) say(tray_.ticket(*ordered.ticket));
        return ordered;
    }

    void bench(const shop::Ordered& ordered) {
        if (!ordered.ticket) return;
        head(Words::tr("5. At the bench"));
        for (const auto& mounting : shop::mountingsOf(session_.shop(), *ordered.ticket))
            cut(mounting);
    }

    void cut(const shop::BenchMounting& mounting) {
        say(Words::tr("Ticket %1: put %2 from %3 on the cutter.")
                .arg(ui::text(mounting.ticket), ui::text(mounting.piece.code),
                     ui::text(mounting.piece.place)));
        const auto& shafts = mounting.cutter.cutter.shafts;
        if (mounting.setUp)
            say(Words::tr("Shaft “%1”, %2 mm between centres.")
                    .arg(ui::text(shafts[mounting.setUp->shaft].name))
                    .arg(QLocale().toString(mounting.setUp->centreDistance, 'f', 1)));
        const auto done = shop::recordCut(session_.shop(), {.mounting = mounting.mounting.id});
        say(Words::tr("Cut and booked; the order is %1.")
                .arg(done.allReady() ? Words::tr("ready") : Words::tr("not whole yet")));
        say(tray_.beltLabels(mounting));
        if (!done.shelf.empty())
            say(Words::tr("The rest makes belts for the shelf: %1").arg(tray_.labels(done.shelf)));
        if (done.remnant) say(tray_.labels({*done.remnant}));
    }

    bool verify() {
        head(Words::tr("6. The book"));
        const auto found = store::verify(session_.shop().connection);
        say(found.agrees() ? Words::tr("It agrees to the micrometre: %1 movements, %2 postings.")
                                 .arg(found.movements)
                                 .arg(found.postings)
                           : Words::tr("It does not agree."));
        for (const auto& one : found.disagreements)
            say(ui::say(one));
        return found.agrees();
    }

    ui::Session& session_;
    ui::PaperTray tray_;
    const std::function<void(const QString&)>& tell_;
    const QString words_ = QStringLiteral("3 x 8M 1200 30");
};

} // namespace

bool serveWalkIn(ui::Session& session, const std::function<void(const QString&)>& tell) {
    return WalkIn{session, tell}.serve();
}

} // namespace riband::app
