#pragma once

#include "ui/counter/finder.h"
#include "ui/counter/inquiry.h"
#include "ui/desk/reading.h"

namespace riband::ui {

/// How to serve what is wanted: looks at the shop, has the ways found, and knows which the clerk chose.
class Advice final : public QObject {
    Q_OBJECT
public:
    explicit Advice(Session& session, QObject* parent = nullptr);
    /// `together`: all that is wanted of the belt, with the lines that are on the slip already. Another
    /// thread looks at the shop.
    void ask(const Wanted& wanted, std::vector<shop::Wish> together);
    void drop();
    /// For one who is quicker than that thread: looks now, if it is still looking.
    void lookNow() { looking_->now(); }

    const shop::Outlook* outlook() const { return outlook_.get(); }
    const shop::Suggestion* suggestion() const { return suggestion_.get(); }
    /// The chosen way, else the suggested one; nothing before there is an answer.
    const shop::Way* way() const;
    bool choseOther() const { return chosen_.has_value(); }
    void choose(std::optional<std::size_t> other);
    /// What the suggested or chosen way would cut for the shelf as well, wanted or not.
    const shop::Way* withShelf() const;
    bool noShelf() const { return noShelf_; }
    void setNoShelf(bool noShelf);
    /// Why another way was chosen.
    struct Why {
        store::OverrideKey key;
        std::string words;
    };
    /// A line is looked at again: what was chosen for it is chosen as soon as it is found again.
    struct Before {
        cutting::Plan way;
        std::vector<std::string> pieces; ///< codes, as the way counts them
        std::optional<Why> why;
    };
    void remember(Before before) { before_ = std::move(before); }
    const std::optional<Why>& why() const { return why_; }
    void setWhy(Why why);
    bool looking() const { return looking_->running(); }
    bool searching() const { return looking() || finder_.busy(); }

signals:
    void changed();

private:
    void take(const Finder::Answer& answer, bool isFinal);
    void askAgain(store::BeltId belt);
    void find();
    void look(std::shared_ptr<const shop::Outlook> outlook);
    void strip();
    void chooseAsBefore();
    Session& session_;
    Reading* looking_;
    Finder finder_;
    std::shared_ptr<const shop::Outlook> outlook_;
    Finder::Answer suggestion_;
    std::optional<std::size_t> chosen_;
    std::optional<Wanted> wanted_;
    std::vector<shop::Wish> together_;
    bool noShelf_ = false;
    std::optional<shop::Way> bare_; ///< the way without its belts for the shelf, while they are not wanted
    std::optional<Why> why_;
    std::optional<Before> before_;
};

} // namespace riband::ui
