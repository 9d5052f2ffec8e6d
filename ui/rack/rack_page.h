#pragma once

#include "core/shop/stock.h"
#include "ui/desk/page.h"
#include "ui/desk/reading.h"

class QAction;
class QLabel;
class QLayout;
class QLineEdit;
class QTableView;

namespace riband::ui {

class PieceView;
class RackFilter;
class RackModel;
class RackWorths;
struct PieceUpkeep;

/// Every piece on the rack: found as one types, its life, and what one does with it.
class RackPage final : public Page {
    Q_OBJECT
public:
    explicit RackPage(Session& session, QWidget* parent = nullptr);

    QString title() const override { return tr("Rack"); }
    QString help() const override;
    void refresh() override;
    void typed(const QString& text) override;
    bool wantsBelt() const override { return true; }
    void takeBelt(const QString& belt) override;
    void showPiece(store::PieceId piece);
    /// Every piece shows what it is worth, as far as there is a table.
    bool weighed() const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildActions();
    void sortNext();
    void showCount();
    QAction* act(const QString& name, const QKeySequence& key, void (RackPage::*does)());
    void buildView();
    QWidget* buildList();
    void sizeColumns();
    int widestOf(int column, const QFontMetrics& words) const;
    QLayout* buildActs();
    void read();
    void setRows(std::vector<shop::RackRow> rows);
    void filter(const QString& words);
    std::optional<shop::RackRow> goneByCode(const QString& words);
    void seePieces();
    void showWorth();
    void showCurrent();
    void choose(int proxyRow);
    const shop::RackRow* current() const;
    PieceUpkeep upkeepOf(store::PieceId piece, const std::vector<store::RecordedMovement>& life) const;
    std::map<store::PersonId, std::string> initials() const; ///< also of those who left

    // What one does with it: rack_acts.cpp; finding: rack_finding.cpp; the piece that is chosen:
    // rack_chosen.cpp; how wide the columns are: rack_columns.cpp.
    void goodsIn();
    void showExpected();
    void movePieces();
    void scrapPiece();
    std::optional<shop::Spare> spareOf(const store::StockPiece& piece);
    void splitPiece();
    void labelPiece();
    void printLabel();
    void undoAct();
    void showFamily();
    void showAgeing();
    void showPlaces();
    void takeOverStock();
    void saveShownList();
    void saveLife();

    Session& session_;
    RackModel* model_;
    RackFilter* filter_;
    QLineEdit* words_;
    QLabel* count_;
    QTableView* table_;
    PieceView* view_;
    QAction *goodsIn_ = nullptr, *expected_ = nullptr, *move_ = nullptr, *scrap_ = nullptr, *label_ = nullptr,
            *print_ = nullptr, *split_ = nullptr, *undo_ = nullptr, *family_ = nullptr, *ageing_ = nullptr,
            *takeOver_ = nullptr, *save_ = nullptr;
    Reading* reading_;
    RackWorths* worths_;
    std::optional<store::PieceId> wanted_; ///< to be shown when the rack has been read
};

} // namespace riband::ui
