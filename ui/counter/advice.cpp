#include "ui/counter/advice.h"

namespace riband::ui {

namespace {

/// The same way again in a better answer, so that a choice survives it.
std::optional<std::size_t> find(const std::vector<shop::Way>& ways, const cutting::Plan& plan) {
    for (std::size_t i = 0; i < ways.size(); ++i)
        if (ways[i].plan.mountings == plan.mountings && ways[i].plan.taken == plan.taken) return i;
    return std::nullopt;
}

} // namespace

Advice::Advice(Session& session, QObject* parent) : QObject{parent}, session_{session} {
    connect(&finder_, &Finder::found, this, &Advice::take);
}

void Advice::ask(const Wanted& wanted, std::vector<shop::Wish> together) {
    chosen_.reset();
    suggestion_.reset();
    outlook_.reset();
    together.push_back({wanted.extent, wanted.quantity});
    session_.attempt([&] {
        outlook_ =
            std::make_shared<const shop::Outlook>(shop::lookAt(session_.shop(), wanted.belt, together));
    });
    if (outlook_)
        finder_.ask(outlook_);
    else
        emit changed();
}

void Advice::drop() {
    finder_.drop();
    outlook_.reset();
    suggestion_.reset();
    chosen_.reset();
    emit changed();
}

void Advice::take(const Finder::Answer& answer) {
    const shop::Way* kept = choseOther() ? way() : nullptr;
    const auto again = kept ? find(answer->others, kept->plan) : std::nullopt;
    suggestion_ = answer;
    chosen_ = again;
    emit changed();
}

const shop::Way* Advice::way() const {
    if (!suggestion_) return nullptr;
    return chosen_ ? &suggestion_->others[*chosen_] : &suggestion_->best;
}

void Advice::choose(std::optional<std::size_t> other) {
    if (!suggestion_ || (other && *other >= suggestion_->others.size()) || other == chosen_) return;
    chosen_ = other;
    emit changed();
}

} // namespace riband::ui
