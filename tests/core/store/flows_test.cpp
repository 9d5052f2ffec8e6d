// The sums of the reports are those of the postings, wherever a period begins and ends.
#include "core/store/flows.h"
#include "core/store/verify.h"
#include "tests/catch.h"
#include "tests/core/store/shop_fixture.h"

#include <map>
#include <random>
#include <tuple>

using namespace riband;
using namespace riband::store;

namespace {

using Key = std::tuple<std::int64_t, std::int64_t, std::int64_t, int, int>;
using Sums = std::map<Key, std::pair<std::int64_t, std::int64_t>>; ///< before, within

Key keyOf(const Movement::About& about, const Posting& posting) {
    return {about.belt.value(), about.person.value(), about.cutter ? about.cutter->value() : 0,
            static_cast<int>(posting.account), posting.reason ? static_cast<int>(*posting.reason) : 4};
}

Sums byPostings(Connection& connection, Moment from, Moment until) {
    Sums sums;
    for (const RecordedMovement& recorded : Ledger{connection}.between(Moment{}, until)) {
        const Movement::About& about = recorded.movement.about();
        for (const Posting& posting : recorded.movement.postings()) {
            if (posting.account == Account::Rack) continue;
            auto& [before, within] = sums[keyOf(about, posting)];
            (about.at < from ? before : within) += posting.amount;
        }
    }
    std::erase_if(sums,
                  [](const auto& sum) { return sum.second == std::pair<std::int64_t, std::int64_t>{}; });
    return sums;
}

Sums summed(const std::vector<Flow>& flows) {
    Sums sums;
    for (const Flow& flow : flows)
        sums[{flow.belt.value(), flow.person.value(), flow.cutter ? flow.cutter->value() : 0,
              static_cast<int>(flow.account), flow.reason ? static_cast<int>(*flow.reason) : 4}] = {
            flow.before, flow.within};
    std::erase_if(sums,
                  [](const auto& sum) { return sum.second == std::pair<std::int64_t, std::int64_t>{}; });
    return sums;
}

/// Of all people and cutters.
Sums together(const Sums& sums) {
    Sums all;
    for (const auto& [key, sum] : sums) {
        auto& [before, within] = all[{std::get<0>(key), 0, 0, std::get<3>(key), std::get<4>(key)}];
        before += sum.first;
        within += sum.second;
    }
    return all;
}

Sums of(Account account, Sums sums) {
    std::erase_if(sums, [=](const auto& sum) { return std::get<3>(sum.first) != static_cast<int>(account); });
    return sums;
}

Sums withoutBefore(Sums sums) {
    for (auto& [key, sum] : sums)
        sum.first = 0;
    std::erase_if(sums, [](const auto& sum) { return sum.second.second == 0; });
    return sums;
}

} // namespace

TEST_CASE("Sums over any period are those of its postings, spans of thirty days or of a year",
          "[store][flows]") {
    auto connection = Connection::inMemory();
    SmallShop shop{connection};
    std::mt19937 random{7};
    const auto number = [&](std::int64_t from, std::int64_t to) {
        return std::uniform_int_distribution<std::int64_t>{from, to}(random);
    };
    const Moment first{Date{std::chrono::year{2022} / 1 / 1}};
    const CutterId cutter = Settings{connection}.read().cutters.front().id;
    shop.now = first;
    const PieceId piece = shop.receive(shop.toothed, mm(100), Money::minor(8000));
    {
        Transaction transaction{connection};
        Ledger ledger{connection};
        for (int i = 0; i < 400; ++i) { // five years
            const Moment at = first + std::chrono::hours{i * 110};
            ledger.record(Movement{{Act::Receive, at, shop.clerk, shop.toothed, "", {}},
                                   {{Account::Bought, piece, {}, -50'000, Money::minor(-40), {}},
                                    {Account::Rack, piece, {}, 50'000, Money::minor(40), {}}}});
            const std::int64_t trim = number(1, 2'500);
            ledger.record(Movement{{Act::Cut,
                                    at,
                                    shop.clerk,
                                    shop.toothed,
                                    "",
                                    {},
                                    i % 3 ? std::optional{cutter} : std::nullopt},
                                   {{Account::Rack, piece, {}, -trim - 900, Money::minor(-2), {}},
                                    {Account::Trim, piece, {}, trim, Money::minor(1), {}},
                                    {Account::Scrap, piece, {}, 900, Money::minor(1), ScrapReason::Stub}}});
        }
        transaction.commit();
    }
    for (int i = 0; i < 40; ++i) {
        const Moment from = first + std::chrono::hours{number(0, 44'000)};
        const Moment until = from + std::chrono::hours{number(1, 20'000)};
        INFO(from.time_since_epoch().count() << " " << until.time_since_epoch().count());
        const Sums sums = byPostings(connection, from, until);
        CHECK((summed(Flows{connection}.sums(from, until)) == sums));
        const Sums all = together(sums);
        CHECK((summed(Flows{connection}.sumsOfAll(from, until)) == all));
        CHECK((summed(Flows{connection}.within(from, until)) == withoutBefore(all)));
        CHECK((summed(Flows{connection}.within(from, until, Account::Trim)) ==
               of(Account::Trim, withoutBefore(all))));
    }
    CHECK(verify(connection).disagreements.empty());
}
