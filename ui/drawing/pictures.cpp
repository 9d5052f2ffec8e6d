#include "ui/drawing/pictures.h"

#include "core/shop/reason.h"
#include "ui/words/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace riband::ui {

namespace {

using Part = BandPicture::Part;

struct PictureWords {
    Q_DECLARE_TR_FUNCTIONS(PictureWords)
};

/// Draws a mounting as it is cut, from the blade on.
class Drawing {
public:
    Drawing(Extent piece, Extent trim, Extent kerf) : picture_{piece, {}, 0}, kerf_{kerf} {
        if (!trim.isNone()) add(Part::Trim, trim, {}, {});
    }
    void belts(Part part, Extent extent, std::int64_t count) {
        for (std::int64_t i = 0; i < count; ++i) {
            ++cuts_;
            const QString remark = part == Part::ShelfBelt ? PictureWords::tr("to the shelf")
                                                           : PictureWords::tr("cut %1").arg(cuts_);
            add(part, extent, shownNumber(extent), remark);
            if (!kerf_.isNone()) add(Part::Lost, kerf_, {}, {});
        }
    }
    BandPicture rest(Extent left, bool kept) {
        if (!left.isNone())
            add(kept ? Part::Kept : Part::Lost, left, shownNumber(left),
                kept ? PictureWords::tr("stays") : PictureWords::tr("lost"));
        return picture_;
    }

private:
    void add(Part part, Extent extent, const QString& name, const QString& remark) {
        picture_.strips.push_back({part, extent, name, remark});
    }
    BandPicture picture_;
    Extent kerf_;
    std::size_t cuts_ = 0;
};

} // namespace

BandPicture pictureOf(const cutting::Problem& problem, const shop::Way& way, std::size_t number) {
    const cutting::Mounting& mounting = way.plan.mountings[number];
    struct Belts {
        Part part;
        Extent extent;
        std::int64_t count;
    };
    std::vector<Belts> belts;
    for (const auto& cut : mounting.cuts)
        belts.push_back({Part::Belt, problem.lines[cut.line].extent, cut.count});
    if (number < way.forShelf.size())
        for (const Extent extent : way.forShelf[number])
            belts.push_back({Part::ShelfBelt, extent, 1});
    std::stable_sort(belts.begin(), belts.end(),
                     [](const Belts& a, const Belts& b) { return a.extent < b.extent; });
    Drawing drawing{problem.pieces[mounting.piece].extent, problem.rules.trim, problem.rules.kerf};
    for (const Belts& each : belts)
        drawing.belts(each.part, each.extent, each.count);
    const Extent left = way.left(number, problem.rules);
    return drawing.rest(left, shop::goesBack(problem, left));
}

BandPicture pictureOf(const shop::BenchMounting& shown) {
    const store::TicketMounting& mounting = shown.mounting;
    // The piece as it lies there; what other tickets take of it comes after and stays with the rest here.
    Drawing drawing{shown.piece.extent, mounting.trim, mounting.kerf};
    Extent rest = shown.piece.extent - mounting.trim;
    for (const auto& cut : mounting.cuts) {
        drawing.belts(cut.line ? Part::Belt : Part::ShelfBelt, cut.extent, cut.count);
        rest = rest - (cut.extent + mounting.kerf) * cut.count;
    }
    return drawing.rest(rest, mounting.restKept);
}

BandPicture pictureOf(const store::StockPiece& piece) {
    BandPicture picture{piece.extent, {}, 0};
    if (piece.reserved.isNone())
        picture.strips.push_back({Part::Kept, piece.extent, shown(piece.extent), {}});
    else {
        picture.strips.push_back(
            {Part::Belt, piece.reserved, shownNumber(piece.reserved), PictureWords::tr("promised")});
        const Extent rest = piece.extent - piece.reserved;
        if (!rest.isNone())
            picture.strips.push_back({Part::Kept, rest, shownNumber(rest), PictureWords::tr("free")});
    }
    return picture;
}

} // namespace riband::ui
