#pragma once

#include "core/belt/tables.h"

#include <QWidget>

#include <vector>

namespace riband::ui {

/// Rows of true teeth with their pitch rules, at the scale of the screen, to hold a belt against. Black on
/// white as the printed card, in any shade.
class GaugeView final : public QWidget {
    Q_OBJECT
public:
    explicit GaugeView(QWidget* parent = nullptr);
    void show(const std::vector<const belt::Profile*>& profiles, double pixelsPerMillimetre);
    double scale() const { return scale_; }
    /// Where the row of a profile begins, in pixels; -1 if it is not shown.
    double topOf(const std::string& profile) const;
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void layOut();
    struct Row {
        const belt::Profile* profile;
        int pitches;
        double top;
    };
    std::vector<const belt::Profile*> profiles_;
    std::vector<Row> rows_;
    double scale_ = 96 / 25.4;
    double height_ = 0;
};

} // namespace riband::ui
