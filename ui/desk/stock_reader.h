#pragma once

#include "core/belt/drive/choices.h"
#include "ui/desk/session.h"

#include <map>
#include <set>

namespace riband::ui {

/// What the shop could give of each belt of a profile (shop::cuttable), read on a connection and a thread of
/// its own, so that no window waits for it. Kept until the shop changes. A shop that lives in memory is read
/// at once.
class StockReader final : public QObject {
    Q_OBJECT
public:
    using Stock = std::vector<belt::drive::Stocked>;
    explicit StockReader(Session& session, QObject* parent = nullptr);

    /// nullptr while it is being read: `read` tells when it is there.
    const Stock* of(const std::string& profile);
    bool busy() const { return !reading_.empty(); }
    /// What was read may be old.
    void forget();

signals:
    void read();

private:
    void begin(const std::string& profile);
    void finish(const std::string& profile, Stock stock);

    Session& session_;
    std::map<std::string, Stock> known_;
    std::set<std::string> reading_;
    int asked_ = 0; ///< counts what was forgotten: what comes later from before is dropped
};

} // namespace riband::ui
