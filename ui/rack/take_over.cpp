#include "ui/rack/take_over.h"

#include "ui/words/tr.h"
#include "ui/words/words.h"

#include <QCoreApplication>
#include <QFuture>
#include <QPointer>
#include <QtConcurrentRun>

namespace riband::ui {

namespace {

struct Booked {
    QString failure;
    std::size_t pieces = 0;
};

Booked bookAll(const shop::Shop& shop, const std::vector<shop::Delivery>& deliveries,
               const shop::GoOn& goOn) {
    try {
        const std::size_t pieces = shop::takeOver(shop, deliveries, goOn).size();
        if (pieces == 0) return {Words::tr("Stopped. Nothing was taken in.")};
        return {{}, pieces};
    } catch (const shop::Refusal& refusal) {
        return {say(refusal)};
    } catch (const store::StoreError& error) {
        return {say(error)};
    }
}

Booked bookApart(const std::string& path, shop::Shop like, Moment now,
                 const std::vector<shop::Delivery>& deliveries, const shop::GoOn& goOn) {
    try {
        store::Connection own{path};
        return bookAll({own, like.tables, like.person, [now] { return now; }}, deliveries, goOn);
    } catch (const store::StoreError& error) {
        return {say(error)};
    }
}

} // namespace

std::shared_ptr<std::atomic_bool> takeOver(Session& session, std::vector<shop::Delivery> deliveries,
                                           QObject* at, std::function<void(int)> progress,
                                           std::function<void(const QString&, std::size_t)> done) {
    auto stop = std::make_shared<std::atomic_bool>(false);
    const QPointer<QObject> alive{at};
    const auto goOn = [stop, alive, progress](double share) {
        QMetaObject::invokeMethod(
            qApp,
            [alive, progress, share] {
                if (alive) progress(static_cast<int>(share * 100));
            },
            Qt::QueuedConnection);
        return !stop->load();
    };
    const auto run = [path = session.file().toStdString(), shop = session.shop(), now = session.shop().now(),
                      all = std::move(deliveries), goOn] {
        return path.empty() ? bookAll(shop, all, goOn) : bookApart(path, shop, now, all, goOn);
    };
    const auto tell = [done](const Booked& booked) { done(booked.failure, booked.pieces); };
    if (session.file().isEmpty()) {
        QMetaObject::invokeMethod(
            at, [run, tell] { tell(run()); }, Qt::QueuedConnection);
        return stop;
    }
    QtConcurrent::run(run).then(at, tell);
    return stop;
}

} // namespace riband::ui
