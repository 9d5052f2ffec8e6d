// One counts and settles, another sells, each on a connection of their own: whatever comes first, the book
// ends at what is there.
#include "core/shop/counting/count.h"
#include "core/shop/counting/settle.h"
#include "core/shop/counting/today.h"
#include "core/store/verify.h"
#include "tests/core/belt/read_tables.h"
#include "tests/core/shop/shop_fixture.h"

#include <filesystem>
#include <future>
#include <map>
#include <mutex>
#include <random>
#include <set>
#include <stdlib.h>

namespace riband::shop {

namespace {

const belt::Belt h8m1200{"H8M", Teeth{150}, Length::millimetres(1200), ""};

/// Pieces as they really are. A piece is in one pair of hands: it is measured and scanned, or cut and
/// recorded.
struct Rack {
    std::mutex hands;
    std::map<store::PieceId, std::int64_t> truth;
};

class ShopFile {
public:
    ShopFile() {
        std::string name = (std::filesystem::temp_directory_path() / "riband counting XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()));
        folder_ = name;
        store::Connection created{path(), store::Connection::Mode::Create};
        store::Transaction transaction{created};
        store::People{created}.add("AB", "A. Binder", store::Role::Owner);
        transaction.commit();
    }
    ~ShopFile() {
        std::error_code ignored;
        std::filesystem::remove_all(folder_, ignored);
    }
    ShopFile(const ShopFile&) = delete;
    ShopFile& operator=(const ShopFile&) = delete;
    std::string path() const { return (folder_ / "shop.riband").string(); }

private:
    std::filesystem::path folder_;
};

Shop counterAt(store::Connection& connection) {
    const store::PersonId owner = store::People{connection}.present().front().id;
    const Moment now = Date{std::chrono::year{2026} / 3 / 2} + std::chrono::hours{9};
    return {connection, {std::shared_ptr<void>{}, &belt::theTables()}, owner, [now] { return now; }};
}

/// Half of the pieces are not as wide as the book says.
void furnish(const Shop& shop, Rack& rack, unsigned seed) {
    std::mt19937 random{seed};
    for (int i = 0; i < 6; ++i) {
        Delivery delivery{.belt = h8m1200, .extent = mm(300), .costEach = Money::minor(9'000), .place = "A1"};
        delivery.kind = cutting::PieceKind::Remnant;
        const store::PieceId piece = receive(shop, {delivery}).front();
        rack.truth[piece] =
            300'000 - (i % 2 == 0 ? 0 : 1'000 + 10 * static_cast<std::int64_t>(random() % 900));
    }
}

/// Sells belts of 11 mm; the cut is recorded by the figures, now and then with the rest as it is.
void sell(const std::string& path, Rack& rack, unsigned seed, int belts) {
    store::Connection connection{path};
    const Shop shop = counterAt(connection);
    std::mt19937 random{seed};
    for (int i = 0; i < belts; ++i) {
        const Ordered sold = order(shop, Draft{{{h8m1200, mm(11), 1, "", std::nullopt, {}}}, "", "", {}, ""});
        const auto mounting = store::Tickets{connection}.at(*sold.ticket).mountings.front();
        const std::scoped_lock hold{rack.hands};
        std::int64_t& truth = rack.truth.at(mounting.piece);
        truth -= 13'500;
        CutRecord record{mounting.id};
        if (random() % 4 == 0) record.left = um(truth);
        recordCut(shop, record);
    }
}

/// Settles what differs at a place with the proposal that takes what was measured.
void settleAsMeasured(const Shop& shop, const std::string& place) {
    for (const Finding& finding : findings(shop)) {
        if (finding.place != place) continue;
        for (const counting::Proposal& proposal : finding.proposals)
            if (proposal.what == store::Explanation::Unexplained ||
                proposal.what == store::Explanation::Found ||
                (finding.difference.measuredSince && proposal.what == store::Explanation::BookedLate)) {
                try {
                    settle(shop, finding.difference, proposal);
                } catch (const Refusal& refusal) { // a sale changed it in between: it is seen again
                    CHECK(static_cast<int>(refusal.why()) == static_cast<int>(Refusal::Why::AlreadyDone));
                }
                break;
            }
    }
}

/// Each piece of the place is measured twice.
void countOnce(const Shop& shop, Rack& rack, const std::string& place) {
    const store::CountId count = beginCount(shop, place);
    for (int look = 0; look < 2; ++look)
        for (auto& [piece, truth] : rack.truth) {
            const std::scoped_lock hold{rack.hands};
            if (store::Pieces{shop.connection}.at(piece).place != place) continue;
            note(shop, count, piece, um(truth), store::Method::Calliper);
        }
    CHECK(closeCount(shop, count).empty());
    settleAsMeasured(shop, place);
}

/// Counts the place again and again, and settles what differs: as measured.
void count(const std::string& path, Rack& rack, int times, const std::string& place = "A1") {
    store::Connection connection{path};
    const Shop shop = counterAt(connection);
    for (int i = 0; i < times; ++i)
        countOnce(shop, rack, place);
}

/// Who counts where.
struct Places {
    std::mutex guard;
    std::set<std::string> taken;
    bool take(const std::string& place) {
        const std::scoped_lock hold{guard};
        return taken.insert(place).second;
    }
};

/// One person with the day's plan: the first place of it that nobody is at, until all are done; so many.
std::size_t workPlan(const std::string& path, Rack& rack, Places& places) {
    store::Connection connection{path};
    const Shop shop = counterAt(connection);
    std::size_t counted = 0;
    constexpr int minutes = 240;
    for (bool any = true; any;) {
        any = false;
        for (const counting::PlaceTask& task : countToday(shop, minutes)) {
            if (!places.take(task.place)) continue;
            countOnce(shop, rack, task.place);
            ++counted;
            any = true;
            break;
        }
    }
    return counted;
}

} // namespace

TEST_CASE("Whoever comes first, counting and selling at once end at what is there", "[count][random]") {
    const unsigned seed = GENERATE(1u, 2u, 3u);
    INFO("seed " << seed);
    ShopFile file;
    Rack rack;
    {
        store::Connection connection{file.path()};
        furnish(counterAt(connection), rack, seed);
    }
    auto selling = std::async(std::launch::async, [&] { sell(file.path(), rack, seed, 30); });
    auto counting = std::async(std::launch::async, [&] { count(file.path(), rack, 3); });
    selling.get();
    counting.get();
    count(file.path(), rack, 1); // the last look, with the counter closed

    store::Connection connection{file.path()};
    for (const auto& [piece, truth] : rack.truth)
        CHECK(store::Pieces{connection}.at(piece).extent.count() == truth);
    const store::Verification found = store::verify(connection);
    CHECK(found.agrees());
    CHECK(found.holes.empty());
}

TEST_CASE("A plan that two people work at once in different places, while the counter sells, ends at what is "
          "there",
          "[count][random]") {
    const unsigned seed = GENERATE(1u, 2u);
    INFO("seed " << seed);
    ShopFile file;
    Rack rack;
    {
        store::Connection connection{file.path()};
        const Shop shop = counterAt(connection);
        furnish(shop, rack, seed);
        int bay = 0;
        for (const auto& [piece, truth] : rack.truth) // two pieces at each of three places
            move(shop, piece, "A" + std::to_string(1 + bay++ / 2));
    }
    Places taken;
    auto selling = std::async(std::launch::async, [&] { sell(file.path(), rack, seed, 24); });
    auto first = std::async(std::launch::async, [&] { return workPlan(file.path(), rack, taken); });
    auto second = std::async(std::launch::async, [&] { return workPlan(file.path(), rack, taken); });
    const std::size_t counted = first.get() + second.get();
    selling.get();
    CHECK(counted == 3);                         // every place by one of them
    for (const char* place : {"A1", "A2", "A3"}) // the last look, with the counter closed
        count(file.path(), rack, 1, place);

    store::Connection connection{file.path()};
    for (const auto& [piece, truth] : rack.truth)
        CHECK(store::Pieces{connection}.at(piece).extent.count() == truth);
    const store::Verification found = store::verify(connection);
    CHECK(found.agrees());
    CHECK(found.holes.empty());
    CHECK(store::Counts{connection}.open().empty());
}

} // namespace riband::shop
