#pragma once

#include "core/shop/shop.h"

#include <QString>

namespace riband::app {

/// The time of the computer, for those who may not ask for it themselves.
Moment presentMoment();

/// A shop that a command has opened. Who acts is the person with these initials, the first of the shop if
/// none are given.
class OpenShop {
public:
    /// Throws StoreError; BadInput if nobody has these initials.
    OpenShop(const QString& file, store::Connection::Mode mode, const QString& initials = {});
    OpenShop(const OpenShop&) = delete;
    OpenShop& operator=(const OpenShop&) = delete;
    const shop::Shop& shop() const { return shop_; }
    store::Connection& connection() { return connection_; }
    const belt::Tables& tables() const { return *shop_.tables; }

private:
    store::Connection connection_;
    shop::Shop shop_;
};

} // namespace riband::app
