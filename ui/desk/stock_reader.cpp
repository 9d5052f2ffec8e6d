#include "ui/desk/stock_reader.h"

#include "core/shop/cuttable.h"
#include "ui/words/words.h"

#include <QFuture>
#include <QtConcurrentRun>

namespace riband::ui {

namespace {

struct Found {
    StockReader::Stock stock;
    QString failure;
};

Found read(const std::string& file, const std::shared_ptr<const belt::Tables>& tables, store::PersonId person,
           Moment now, const std::string& profile) {
    try {
        store::Connection own{file, store::Connection::Mode::ReadOnly};
        return {shop::cuttable({own, tables, person, [now] { return now; }}, profile), {}};
    } catch (const store::StoreError& error) {
        return {{}, say(error)};
    }
}

} // namespace

StockReader::StockReader(Session& session, QObject* parent) : QObject{parent}, session_{session} {
    connect(&session_, &Session::changed, this, &StockReader::forget);
}

const StockReader::Stock* StockReader::of(const std::string& profile) {
    if (known_.count(profile) == 0 && reading_.count(profile) == 0) begin(profile);
    const auto known = known_.find(profile);
    return known == known_.end() ? nullptr : &known->second;
}

void StockReader::forget() {
    known_.clear();
    reading_.clear();
    ++asked_;
}

void StockReader::begin(const std::string& profile) {
    const shop::Shop& shop = session_.shop();
    const std::string file = session_.file().toStdString();
    if (file.empty()) {
        session_.attempt([&] { known_[profile] = shop::cuttable(shop, profile); });
        return;
    }
    reading_.insert(profile);
    QtConcurrent::run([file, tables = shop.tables, person = shop.person, now = shop.now(), profile] {
        return ui::read(file, tables, person, now, profile);
    }).then(this, [this, asked = asked_, profile](const Found& found) {
        if (asked != asked_) return;
        if (!found.failure.isEmpty()) session_.warn(found.failure);
        finish(profile, found.stock); // of a shop that can't be read nothing is known to be here
    });
}

void StockReader::finish(const std::string& profile, Stock stock) {
    reading_.erase(profile);
    known_[profile] = std::move(stock);
    emit read();
}

} // namespace riband::ui
