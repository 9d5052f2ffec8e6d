#pragma once

#include "core/shop/suggest.h"

#include <QObject>

#include <atomic>
#include <memory>

namespace riband::ui {

/// Finds the way to serve a wish without holding up the window: the first answer at once, the final one from
/// another thread. Only the last question is answered.
class Finder final : public QObject {
    Q_OBJECT
public:
    using Answer = std::shared_ptr<const shop::Suggestion>;
    explicit Finder(QObject* parent = nullptr) : QObject{parent} {}
    ~Finder() override;

    /// Tells `found` before it returns, and once more when the search is over.
    void ask(std::shared_ptr<const shop::Outlook> outlook);
    /// Nothing is wanted any more.
    void drop();
    bool busy() const { return stop_ != nullptr; }

signals:
    void found(riband::ui::Finder::Answer suggestion, bool isFinal);

private:
    void finish(const std::shared_ptr<std::atomic_bool>& stop, Answer answer);
    std::shared_ptr<std::atomic_bool> stop_; ///< of the question that is being thought about
};

} // namespace riband::ui
