#include "ui/rack/rack_worths.h"

#include "ui/words/words.h"

#include <QDeadlineTimer>
#include <QFuture>
#include <QtConcurrentRun>

#include <algorithm>

namespace riband::ui {

namespace {

constexpr int SliceMs = 50; // then what is seen by now goes first

struct Slice {
    RackWorths::Found found{};
    std::vector<store::BeltId> left{}; ///< of those that were handed over
    QString failure{};
};

void weigh(const shop::Shop& shop, Slice& slice, const std::function<bool()>& goOn) {
    shop::PieceWorths worths{shop};
    auto belt = slice.left.begin();
    while (belt != slice.left.end() && goOn()) {
        for (const store::StockPiece& piece : store::Pieces{shop.connection}.ofBelt(*belt))
            slice.found.emplace_back(piece.id, worths.of(piece));
        ++belt;
    }
    slice.left.erase(slice.left.begin(), belt);
}

} // namespace

RackWorths::RackWorths(Session& session, QObject* parent) : QObject{parent}, session_{session} {
    pool_.setMaxThreadCount(1);
    pool_.setThreadPriority(QThread::IdlePriority);
    connect(&session_, &Session::worthLearned, this, &RackWorths::renew);
}

RackWorths::~RackWorths() {
    if (stop_) stop_->store(true);
    pool_.waitForDone();
}

void RackWorths::find(std::vector<store::BeltId> belts) {
    if (stop_) stop_->store(true);
    stop_.reset();
    due_.assign(belts.begin(), belts.end());
    next();
}

void RackWorths::see(std::vector<store::BeltId> belts) {
    seen_ = std::move(belts);
    seenFirst();
}

void RackWorths::seenFirst() {
    const auto seen = [&](store::BeltId belt) {
        return std::find(seen_.begin(), seen_.end(), belt) != seen_.end();
    };
    std::stable_partition(due_.begin(), due_.end(), seen);
}

void RackWorths::renew(store::BeltId belt) {
    std::erase(due_, belt);
    due_.push_front(belt);
    next();
}

void RackWorths::next() {
    if (busy() || due_.empty()) return;
    Slice slice{{}, {due_.begin(), due_.end()}, {}};
    due_.clear();
    const std::string file = session_.file().toStdString();
    if (file.empty()) {
        session_.attempt([&] { weigh(session_.shop(), slice, [] { return true; }); });
        return take(slice.found, {});
    }
    const auto stop = std::make_shared<std::atomic_bool>(false);
    stop_ = stop;
    const shop::Shop& like = session_.shop();
    QtConcurrent::run(&pool_, [slice = std::move(slice), stop, file, tables = like.tables,
                               person = like.person, now = like.now()]() mutable {
        const QDeadlineTimer enough{SliceMs};
        try {
            store::Connection own{file, store::Connection::Mode::ReadOnly};
            weigh({own, tables, person, [now] { return now; }}, slice,
                  [&] { return !stop->load() && !enough.hasExpired(); });
        } catch (const store::StoreError& error) {
            slice.failure = say(error);
            slice.left.clear();
        }
        return slice;
    }).then(this, [this, stop](const Slice& done) {
        if (stop != stop_) return; // the rack was read anew in between
        stop_.reset();
        if (!done.failure.isEmpty()) session_.warn(done.failure);
        take(done.found, done.left);
    });
}

void RackWorths::take(const Found& worths, const std::vector<store::BeltId>& left) {
    if (!worths.empty()) emit found(worths);
    due_.insert(due_.end(), left.begin(), left.end());
    seenFirst();
    if (due_.empty()) emit finished();
    next();
}

} // namespace riband::ui
