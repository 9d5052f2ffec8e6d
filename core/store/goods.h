#pragma once

#include "core/measure/date.h"
#include "core/measure/extent.h"
#include "core/measure/money.h"
#include "core/store/connection.h"
#include "core/store/id.h"

#include <optional>
#include <string>
#include <vector>

namespace riband::store {

using ExpectedId = Id<struct ExpectedRow>;
using DeliveryId = Id<struct DeliveryRow>;

/// What a supplier's own code means.
struct SupplierCode {
    std::string code;
    BeltId belt;
    std::optional<Extent> extent; ///< of its sleeves, if always the same
};

struct ExpectedLine {
    int position; ///< from 1
    BeltId belt;
    Extent extent;
    std::int64_t sleeves;
    Money costEach;
    std::int64_t arrived = 0; ///< so far
};

/// What was ordered from a supplier and has not all come.
struct ExpectedDelivery {
    ExpectedId id;
    std::string supplier;
    std::string reference; ///< the shop's number of the purchase, or the supplier's
    std::optional<Date> due;
    bool closed;
    std::vector<ExpectedLine> lines;
};

/// What came, as a whole.
struct ArrivedDelivery {
    DeliveryId id;
    std::string supplier;
    std::string reference; ///< number of the delivery note
    Moment at;
    PersonId person;
    Money freight;
    std::optional<ExpectedId> expected;
};

/// One piece of a delivery.
struct ArrivedPiece {
    PieceId piece;
    Money freight;                  ///< its share, within its cost
    std::optional<Extent> labelled; ///< what the label said where the tape said something else
};

/// What is expected and what came. The only code that names the tables `supplier_code`, `expected_delivery`,
/// `expected_line`, `delivery` and `delivery_piece` (but for the words of a piece, which a trigger keeps).
class Goods {
public:
    explicit Goods(Connection& connection) : connection_{connection} {}
    /// Ties a code to a belt; a code that meant another belt means this one from now on.
    void learn(const SupplierCode& code, PersonId person, Moment at);
    std::optional<SupplierCode> meaning(const std::string& code) const;

    ExpectedId expect(const ExpectedDelivery& delivery, PersonId person, Moment at); ///< `id` is not read
    std::vector<ExpectedDelivery> expected() const; ///< not closed; the first due first
    ExpectedDelivery expected(ExpectedId id) const; ///< throws StoreError if there is none
    /// Those that were noted at one moment under a day as their reference, the newest of which any is open:
    /// closed ones, too.
    std::vector<ExpectedDelivery> listedLast() const;
    /// In the place of what was noted: what has arrived is as the lines say; closed if all of it has.
    void change(const ExpectedDelivery& delivery);
    /// So many sleeves of a line came (or, negative, did not come after all). The delivery is closed when all
    /// of its lines have come.
    void arrive(ExpectedId id, int position, std::int64_t sleeves);
    void close(ExpectedId id, bool closed); ///< nothing more of it will come, or it will after all

    DeliveryId add(const ArrivedDelivery& delivery); ///< `id` is not read
    void add(DeliveryId delivery, const ArrivedPiece& piece);
    ArrivedDelivery at(DeliveryId id) const;                         ///< throws StoreError if there is none
    std::vector<ArrivedDelivery> deliveries(std::size_t most) const; ///< the last first
    std::vector<ArrivedPiece> piecesOf(DeliveryId delivery) const;
    std::optional<DeliveryId> deliveryOf(PieceId piece) const;

private:
    void addLines(ExpectedId id, const std::vector<ExpectedLine>& lines);
    void closeIfAllCame(ExpectedId id);
    Connection& connection_;
};

} // namespace riband::store
