#pragma once

#include "core/belt/drive/choices.h"
#include "ui/desk/session.h"

#include <map>

namespace riband::ui {

/// What of a belt is in the shop now; read once a profile until it is forgotten.
class StockHere {
public:
    explicit StockHere(Session& session) : session_{session} {}
    void forget() { known_.clear(); }
    /// "up to 380 mm here", "6 ribs ready"; "" if there is nothing. Any construction of the belt counts.
    QString of(const belt::Belt& belt);

private:
    const std::vector<belt::drive::Stocked>& ofProfile(const std::string& profile);
    Session& session_;
    std::map<std::string, std::vector<belt::drive::Stocked>> known_;
};

} // namespace riband::ui
