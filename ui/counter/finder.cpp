#include "ui/counter/finder.h"

#include <QDeadlineTimer>
#include <QFuture>
#include <QtConcurrentRun>

namespace riband::ui {

namespace {

/// A person waits no longer; the planner then says how far it got.
constexpr int PatienceMs = 2000;

Finder::Answer think(const shop::Outlook& outlook, const std::shared_ptr<std::atomic_bool>& stop) {
    const QDeadlineTimer patience{PatienceMs};
    cutting::Limits limits;
    limits.stop = [&] { return stop->load() || patience.hasExpired(); };
    return std::make_shared<shop::Suggestion>(shop::suggest(outlook, limits));
}

} // namespace

Finder::~Finder() { drop(); }

void Finder::ask(std::shared_ptr<const shop::Outlook> outlook) {
    drop();
    emit found(std::make_shared<shop::Suggestion>(shop::quick(*outlook)), false);
    const auto stop = std::make_shared<std::atomic_bool>(false);
    stop_ = stop;
    QtConcurrent::run([outlook, stop] {
        return think(*outlook, stop);
    }).then(this, [this, stop](Answer answer) { finish(stop, std::move(answer)); });
}

void Finder::drop() {
    if (stop_) stop_->store(true);
    stop_.reset();
}

void Finder::finish(const std::shared_ptr<std::atomic_bool>& stop, Answer answer) {
    if (stop != stop_) return; // another question was asked in between
    stop_.reset();
    emit found(std::move(answer), true);
}

} // namespace riband::ui
