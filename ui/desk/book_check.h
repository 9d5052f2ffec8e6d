#pragma once

#include "ui/desk/session.h"

#include <atomic>
#include <memory>

#include "core/store/verify.h"

namespace riband::ui {

/// Recomputes the book on a connection and a thread of its own, so that nobody waits for it.
class BookCheck final : public QObject {
    Q_OBJECT
public:
    explicit BookCheck(Session& session, QObject* parent = nullptr) : QObject{parent}, session_{session} {}
    ~BookCheck() override;
    /// Does nothing while one is under way.
    void start();
    void stop();
    bool running() const { return stop_ != nullptr; }

signals:
    void progress(int percent);
    void done(const riband::store::Verification& verification);
    void failed(const QString& words);

private:
    void run(const std::string& path, const std::shared_ptr<std::atomic_bool>& stop);
    Session& session_;
    std::shared_ptr<std::atomic_bool> stop_;
};

} // namespace riband::ui
