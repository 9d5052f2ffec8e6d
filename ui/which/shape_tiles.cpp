#include "ui/which/shape_tiles.h"

#include "ui/drawing/tooth.h"
#include "ui/look/key_button.h"
#include "ui/words/identify_words.h"

#include <QAbstractButton>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

namespace riband::ui {

using belt::identify::SeenShape;

namespace {

struct TileWords {
    Q_DECLARE_TR_FUNCTIONS(TileWords)
};

/// Profiles of about one pitch, so that the eye compares shapes and not sizes.
const belt::Profile* exampleOf(SeenShape shape, const belt::Tables& tables) {
    constexpr const char* names[] = {"T10", "AT10", "H8M", "S8M", "R8M", "G8M", "PL"};
    return tables.profile(names[static_cast<std::size_t>(shape)]);
}

QString shortName(SeenShape shape) {
    switch (shape) {
    case SeenShape::Trapezoid:
        return TileWords::tr("trapezoid");
    case SeenShape::WideTrapezoid:
        return TileWords::tr("broad");
    case SeenShape::HalfRound:
        return TileWords::tr("half-round");
    case SeenShape::FlatTopRound:
        return TileWords::tr("flat top");
    case SeenShape::DimpledRound:
        return TileWords::tr("dimpled");
    case SeenShape::FullRound:
        return TileWords::tr("full round");
    case SeenShape::Ribs:
        return TileWords::tr("ribs");
    }
    return {};
}

class Tile final : public QAbstractButton {
public:
    Tile(SeenShape shape, const belt::Profile& profile) : profile_{profile} {
        const int number = static_cast<int>(shape) + 1;
        key_ = keyName(QKeySequence{Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + number)});
        setText(shortName(shape));
        setAccessibleName(say(shape));
        setAccessibleDescription(key_);
        setToolTip(say(shape));
        setCheckable(true);
        setFocusPolicy(Qt::StrongFocus);
        setAttribute(Qt::WA_Hover);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
    QSize sizeHint() const override { return {78, 84}; }
    QSize minimumSizeHint() const override { return {66, 84}; }

protected:
    void paintEvent(QPaintEvent*) override {
        const Look& look = Look::current();
        QPainter painter{this};
        painter.setRenderHint(QPainter::Antialiasing);
        const bool marked = isChecked() || hasFocus();
        painter.setPen(QPen{marked ? look.cool : look.line, marked ? 2.0 : 1.0});
        painter.setBrush(isChecked() ? look.tab : underMouse() ? look.sunk : look.card);
        painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), 4, 4);
        paintTeeth(painter, QRectF{rect()}.adjusted(8, 8, -8, -42), profile_, 2, look);
        painter.setPen(look.ink);
        painter.setFont(Look::font(TextSize::Small, isChecked() ? QFont::DemiBold : QFont::Normal));
        const QRect words = rect().adjusted(4, 0, -4, -19);
        painter.drawText(words, Qt::AlignBottom | Qt::AlignHCenter,
                         painter.fontMetrics().elidedText(text(), Qt::ElideRight, words.width()));
        painter.setPen(look.ink2);
        painter.setFont(Look::font(TextSize::Least));
        painter.drawText(rect().adjusted(4, 0, -4, -5), Qt::AlignBottom | Qt::AlignHCenter, key_);
    }

private:
    belt::Profile profile_;
    QString key_;
};

} // namespace

ShapeTiles::ShapeTiles(const belt::Tables& tables, QWidget* parent) : QWidget{parent} {
    auto* row = new QHBoxLayout{this};
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    for (std::size_t i = 0; i < tiles_.size(); ++i) {
        const auto shape = static_cast<SeenShape>(i);
        tiles_[i] = new Tile{shape, *exampleOf(shape, tables)};
        connect(tiles_[i], &QAbstractButton::clicked, this, [this, i] { toggle(i); });
        row->addWidget(tiles_[i]);
    }
}

std::optional<SeenShape> ShapeTiles::shape() const { return shape_; }

void ShapeTiles::setShape(std::optional<SeenShape> shape) {
    shape_ = shape;
    for (std::size_t i = 0; i < tiles_.size(); ++i)
        tiles_[i]->setChecked(shape_ && static_cast<std::size_t>(*shape_) == i);
    emit changed();
}

void ShapeTiles::toggle(std::size_t number) {
    const auto shape = static_cast<SeenShape>(number);
    setShape(shape_ == shape ? std::nullopt : std::optional{shape});
}

void ShapeTiles::enter() {
    tiles_[static_cast<std::size_t>(shape_.value_or(SeenShape::Trapezoid))]->setFocus();
}

} // namespace riband::ui
