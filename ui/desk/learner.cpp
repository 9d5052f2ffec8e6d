#include "ui/desk/learner.h"

#include "ui/words/words.h"

#include <algorithm>

namespace riband::ui {

namespace {

constexpr std::size_t AtOpening = 50; // belts; more learn when the counter asks for them

struct Learned {
    std::optional<store::StoredWorth> table;
    QString failure{};
};

/// No table if none is due.
Learned learnDue(const shop::Shop& shop, store::BeltId belt, const std::function<bool(double)>& goOn) {
    const shop::Lesson lesson = shop::lessonOf(shop, belt);
    return {shop::isDue(lesson) ? shop::learn(lesson, goOn) : std::nullopt};
}

} // namespace

Learner::Learner(Session& session, QObject* parent)
    : QObject{parent}, session_{session}, reading_{new Reading{session, this}} {
    pool_.setMaxThreadCount(1);
    pool_.setThreadPriority(QThread::IdlePriority);
    connect(&session_, &Session::worthWanted, this, &Learner::want);
}

Learner::~Learner() {
    if (stop_) stop_->store(true);
    due_.clear();
    pool_.waitForDone();
}

void Learner::want(store::BeltId belt) {
    std::erase(due_, belt);
    due_.push_front(belt);
    next();
}

void Learner::wantMostOrdered() {
    reading_->start([](const shop::Shop& shop) { return shop::dueBelts(shop, AtOpening); },
                    [this](const std::vector<store::BeltId>& belts) {
                        for (const store::BeltId belt : belts)
                            if (std::find(due_.begin(), due_.end(), belt) == due_.end()) due_.push_back(belt);
                        next();
                    });
}

void Learner::next() {
    if (busy() || due_.empty()) return;
    const store::BeltId belt = due_.front();
    due_.pop_front();
    const auto stop = std::make_shared<std::atomic_bool>(false);
    stop_ = stop;
    const auto goOn = [stop](double) { return !stop->load(); };
    const auto taken = [this, belt, stop](const Learned& learned) {
        if (stop != stop_) return;
        stop_.reset();
        if (!learned.failure.isEmpty()) session_.warn(learned.failure);
        take(belt, learned.table);
    };
    const std::string file = session_.file().toStdString();
    const shop::Shop& like = session_.shop();
    if (file.empty()) {
        Learned learned;
        session_.attempt([&] { learned = learnDue(like, belt, goOn); });
        return taken(learned);
    }
    QtConcurrent::run(&pool_, [file, belt, goOn, tables = like.tables, person = like.person,
                               now = like.now()] {
        try {
            store::Connection own{file, store::Connection::Mode::ReadOnly};
            return learnDue({own, tables, person, [now] { return now; }}, belt, goOn);
        } catch (const store::StoreError& error) {
            return Learned{std::nullopt, say(error)};
        }
    }).then(this, taken);
}

void Learner::take(store::BeltId belt, const std::optional<store::StoredWorth>& table) {
    if (table && session_.attempt([&] { shop::keepWorth(session_.shop(), belt, *table); }))
        emit session_.worthLearned(belt);
    next();
}

} // namespace riband::ui
