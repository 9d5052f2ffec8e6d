#pragma once

#include "core/shop/reports/compared.h"

#include <QStringList>

namespace riband::ui {

QString untoldWords(); ///< "the book begins later", of a period of which nothing is told
/// "4.3 %; before 3.9 %; a year earlier 5.0 %": lost of what was used.
QString lostThen(const shop::ComparedRow& row);
/// Which periods stand beside which, and plainly where the book begins too late to compare. A sentence each.
QStringList comparedWords(const shop::Compared& compared, Date today);

} // namespace riband::ui
