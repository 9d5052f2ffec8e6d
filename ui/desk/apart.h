#pragma once

#include "ui/desk/session.h"
#include "ui/words/words.h"

#include <QFuture>
#include <QtConcurrentRun>

#include <optional>

namespace riband::ui {

/// Reads without holding up the window: in another thread on a connection of its own, or at once where the
/// shop lives in memory. `done` is called in the window's thread, and not any more once `at` is gone; a
/// failure is told by the session. The clock stands still in `read`.
template <class Answer>
void readApart(Session& session, QObject* at, std::function<Answer(const shop::Shop&)> read,
               std::function<void(Answer)> done) {
    const std::string path = session.file().toStdString();
    if (path.empty()) {
        session.attempt([&] { done(read(session.shop())); });
        return;
    }
    struct Said {
        std::optional<Answer> answer;
        QString failure;
    };
    const shop::Shop& like = session.shop();
    QtConcurrent::run([path, read, tables = like.tables, person = like.person, now = like.now()] {
        try {
            store::Connection own{path, store::Connection::Mode::ReadOnly};
            return Said{read({own, tables, person, [now] { return now; }}), {}};
        } catch (const store::StoreError& error) {
            return Said{std::nullopt, say(error)};
        }
    }).then(at, [&session, done](Said said) {
        if (said.answer)
            done(std::move(*said.answer));
        else
            session.warn(said.failure);
    });
}

} // namespace riband::ui
