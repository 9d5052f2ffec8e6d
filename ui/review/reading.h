#pragma once

#include "ui/desk/session.h"

#include <QFuture>
#include <QObject>
#include <QtConcurrentRun>

#include <optional>

namespace riband::ui {

QString sayCaught(); ///< words for the exception that is being handled, "" if it is none of the store's

/// Reads a report on a connection and a thread of its own and gives it to the window's thread. What was asked
/// for before is dropped when something newer is asked. A shop that lives in memory is read at once.
class Reading final : public QObject {
public:
    Reading(Session& session, QObject* parent) : QObject{parent}, session_{session} {}
    bool running() const { return running_; }
    /// What is being read is not wanted any more.
    void drop() {
        ++asked_;
        running_ = false;
    }

    template <class Read, class Show>
    void start(Read read, Show show) {
        using Result = std::invoke_result_t<Read, const shop::Shop&>;
        struct Found {
            std::shared_ptr<Result> result; // shared: a future's value is copied
            QString failure;
        };
        const int asked = ++asked_;
        const std::string file = session_.file().toStdString();
        const shop::Shop& mine = session_.shop();
        if (file.empty()) {
            session_.attempt([&] { show(read(mine)); });
            return;
        }
        running_ = true;
        QtConcurrent::run([read, file, tables = mine.tables, person = mine.person, now = mine.now()] {
            try {
                store::Connection connection{file, store::Connection::Mode::ReadOnly};
                const shop::Shop own{connection, tables, person, [now] { return now; }};
                return Found{std::make_shared<Result>(read(own)), {}};
            } catch (const store::StoreError&) {
                return Found{nullptr, sayCaught()};
            }
        }).then(this, [this, asked, show](const Found& found) {
            if (asked != asked_) return;
            running_ = false;
            if (found.result)
                show(std::move(*found.result));
            else
                session_.warn(found.failure);
        });
    }

private:
    Session& session_;
    int asked_ = 0;
    bool running_ = false;
};

} // namespace riband::ui
