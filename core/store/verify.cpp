#include "core/store/verify.h"

#include "core/store/checks.h"
#include "core/store/inner.h"

#include <sqlite3.h>

#include <array>
#include <stdexcept>

namespace riband::store {
namespace {

/// One view of the shop for all checks, while others go on writing.
class OneView {
public:
    explicit OneView(Connection::Inner& inner) : inner_{inner} {
        if (inner_.inTransaction) throw std::logic_error("a shop is verified between acts");
        inner_.once("BEGIN");
    }
    ~OneView() { QSqlQuery{inner_.database}.exec(QStringLiteral("ROLLBACK")); }
    OneView(const OneView&) = delete;
    OneView& operator=(const OneView&) = delete;

private:
    Connection::Inner& inner_;
};

/// Asks now and then, in the middle of a long statement too, whether to go on.
class Asking {
public:
    Asking(sqlite3* handle, const std::function<bool(double)>& goOn) : handle_{handle}, goOn_{goOn} {
        if (goOn_) sqlite3_progress_handler(handle_, 100'000, &Asking::ask, this);
    }
    ~Asking() { sqlite3_progress_handler(handle_, 0, nullptr, nullptr); }
    Asking(const Asking&) = delete;
    Asking& operator=(const Asking&) = delete;
    void at(double share) { share_ = share; }
    bool stopped() { return stopped_ || (goOn_ && ask(this) != 0); }

private:
    static int ask(void* self) {
        auto& asking = *static_cast<Asking*>(self);
        if (!asking.goOn_(asking.share_)) asking.stopped_ = true;
        return asking.stopped_ ? 1 : 0;
    }
    sqlite3* handle_;
    const std::function<bool(double)>& goOn_;
    double share_ = 0;
    bool stopped_ = false;
};

struct Check {
    void (*check)(Connection&, Verification&);
    double share; ///< of the time, measured on 500,000 movements
};
constexpr std::array checks{
    Check{checkDatabase, 0.35},    Check{checkForeignKeys, 0.20},  Check{checkMovements, 0.08},
    Check{checkPieces, 0.12},      Check{checkFlows, 0.07},        Check{checkScatters, 0.03},
    Check{checkPieceCodes, 0.01},  Check{checkReservations, 0.01}, Check{checkLines, 0.04},
    Check{checkOrderStates, 0.02}, Check{checkTicketStates, 0.02}, Check{checkUnits, 0.04},
    Check{checkCounts, 0.01}};

/// A damaged file can fail in the middle of any check; that is a finding, too.
void run(const Check& check, Connection& connection, Verification& found) {
    try {
        check.check(connection, found);
    } catch (const StoreError& error) {
        if (error.kind() != StoreError::Kind::Corrupt) throw;
        found.disagreements.push_back({Disagreement::Kind::Database, error.detail(), 0, 0, ""});
    }
}

} // namespace

Verification verify(Connection& connection, const std::function<bool(double)>& goOn) {
    Verification found;
    const OneView view{connection.inner()};
    Asking asking{connection.inner().handle(), goOn};
    double share = 0;
    for (const Check& check : checks) {
        asking.at(share);
        if (!asking.stopped()) {
            try {
                run(check, connection, found);
            } catch (const StoreError&) {
                if (!asking.stopped()) throw; // SQLite was interrupted, as we asked
            }
        }
        share += check.share;
    }
    asking.at(1);
    found.finished = !asking.stopped();
    return found;
}

} // namespace riband::store
