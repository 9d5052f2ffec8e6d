#include "ui/papers/purchase_paper.h"

#include "ui/look/figures.h"
#include "ui/papers/leaves.h"
#include "ui/papers/paper_words.h"
#include "ui/words/buying_words.h"
#include "ui/words/words.h"

#include <QPagedPaintDevice>

namespace riband::ui {
namespace {

constexpr double costRoom = 100, eachRoom = 90, sleevesRoom = 60, widthRoom = 90;

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

struct Columns {
    QRectF belt, width, sleeves, each, cost;
    explicit Columns(const QRectF& row) {
        double right = row.right();
        const auto take = [&](double room) {
            right -= room;
            return QRectF{right, row.top(), room, row.height()};
        };
        cost = take(costRoom);
        each = take(eachRoom);
        sleeves = take(sleevesRoom);
        width = take(widthRoom);
        belt = QRectF{row.left(), row.top(), right - row.left(), row.height()};
    }
};

Block headBlock(const shop::PurchaseList& list, const shop::BuyingOutlook& outlook) {
    return {
        74, [&](QPainter& painter, const QRectF& area) {
            painter.setFont(paperFont(28, QFont::Bold));
            paintFitted(painter, QRectF{area.left(), area.top(), area.width() * 0.6, 36},
                        Qt::AlignLeft | Qt::AlignVCenter, PaperWords::tr("Purchase list"));
            painter.setFont(paperFont(16, QFont::Bold));
            paintFitted(painter, QRectF{area.left() + area.width() * 0.6, area.top(), area.width() * 0.4, 36},
                        Qt::AlignRight | Qt::AlignVCenter, text(outlook.settings.name));
            painter.setFont(paperFont(13));
            painter.setPen(Look::paper().ink2);
            QString about = PaperWords::tr("%1 · service %2 · sales of %3 days")
                                .arg(shown(outlook.today), shownShare(outlook.terms.service, 1))
                                .arg(outlook.days);
            if (list.budget)
                about +=
                    PaperWords::tr(" · budget %1").arg(shown(*list.budget, outlook.settings.prices.currency));
            paintFitted(painter, QRectF{area.left(), area.top() + 42, area.width(), 20},
                        Qt::AlignLeft | Qt::AlignVCenter, about);
            painter.setPen(Look::paper().ink);
        }};
}

Block columnsBlock(const Currency& currency) {
    return {24,
            [currency](QPainter& painter, const QRectF& area) {
                const Columns at{area};
                painter.setFont(paperFont(12, QFont::DemiBold));
                const auto right = Qt::AlignRight | Qt::AlignVCenter;
                paintFitted(painter, at.belt, Qt::AlignLeft | Qt::AlignVCenter, PaperWords::tr("Belt"));
                paintFitted(painter, at.width, right, PaperWords::tr("Sleeve"));
                paintFitted(painter, at.sleeves, right, PaperWords::tr("Sleeves"));
                paintFitted(painter, at.each, right, PaperWords::tr("Each"));
                paintFitted(painter, at.cost, right,
                            PaperWords::tr("Cost %1").arg(text(std::string{currency.code()})));
                painter.setPen(QPen{Look::paper().ink, 1.2});
                painter.drawLine(area.bottomLeft(), area.bottomRight());
            },
            true};
}

Block lineBlock(const shop::PurchaseLine& line, const shop::BuyingOutlook& outlook, double width) {
    const QString why = whyOf(line, outlook).join(QLatin1Char(' ')) + QLatin1Char(' ') +
                        PaperWords::tr("Sales: %1.").arg(forecastOf(line, outlook));
    const double indent = 16;
    const double height = wrappedHeight(paperFont(11), why, width - indent);
    return {30 + height + 6, [=, &line, &outlook](QPainter& painter, const QRectF& area) {
                const Currency& currency = outlook.settings.prices.currency;
                const Columns at{QRectF{area.left(), area.top() + 4, area.width(), 24}};
                const auto right = Qt::AlignRight | Qt::AlignVCenter;
                painter.setFont(paperFont(14, QFont::DemiBold));
                paintFitted(painter, at.belt, Qt::AlignLeft | Qt::AlignVCenter,
                            text(outlook.belts[line.belt].belt.designation));
                painter.setFont(paperFont(14));
                paintFitted(painter, at.width, right, shown(line.width));
                paintFitted(painter, at.sleeves, right, QString::number(line.sleeves));
                if (line.costKnown()) {
                    paintFigures(painter, at.each, right, shown(line.each, currency));
                    paintFigures(painter, at.cost, right, shown(line.cost(), currency));
                }
                painter.setFont(paperFont(11));
                painter.setPen(Look::paper().ink2);
                paintWrapped(painter,
                             QRectF{area.left() + indent, area.top() + 29, area.width() - indent, height},
                             why);
                painter.setPen(QPen{Look::paper().line, 0.8});
                painter.drawLine(area.bottomLeft(), area.bottomRight());
                painter.setPen(Look::paper().ink);
            }};
}

Block sumBlock(const shop::PurchaseList& list, const Currency& currency) {
    return {34, [&list, currency](QPainter& painter, const QRectF& area) {
                const Columns at{area};
                painter.setFont(paperFont(16, QFont::Bold));
                paintFitted(painter, at.belt, Qt::AlignLeft | Qt::AlignVCenter, PaperWords::tr("In all"));
                paintFigures(painter, at.cost, Qt::AlignRight | Qt::AlignVCenter, shown(list.cost, currency));
            }};
}

Block wordsBlock(const QString& words, int pixels, QFont::Weight weight, double width, bool heading = false) {
    const double height = wrappedHeight(paperFont(pixels, weight), words, width);
    return {height + 8,
            [=](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(pixels, weight));
                paintWrapped(painter, QRectF{area.left(), area.top() + 4, area.width(), height}, words);
            },
            heading};
}

void addUnkept(std::vector<Block>& blocks, const shop::PurchaseList& list, const shop::BuyingOutlook& outlook,
               double width) {
    bool any = false;
    for (const shop::PurchaseLine& line : list.lines) {
        const shop::BuyingBelt& belt = outlook.belts[line.belt];
        if (line.advice.keeping == foresight::Keeping::Keep || belt.buying.sleeves == 0) continue;
        if (!any)
            blocks.push_back(wordsBlock(PaperWords::tr("Not to be kept as sleeves any more"), 16, QFont::Bold,
                                        width, true));
        any = true;
        blocks.push_back(wordsBlock(text(belt.belt.designation) + QStringLiteral(": ") +
                                        whyOf(line, outlook).join(QLatin1Char(' ')),
                                    12, QFont::Normal, width));
    }
}

} // namespace

int paintPurchaseList(QPagedPaintDevice& device, const shop::PurchaseList& list,
                      const shop::BuyingOutlook& outlook) {
    const double width = leafWidth(device);
    const Currency currency = outlook.settings.prices.currency;
    std::vector<Block> blocks{headBlock(list, outlook), columnsBlock(currency)};
    for (const shop::PurchaseLine& line : list.lines)
        if (line.sleeves > 0) blocks.push_back(lineBlock(line, outlook, width));
    blocks.push_back(sumBlock(list, currency));
    addUnkept(blocks, list, outlook, width);
    return paintLeaves(device, blocks, PaperWords::tr("Purchase list of %1").arg(shown(outlook.today)));
}

} // namespace riband::ui
