#pragma once

#include "core/foresight/parallel.h"
#include "ui/desk/reading.h"
#include "ui/desk/session.h"

#include <QPointer>

#include <atomic>
#include <memory>
#include <optional>

namespace riband::ui {

/// Long thinking over what a worker reads: its progress is told, it can be stopped, and only the last one
/// that was asked for shows anything.
class LongWork final : public QObject {
    Q_OBJECT
public:
    LongWork(Session& session, QObject* parent) : QObject{parent}, reading_{new Reading{session, this}} {}
    ~LongWork() override { stop(); }

    bool running() const { return stop_ != nullptr; }
    /// The work under way ends soon and shows nothing.
    void stop() {
        if (!stop_) return;
        stop_->store(true);
        stop_.reset();
        emit ended();
    }

    /// `think` is called in the worker with the shop and the work to tell; `show` with its result, here.
    template <class Think, class Show>
    void start(Think think, Show show) {
        using Result = std::invoke_result_t<Think, const shop::Shop&, const foresight::Work&>;
        if (stop_) stop_->store(true);
        const auto stop = std::make_shared<std::atomic_bool>(false);
        stop_ = stop;
        emit progress(0);
        reading_->start(
            [think, work = workOf(stop)](const shop::Shop& shop) -> std::optional<Result> {
                try {
                    return think(shop, work);
                } catch (const foresight::Stopped&) {
                    return std::nullopt;
                }
            },
            [this, stop, show](std::optional<Result> result) {
                if (stop_ != stop) return;
                stop_.reset();
                if (result) show(std::move(*result));
                emit ended();
            },
            [this, stop] {
                if (stop_ == stop) this->stop();
            });
    }

signals:
    void progress(int percent);
    void ended();

private:
    foresight::Work workOf(const std::shared_ptr<std::atomic_bool>& stop);
    Reading* reading_;
    std::shared_ptr<std::atomic_bool> stop_;
};

} // namespace riband::ui
