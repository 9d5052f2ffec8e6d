#include "ui/which/identifier.h"

#include "core/shop/wanted_before.h"
#include "ui/words/words.h"

#include <QFuture>
#include <QtConcurrentRun>

namespace riband::ui {

namespace {

using belt::identify::Prior;
using belt::identify::Sale;

struct Thought {
    Identifier::Shared answer;
    QString failure;
};

std::vector<Sale> salesOf(const std::string& file) {
    store::Connection own{file, store::Connection::Mode::ReadOnly};
    return shop::wantedBefore(own);
}

/// `prior`: what is known already; else it is made, with the sales of `file` or, of a shop in memory, these.
Thought think(const Identifier::Question& question, std::shared_ptr<const Prior> prior,
              const std::shared_ptr<const belt::Tables>& tables, const std::string& file,
              const std::vector<Sale>& sales) {
    try {
        if (!prior) prior = std::make_shared<const Prior>(tables, file.empty() ? sales : salesOf(file));
        auto found = belt::identify::identify(question.sample, *prior, question.wishes);
        return {std::make_shared<const Identifier::Answer>(
                    Identifier::Answer{std::move(found), question.sample, prior}),
                {}};
    } catch (const store::StoreError& error) {
        return {nullptr, say(error)};
    }
}

} // namespace

Identifier::Identifier(Session& session, QObject* parent) : QObject{parent}, session_{session} {}

void Identifier::ask(const Question& question) {
    waiting_ = question;
    wanted_ = true;
    if (!thinking_) begin();
}

void Identifier::forgetSales() {
    prior_.reset();
    stale_ = thinking_;
}

void Identifier::drop() {
    waiting_.reset();
    wanted_ = false;
}

void Identifier::begin() {
    const std::string file = session_.file().toStdString();
    std::vector<Sale> sales;
    if (!prior_ && file.empty())
        session_.attempt([&] { sales = shop::wantedBefore(session_.shop().connection); });
    thinking_ = true;
    const Question question = *waiting_;
    waiting_.reset();
    QtConcurrent::run([question, prior = prior_, tables = session_.shop().tables, file, sales] {
        return think(question, prior, tables, file, sales);
    }).then(this, [this](const Thought& thought) { finish(thought.answer, thought.failure); });
}

void Identifier::finish(const Shared& answer, const QString& failure) {
    thinking_ = false;
    if (answer && !stale_) prior_ = answer->prior;
    stale_ = false;
    if (waiting_) return begin(); // older answers would only flicker
    if (!wanted_) return;
    if (answer)
        emit answered(answer);
    else
        emit failed(failure);
}

} // namespace riband::ui
