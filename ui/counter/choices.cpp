#include "ui/counter/choices.h"

#include "core/shop/queries.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

struct ChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(ChoiceWords)
};

constexpr std::size_t Most = 9; // a digit each
constexpr int LeastOfAName = 3; // letters before customers are looked for

bool isAskedOfTheEye(belt::Question question) {
    return question == belt::Question::WhichToothShape || question == belt::Question::ToothedOrRibbed;
}

std::vector<Choice> readingChoices(const Inquiry& inquiry, const belt::Tables& tables) {
    std::vector<Choice> choices;
    const auto readings = inquiry.open();
    const belt::Question question = *inquiry.question();
    for (std::size_t i = 0; i < readings.size() && i < Most; ++i) {
        Choice choice{Choice::Does::Settle, tellApart(readings[i], question, tables), {}, {}, i, nullptr};
        if (isAskedOfTheEye(question)) choice.drawn = tables.profile(readings[i].belt.profile);
        if (const auto words = wordsFor(readings[i], tables)) {
            choice.does = Choice::Does::Say;
            choice.value = *words;
        }
        choices.push_back(choice);
    }
    return choices;
}

/// The widths that the shop usually sells of the belt, else the standard ones.
std::vector<Extent> usualWidths(const belt::Belt& belt, const shop::Shop& shop) {
    const auto kept = store::Catalogue{shop.connection}.find(belt);
    if (kept && !kept->listed.empty()) return kept->listed;
    std::vector<Extent> widths;
    for (const auto& width : shop.tables->widths(belt.profile))
        widths.push_back(width.extent);
    return widths;
}

std::vector<Choice> widthChoices(const belt::Reading& reading, const shop::Shop& shop) {
    std::vector<Choice> choices;
    for (const Extent width : usualWidths(reading.belt, shop)) {
        belt::Reading wide = reading;
        wide.width = width;
        const auto words = wordsFor(wide, *shop.tables);
        if (!words || choices.size() == Most) continue;
        choices.push_back({Choice::Does::Say, shown(width), {}, *words});
    }
    return choices;
}

/// What was typed with the impossible part put right, where that reads as the belt meant.
QString corrected(const QString& said, const belt::ReadFault& fault, const belt::Belt& nearest,
                  const belt::Tables& tables) {
    const QString whole = text(belt::designation(nearest));
    const QString number = whole.section(' ', 1, 1);
    QString fixed = said;
    const auto at = fixed.indexOf(text(fault.part), 0, Qt::CaseInsensitive);
    if (fault.part.empty() || at < 0) return whole;
    fixed.replace(at, static_cast<qsizetype>(text(fault.part).size()), number);
    const auto understood = belt::understand(fixed.toStdString(), tables);
    for (const auto& reading : understood.readings)
        if (reading.belt == nearest) return fixed;
    return whole;
}

std::vector<Choice> nearestChoices(const Inquiry& inquiry, const belt::ReadFault& fault,
                                   const belt::Tables& tables) {
    std::vector<Choice> choices;
    for (const belt::Belt& nearest : fault.nearest) {
        if (choices.size() == Most) break;
        const QString teeth =
            nearest.teeth ? ChoiceWords::tr("%n teeth", nullptr, static_cast<int>(nearest.teeth->count()))
                          : QString{};
        choices.push_back({Choice::Does::Say, text(belt::designation(nearest)), teeth,
                           corrected(inquiry.said(), fault, nearest, tables)});
    }
    return choices;
}

void addScanned(std::vector<Choice>& choices, const QString& said, const shop::Shop& shop) {
    const shop::Scanned found = shop::scan(shop, said.toStdString());
    if (found.piece)
        choices.push_back({Choice::Does::Open, ChoiceWords::tr("Piece %1").arg(text(found.piece->code)),
                           shown(found.piece->extent), text(found.piece->code)});
    if (found.ticket)
        choices.push_back({Choice::Does::Open,
                           ChoiceWords::tr("Ticket %1").arg(text(found.ticket->code)),
                           {},
                           text(found.ticket->code)});
    if (found.order)
        choices.push_back({Choice::Does::Open, ChoiceWords::tr("Order %1").arg(text(found.order->code)),
                           say(found.order->state), text(found.order->code)});
}

void addCustomers(std::vector<Choice>& choices, const QString& said, const shop::Shop& shop) {
    if (said.size() < LeastOfAName || !said.front().isLetter()) return;
    store::Orders orders{shop.connection};
    for (const auto& customer : orders.customersLike(said.toStdString(), 4))
        choices.push_back({Choice::Does::Customer, ChoiceWords::tr("Customer %1").arg(text(customer.name)),
                           text(customer.phone), text(customer.name)});
}

Choices forFault(const Inquiry& inquiry, const shop::Shop& shop) {
    const belt::ReadFault& fault = *inquiry.understanding().fault;
    Choices made;
    addScanned(made.choices, inquiry.said(), shop);
    if (made.choices.empty()) addCustomers(made.choices, inquiry.said(), shop);
    if (!made.choices.empty()) {
        made.heading = ChoiceWords::tr("This is known here:");
        return made;
    }
    made.wrong = true;
    made.heading = say(fault, *shop.tables);
    made.choices = nearestChoices(inquiry, fault, *shop.tables);
    return made;
}

} // namespace

Choices choicesFor(const Inquiry& inquiry, const shop::Shop& shop) {
    if (inquiry.state() == Inquiry::State::Fault) return forFault(inquiry, shop);
    if (inquiry.state() == Inquiry::State::Empty) return {};
    Choices made;
    if (const auto question = inquiry.question()) {
        made.heading = say(*question);
        made.choices = inquiry.open().empty() ? widthChoices(*inquiry.reading(), shop)
                                              : readingChoices(inquiry, *shop.tables);
    }
    addScanned(made.choices, inquiry.said(), shop);
    if (made.heading.isEmpty() && !made.choices.empty()) made.heading = ChoiceWords::tr("Also known here:");
    made.onlyByAlt = inquiry.state() == Inquiry::State::Complete;
    return made;
}

} // namespace riband::ui
