#include "ui/rack/scan_move_dialog.h"

#include "core/measure/code.h"
#include "core/shop/limits.h"
#include "core/shop/place_advice.h"
#include "core/shop/queries.h"
#include "core/shop/stock.h"
#include "core/shop/undo.h"
#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/rack/rack_words.h"
#include "ui/rack/undo_key.h"
#include "ui/words/entry_words.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCompleter>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace riband::ui {

namespace {
constexpr qsizetype MostNamed = 4; ///< at once, in figures that are read from afar
} // namespace

ScanMoveDialog::ScanMoveDialog(Session& session, std::optional<store::PieceId> marked, QWidget* parent)
    : QDialog{parent}, session_{session}, scan_{new QLineEdit}, in_hand_{label({}, "total")},
      asks_{label({}, "head")}, advice_{label({}, "remark")}, list_{new QListWidget} {
    setWindowTitle(tr("Move pieces"));
    setWhatsThis(
        tr("Scan a piece, then the place it goes to, and so on; each pair is booked at once. Scan "
           "the place first, and every piece behind it goes there. F6 takes the piece that is chosen on "
           "the Rack in the hand."));
    setMinimumSize(640, 560);
    if (marked) session_.attempt([&] { marked_ = store::Pieces{session_.shop().connection}.at(*marked); });
    if (marked_ && marked_->gone()) marked_.reset();
    buildView();
    ask();
}

void ScanMoveDialog::buildView() {
    scan_->setProperty("use", "main");
    scan_->setAccessibleName(tr("Scan a piece or a place"));
    scan_->setObjectName(QStringLiteral("scan"));
    new UndoKey{scan_};
    QStringList places;
    session_.attempt([&] {
        for (const auto& name : store::Pieces{session_.shop().connection}.places())
            places << text(name);
    });
    scan_->setCompleter(new QCompleter{places, scan_});
    connect(scan_, &QLineEdit::returnPressed, this, &ScanMoveDialog::scanned);
    for (QLabel* words : {asks_, advice_})
        words->setWordWrap(true);
    list_->setAccessibleName(tr("Moved"));
    list_->setFocusPolicy(Qt::ClickFocus);
    auto* take = new KeyButton{marked_ ? tr("Take %1 in the hand").arg(text(marked_->code))
                                       : tr("Take the chosen one in the hand"),
                               Qt::Key_F6};
    take->setEnabled(marked_.has_value());
    connect(take, &KeyButton::clicked, this, &ScanMoveDialog::takeMarked);
    auto* back = new KeyButton{tr("The last one back"), Qt::CTRL | Qt::Key_Z};
    connect(back, &KeyButton::clicked, this, &ScanMoveDialog::back);
    auto* close = new KeyButton{tr("Done"), Qt::Key_F9, KeyButton::Rank::Likely};
    connect(close, &KeyButton::clicked, this, &QDialog::accept);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(2 * step);
    column->addWidget(asks_);
    column->addWidget(in_hand_);
    column->addWidget(advice_);
    column->addWidget(scan_);
    column->addWidget(list_, 1);
    column->addWidget(take);
    column->addWidget(back);
    column->addWidget(close);
    scan_->setFocus();
}

void ScanMoveDialog::scanned() {
    const std::string typed = scan_->text().trimmed().toStdString();
    scan_->clear();
    if (typed.empty()) return;
    std::optional<store::StockPiece> piece;
    if (!session_.attempt([&] { piece = shop::scan(session_.shop(), typed).piece; })) return;
    if (piece && !piece->gone()) return pieceScanned(*piece);
    const auto code = Code::read(typed);
    if (piece)
        asks_->setText(tr("%1 is used up by the book. Count it.").arg(text(piece->code)));
    else if (code && code->kind() == CodeKind::Piece)
        asks_->setText(tr("No piece has the code “%1”. Check the label.").arg(text(code->text())));
    else
        placeScanned(typed);
}

void ScanMoveDialog::pieceScanned(const store::StockPiece& piece) {
    newPlace_.clear();
    if (place_) {
        put(piece, *place_);
        return ask();
    }
    std::erase_if(hand_, [&](const store::StockPiece& each) { return each.id == piece.id; });
    hand_.push_back(piece); // several may be taken in the hand for one place
    ask();
}

/// A new place is named twice: a label that was read wrong, or a word that was mistyped, is none.
bool ScanMoveDialog::isPlace(const std::string& place) {
    std::vector<std::string> known;
    bool can = false;
    if (!session_.attempt([&] {
            can = shop::canBePlace(session_.shop(), place);
            known = store::Pieces{session_.shop().connection}.places();
        }))
        return false;
    if (!can) {
        asks_->setText(wrongPlace(place));
        return false;
    }
    if (std::find(known.begin(), known.end(), place) != known.end() || newPlace_ == place) return true;
    newPlace_ = place;
    asks_->setText(
        tr("“%1” is no code of a piece, and no place yet. Enter it once more if it is a new place.")
            .arg(text(place)));
    return false;
}

void ScanMoveDialog::placeScanned(const std::string& place) {
    if (!isPlace(place)) return;
    newPlace_.clear();
    if (hand_.empty()) place_ = place;
    for (const store::StockPiece& piece : std::exchange(hand_, {}))
        put(piece, place);
    ask();
}

void ScanMoveDialog::put(const store::StockPiece& piece, const std::string& place) {
    if (session_.attempt([&] { shop::move(session_.shop(), piece.id, place); })) {
        list_->insertItem(0, tr("%1 to %2").arg(text(piece.code), text(place)));
        done_.push_back(piece.id);
        ++moved_;
        session_.touch();
    }
}

/// As if it had been scanned.
void ScanMoveDialog::takeMarked() {
    if (marked_) pieceScanned(*marked_);
    scan_->setFocus();
}

void ScanMoveDialog::back() {
    if (done_.empty()) return;
    if (!session_.attempt([&] { shop::undoMove(session_.shop(), done_.back()); })) return;
    done_.pop_back();
    --moved_;
    delete list_->takeItem(0);
    session_.touch();
}

void ScanMoveDialog::ask() {
    QStringList codes;
    for (const store::StockPiece& piece : hand_)
        codes << text(piece.code);
    in_hand_->setText(codes.size() > MostNamed ? tr("%1 and more: %2").arg(codes.back()).arg(codes.size() - 1)
                      : !codes.isEmpty()       ? codes.join(QLatin1Char(' '))
                      : place_                 ? text(*place_)
                                               : QStringLiteral("–"));
    asks_->setText(hand_.size() > 1 ? tr("Now scan their place, or one more piece.")
                   : !hand_.empty() ? tr("Now scan its place, or one more piece.")
                   : place_         ? tr("Scan the pieces that go there, or another place.")
                                    : tr("Scan a piece, or the place of several."));
    advice_->clear();
    if (hand_.empty()) return;
    session_.attempt([&] {
        const store::StockPiece& piece = hand_.back();
        const auto belt = store::Catalogue{session_.shop().connection}.at(piece.belt);
        advice_->setText(
            tr("%1, %2 · now at %3 · %4")
                .arg(text(belt.designation), shown(piece.extent),
                     piece.place.empty() ? tr("no place") : text(piece.place),
                     saidOf(shop::advisePlaces(session_.shop(), belt, piece.kind, piece.extent))));
    });
}

} // namespace riband::ui
