#pragma once

#include "ui/papers/papers.h"

#include <QByteArray>
#include <QImage>
#include <QString>

#include <string>
#include <vector>

/// Papers of an invented shop, as the tests need them, and the outside readers of what was printed.
namespace riband::ui::example {

const belt::Tables& tables();
store::ShopSettings shop();

/// A mounting that cuts `count` belts of `each` from a piece; the rest is kept unless it is under 15 mm (or 3
/// ribs).
shop::BenchMounting mounting(const std::string& designation, Extent piece, Extent each, std::int64_t count,
                             int number = 1);
/// A ticket of one line for each mounting.
TicketPaper ticket(const std::vector<shop::BenchMounting>& mountings);
/// An order of so many lines with worked-out prices: 3 belts of 30 mm each.
OrderPaper order(int lines);

/// The pages of a PDF as pdftoppm sees them, in shades of grey.
std::vector<QImage> pages(const QByteArray& pdf, int dpi);
/// The words of a PDF as pdftotext finds them, laid out.
QString words(const QByteArray& pdf);
/// Every Code 128 text that the zbar reader finds.
std::vector<std::string> codesOn(const QImage& page);
/// Where ink is, in millimetres.
QRectF inked(const QImage& page, int dpi);

} // namespace riband::ui::example
