#pragma once

#include "core/belt/reader.h"
#include "ui/drawing/route_picture.h"

#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <vector>

namespace riband::ui {

/// A belt that exists, as it is listed.
struct BeltRow {
    belt::Belt belt; ///< as the shop has it, else of the usual construction
    std::vector<QString> cells;
    bool inStock;
    bool reachable; ///< the drive can be set to it
    RoutePicture picture;
};

/// A field of the question that something is the matter with.
enum class DriveField {
    None,
    Profile,
    First,
    Second,
    Centre,
    Range,
    Belt,
    Width,
    Power,
    Speed,
    Service,
    Pulleys,
    Along,
    Reach
};

/// What can be told of a drive. Either `open` says what is still to be typed or put right, or the rest holds.
struct DriveAnswer {
    QString open;
    bool wrong = false; ///< what was typed can't be; else it is only not enough yet
    DriveField field = DriveField::None;
    int row = -1; ///< of the pulleys; -1: none
    QString exact;
    QStringList warnings, notes;
    std::vector<QString> headings; ///< of the belts
    std::vector<BeltRow> belts;
    std::optional<RoutePicture> picture;
    bool stockRead = true; ///< else what is here is still being read
    const belt::Profile* profile = nullptr;
    std::optional<Extent> width;
};

/// What the shop could give of each belt of a profile (shop::cuttable); nullptr while it is being read.
using StockOf = std::function<const std::vector<belt::drive::Stocked>*(const std::string& profile)>;

/// Two pulleys as they were typed: nothing is read yet.
struct TwoQuestion {
    QString profile, first, second, centre, range, belt, width, power, speed, service;
};
DriveAnswer answerTo(const TwoQuestion& question, const belt::Tables& tables, const StockOf& stock);

/// A layout as it was typed.
struct ManyQuestion {
    struct Row {
        QString x, y, size;
        bool back = false;
        bool isEmpty() const {
            return x.trimmed().isEmpty() && y.trimmed().isEmpty() && size.trimmed().isEmpty();
        }
    };
    QString profile, width;
    std::vector<Row> rows;            ///< empty ones are left out
    std::optional<std::size_t> mover; ///< row of the pulley that can be set
    QString along, reach;             ///< degrees counter-clockwise from x; mm on, or "-back +on"
};
DriveAnswer answerTo(const ManyQuestion& question, const belt::Tables& tables, const StockOf& stock);

} // namespace riband::ui
