#pragma once

#include "core/measure/date.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>

namespace riband::store {

/// What the widths of a belt are expected to be good for, as it was fitted once (core/foresight): kept as
/// text, since only foresight knows what is in it.
struct StoredWorth {
    int form;    ///< of the text; another one than the program writes can't be read
    int version; ///< of this belt's tables, from 1; given by the store
    Moment made;
    std::int64_t orders; ///< that it was learned from
    std::string madeFor; ///< sleeve, widths, rules and limits; another text: the table is out of date
    std::string contents;
};

/// The only code that names the table `worth_table`.
class WorthTables {
public:
    explicit WorthTables(Connection& connection) : connection_{connection} {}
    std::optional<StoredWorth> of(BeltId belt) const;
    /// Replaces the belt's table by its next version; gives that. Inside the caller's transaction.
    int put(BeltId belt, const StoredWorth& table);

private:
    Connection& connection_;
};

} // namespace riband::store
