#pragma once

#include "core/shop/preview.h"
#include "ui/desk/session.h"
#include "ui/shop/settings_part.h"

#include <atomic>
#include <memory>

class QAction;
class QCheckBox;
class QLabel;
class QProgressBar;
class QSpinBox;

namespace riband::ui {

class Entry;

/// What the suggestion goes by, and what other figures would come to: tried on an invented run of the orders
/// to be expected of the busiest belt, by a thread that can be stopped.
class AdvicePart final : public SettingsPart {
    Q_OBJECT
public:
    explicit AdvicePart(Session& session, QWidget* parent = nullptr);
    ~AdvicePart() override;
    QString title() const override { return tr("Suggestions"); }
    void show(const store::ShopSettings& settings) override;
    bool write(store::ShopSettings& settings) const override;
    bool trying() const { return stop_ != nullptr; }
    QString outcome() const;

private:
    void buildView();
    void tryOut();
    void stop();
    void show(const std::string& belt, const std::optional<shop::TrialOutcome>& outcome);

    Session& session_;
    QCheckBox* finish_;
    QSpinBox *shelf_, *remnants_;
    Entry *mounting_, *interest_, *holding_;
    QAction *try_ = nullptr, *halt_ = nullptr;
    QProgressBar* progress_;
    QLabel* outcome_;
    std::shared_ptr<std::atomic_bool> stop_; ///< of the run that is under way
};

} // namespace riband::ui
