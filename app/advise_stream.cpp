#include "app/advise_stream.h"

#include "app/console.h"
#include "ui/words/tr.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <cmath>
#include <set>

namespace riband::app {

namespace {

using namespace foresight;
using ui::Words;

constexpr double widestSleeve = 4000; // mm or ribs
constexpr double mostBelts = 10000;
constexpr qsizetype mostListed = 100;

[[noreturn]] void refuse(const QString& what) { throw BadInput(what); }

QJsonValue field(const QJsonObject& object, const char* name) {
    const QJsonValue value = object.value(QLatin1String(name));
    if (value.isUndefined()) refuse(Words::tr("“%1” is missing.").arg(QLatin1String(name)));
    return value;
}

double number(const QJsonObject& object, const char* name, double least, double most) {
    const QJsonValue value = field(object, name);
    const double given = value.toDouble();
    if (!value.isDouble() || !(given >= least && given <= most))
        refuse(
            Words::tr("“%1” must be a number from %2 to %3.").arg(QLatin1String(name)).arg(least).arg(most));
    return given;
}

int wholeNumber(const QJsonObject& object, const char* name, double least, double most) {
    const double given = number(object, name, least, most);
    if (given != std::floor(given))
        refuse(Words::tr("“%1” must be a whole number.").arg(QLatin1String(name)));
    return static_cast<int>(given);
}

QJsonObject objectIn(const QJsonValue& value, const char* name) {
    if (!value.isObject()) refuse(Words::tr("“%1” must be an object.").arg(QLatin1String(name)));
    return value.toObject();
}

QJsonArray arrayIn(const QJsonObject& object, const char* name) {
    const QJsonValue value = field(object, name);
    if (!value.isArray() || value.toArray().isEmpty())
        refuse(Words::tr("“%1” must be a list that is not empty.").arg(QLatin1String(name)));
    return value.toArray();
}

QString oneOf(const QJsonObject& object, const char* name, const QStringList& words) {
    const QString given = field(object, name).toString();
    if (!words.contains(given))
        refuse(
            Words::tr("“%1” must be one of: %2.").arg(QLatin1String(name), words.join(QStringLiteral(", "))));
    return given;
}

QJsonValue nameOf(PieceName piece) { return QStringLiteral("P%1").arg(piece); }

QByteArray lineOf(const QJsonObject& object) { return QJsonDocument(object).toJson(QJsonDocument::Compact); }

} // namespace

Size AdviseStream::sizeOf(double spoken) {
    const double exact = ribs_ ? spoken : spoken * 1000;
    if (ribs_ && exact != std::floor(exact)) refuse(Words::tr("Ribs are whole."));
    const auto size = static_cast<Size>(std::llround(exact));
    spoken_.emplace(size, spoken);
    return size;
}

QJsonValue AdviseStream::spoken(Size size) const {
    if (const auto known = spoken_.find(size); known != spoken_.end()) return known->second;
    return ribs_ ? static_cast<double>(size) : size / 1000.0;
}

QByteArray AdviseStream::answer(const QByteArray& line) {
    QJsonParseError error;
    const auto document = QJsonDocument::fromJson(line, &error);
    if (!document.isObject())
        refuse(error.error == QJsonParseError::NoError ? Words::tr("A line must be one JSON object.")
                                                       : Words::tr("Column %1: this is no JSON: %2.")
                                                             .arg(error.offset + 1)
                                                             .arg(error.errorString()));
    const QJsonObject said = document.object();
    if (said.contains(QLatin1String("begin"))) return lineOf(begin(objectIn(said["begin"], "begin")));
    if (said.contains(QLatin1String("order"))) return lineOf(order(objectIn(said["order"], "order")));
    if (said.value(QLatin1String("end")).toBool()) {
        done_ = true;
        return lineOf({{"done", true}});
    }
    refuse(Words::tr("A line must say begin, order or end."));
}

QJsonObject AdviseStream::begin(const QJsonObject& said) {
    if (advisor_) refuse(Words::tr("There was a begin already."));
    Setting setting;
    setting.ribs = ribs_ = oneOf(said, "unit", {"mm", "ribs"}) == QLatin1String("ribs");
    setting.sleeve = sizeOf(number(said, "sleeve", 0, widestSleeve));
    const QJsonArray listed = arrayIn(said, "listed");
    if (listed.size() > mostListed) refuse(Words::tr("More than %1 widths are listed.").arg(mostListed));
    for (const auto& width : listed) {
        if (!width.isDouble() || !(width.toDouble() > 0 && width.toDouble() <= widestSleeve))
            refuse(Words::tr("“listed” must hold widths."));
        setting.listed.push_back(sizeOf(width.toDouble()));
    }
    const QJsonObject rules = objectIn(field(said, "rules"), "rules");
    setting.rules.trim = sizeOf(number(rules, "trim", 0, widestSleeve));
    setting.rules.kerf = sizeOf(number(rules, "kerf", 0, widestSleeve));
    setting.rules.end = sizeOf(number(rules, "end", 0, widestSleeve));
    setting.rules.stub = sizeOf(number(rules, "stub", 0, widestSleeve));
    const double unit = ribs_ ? 1 : 1000;
    setting.rules.mountingCost = unit * number(rules, "mounting_cost", 0, widestSleeve);
    setting.holdingCost = unit * number(said, "holding_cost", 0, widestSleeve);
    setting.interest = number(said, "interest", 0, 10);
    setting.ordersPerYear = number(said, "orders_per_year", 0.01, 1e7);
    setting.daysPerYear = number(said, "days_per_year", 1, 366);
    setting.ageLimitDays = number(said, "age_limit_days", 0, 1e9);
    setting.rackLimit = wholeNumber(said, "rack_limit", 0, 1e6);
    setting.seed = static_cast<std::uint64_t>(number(said, "seed", 0, 9007199254740992.0));
    const QString shelf = oneOf(said, "shelf", {"none", "stub", "listed"});
    setting.shelf = shelf == QLatin1String("none")   ? Shelf::None
                    : shelf == QLatin1String("stub") ? Shelf::Stub
                                                     : Shelf::Listed;
    if (const auto fault = setting.fault(); !fault.empty()) refuse(QString::fromStdString(fault));
    advisor_ = std::make_unique<Advisor>(setting);
    return {{"ready", true}};
}

QJsonObject AdviseStream::order(const QJsonObject& said) {
    if (!advisor_) refuse(Words::tr("An order came before begin."));
    Order order;
    order.day = number(said, "day", lastDay_, 1e9);
    std::set<Size> widths;
    for (const auto& value : arrayIn(said, "lines")) {
        const QJsonObject line = objectIn(value, "lines");
        const Size width = sizeOf(number(line, "width", ribs_ ? 1 : 0.001, widestSleeve));
        if (!widths.insert(width).second) refuse(Words::tr("Two lines of an order have the same width."));
        order.lines.push_back({width, wholeNumber(line, "quantity", 1, mostBelts)});
    }
    lastDay_ = order.day;
    try {
        return answerSaid(advisor_->answer(order));
    } catch (const std::invalid_argument&) {
        refuse(Words::tr("A belt of this order is too wide for any sleeve."));
    }
}

QJsonObject AdviseStream::mountingSaid(const Mounting& mounting) const {
    QJsonArray cuts;
    for (const auto& cut : mounting.cuts)
        cuts.append(QJsonObject{{"width", spoken(cut.width)},
                                {"count", cut.count},
                                {"for", cut.use == For::Order ? "order" : "shelf"}});
    return {{"piece", nameOf(mounting.piece)},
            {"opens_sleeve", mounting.opensSleeve},
            {"cuts", cuts},
            {"left", ribs_ ? static_cast<double>(mounting.left) : mounting.left / 1000.0},
            {"keep_as", mounting.keepAs ? nameOf(*mounting.keepAs) : QJsonValue()}};
}

QJsonObject AdviseStream::answerSaid(const Answer& answer) const {
    QJsonArray take, mountings, scrap;
    for (const auto& line : answer.take)
        take.append(QJsonObject{{"width", spoken(line.width)}, {"count", line.quantity}});
    for (const auto& mounting : answer.mountings)
        mountings.append(mountingSaid(mounting));
    for (const auto piece : answer.scrap)
        scrap.append(nameOf(piece));
    return {{"take", take}, {"mountings", mountings}, {"scrap", scrap}, {"why", inWords(answer.why, ribs_)}};
}

QString inWords(const Reason& why, bool ribs) {
    using Kind = Reason::Kind;
    const QString figure =
        ribs ? Words::tr("%1 ribs").arg(why.figure) : Words::tr("%1 mm").arg(why.figure / 1000.0);
    switch (why.kind) {
    case Kind::FromShelf:
        return Words::tr("ready on the shelf: no cutting");
    case Kind::OnlyWay:
        return Words::tr("nothing else serves it");
    case Kind::SmallestThatFits:
        return Words::tr("the smallest that fits: %1 left before any finishing").arg(figure);
    case Kind::AboutTheSame:
        return Words::tr("about the same as the smallest that fits: %1").arg(figure);
    case Kind::FinishesPiece:
        return Words::tr("finishes the piece: only %1 left").arg(figure);
    case Kind::AvoidsDeadEnd:
        return Words::tr("the smallest that fits would leave a dead %1").arg(figure);
    case Kind::WorthMore:
        return Words::tr("saves %1 over the smallest that fits, expected").arg(figure);
    }
    return {};
}

} // namespace riband::app
