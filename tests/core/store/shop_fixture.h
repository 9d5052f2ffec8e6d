#pragma once

#include "core/store/catalogue.h"
#include "core/store/ledger.h"
#include "core/store/orders.h"
#include "core/store/people.h"
#include "core/store/pieces.h"
#include "core/store/settings.h"

#include <filesystem>
#include <string>

namespace riband::store {

inline Date day(int year, unsigned month, unsigned dayOfMonth) {
    return Date{std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{dayOfMonth}};
}

inline Moment at(Date date, int hour, int minute = 0) {
    return Moment{date} + std::chrono::hours{hour} + std::chrono::minutes{minute};
}

inline Extent mm(std::int64_t millimetres) { return Width::millimetres(millimetres); }

/// A folder of its own for each test, gone with it.
class TemporaryFolder {
public:
    TemporaryFolder();
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    std::string operator/(const std::string& name) const { return (path_ / name).string(); }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

/// An invented shop: a clerk, H8M 1200 in millimetres (100 wide sleeves that cost 80.00) and PJ 1194 in ribs.
struct SmallShop {
    explicit SmallShop(Connection& open);

    /// A new piece that a movement from the maker fills. One transaction.
    PieceId receive(BeltId belt, Extent extent, Money cost,
                    cutting::PieceKind kind = cutting::PieceKind::Sleeve, const std::string& place = "A1-1");
    /// An open order of one line.
    LineId order(BeltId belt, Extent extent, std::int64_t quantity);
    /// A ticket with one mounting that gives all belts of the line from the piece, 2.5 mm or 1 rib of trim.
    TicketId ticket(LineId line, PieceId piece);
    /// The movement of cutting that many belts of 30 mm from a piece of the toothed belt for a line: 2.5 mm
    /// of trim, the cost spread by width and rounded down.
    Movement cutOf(PieceId piece, LineId line, std::int64_t belts) const;
    MovementId record(const Movement& movement);

    Connection& connection;
    PersonId clerk;
    BeltId toothed, ribbed;
    Moment now = at(day(2026, 3, 2), 9);
};

} // namespace riband::store
