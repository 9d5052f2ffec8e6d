#pragma once

#include "core/shop/shop.h"
#include "core/store/goods.h"

namespace riband::shop {

/// Goods in: so many like sleeves of one belt.
struct Delivery {
    belt::Belt belt; ///< a belt new to the shop is added to the catalogue with the tables' usual figures
    int sleeves = 1;
    Extent extent; ///< as measured: what is there is booked
    Money costEach = Money::minor(0);
    std::string batch{};
    std::optional<Date> made{};
    std::string place{};
    cutting::PieceKind kind = cutting::PieceKind::Sleeve; ///< whatever it is: goods in are bought
    std::optional<Extent> labelled{}; ///< what the maker's label says, if the tape says something else
    std::string supplierCode{};       ///< on the maker's label: means this belt from now on; "" none
};

/// Told a share from 0 to 1 now and then; false stops, and nothing has happened.
using GoOn = std::function<bool(double)>;

/// Goods in, from the account Bought. One transaction for all; the new pieces in the order of the deliveries,
/// none if `goOn` stopped it. The cost of a sleeve becomes the belt's last sleeve cost.
std::vector<store::PieceId> receive(const Shop& shop, const std::vector<Delivery>& deliveries,
                                    const GoOn& goOn = nullptr);
/// The same of a stock that is there already and was in no book of ours: from the account Found.
std::vector<store::PieceId> takeOver(const Shop& shop, const std::vector<Delivery>& deliveries,
                                     const GoOn& goOn = nullptr);

/// All that came at once from one supplier.
struct GoodsIn {
    std::string supplier{};
    std::string reference{};         ///< number of the delivery note
    Money freight = Money::minor(0); ///< of all together, and whatever else came on top
    std::optional<store::ExpectedId> expected{};
    std::vector<Delivery> lines;
};
struct Received {
    store::DeliveryId delivery;
    std::vector<store::PieceId> pieces; ///< in the order of the lines: label them
};

/// What each sleeve of the lines bears of the freight, line by line and sleeve by sleeve: in proportion to
/// what they cost, or evenly if nothing is known to have cost anything. Sums to the freight, no cent lost.
/// Pure.
std::vector<std::vector<Money>> freightShares(Money freight, const std::vector<Delivery>& lines);

/// Books a delivery in one transaction: each sleeve at its cost and its share of the freight. With `expected`
/// the lines of that delivery have come so far: each line counts for the first open one of its belt and its
/// width, measured or on the label. Refuses BadQuantity for no line, a freight below nothing or without a
/// sleeve to bear it; AlreadyDone if the expected delivery is closed.
Received receiveGoods(const Shop& shop, const GoodsIn& goods);

/// A piece that is not what its label says, for the letter to the supplier.
struct Mislabelled {
    store::StockPiece piece; ///< as it is today
    std::string belt;        ///< designation
    Extent came, labelled;
    Money missing; ///< what the missing width cost, without freight; negative if more came
};
/// Of a delivery, in the order in which it was booked.
std::vector<Mislabelled> mislabelled(const Shop& shop, store::DeliveryId delivery);

/// What a scanned or typed code of a supplier means here.
struct KnownCode {
    store::StockedBelt belt;
    std::optional<Extent> extent;
};
std::optional<KnownCode> knownCode(const Shop& shop, const std::string& code);

/// The belt's entry in the catalogue, made from the tables if it is new (standard widths listed, usual
/// sleeve).
store::StockedBelt keep(const Shop& shop, const belt::Belt& belt);

} // namespace riband::shop
