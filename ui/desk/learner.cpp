#include "ui/desk/learner.h"

#include <QFuture>
#include <QTimer>
#include <QtConcurrentRun>

namespace riband::ui {

Learner::Learner(Session& session, QObject* parent) : QObject{parent}, session_{session} {
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

void Learner::next() {
    if (busy() || due_.empty()) return;
    const store::BeltId belt = due_.front();
    due_.pop_front();
    std::shared_ptr<const shop::Lesson> lesson;
    session_.attempt([&] {
        auto read = shop::lessonOf(session_.shop(), belt);
        if (shop::isDue(read)) lesson = std::make_shared<const shop::Lesson>(std::move(read));
    });
    if (!lesson) {
        QTimer::singleShot(0, this, &Learner::next); // the window goes first
        return;
    }
    const auto stop = std::make_shared<std::atomic_bool>(false);
    stop_ = stop;
    QtConcurrent::run(&pool_, [lesson, stop] {
        return shop::learn(*lesson, [&](double) { return !stop->load(); });
    }).then(this, [this, belt, stop](const std::optional<store::StoredWorth>& table) {
        take(belt, stop, table);
    });
}

void Learner::take(store::BeltId belt, const std::shared_ptr<std::atomic_bool>& stop,
                   const std::optional<store::StoredWorth>& table) {
    if (stop != stop_) return;
    stop_.reset();
    if (table && session_.attempt([&] { shop::keepWorth(session_.shop(), belt, *table); }))
        emit session_.worthLearned(belt);
    next();
}

} // namespace riband::ui
