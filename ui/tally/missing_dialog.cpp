#include "ui/tally/missing_dialog.h"

#include "ui/desk/labels.h"
#include "ui/look/key_button.h"
#include "ui/look/look.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListWidget>
#include <QVBoxLayout>

namespace riband::ui {

MissingDialog::MissingDialog(Session& session, const QString& place,
                             const std::vector<store::StockPiece>& unseen, QWidget* parent)
    : QDialog{parent} {
    setWindowTitle(tr("Is %1 done?", "a place").arg(place));
    setWhatsThis(tr("These pieces lie here by the book, and nobody has seen them in this count. Enter closes "
                    "the count: they are missing then, and can be settled. Escape, or the next scan, goes on "
                    "counting."));
    auto* asked = label(
        tr("%n pieces were not seen and will be missing. Close?", nullptr, static_cast<int>(unseen.size())),
        "head");
    asked->setWordWrap(true);
    auto* list = new QListWidget;
    list->setAccessibleName(tr("What nobody has seen yet"));
    list->installEventFilter(this);
    const store::Catalogue catalogue{session.shop().connection};
    for (const store::StockPiece& piece : unseen)
        list->addItem(
            tr("%1 · %2", "code, belt").arg(text(piece.code), text(catalogue.at(piece.belt).designation)));
    auto* close = new KeyButton{tr("Close the count"), Qt::Key_Return, KeyButton::Rank::Likely};
    connect(close, &KeyButton::clicked, this, &QDialog::accept);
    auto* goOn = new KeyButton{tr("Count on"), Qt::Key_Escape};
    connect(goOn, &KeyButton::clicked, this, &QDialog::reject);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(2 * step);
    buttons->addWidget(goOn, 1);
    buttons->addWidget(close, 1);
    auto* column = new QVBoxLayout{this};
    column->setSpacing(3 * step);
    column->addWidget(asked);
    column->addWidget(list, 1);
    column->addLayout(buttons);
    list->setFocus();
    resize(560, 420);
}

bool MissingDialog::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    if (key->key() == Qt::Key_Enter) { // of the number pad
        accept();
        return true;
    }
    const QString typed = key->text();
    if (typed.isEmpty() || !typed.front().isPrint() || typed.front().isSpace())
        return QDialog::eventFilter(watched, event);
    begun_ = typed;
    reject();
    return true;
}

} // namespace riband::ui
