#pragma once

#include "core/belt/reader.h"
#include "core/cutting/setup.h"
#include "core/measure/csv.h"
#include "core/measure/text.h"
#include "core/shop/queries.h"
#include "core/shop/suggest.h"
#include "core/store/error.h"
#include "core/store/verify.h"

#include <QString>

/// The core says what is the case; here are the words for it, translatable, the same on screen, paper and
/// command line.
namespace riband::ui {

QString say(const belt::ReadFault& fault, const belt::Tables& tables);
QString say(belt::Question question);
/// The choices that go with a question, one short phrase a reading: what tells it from the others.
QString tellApart(const belt::Reading& reading, belt::Question question, const belt::Tables& tables);
QString say(belt::Reading::Remark remark, const belt::Reading& reading);
QString say(TextFault fault);
QString say(const CsvFault& fault);
QString say(const belt::TableFault& fault);
QString say(const shop::Refusal& refusal);
QString say(store::Role role);
QString say(const shop::Reason& reason);
/// "2 × 50 mm: 31 % of the orders here"
QString say(const shop::Reason::Kept& kept);
/// On what a suggestion rests: "worth table 3 and look-ahead", or why it doesn't.
QString basisOf(const shop::Suggestion& suggestion);
QString say(store::OverrideKey key);
QString say(store::PreCut preCut);
QString say(cutting::Unserved::Why why);
QString say(cutting::SetUp::Remark remark);
QString say(cutting::SetUpFault fault);
QString say(const store::StoreError& error);
QString say(const store::Disagreement& disagreement);
QString say(const store::CountHole& hole);
QString say(store::ScrapReason reason);
QString say(store::OrderState state);
QString say(store::Act act);
/// Its act; where that only divided a piece, so.
QString say(const store::Movement& movement);
QString say(store::Account account);
QString say(cutting::PieceKind kind);
QString say(belt::ToothShape shape);
QString say(belt::Family family);

/// With unit and the local decimal sign: "30 mm", "19.05 mm", "6 ribs".
QString shown(Extent extent);
/// The number alone: "30", "6".
QString shownNumber(Extent extent);
QString shown(Length length);
QString shown(Money money, const Currency& currency); ///< "105.54", without the sign of the currency
QString shown(Date date);
QString shown(Moment moment); ///< in the time of the place, to the minute
/// "+0.8 -0.8"
QString shown(const belt::WidthTolerance& tolerance);

} // namespace riband::ui
