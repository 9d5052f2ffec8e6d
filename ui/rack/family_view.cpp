#include "ui/rack/family_view.h"

#include "ui/desk/labels.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QDialogButtonBox>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

namespace riband::ui {

namespace {

using Part = BandPicture::Part;
constexpr int RowHeight = 52, Indent = 28, WordsHeight = 18, Margin = 12, LeastWidth = 720;

Part partFor(const shop::FamilyAct::Part& part) {
    using store::Account;
    switch (part.account) {
    case Account::Sold:
        return Part::Belt;
    case Account::Ready:
        return Part::ShelfBelt;
    case Account::Rack:
        return Part::Kept;
    case Account::Trim:
        return Part::Trim;
    default:
        return Part::Lost;
    }
}

/// What an act took, from the blade on, and what stayed.
BandPicture pictureOf(const shop::FamilyAct& act, const std::map<store::PieceId, std::string>& codes,
                      std::int64_t scale) {
    const Extent whole = std::max(act.before, act.after);
    BandPicture picture{whole, {}, scale};
    Extent shownSum = act.after;
    for (const auto& part : act.parts) {
        shownSum = shownSum + part.extent;
        const auto code = part.piece ? codes.find(*part.piece) : codes.end();
        const QString name = code == codes.end() ? text(part.order) : text(code->second);
        const Extent each = Extent::of(part.extent.unit(), part.extent.count() / part.belts);
        for (std::int64_t belt = 0; belt < part.belts; ++belt)
            picture.strips.push_back({partFor(part), each, shownNumber(each), name});
    }
    if (!act.after.isNone()) picture.strips.push_back({Part::Kept, act.after, shownNumber(act.after), {}});
    picture.piece = std::max(whole, shownSum); // more was found than the book had
    return picture;
}

/// "3 × 20 mm"
QString widthsOf(const shop::FamilyAct::Part& part) {
    if (part.belts == 1) return shown(part.extent);
    return FamilyView::tr("%1 × %2", "belts of a width")
        .arg(part.belts)
        .arg(shown(Extent::of(part.extent.unit(), part.extent.count() / part.belts)));
}

QString wordsFor(const shop::FamilyAct& act, const std::map<store::PersonId, std::string>& people) {
    const auto who = people.find(act.person);
    QStringList words{shown(dayOf(act.at)), say(act.act)};
    if (who != people.end()) words << text(who->second);
    QStringList parts;
    for (const auto& part : act.parts)
        parts << say(part.account) + QLatin1Char(' ') + widthsOf(part) +
                     (part.order.empty() ? QString{} : QStringLiteral(" (%1)").arg(text(part.order)));
    if (!parts.isEmpty()) words << parts.join(QStringLiteral(", "));
    words << (act.after.isNone() ? FamilyView::tr("nothing left")
                                 : FamilyView::tr("%1 left").arg(shown(act.after)));
    if (!act.note.empty()) words << text(act.note);
    if (act.undoneBy) words << FamilyView::tr("undone since");
    return words.join(QStringLiteral(" · "));
}

} // namespace

FamilyView::FamilyView(QWidget* parent) : QWidget{parent} { setMinimumWidth(LeastWidth); }

QString FamilyView::sumOf(const shop::Family& family) {
    const Unit unit = family.pieces.front().piece.extent.unit();
    const auto size = [&](std::int64_t count) {
        return (count < 0 ? QStringLiteral("−") : QString{}) +
               shown(Extent::of(unit, count < 0 ? -count : count));
    };
    QStringList parts;
    for (const auto& [account, amount] : family.out)
        if (amount != 0) parts << QStringLiteral("%1 %2").arg(size(amount), say(account));
    parts << tr("%1 here").arg(size(family.here));
    return tr("%1 came in = %2").arg(size(family.cameIn), parts.join(QStringLiteral(" + ")));
}

void FamilyView::show(shop::Family family, store::PieceId chosen,
                      std::map<store::PersonId, std::string> people) {
    rows_.clear();
    codes_.clear();
    scale_ = 1;
    for (const shop::FamilyPiece& piece : family.pieces) {
        codes_.emplace(piece.piece.id, piece.piece.code);
        for (const shop::FamilyAct& act : piece.acts)
            scale_ = std::max({scale_, act.before.count(), act.after.count()});
    }
    for (const shop::FamilyPiece& piece : family.pieces)
        addRows(piece, chosen, people);
    setAccessibleName(tr("Family of the piece"));
    setAccessibleDescription(sumOf(family));
    setMinimumHeight(sizeHint().height()); // the area scrolls what has no room
    update();
}

void FamilyView::addRows(const shop::FamilyPiece& piece, store::PieceId chosen,
                         const std::map<store::PersonId, std::string>& people) {
    bool first = true;
    for (const shop::FamilyAct& act : piece.acts) {
        const QString words = wordsFor(act, people);
        rows_.push_back({piece.depth, first, piece.piece.id == chosen, act.undoneBy.has_value(),
                         first ? text(piece.piece.code) + QStringLiteral(" · ") + words : words,
                         pictureOf(act, codes_, scale_)});
        first = false;
    }
}

QSize FamilyView::sizeHint() const {
    return {LeastWidth, 2 * Margin + static_cast<int>(rows_.size()) * RowHeight};
}

void FamilyView::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const Look& look = Look::current();
    painter.fillRect(rect(), look.card);
    std::size_t deepest = 0;
    for (const Row& row : rows_)
        deepest = std::max(deepest, row.depth);
    // One scale for all: the deepest still has room for a whole sleeve.
    const double room = width() - 2.0 * Margin - static_cast<double>(deepest) * Indent;
    double top = Margin;
    for (const Row& row : rows_) {
        const double left = Margin + static_cast<double>(row.depth) * Indent;
        if (row.depth > 0 && row.first) {
            painter.setPen(QPen{look.line, 2});
            painter.drawLine(QPointF{left - Indent / 2.0, top - 10}, QPointF{left - Indent / 2.0, top + 9});
            painter.drawLine(QPointF{left - Indent / 2.0, top + 9}, QPointF{left - 4, top + 9});
        }
        painter.setPen(row.chosen ? look.ink : look.ink2);
        painter.setFont(Look::font(TextSize::Remark, row.first ? QFont::DemiBold : QFont::Normal));
        const QRectF words{left, top, width() - left - Margin, WordsHeight};
        painter.drawText(
            words, Qt::AlignVCenter,
            painter.fontMetrics().elidedText(row.words, Qt::ElideRight, static_cast<int>(words.width())));
        painter.setOpacity(row.undone ? 0.45 : 1);
        paintBand(painter, {left, top + WordsHeight, room, RowHeight - WordsHeight - 8.0}, row.band, look,
                  BandSize::Small);
        painter.setOpacity(1);
        top += RowHeight;
    }
}

namespace {

/// Scrolls by the arrows, a page at a time, and to both ends.
class FamilyArea final : public QScrollArea {
public:
    FamilyArea() {
        setWidgetResizable(true);
        setFocusPolicy(Qt::StrongFocus);
        verticalScrollBar()->setSingleStep(RowHeight);
    }

protected:
    void keyPressEvent(QKeyEvent* event) override {
        QScrollBar& bar = *verticalScrollBar();
        if (event->key() == Qt::Key_Home)
            bar.setValue(bar.minimum());
        else if (event->key() == Qt::Key_End)
            bar.setValue(bar.maximum());
        else
            QScrollArea::keyPressEvent(event);
    }
};

} // namespace

FamilyDialog::FamilyDialog(const shop::Family& family, store::PieceId chosen,
                           const std::map<store::PersonId, std::string>& people, QWidget* parent)
    : QDialog{parent} {
    setWindowTitle(
        tr("All that became of %1, %2").arg(text(family.pieces.front().piece.code), text(family.belt)));
    setWhatsThis(tr("From which sleeve the piece is, and what became of that, to scale: a band for each act, "
                    "with belts, remnants and what was lost; the arrows, Page up and down, Home and End "
                    "scroll. The line below says that nothing is missing, to "
                    "the micrometre."));
    auto* view = new FamilyView;
    view->show(family, chosen, people);
    auto* area = new FamilyArea;
    area->setWidget(view);
    area->setAccessibleName(tr("Family of the piece"));
    const QString sum = FamilyView::sumOf(family);
    auto* even = family.equal() ? label(tr("✓ %1").arg(sum), "gain")
                                : label(tr("These are not equal: %1. Verify the book.").arg(sum), "danger");
    even->setObjectName(QStringLiteral("sum"));
    even->setWordWrap(true);
    auto* buttons = new QDialogButtonBox{QDialogButtonBox::Close};
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout{this};
    column->addWidget(area, 1);
    column->addWidget(even);
    column->addWidget(buttons);
    resize(1080, 640);
    area->setFocus();
}

} // namespace riband::ui
