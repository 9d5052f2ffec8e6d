#pragma once

#include "core/store/settings.h"

namespace riband::store {

/// The cutters of the shop and their shafts. One that is taken out stays for what was cut on it. The only
/// code that names the tables `cutter` and `cutter_shaft`.
class Cutters {
public:
    explicit Cutters(Connection& connection) : connection_{connection} {}
    std::vector<ShopCutter> present() const; ///< in use, the usual one first; never none
    /// Those in use from now on. Throws std::invalid_argument if there is none, or names are empty or not all
    /// different.
    void write(const std::vector<ShopCutter>& cutters);
    CutterId usual() const;
    struct Named {
        CutterId id;
        std::string name;
        bool gone;
    };
    std::vector<Named> all() const; ///< those that were taken out, too

private:
    Connection& connection_;
};

} // namespace riband::store
