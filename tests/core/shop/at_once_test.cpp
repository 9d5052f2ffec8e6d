// Several counters at one shop, and several threads that think.
#include "tests/core/shop/shop_fixture.h"

#include "core/store/verify.h"
#include "tests/core/belt/read_tables.h"

#include <filesystem>
#include <future>
#include <stdlib.h>

namespace riband::shop {

namespace {

/// A shop file in a folder of its own, gone with it.
class ShopFile {
public:
    ShopFile() {
        std::string name = (std::filesystem::temp_directory_path() / "riband counters XXXXXX").string();
        REQUIRE(::mkdtemp(name.data()));
        folder_ = name;
        store::Connection created{path(), store::Connection::Mode::Create};
        store::Transaction transaction{created};
        store::People{created}.add("AB", "A. Binder", store::Role::Clerk);
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
    const store::PersonId clerk = store::People{connection}.present().front().id;
    const Moment now = Date{std::chrono::year{2026} / 3 / 2} + std::chrono::hours{9};
    return {connection, {std::shared_ptr<void>{}, &belt::theTables()}, clerk, [now] { return now; }};
}

const belt::Belt h8m1200{"H8M", Teeth{150}, Length::millimetres(1200), ""};

/// Orders one belt of 20 mm after the other until there is no width left; gives their number.
int orderUntilNothingIsLeft(const std::string& path) {
    store::Connection connection{path};
    const Shop shop = counterAt(connection);
    for (int orders = 0;; ++orders) {
        try {
            order(shop, {{{h8m1200, mm(20), 1, "H8M 1200 20"}}});
        } catch (const Refusal& refusal) {
            if (refusal.why() != Refusal::Why::WidthTaken) throw;
            return orders;
        }
    }
}

} // namespace

TEST_CASE("Two counters at once never sell the same width", "[at once]") {
    const ShopFile file;
    {
        store::Connection connection{file.path()};
        receive(counterAt(connection), {{.belt = h8m1200, .extent = mm(400)}});
    }
    std::future<int> other = std::async(std::launch::async, orderUntilNothingIsLeft, file.path());
    const int mine = orderUntilNothingIsLeft(file.path());
    // Each pays 2.5 of trim: 17 orders take 382.5, and the end of 5 allows no more.
    CHECK(mine + other.get() == 17);
    store::Connection connection{file.path()};
    CHECK(bench(counterAt(connection)).size() == 17);
    CHECK(store::verify(connection).agrees());
}

TEST_CASE("Thinking needs no store: the same outlook gives the same answer on every thread", "[at once]") {
    TestShop shop;
    for (const std::int64_t width : {62, 71, 88, 105, 120, 144, 190, 230})
        shop.remnant(shop.h8m1200, mm(width));
    const Outlook outlook = lookAt(shop.shop, shop.h8m1200, {{mm(30), 5}, {mm(20), 4}, {um(17'300), 3}});
    const cutting::Plan expected = suggest(outlook).best.plan;
    CHECK(cutting::check(outlook.problem, expected).empty());
    std::vector<std::future<Suggestion>> thoughts;
    for (int i = 0; i < 4; ++i)
        thoughts.push_back(std::async(std::launch::async, [&outlook] { return suggest(outlook); }));
    for (std::future<Suggestion>& thought : thoughts)
        CHECK(thought.get().best.plan.mountings == expected.mountings);
}

} // namespace riband::shop
