#include "ui/desk/book_check.h"

#include "ui/words/words.h"

#include <QCoreApplication>
#include <QFuture>
#include <QPointer>
#include <QtConcurrentRun>

namespace riband::ui {

BookCheck::~BookCheck() { stop(); }

void BookCheck::stop() {
    if (stop_) stop_->store(true);
    stop_.reset();
}

void BookCheck::start() {
    if (running()) return;
    const std::string path = session_.file().toStdString();
    if (path.empty()) { // in memory: there is only this one connection
        session_.attempt([&] { emit done(store::verify(session_.shop().connection)); });
        return;
    }
    stop_ = std::make_shared<std::atomic_bool>(false);
    run(path, stop_);
}

namespace {

struct Found {
    std::shared_ptr<store::Verification> verification;
    QString failure;
};

Found checked(const std::string& path, const std::function<bool(double)>& goOn) {
    try {
        store::Connection own{path, store::Connection::Mode::ReadOnly};
        return {std::make_shared<store::Verification>(store::verify(own, goOn)), {}};
    } catch (const store::StoreError& error) {
        return {nullptr, say(error)};
    }
}

} // namespace

void BookCheck::run(const std::string& path, const std::shared_ptr<std::atomic_bool>& stop) {
    const QPointer<BookCheck> self{this};
    const auto goOn = [self, stop](double share) {
        if (stop->load()) return false;
        QMetaObject::invokeMethod(
            qApp,
            [self, share] {
                if (self) emit self->progress(static_cast<int>(share * 100));
            },
            Qt::QueuedConnection);
        return true;
    };
    QtConcurrent::run([path, goOn] {
        return checked(path, goOn);
    }).then(this, [this, stop](const Found& found) {
        if (stop != stop_) return;
        stop_.reset();
        if (found.verification)
            emit done(*found.verification);
        else
            emit failed(found.failure);
    });
}

} // namespace riband::ui
