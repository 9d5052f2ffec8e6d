#include "ui/counter/advice.h"

#include "core/shop/reason.h"

namespace riband::ui {

namespace {

/// The same way again in a better answer, so that a choice survives it.
std::optional<std::size_t> sameWay(const std::vector<shop::Way>& ways, const cutting::Plan& plan) {
    for (std::size_t i = 0; i < ways.size(); ++i)
        if (ways[i].plan.mountings == plan.mountings && ways[i].plan.taken == plan.taken) return i;
    return std::nullopt;
}

} // namespace

Advice::Advice(Session& session, QObject* parent)
    : QObject{parent}, session_{session}, looking_{new Reading{session, this}} {
    connect(&finder_, &Finder::found, this, &Advice::take);
    connect(&session_, &Session::worthLearned, this, &Advice::askAgain);
}

void Advice::ask(const Wanted& wanted, std::vector<shop::Wish> together) {
    chosen_.reset();
    why_.reset();
    before_.reset();
    noShelf_ = false;
    suggestion_.reset();
    wanted_ = wanted;
    together_ = std::move(together);
    find();
}

void Advice::find() {
    outlook_.reset();
    finder_.drop();
    looking_->start(
        [belt = wanted_->belt, wishes = together_](const shop::Shop& shop) {
            return std::make_shared<const shop::Outlook>(shop::lookAt(shop, belt, wishes));
        },
        [this](std::shared_ptr<const shop::Outlook> outlook) { look(std::move(outlook)); },
        [this] { emit changed(); });
}

void Advice::look(std::shared_ptr<const shop::Outlook> outlook) {
    outlook_ = std::move(outlook);
    finder_.ask(outlook_);
}

/// There is a better table now; what the clerk has chosen meanwhile stays.
void Advice::askAgain(store::BeltId belt) {
    if (wanted_ && outlook_ && outlook_->belt.id == belt && !choseOther() && !noShelf_) find();
}

void Advice::drop() {
    looking_->drop();
    finder_.drop();
    wanted_.reset();
    outlook_.reset();
    suggestion_.reset();
    chosen_.reset();
    why_.reset();
    noShelf_ = false;
    bare_.reset();
    emit changed();
}

void Advice::take(const Finder::Answer& answer, bool isFinal) {
    const shop::Way* kept = choseOther() ? withShelf() : nullptr;
    const auto again = kept ? sameWay(answer->others, kept->plan) : std::nullopt;
    suggestion_ = answer;
    chosen_ = again;
    if (before_ && !chosen_) chooseAsBefore();
    strip();
    emit changed();
    const bool wants = answer->fault != shop::WorthFault::None && answer->fault != shop::WorthFault::Unfit;
    if (isFinal && wants && outlook_ && outlook_->belt.id != store::BeltId{0})
        emit session_.worthWanted(outlook_->belt.id);
}

void Advice::chooseAsBefore() {
    const auto again = sameWay(suggestion_->others, before_->way);
    if (!again) return;
    for (const auto& mounting : before_->way.mountings) // the pieces may have changed places
        if (mounting.piece >= before_->pieces.size() ||
            outlook_->problem.pieces[mounting.piece].code != before_->pieces[mounting.piece])
            return;
    chosen_ = again;
    why_ = before_->why;
}

const shop::Way* Advice::withShelf() const {
    if (!suggestion_) return nullptr;
    return chosen_ ? &suggestion_->others[*chosen_] : &suggestion_->best;
}

const shop::Way* Advice::way() const { return bare_ ? &*bare_ : withShelf(); }

void Advice::strip() {
    bare_.reset();
    const shop::Way* way = withShelf();
    if (!noShelf_ || !way || !way->fillsShelf()) return;
    bare_ = *way;
    shop::declineShelf(*outlook_, *bare_);
    bare_->reason = shop::reasonOf(outlook_->problem, bare_->plan);
}

void Advice::setNoShelf(bool noShelf) {
    noShelf_ = noShelf;
    strip();
    emit changed();
}

void Advice::setWhy(Why why) {
    why_ = std::move(why);
    emit changed();
}

void Advice::choose(std::optional<std::size_t> other) {
    if (!suggestion_ || (other && *other >= suggestion_->others.size()) || other == chosen_) return;
    chosen_ = other;
    if (!chosen_) why_.reset();
    before_.reset(); // the clerk chooses anew
    strip();
    emit changed();
}

} // namespace riband::ui
