#include "core/belt/reader.h"
#include "ui/papers/mounting_block.h"
#include "ui/papers/paper_words.h"
#include "ui/papers/papers.h"
#include "ui/papers/setup_block.h"
#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {
namespace {

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QString customerOf(const store::Order& order) {
    return order.customerName.empty() ? PaperWords::tr("walk-in") : text(order.customerName);
}

bool isJoint(const TicketPaper& paper) { return paper.orders.size() > 1; }

QString whoLine(const std::vector<store::Order>& orders) {
    if (orders.empty()) return PaperWords::tr("for the shelf");
    if (orders.size() == 1)
        return PaperWords::tr("order %1").arg(text(orders.front().code)) + QStringLiteral(" · ") +
               customerOf(orders.front());
    QStringList codes;
    for (const store::Order& order : orders)
        codes << text(order.code);
    return PaperWords::tr("cut together for %1", "orders").arg(codes.join(QStringLiteral(", ")));
}

QString neededBy(const store::Order& order) { return PaperWords::tr("needed by %1").arg(shown(*order.due)); }

QString whenLine(const TicketPaper& paper) {
    QStringList parts{PaperWords::tr("made %1").arg(shown(paper.ticket.made))};
    if (paper.orders.size() == 1 && paper.orders.front().due) parts << neededBy(paper.orders.front());
    return parts.join(" · ");
}

Block headBlock(const TicketPaper& paper) {
    return {100, [paper](QPainter& painter, const QRectF& area) {
                const QRectF left = area.adjusted(0, 0, -250, 0);
                painter.setFont(paperFont(13));
                paintElided(painter, left, Qt::AlignLeft | Qt::AlignTop, PaperWords::tr("Cutting ticket"));
                painter.setFont(paperFont(32, QFont::Bold));
                paintFitted(painter, left.adjusted(0, 16, 0, -44), Qt::AlignLeft | Qt::AlignVCenter,
                            text(paper.ticket.code));
                painter.setFont(paperFont(15, QFont::DemiBold));
                paintFitted(painter, left.adjusted(0, 58, 0, -22), Qt::AlignLeft | Qt::AlignVCenter,
                            whoLine(paper.orders));
                painter.setFont(paperFont(13));
                paintFitted(painter, left.adjusted(0, 78, 0, -2), Qt::AlignLeft | Qt::AlignVCenter,
                            whenLine(paper));
                const QRectF code(area.right() - 240, area.top() + 2, 240, 56);
                paintCode128(painter, code, paper.ticket.code);
                painter.setFont(paperFont(13));
                paintElided(painter, QRectF{code.left(), code.bottom() + 2, code.width(), 20},
                            Qt::AlignCenter, text(paper.ticket.code));
            }};
}

std::int64_t wanted(const store::OrderLine& line) { return line.quantity - line.cancelled; }

/// What the line is a piece of, as far as the mountings of this ticket tell.
QString beltOf(const store::OrderLine& line, const TicketPaper& paper) {
    for (const auto& mounting : paper.mountings)
        if (mounting.belt.id == line.belt) return text(mounting.belt.designation);
    return text(line.said);
}

/// Whether the words as typed still say what the line is: it may have been changed since.
bool saysStill(const store::OrderLine& line, const belt::Tables& tables) {
    const belt::Understanding understood = belt::understand(line.said, tables);
    const auto& readings = understood.readings;
    return readings.empty() || std::any_of(readings.begin(), readings.end(), [&](const belt::Reading& each) {
               return each.quantity == wanted(line) && (!each.width || *each.width == line.extent);
           });
}

QString remarkOn(const store::OrderLine& line, const belt::Tables& tables) {
    if (line.said.empty()) return {};
    return saysStill(line, tables) ? PaperWords::tr("said: %1").arg(text(line.said))
                                   : PaperWords::tr("changed since it was ordered");
}

/// Belts of the line that are cut by this ticket.
std::int64_t cutHere(const store::OrderLine& line, const TicketPaper& paper) {
    std::int64_t belts = 0;
    for (const auto& mounting : paper.mountings)
        for (const auto& cut : mounting.mounting.cuts)
            if (cut.line == line.id) belts += cut.count;
    return belts;
}

/// "3 × H8M 1200, 30 mm"; where the rest of the line is cut elsewhere or was cut before, "2 of 3 × ...".
QString whatOf(const store::OrderLine& line, std::int64_t belts, const QString& belt) {
    const QString count = belts == wanted(line)
                              ? QString::number(belts)
                              : PaperWords::tr("%1 of %2", "belts").arg(belts).arg(wanted(line));
    return PaperWords::tr("%1 × %2, %3").arg(count, belt, shown(line.extent));
}

Block lineBlock(int position, const QString& what, const QString& remark) {
    return {24, [=](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(12));
                painter.setPen(Look::paper().ink2);
                paintElided(painter, area, Qt::AlignLeft | Qt::AlignVCenter, QString::number(position));
                painter.setPen(Look::paper().ink);
                painter.setFont(paperFont(15, QFont::DemiBold));
                paintFitted(painter, area.adjusted(28, 0, -230, 0), Qt::AlignLeft | Qt::AlignVCenter, what);
                painter.setFont(paperFont(12));
                painter.setPen(Look::paper().ink2);
                paintElided(painter, area.adjusted(area.width() - 220, 0, 0, 0),
                            Qt::AlignRight | Qt::AlignVCenter, remark);
            }};
}

Block headingBlock(const QString& words) {
    return {30,
            [words](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(14, QFont::DemiBold));
                paintElided(painter, area.adjusted(0, 0, 0, -4), Qt::AlignLeft | Qt::AlignBottom, words);
            },
            true};
}

Block tickBlock(const QString& words) {
    return {24, [words](QPainter& painter, const QRectF& area) {
                painter.setFont(paperFont(14));
                paintTick(painter, area, words);
            }};
}

Block noteBlock(const QString& note, double width) {
    const QFont font = paperFont(14);
    return {wrappedHeight(font, note, width) + 8, [=](QPainter& painter, const QRectF& area) {
                painter.setFont(font);
                paintWrapped(painter, area.adjusted(0, 4, 0, 0), note);
            }};
}

QString orderHeading(const store::Order& order) {
    const QString who =
        PaperWords::tr("order %1").arg(text(order.code)) + QStringLiteral(" · ") + customerOf(order);
    return order.due ? who + QStringLiteral(" · ") + neededBy(order) : who;
}

/// The lines of the order that are cut here, and what it says besides; its heading where there are others.
void addOrder(std::vector<Block>& blocks, const store::Order& order, const TicketPaper& paper,
              const belt::Tables& tables, double width) {
    if (isJoint(paper)) blocks.push_back(headingBlock(orderHeading(order)));
    for (const auto& line : order.lines) {
        const std::int64_t belts = cutHere(line, paper);
        if (wanted(line) > 0 && belts > 0)
            blocks.push_back(
                lineBlock(line.position, whatOf(line, belts, beltOf(line, paper)), remarkOn(line, tables)));
    }
    if (!order.note.empty()) blocks.push_back(noteBlock(text(order.note), width));
}

QStringList cuttersOf(const TicketPaper& paper) {
    QStringList names;
    for (const auto& mounting : paper.mountings)
        if (const QString name = text(mounting.cutter.cutter.name); !names.contains(name)) names << name;
    return names;
}

/// "Brookmill · ticket T4K-9 · Bench cutter"
QString footOf(const TicketPaper& paper, const store::ShopSettings& shop) {
    QStringList parts{text(shop.name), PaperWords::tr("ticket %1").arg(text(paper.ticket.code))};
    if (!paper.mountings.empty()) parts << cuttersOf(paper).join(QStringLiteral(", "));
    return parts.join(QStringLiteral(" · "));
}

} // namespace

int paintTicket(QPagedPaintDevice& device, const TicketPaper& paper, const store::ShopSettings& shop,
                const belt::Tables& tables) {
    const double width = leafWidth(device);
    std::vector<Block> blocks{headBlock(paper)};
    for (const store::Order& order : paper.orders)
        addOrder(blocks, order, paper, tables, width);
    if (!paper.fromShelf.empty())
        blocks.push_back(headingBlock(PaperWords::tr("From the shelf, no cutting")));
    for (const auto& taken : paper.fromShelf)
        blocks.push_back(tickBlock(text(taken)));
    if (!paper.mountings.empty()) blocks.push_back(cautionsBlock(width));
    for (std::size_t i = 0; i < paper.mountings.size(); ++i)
        blocks.push_back(mountingBlock(paper.mountings[i], paper.orders, i + 1, paper.mountings.size(), shop,
                                       tables, width));
    return paintLeaves(device, blocks, footOf(paper, shop));
}

} // namespace riband::ui
