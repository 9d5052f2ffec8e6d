#pragma once

#include "core/belt/identify/figures.h"
#include "core/belt/tables.h"

#include <QWidget>

#include <array>

class QAbstractButton;

namespace riband::ui {

/// The tooth shapes to choose from, each drawn true to the tables after one profile of its kind. A second
/// press takes the choice back.
class ShapeTiles final : public QWidget {
    Q_OBJECT
public:
    explicit ShapeTiles(const belt::Tables& tables, QWidget* parent = nullptr);
    std::optional<belt::identify::SeenShape> shape() const;
    void setShape(std::optional<belt::identify::SeenShape> shape);
    void toggle(std::size_t number); ///< from 0
    void enter();

signals:
    void changed();

private:
    std::array<QAbstractButton*, belt::identify::shapeCount> tiles_{};
    std::optional<belt::identify::SeenShape> shape_;
};

} // namespace riband::ui
