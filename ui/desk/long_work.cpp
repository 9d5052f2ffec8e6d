#include "ui/desk/long_work.h"

#include <QCoreApplication>

namespace riband::ui {

foresight::Work LongWork::workOf(const std::shared_ptr<std::atomic_bool>& stop) {
    const QPointer<LongWork> self{this};
    const auto told = [self, stop, last = -1](double done) mutable {
        const int percent = static_cast<int>(done * 100);
        if (percent == last) return; // a thousand belts are no thousand events
        last = percent;
        QMetaObject::invokeMethod(
            qApp,
            [self, stop, percent] {
                if (self && self->stop_ == stop) emit self->progress(percent);
            },
            Qt::QueuedConnection);
    };
    return {told, [stop] { return stop->load(); }};
}

} // namespace riband::ui
