#include "app/demo/story.h"

#include "app/table_file.h"

#include <stdexcept>

namespace riband::app {

namespace {

std::chrono::minutes minutesOf(const std::string& time) {
    return std::chrono::hours{std::stoi(time.substr(0, 2))} +
           std::chrono::minutes{std::stoi(time.substr(3, 2))};
}

Event eventOf(const TableFile& file, const CsvTable::Row& row, Date today) {
    const auto field = [&](const char* column) { return file.field(row, column); };
    const auto daysBefore = [today](const std::string& days) {
        return today - std::chrono::days{std::stoi(days)};
    };
    const Date day = daysBefore(field("day"));
    Event event{.at = day + minutesOf(field("time")),
                .who = field("who"),
                .act = field("act"),
                .text = field("text"),
                .amount = field("amount"),
                .cost = field("cost"),
                .place = field("place"),
                .made = std::nullopt,
                .customer = field("customer"),
                .note = field("note")};
    if (const auto count = field("count"); !count.empty()) event.count = std::stoll(count);
    if (const auto made = field("made"); !made.empty()) event.made = day - std::chrono::days{std::stoi(made)};
    return event;
}

} // namespace

std::vector<Event> toldStory(Date today) {
    const TableFile file(QStringLiteral(":/demo/story.csv"),
                         {"day", "time", "who", "act", "text", "amount", "count", "cost", "place", "made",
                          "customer", "note"});
    std::vector<Event> events;
    for (const auto& row : file.rows())
        events.push_back(eventOf(file, row, today));
    return events;
}

void setAdvice(store::Connection& connection, const store::AdviceRules& advice) {
    store::Transaction transaction{connection};
    store::Settings settings{connection};
    store::ShopSettings all = settings.read();
    all.advice = advice;
    settings.write(all);
    transaction.commit();
}

} // namespace riband::app
