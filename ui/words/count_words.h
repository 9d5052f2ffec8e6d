#pragma once

#include "core/shop/counting/findings.h"
#include "core/shop/counting/plan.h"
#include "core/shop/counting/verdict.h"

#include <QString>

/// The words of counting (docs/counting.md).
namespace riband::ui {

QString say(store::Method method);
QString say(store::Explanation explanation);
/// What a finding is, without its piece: "the book says 100 mm, measured 67.4 mm: 32.6 mm less".
QString say(const shop::Finding& finding);
/// What a proposal says happened, with its figures, and what accepting does.
QString say(const shop::counting::Proposal& proposal, const shop::Finding& finding, store::Connection& shop);
/// Why a settlement can't be taken back.
QString whyItStands(const shop::Refusal& why);
/// A place to be counted, and why, in two lines without its value.
QString say(const shop::counting::PlaceTask& task);
/// Why a piece is to be counted: "class A · never counted · cuts since it came: 6 · in doubt: 6 %".
QString say(const shop::counting::PieceTask& task);
/// A signed width: "−32.6 mm", "+2 ribs".
QString shownChange(Unit unit, std::int64_t change);

} // namespace riband::ui
