#include "ui/counter/inquiry.h"

#include "core/measure/text.h"

namespace riband::ui {

void Inquiry::say(const QString& text) {
    said_ = text.trimmed();
    chosen_.reset();
    understanding_ =
        said_.isEmpty() ? belt::Understanding{} : belt::understand(said_.toStdString(), *tables_);
}

void Inquiry::choose(std::size_t reading) {
    if (reading < understanding_.readings.size()) chosen_ = reading;
}

Inquiry::State Inquiry::state() const {
    if (said_.isEmpty()) return State::Empty;
    if (understanding_.fault) return State::Fault;
    return wanted() ? State::Complete : State::Asks;
}

std::vector<belt::Reading> Inquiry::open() const {
    if (chosen_ || understanding_.readings.size() < 2) return {};
    return understanding_.readings;
}

const belt::Reading* Inquiry::reading() const {
    const auto& readings = understanding_.readings;
    if (readings.empty()) return nullptr;
    return &readings[chosen_.value_or(0)];
}

std::optional<belt::Question> Inquiry::question() const {
    if (understanding_.fault || !reading() || wanted()) return std::nullopt;
    if (!open().empty() && understanding_.question) return understanding_.question;
    if (reading()->width) return understanding_.question;
    return reading()->belt.teeth ? belt::Question::HowWide : belt::Question::HowManyRibs;
}

std::optional<Wanted> Inquiry::wanted() const {
    if (!open().empty()) return std::nullopt;
    const belt::Reading* one = reading();
    if (!one || !one->width) return std::nullopt;
    return Wanted{one->belt, *one->width, one->quantity};
}

namespace {

bool readsBack(const std::string& words, const belt::Reading& reading, const belt::Tables& tables) {
    const belt::Understanding understood = belt::understand(words, tables);
    if (understood.readings.size() != 1) return false;
    const belt::Reading& back = understood.readings.front();
    return back.belt == reading.belt && back.width == reading.width && back.quantity == reading.quantity;
}

} // namespace

std::optional<QString> wordsFor(const belt::Reading& reading, const belt::Tables& tables) {
    const std::string times = reading.quantity == 1 ? "" : std::to_string(reading.quantity) + " x ";
    std::vector<std::string> ways{times + belt::designation(reading.belt)};
    if (reading.width) {
        const bool ribs = reading.width->unit() == Unit::Rib;
        const std::string count = printCount(*reading.width);
        ways = {ways.front() + " " + count, ways.front() + " " + count + (ribs ? " ribs" : " mm"),
                times + belt::printed(reading.belt, *reading.width, tables)};
    }
    for (const std::string& way : ways)
        if (readsBack(way, reading, tables)) return QString::fromStdString(way);
    return std::nullopt;
}

} // namespace riband::ui
