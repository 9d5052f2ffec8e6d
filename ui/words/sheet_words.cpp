#include "ui/words/sheet_words.h"

#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::ui {

namespace {

QString sayProblem(const shop::SheetFault& fault, shop::SheetFault::Problem problem) {
    using Problem = shop::SheetFault::Problem;
    const QString said = text(fault.said);
    switch (problem) {
    case Problem::UnknownKind:
        return Words::tr("“%1” is none of sleeve, remnant, ready.").arg(said);
    case Problem::NoDay:
        return Words::tr("“%1” is no day; write 2026-03-31.").arg(said);
    case Problem::FutureDay:
        return Words::tr("“%1” is still to come: what is here was made and came before. Check the day.")
            .arg(said);
    case Problem::CountRibs:
        return Words::tr("A ribbed belt is counted in ribs; leave its width empty.");
    case Problem::NoRibs:
        return Words::tr("A toothed belt has no ribs; leave this empty.");
    case Problem::Nothing:
        return Words::tr("It must be more than nothing.");
    case Problem::TooWide:
        return Words::tr("No cutter takes a piece over 5 m or 10 000 ribs.");
    case Problem::TooDear:
        return Words::tr("No sleeve costs as much. Check the amount.");
    case Problem::BadCount:
        return Words::tr("A whole number from 1 to %1 is needed.").arg(500);
    case Problem::NoPlace:
        return wrongPlace(fault.said);
    case Problem::UnknownCode:
        return Words::tr("The code “%1” is tied to no belt yet. Say the belt beside it once.").arg(said);
    }
    return {};
}

} // namespace

QString sayWhy(const shop::SheetFault& fault, const belt::Tables& tables) {
    if (const auto* problem = std::get_if<shop::SheetFault::Problem>(&fault.why))
        return sayProblem(fault, *problem);
    if (const auto* wrong = std::get_if<TextFault>(&fault.why)) return say(*wrong);
    return say(std::get<belt::ReadFault>(fault.why), tables);
}

QString say(const shop::SheetFault& fault, const std::vector<std::string>& head, const belt::Tables& tables) {
    return Words::tr("line %1, column %2 (%3): %4")
        .arg(fault.line)
        .arg(fault.column + 1)
        .arg(text(head.at(fault.column)), sayWhy(fault, tables));
}

QString say(shop::SheetGap gap) {
    switch (gap) {
    case shop::SheetGap::NoBelt:
        return Words::tr("Say which column names the belt, or which two its profile and its length.");
    case shop::SheetGap::NoWidth:
        return Words::tr("Say which column holds the width, or the ribs.");
    case shop::SheetGap::TwoOfAField:
        return Words::tr("Two columns are said to hold the same. Choose one.");
    }
    return {};
}

QString say(shop::SheetField field) {
    using Field = shop::SheetField;
    switch (field) {
    case Field::Ignored:
        return Words::tr("leave out");
    case Field::Belt:
        return Words::tr("belt");
    case Field::Profile:
        return Words::tr("profile");
    case Field::Length:
        return Words::tr("length");
    case Field::Construction:
        return Words::tr("construction");
    case Field::Kind:
        return Words::tr("kind");
    case Field::Width:
        return Words::tr("width");
    case Field::Ribs:
        return Words::tr("ribs");
    case Field::Sleeves:
        return Words::tr("how many");
    case Field::Received:
        return Words::tr("day it came");
    case Field::Made:
        return Words::tr("day it was made");
    case Field::Place:
        return Words::tr("place");
    case Field::Batch:
        return Words::tr("batch");
    case Field::Cost:
        return Words::tr("cost of each");
    case Field::Piece:
        return Words::tr("old code");
    case Field::SupplierCode:
        return Words::tr("supplier's code");
    case Field::Labelled:
        return Words::tr("width on the label");
    }
    return {};
}

} // namespace riband::ui
