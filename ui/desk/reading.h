#pragma once

#include "ui/desk/session.h"

#include <QFuture>
#include <QObject>
#include <QtConcurrentRun>

#include <optional>

namespace riband::ui {

QString sayCaught(); ///< words for the refusal or the failure of the store that is being handled

/// Reads without holding up the window: on a connection and a thread of its own, for the window's thread to
/// show. What was asked for before is dropped when something newer is asked. A shop that lives in memory is
/// read at once. The clock stands still in what reads.
class Reading final : public QObject {
public:
    Reading(Session& session, QObject* parent) : QObject{parent}, session_{session} {}
    bool running() const { return running_; }
    /// What is being read is not wanted any more.
    void drop() {
        ++asked_;
        running_ = false;
        here_ = nullptr;
    }
    /// For one who can't wait for the other thread: what is being read is read here, and shown.
    void now() {
        if (running_) std::exchange(here_, nullptr)();
    }

    /// A refusal or a failing store is said by the session, then `failed` is called.
    template <class Read, class Show>
    void start(
        Read read, Show show, std::function<void()> failed = [] {}) {
        using Result = std::invoke_result_t<Read, const shop::Shop&>;
        struct Found {
            std::shared_ptr<Result> result; // shared: a future's value is copied
            QString failure;
        };
        drop();
        const shop::Shop& mine = session_.shop();
        const auto here = [this, read, show, failed] {
            drop();
            std::optional<Result> result;
            session_.attempt([&] { result.emplace(read(session_.shop())); });
            if (!result) return failed();
            show(std::move(*result));
        };
        const std::string file = session_.file().toStdString();
        if (file.empty()) return here();
        running_ = true;
        here_ = here;
        QtConcurrent::run([read, file, tables = mine.tables, person = mine.person, now = mine.now()] {
            try {
                store::Connection connection{file, store::Connection::Mode::ReadOnly};
                const shop::Shop own{connection, tables, person, [now] { return now; }};
                return Found{std::make_shared<Result>(read(own)), {}};
            } catch (const shop::Refusal&) {
                return Found{nullptr, sayCaught()};
            } catch (const store::StoreError&) {
                return Found{nullptr, sayCaught()};
            }
        }).then(this, [this, asked = asked_, show, failed](const Found& found) {
            if (asked != asked_) return;
            drop();
            if (found.result) {
                show(std::move(*found.result));
            } else {
                session_.warn(found.failure);
                failed();
            }
        });
    }

private:
    Session& session_;
    int asked_ = 0;
    bool running_ = false;
    std::function<void()> here_; ///< the same without another thread, while it runs
};

} // namespace riband::ui
