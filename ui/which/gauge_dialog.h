#pragma once

#include "core/belt/tables.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QScrollArea;
class QStackedWidget;

namespace riband::ui {

class CardOutline;
class GaugeView;
class KeyButton;

/// The gauge on the screen: teeth and pitch rules at true size, to hold the belt against. Until this screen's
/// scale is known it is set first, against a bank card; F6 sets it anew.
class GaugeDialog final : public QDialog {
    Q_OBJECT
public:
    /// `first`: names of the profiles that stand on top, likeliest first; the others follow by family.
    GaugeDialog(const belt::Tables& tables, const std::vector<std::string>& first, QWidget* parent = nullptr);
    bool calibrating() const;
    CardOutline& outline() { return *outline_; }
    GaugeView& view() { return *view_; }

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void buildView();
    QWidget* buildGauge();
    QWidget* buildCalibration();
    void calibrate();
    void keepScale();
    void showGauge();
    void find(const QString& typed);

    std::vector<const belt::Profile*> profiles_;
    QStackedWidget* stack_;
    CardOutline* outline_;
    GaugeView* view_;
    QScrollArea* scroll_;
    QLineEdit* find_;
    QLabel* about_;
    KeyButton *anew_ = nullptr, *keep_ = nullptr;
};

} // namespace riband::ui
