#pragma once

#include "ui/counter/finder.h"
#include "ui/counter/inquiry.h"
#include "ui/desk/session.h"

namespace riband::ui {

/// How to serve what is wanted: looks at the shop, has the ways found, and knows which the clerk chose.
class Advice final : public QObject {
    Q_OBJECT
public:
    explicit Advice(Session& session, QObject* parent = nullptr);
    /// `together`: lines of the same belt that are on the slip already. Reads the store.
    void ask(const Wanted& wanted, std::vector<shop::Wish> together);
    void drop();

    const shop::Outlook* outlook() const { return outlook_.get(); }
    const shop::Suggestion* suggestion() const { return suggestion_.get(); }
    /// The chosen way, else the suggested one; nothing before there is an answer.
    const shop::Way* way() const;
    bool choseOther() const { return chosen_.has_value(); }
    void choose(std::optional<std::size_t> other);
    bool searching() const { return finder_.busy(); }

signals:
    void changed();

private:
    void take(const Finder::Answer& answer);
    Session& session_;
    Finder finder_;
    std::shared_ptr<const shop::Outlook> outlook_;
    Finder::Answer suggestion_;
    std::optional<std::size_t> chosen_;
};

} // namespace riband::ui
