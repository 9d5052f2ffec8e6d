#pragma once

#include "core/shop/family.h"
#include "ui/drawing/band.h"

#include <QDialog>
#include <QWidget>

#include <map>

namespace riband::ui {

/// All that became of a sleeve, to scale: a band for each act, the pieces cut from it below it and further
/// right.
class FamilyView final : public QWidget {
    Q_OBJECT
public:
    explicit FamilyView(QWidget* parent = nullptr);
    void show(shop::Family family, store::PieceId chosen, std::map<store::PersonId, std::string> people);
    QSize sizeHint() const override;
    /// "470 mm came in = 120 mm sold + 5 mm trim + 345 mm here"
    static QString sumOf(const shop::Family& family);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Row {
        std::size_t depth;
        bool first; ///< of its piece
        bool chosen, undone;
        QString words; ///< beside the band
        BandPicture band;
    };
    void addRows(const shop::FamilyPiece& piece, store::PieceId chosen,
                 const std::map<store::PersonId, std::string>& people);
    std::vector<Row> rows_;
    std::int64_t scale_ = 1;
    std::map<store::PieceId, std::string> codes_;
};

/// The view in a window of its own that scrolls by keys; below it, always to be seen, the sum that must come
/// out even.
class FamilyDialog final : public QDialog {
    Q_OBJECT
public:
    FamilyDialog(const shop::Family& family, store::PieceId chosen,
                 const std::map<store::PersonId, std::string>& people, QWidget* parent = nullptr);
};

} // namespace riband::ui
