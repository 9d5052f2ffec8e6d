#include "tests/core/belt/belt_words.h"

#include "core/measure/text.h"

namespace riband::belt {
namespace {

std::string name(Question question) {
    switch (question) {
    case Question::WhichToothShape:
        return "WhichToothShape";
    case Question::ToothedOrRibbed:
        return "ToothedOrRibbed";
    case Question::ToothedOrVBelt:
        return "ToothedOrVBelt";
    case Question::WhichMxlCode:
        return "WhichMxlCode";
    case Question::MillimetreOrInch:
        return "MillimetreOrInch";
    case Question::WidthTimesTen:
        return "WidthTimesTen";
    case Question::WhichIsLength:
        return "WhichIsLength";
    case Question::HowWide:
        return "HowWide";
    case Question::HowManyRibs:
        return "HowManyRibs";
    case Question::HowLong:
        return "HowLong";
    }
    return "?";
}

std::string name(Reading::Remark remark) {
    switch (remark) {
    case Reading::Remark::CodeRounded:
        return "CodeRounded";
    case Reading::Remark::MatchedLength:
        return "MatchedLength";
    case Reading::Remark::WidthFromLabel:
        return "WidthFromLabel";
    case Reading::Remark::ShortForBelt:
        return "ShortForBelt";
    case Reading::Remark::LengthNotListed:
        return "LengthNotListed";
    case Reading::Remark::HalfLost:
        return "HalfLost";
    }
    return "?";
}

std::string name(ReadFault::Kind kind) {
    using Kind = ReadFault::Kind;
    switch (kind) {
    case Kind::Empty:
        return "Empty";
    case Kind::NotUnderstood:
        return "NotUnderstood";
    case Kind::TooLong:
        return "TooLong";
    case Kind::NoProfile:
        return "NoProfile";
    case Kind::LengthNotMultiple:
        return "LengthNotMultiple";
    case Kind::LengthImpossible:
        return "LengthImpossible";
    case Kind::WidthNotPositive:
        return "WidthNotPositive";
    case Kind::WidthOverSleeve:
        return "WidthOverSleeve";
    case Kind::HalfARib:
        return "HalfARib";
    case Kind::NoRibs:
        return "NoRibs";
    case Kind::QuantityImpossible:
        return "QuantityImpossible";
    case Kind::VBelt:
        return "VBelt";
    case Kind::OpenEnded:
        return "OpenEnded";
    case Kind::UnknownProfile:
        return "UnknownProfile";
    case Kind::NoLength:
        return "NoLength";
    case Kind::SeveralBelts:
        return "SeveralBelts";
    }
    return "?";
}

std::string inWords(const Reading& reading) {
    std::string text = designation(reading.belt);
    if (reading.width) text += " @" + printCount(*reading.width);
    if (reading.quantity != 1) text += " x" + std::to_string(reading.quantity);
    for (const auto remark : reading.remarks)
        text += " " + name(remark);
    return text;
}

std::string inWords(const ReadFault& fault) {
    std::string text = "! " + name(fault.kind);
    if (!fault.part.empty()) text += " " + fault.part;
    for (const Belt& belt : fault.nearest)
        text += " ~" + designation(belt);
    if (fault.limit) text += " <=" + printCount(*fault.limit);
    return text;
}

} // namespace

std::string inWords(const Understanding& understanding) {
    std::string text;
    for (const Reading& reading : understanding.readings) {
        if (!text.empty()) text += " | ";
        text += inWords(reading);
    }
    if (understanding.fault) text += inWords(*understanding.fault);
    if (understanding.question) text += " ? " + name(*understanding.question);
    return text;
}

std::string understood(std::string_view text) { return inWords(understand(text, theTables())); }

} // namespace riband::belt
