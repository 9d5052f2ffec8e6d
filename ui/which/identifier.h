#pragma once

#include "core/belt/identify/identify.h"
#include "ui/desk/session.h"

namespace riband::ui {

/// Asks the tables, and the shop's own sales, which belt it may be, without holding up the window: one
/// question is thought about at a time, in another thread, and only the last one asked is answered.
class Identifier final : public QObject {
    Q_OBJECT
public:
    struct Question {
        belt::identify::Sample sample;
        belt::identify::Wishes wishes;
    };
    struct Answer {
        belt::identify::Identification found;
        belt::identify::Sample sample;                      ///< that it is the answer to
        std::shared_ptr<const belt::identify::Prior> prior; ///< keeps what the answer points to
    };
    using Shared = std::shared_ptr<const Answer>;

    explicit Identifier(Session& session, QObject* parent = nullptr);
    /// The sample must have no fault (faultOf).
    void ask(const Question& question);
    /// Nothing is asked any more.
    void drop();
    /// The shop's sales are read again with the next question.
    void forgetSales();
    bool busy() const { return thinking_; }

signals:
    void answered(const riband::ui::Identifier::Shared& answer);
    void failed(const QString& words);

private:
    void begin();
    void finish(const Shared& answer, const QString& failure);
    Session& session_;
    std::shared_ptr<const belt::identify::Prior> prior_;
    std::optional<Question> waiting_; ///< asked while another was thought about
    bool thinking_ = false, wanted_ = false, stale_ = false;
};

} // namespace riband::ui
