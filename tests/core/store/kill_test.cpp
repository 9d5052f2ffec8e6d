#include "core/store/verify.h"
#include "tests/catch.h"
#include "tests/core/store/folder_picture.h"
#include "tests/core/store/shop_fixture.h"

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <random>
#include <sstream>
#include <thread>

using namespace riband;
using namespace riband::store;

namespace {

/// A child at work, killed with no chance to tidy up; what it had said by then.
class Child {
public:
    Child(const std::string& path, const std::string& what) {
        int ends[2];
        REQUIRE(::pipe(ends) == 0);
        said_ = ends[0];
        pid_ = ::fork();
        if (pid_ == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::close(ends[1]);
            ::execl(RIBAND_KILL_CHILD, "store_kill_child", path.c_str(), what.c_str(), nullptr);
            ::_exit(127);
        }
        ::close(ends[1]);
    }
    ~Child() { ::close(said_); }

    /// Until it has said something.
    void await() { readSome(); }
    /// The numbers that it said, in order.
    std::vector<std::int64_t> kill() {
        ::kill(pid_, SIGKILL);
        while (readSome()) {
        }
        int status = 0;
        REQUIRE(::waitpid(pid_, &status, 0) == pid_);
        REQUIRE(WIFSIGNALED(status)); // it was at work, and did not end by itself
        std::vector<std::int64_t> numbers;
        std::istringstream lines{text_};
        for (std::int64_t number = 0; lines >> number;)
            numbers.push_back(number);
        return numbers;
    }

private:
    bool readSome() {
        char bytes[4096];
        const auto got = ::read(said_, bytes, sizeof bytes);
        if (got > 0) text_.append(bytes, static_cast<std::size_t>(got));
        return got > 0;
    }
    int said_;
    pid_t pid_;
    std::string text_;
};

void newShop(const std::string& path) {
    Connection connection{path, Connection::Mode::Create};
    SmallShop shop{connection};
    shop.order(shop.toothed, mm(30), 1'000'000); // a standing order
}

/// Movements of which every posting is there: two of a receipt, three of a cut.
std::vector<std::int64_t> wholeMovements(Connection& connection) {
    std::vector<std::int64_t> numbers;
    const Moment first = at(day(2026, 1, 1), 0), last = at(day(2027, 1, 1), 0);
    for (const auto& recorded : Ledger{connection}.between(first, last)) {
        const bool receipt = recorded.movement.about().act == Act::Receive;
        if (recorded.movement.postings().size() == (receipt ? 2u : 3u))
            numbers.push_back(recorded.id.value());
    }
    std::ranges::sort(numbers);
    return numbers;
}

std::size_t sizeOfAct(Connection& connection, std::int64_t movement) {
    return std::stoul(Ledger{connection}.at(MovementId{movement}).movement.about().note);
}

} // namespace

TEST_CASE("Killed at any moment, a shop has every act that was confirmed and no half one", "[store][kill]") {
    constexpr int kills = 300, killsOfAShop = 20;
    std::mt19937 chance{20260302};
    std::size_t confirmedInAll = 0;
    int unconfirmed = 0;
    for (int shop = 0; shop < kills / killsOfAShop; ++shop) {
        const TemporaryFolder folder;
        const std::string path = folder / "shop.riband";
        newShop(path);
        std::vector<std::int64_t> there; // at the end of the last round
        for (int round = 0; round < killsOfAShop; ++round) {
            Child child{path, std::to_string(chance())};
            if (chance() % 8 != 0) child.await(); // else it is killed while it starts, too
            std::this_thread::sleep_for(std::chrono::microseconds{chance() % 20'000});
            const auto confirmed = child.kill();

            Connection connection{path};
            const Verification found = verify(connection);
            REQUIRE(found.agrees());
            const auto now = wholeMovements(connection);
            REQUIRE(static_cast<std::int64_t>(now.size()) == found.movements);
            auto expected = there;
            expected.insert(expected.end(), confirmed.begin(), confirmed.end());
            REQUIRE(now.size() >= expected.size());
            REQUIRE(std::equal(expected.begin(), expected.end(), now.begin()));
            // And at most the one act that was under way, all of it.
            const auto more = now.size() - expected.size();
            REQUIRE((more == 0 || more == sizeOfAct(connection, now[expected.size()])));
            unconfirmed += more > 0 ? 1 : 0;
            confirmedInAll += confirmed.size();
            there = now;
        }
    }
    CHECK(confirmedInAll > kills); // the children were at work
    WARN(kills << " kills: " << confirmedInAll << " confirmed movements, all there; " << unconfirmed
               << " times one more act was done but not yet said");
}

TEST_CASE("Killed while it makes a shop, it leaves a whole one or none", "[store][kill]") {
    std::mt19937 chance{7};
    for (int round = 0; round < 30; ++round) {
        const TemporaryFolder folder;
        Child child{folder / "shop", "create"};
        std::this_thread::sleep_for(std::chrono::microseconds{20'000 + chance() % 60'000});
        const auto made = child.kill();
        std::size_t whole = 0;
        for (const auto& [name, file] : pictureOf(folder.path())) {
            if (name.find_first_of(".-") != std::string::npos) continue; // an unfinished one, a log
            Connection connection{folder / name};
            CHECK(verify(connection).agrees());
            ++whole;
        }
        CHECK(whole >= made.size());
        CHECK(whole <= made.size() + 1);
    }
}
