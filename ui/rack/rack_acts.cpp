#include "ui/rack/rack_page.h"

#include "core/shop/family.h"
#include "core/shop/people.h"
#include "core/shop/stock.h"
#include "core/shop/undo.h"
#include "ui/desk/list_file.h"
#include "ui/desk/paper_tray.h"
#include "ui/rack/ageing_dialog.h"
#include "ui/rack/expected_dialog.h"
#include "ui/rack/family_view.h"
#include "ui/rack/goods_in_dialog.h"
#include "ui/rack/life_model.h"
#include "ui/rack/piece_view.h"
#include "ui/rack/places_part.h"
#include "ui/rack/rack_filter.h"
#include "ui/rack/rack_words.h"
#include "ui/rack/scan_move_dialog.h"
#include "ui/rack/scrap_dialog.h"
#include "ui/rack/sheet_dialog.h"
#include "ui/rack/split_dialog.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QMessageBox>

namespace riband::ui {

void RackPage::goodsIn() {
    GoodsInDialog dialog{session_, this};
    dialog.exec();
    if (!dialog.received().empty()) showPiece(dialog.received().back());
}

void RackPage::showExpected() { ExpectedDialog{session_, this}.exec(); }

void RackPage::movePieces() {
    ScanMoveDialog dialog{session_, current() ? std::optional{current()->piece.id} : std::nullopt, this};
    dialog.exec();
    if (dialog.moved() > 0) session_.tell(tr("Pieces moved: %1.").arg(dialog.moved()));
}

std::optional<shop::Spare> RackPage::spareOf(const store::StockPiece& piece) {
    std::optional<shop::Spare> spare;
    session_.attempt([&] { spare = shop::spareOf(session_.shop(), piece); });
    return spare;
}

void RackPage::scrapPiece() {
    if (!current()) return;
    const store::StockPiece piece = current()->piece;
    const auto spare = spareOf(piece);
    if (!spare) return;
    ScrapDialog dialog{piece, *spare, this};
    do {
        if (dialog.exec() != QDialog::Accepted) return;
    } while (!session_.attempt([&] {
        shop::scrap(session_.shop(), piece.id, dialog.extent(), dialog.reason(), dialog.note(),
                    dialog.grams());
    }));
    session_.touch();
    const QString done = tr("%1 of %2 is scrapped.").arg(shown(dialog.extent()), text(piece.code));
    session_.tell(dialog.extent() < piece.extent
                      ? done
                      : done + QLatin1Char(' ') +
                            tr("It is gone from the list; its code finds it, and Ctrl+Z there undoes it."));
}

void RackPage::splitPiece() {
    if (!current()) return;
    const store::StockPiece piece = current()->piece;
    const auto spare = spareOf(piece);
    if (!spare) return;
    SplitDialog dialog{piece, session_.settings().rulesFor(piece.extent.unit()).stub, *spare, this};
    std::optional<store::PieceId> made;
    do {
        if (dialog.exec() != QDialog::Accepted) return;
    } while (!session_.attempt(
        [&] { made = shop::split(session_.shop(), piece.id, *dialog.apart(), dialog.place()); }));
    session_.touch();
    session_.attempt([&] {
        const QString file = PaperTray{session_}.labels({piece.id, *made});
        session_.tell(tr("%1 is divided; both labels are in %2.").arg(text(piece.code), file));
    });
    showPiece(*made);
}

void RackPage::labelPiece() {
    if (!current()) return;
    session_.attempt([&] {
        const QString file = PaperTray{session_}.labels({current()->piece.id});
        session_.tell(tr("The label is in %1. Ctrl+P prints it.").arg(file));
    });
}

void RackPage::printLabel() {
    if (!current()) return;
    const store::PieceId piece = current()->piece.id;
    session_.attempt([&] {
        const PaperTray tray{session_};
        tray.labels({piece});
        tray.printLabels({piece}, this);
    });
}

/// The chosen row of its life, or the last: asked for first, since a counter-entry stays in the book, too.
void RackPage::undoAct() {
    const int row = view_->chosenRow();
    if (!current() || row < 0) return;
    const store::PieceId piece = current()->piece.id;
    const LifeModel::Act act = view_->life().actAt(row);
    const auto cell = [&](int column) { return view_->life().index(row, column).data().toString(); };
    const QString done = QStringList{cell(LifeModel::ActColumn), cell(LifeModel::ChangeColumn)}
                             .join(QLatin1Char(' '))
                             .trimmed();
    const QString what = tr("%1, %2, %3", "day, act with change, where")
                             .arg(cell(LifeModel::DayColumn), done, cell(LifeModel::WhereColumn));
    if (!act.movement && !act.move && !act.inspection)
        return session_.tell(tr("This moved nothing: there is nothing to undo."));
    if (act.movement) {
        std::optional<shop::Refusal> why;
        store::Act kind{};
        if (!session_.attempt([&] {
                why = shop::whyNotUndone(session_.shop(), *act.movement);
                kind = store::Ledger{session_.shop().connection}.at(*act.movement).movement.about().act;
            }))
            return;
        if (why) return session_.warn(tr("This stays: %1. %2", "act, why").arg(what, whyItStays(kind, *why)));
    }
    QMessageBox ask{QMessageBox::Question, tr("Undo"),
                    tr("Undo this? %1. The book keeps both, the act and what undoes it.").arg(what),
                    QMessageBox::Ok | QMessageBox::Cancel, this};
    ask.setDefaultButton(QMessageBox::Ok);
    if (ask.exec() != QMessageBox::Ok) return;
    if (!session_.attempt([&] {
            if (act.movement)
                shop::undo(session_.shop(), *act.movement);
            else if (act.move)
                shop::undoMove(session_.shop(), piece);
            else
                shop::undoInspection(session_.shop(), piece);
        }))
        return;
    session_.touch();
    session_.tell(tr("Undone."));
}

void RackPage::showFamily() {
    if (!current()) return;
    std::optional<shop::Family> family;
    std::map<store::PersonId, std::string> people;
    const store::PieceId piece = current()->piece.id;
    if (!session_.attempt([&] {
            family = shop::familyOf(session_.shop(), piece);
            people = initials();
        }))
        return;
    FamilyDialog{*family, piece, people, this}.exec();
}

void RackPage::showAgeing() { AgeingDialog{session_, this}.exec(); }

void RackPage::showPlaces() {
    if (session_.attempt([&] { shop::demandRole(session_.shop(), store::Role::StockManager); }))
        PlacesDialog{session_, this}.exec();
}

void RackPage::takeOverStock() { SheetDialog{session_, SheetDialog::For::Stock, this}.exec(); }

void RackPage::saveShownList() {
    session_.attempt([&] {
        session_.tell(tr("The list is in %1.").arg(saveList(session_, *filter_, QStringLiteral("rack"))));
    });
}

void RackPage::saveLife() {
    if (!current()) return;
    const QString name = QStringLiteral("life-") + text(current()->piece.code);
    session_.attempt(
        [&] { session_.tell(tr("The life is in %1.").arg(saveList(session_, view_->life(), name))); });
}

} // namespace riband::ui
