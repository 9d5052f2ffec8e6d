#pragma once

#include "ui/desk/session.h"
#include "ui/shop/settings_part.h"
#include "ui/shop/trial_view.h"

class QAction;
class QCheckBox;
class QSpinBox;

namespace riband::ui {

class Entry;

/// What the suggestion goes by, and what other figures would come to for the busiest belt.
class AdvicePart final : public SettingsPart {
    Q_OBJECT
public:
    explicit AdvicePart(Session& session, QWidget* parent = nullptr);
    QString title() const override { return tr("Suggestions"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;
    const TrialView& trial() const { return *trial_; }

private:
    void buildView();
    std::optional<TrialView::Ask> asked() const;

    Session& session_;
    QCheckBox* finish_;
    QSpinBox *shelf_, *atOnce_, *remnants_;
    Entry *mounting_, *interest_, *holding_;
    QAction* usual_ = nullptr;
    TrialView* trial_;
};

} // namespace riband::ui
