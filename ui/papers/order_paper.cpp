#include "core/shop/price.h"
#include "ui/look/figures.h"
#include "ui/papers/leaves.h"
#include "ui/papers/paper_words.h"
#include "ui/papers/papers.h"
#include "ui/words/words.h"

#include <QLocale>
#include <QStringList>

namespace riband::ui {
namespace {

constexpr double moneyRoom = 110;

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString titleOf(store::OrderState state) {
    return state == store::OrderState::Quoted || state == store::OrderState::Parked ? PaperWords::tr("Quote")
                                                                                    : PaperWords::tr("Order");
}

Block headBlock(const OrderPaper& paper, const store::ShopSettings& shop) {
    const QStringList address = text(shop.address).split('\n', Qt::SkipEmptyParts);
    const double height = std::max(118.0, 34 + 17.0 * static_cast<double>(address.size()));
    return {height, [=](QPainter& painter, const QRectF& area) {
                const double half = area.width() / 2;
                QRectF right(area.left() + half, area.top(), half, 22);
                painter.setFont(paperFont(16, QFont::Bold));
                paintFitted(painter, right, Qt::AlignRight | Qt::AlignVCenter, text(shop.name));
                painter.setFont(paperFont(12));
                painter.setPen(Look::paper().ink2);
                for (const QString& line : address) {
                    right.translate(0, right.height() < 20 ? 17 : 22);
                    right.setHeight(17);
                    paintElided(painter, right, Qt::AlignRight | Qt::AlignVCenter, line);
                }
                painter.setPen(Look::paper().ink);
                const QRectF left = area.adjusted(0, 0, -half - 16, 0);
                painter.setFont(paperFont(28, QFont::Bold));
                const QString title =
                    QString{"%1 %2"}.arg(titleOf(paper.order.state), text(paper.order.code));
                paintFitted(painter, QRectF{left.left(), left.top(), left.width(), 36},
                            Qt::AlignLeft | Qt::AlignVCenter, title);
                painter.setFont(paperFont(15));
                paintElided(painter, QRectF{left.left(), left.top() + 42, left.width(), 22},
                            Qt::AlignLeft | Qt::AlignVCenter, text(paper.order.customerName));
                painter.setFont(paperFont(13));
                painter.setPen(Look::paper().ink2);
                paintElided(painter, QRectF{left.left(), left.top() + 64, left.width(), 20},
                            Qt::AlignLeft | Qt::AlignVCenter, shown(dayOf(paper.order.made)));
                if (paper.order.due)
                    paintElided(painter, QRectF{left.left(), left.top() + 84, left.width(), 20},
                                Qt::AlignLeft | Qt::AlignVCenter,
                                PaperWords::tr("needed by %1").arg(shown(*paper.order.due)));
            }};
}

/// A row of the bill: words left, an amount right.
struct Amount {
    QString words;
    Money money;
    int pixels = 13;
    QFont::Weight weight = QFont::Normal;
};

Block amountRow(const Amount& amount, const Currency& currency, double indent) {
    return {amount.pixels * 1.6, [=](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(amount.pixels, amount.weight));
                if (amount.weight == QFont::Normal) painter.setPen(Look::paper().ink2);
                paintFitted(painter, area.adjusted(indent, 0, -moneyRoom - 10, 0),
                            Qt::AlignLeft | Qt::AlignVCenter, amount.words);
                paintFigures(painter, area, Qt::AlignRight | Qt::AlignVCenter, shown(amount.money, currency));
            }};
}

Block ruleRow(double strength) {
    return {9, [strength](QPainter& painter, const QRectF& area) {
                painter.setPen(QPen{Look::paper().ink, strength});
                painter.drawLine(QPointF{area.left(), area.center().y()},
                                 QPointF{area.right(), area.center().y()});
            }};
}

/// What makes up the price of a line; parts that are nothing are left out.
std::vector<Amount> breakdown(const store::OrderLine& line) {
    const auto& price = line.price;
    const Money none = Money::minor(0);
    std::vector<Amount> parts{
        {PaperWords::tr("width, %1 in all").arg(shown(line.extent * line.quantity)), price.width}};
    if (price.discount != none) parts.push_back({PaperWords::tr("for the quantity"), price.discount});
    if (price.cutting != none)
        parts.push_back({PaperWords::tr("cutting, %1 ×").arg(line.quantity), price.cutting});
    if (price.minimum != none) parts.push_back({PaperWords::tr("least price of a line"), price.minimum});
    return parts;
}

/// What the rounding of the shop put on or took off.
Money roundingOf(const store::LinePrice& price, const store::PriceRules& rules) {
    const Money parts = price.width + price.discount + price.cutting + price.minimum;
    return rules.pricesIncludeTax ? price.total - parts : price.total - price.net - price.tax;
}

/// Parts stand left of the line's own price, so that each column adds up by itself.
Block partRow(const Amount& part, const Currency& currency) {
    return {19, [=](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(12));
                painter.setPen(Look::paper().ink2);
                paintFitted(painter, area.adjusted(24, 0, -2 * moneyRoom - 10, 0),
                            Qt::AlignLeft | Qt::AlignVCenter, part.words);
                paintFigures(painter, area.adjusted(0, 0, -moneyRoom, 0), Qt::AlignRight | Qt::AlignVCenter,
                             shown(part.money, currency));
            }};
}

/// What a customer who is quoted a price asks next.
QString waitWords(const OrderPaper& paper, std::size_t line) {
    if (line >= paper.deliveryDays.size()) return {};
    const int days = paper.deliveryDays[line];
    return days > 0 ? PaperWords::tr("not here; delivery takes about %n days", nullptr, days)
                    : PaperWords::tr("can be cut today");
}

Block waitRow(const QString& words) {
    return {19, [=](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(12));
                painter.setPen(Look::paper().ink2);
                paintFitted(painter, area.adjusted(24, 0, -moneyRoom, 0), Qt::AlignLeft | Qt::AlignVCenter,
                            words);
            }};
}

Block lineBlock(const store::OrderLine& line, const QString& designation, const store::PriceRules& rules,
                const QString& wait) {
    const QString what =
        PaperWords::tr("%1 × %2, %3").arg(line.quantity).arg(designation, shown(line.extent));
    const Money price = rules.pricesIncludeTax ? line.price.total : line.price.net;
    std::vector<Block> rows{amountRow({what, price, 15, QFont::DemiBold}, rules.currency, 0)};
    std::vector<Amount> parts = breakdown(line);
    if (rules.pricesIncludeTax && roundingOf(line.price, rules) != Money::minor(0))
        parts.push_back({PaperWords::tr("rounding"), roundingOf(line.price, rules)});
    if (parts.size() > 1)
        for (const Amount& part : parts)
            rows.push_back(partRow(part, rules.currency));
    if (!wait.isEmpty()) rows.push_back(waitRow(wait));
    rows.push_back(ruleRow(.4));
    return stacked(std::move(rows));
}

QString taxWords(const store::PriceRules& rules) {
    const auto permille = rules.tax.count();
    const QString percent =
        QLocale{}.toString(static_cast<double>(permille) / 10, 'f', permille % 10 ? 1 : 0);
    return rules.pricesIncludeTax ? PaperWords::tr("of this tax, %1 %").arg(percent)
                                  : PaperWords::tr("tax, %1 %").arg(percent);
}

std::vector<Amount> totals(const OrderPaper& paper, const store::PriceRules& rules) {
    std::vector<store::LinePrice> prices;
    for (const auto& line : paper.order.lines)
        prices.push_back(line.price);
    const store::LinePrice sum = shop::sumOf(prices);
    const Amount total{PaperWords::tr("Total, %1").arg(text(std::string{rules.currency.code()})), sum.total,
                       24, QFont::Bold};
    const Amount net{PaperWords::tr("net"), sum.net, 14}, tax{taxWords(rules), sum.tax, 14};
    if (rules.pricesIncludeTax) return {total, tax, net};
    std::vector<Amount> rows{net, tax};
    if (roundingOf(sum, rules) != Money::minor(0))
        rows.push_back({PaperWords::tr("rounding"), roundingOf(sum, rules), 14});
    rows.push_back(total);
    return rows;
}

Block totalsBlock(const OrderPaper& paper, const store::PriceRules& rules, double width) {
    std::vector<Block> rows;
    for (const Amount& amount : totals(paper, rules))
        rows.push_back(amountRow(amount, rules.currency, width / 2));
    return stacked(std::move(rows));
}

Block wordsBlock(const QString& words, double width) {
    const QFont font = paperFont(13);
    return {wrappedHeight(font, words, width) + 16, [=](QPainter& painter, const QRectF& area) {
                painter.setFont(font);
                paintWrapped(painter, area.adjusted(0, 8, 0, 0), words);
            }};
}

QString closingWords(const OrderPaper& paper) {
    if (paper.order.state == store::OrderState::Quoted)
        return PaperWords::tr("Belts are cut to width when ordered. Nothing is reserved by a quote.");
    return paper.allFromShelf ? PaperWords::tr("Ready belts from the shelf.")
                              : PaperWords::tr("Belts are cut to width for this order.");
}

Block codeBlock(const std::string& code) {
    return {62, [code](QPainter& painter, const QRectF& area) {
                paintCode128(painter, {area.left(), area.top() + 10, 220, 42}, code);
            }};
}

} // namespace

int paintOrder(QPagedPaintDevice& device, const OrderPaper& paper, const store::ShopSettings& shop) {
    const double width = leafWidth(device);
    std::vector<Block> blocks{headBlock(paper, shop), ruleRow(1.2)};
    for (std::size_t i = 0; i < paper.order.lines.size(); ++i) {
        const auto& line = paper.order.lines[i];
        const QString designation =
            i < paper.designations.size() ? text(paper.designations[i]) : text(line.said);
        blocks.push_back(lineBlock(line, designation, shop.prices, waitWords(paper, i)));
    }
    blocks.push_back(totalsBlock(paper, shop.prices, width));
    if (!paper.order.note.empty()) blocks.push_back(wordsBlock(text(paper.order.note), width));
    blocks.push_back(wordsBlock(closingWords(paper), width));
    blocks.push_back(codeBlock(paper.order.code));
    const QString foot =
        QString{"%1 · %2 %3"}.arg(text(shop.name), titleOf(paper.order.state), text(paper.order.code));
    return paintLeaves(device, blocks, foot);
}

} // namespace riband::ui
