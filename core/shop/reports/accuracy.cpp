#include "core/shop/reports/accuracy.h"

#include "core/measure/text.h"
#include "core/shop/counting/verdict.h"
#include "core/shop/reports/names.h"
#include "core/store/traffic.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>

namespace riband::shop {

namespace {

std::string monthOf(Moment at) { return printDate(dayOf(at)).substr(0, 7); }

class Rows {
public:
    Rows(const Shop& shop, const Period& period, AccuracyBy by)
        : shop_{shop}, counts_{shop.connection}, names_{shop},
          rules_{store::Settings{shop.connection}.read().counting}, period_{period}, by_{by} {
        for (const store::Count& count : counts_.all())
            places_.emplace(count.id, count);
        if (by != AccuracyBy::Person) return;
        for (const store::CutOf& cut : store::cutsOfPieces(shop.connection))
            cuts_[cut.piece].push_back(cut);
    }

    std::vector<AccuracyRow> read() {
        readScans();
        readMissing();
        std::vector<AccuracyRow> rows;
        for (auto& [key, row] : rows_)
            rows.push_back(std::move(row));
        const auto wrong = [](const AccuracyRow& row) { return row.counted + row.missing - row.right; };
        std::stable_sort(rows.begin(), rows.end(),
                         [&](const AccuracyRow& a, const AccuracyRow& b) { return wrong(a) > wrong(b); });
        return rows;
    }

private:
    bool isWithin(Moment at) const { return at >= period_.from && at < period_.until; }

    void readScans() {
        std::map<store::PieceId, std::vector<store::Scan>> scans;
        for (const store::Scan& scan : counts_.allScans()) {
            if (scan.piece)
                scans[*scan.piece].push_back(scan);
            else if (isWithin(scan.at))
                ++rowOf(scan, Moment{}).unlabelled;
        }
        for (const auto& [piece, seen] : scans)
            readPiece(seen);
    }

    /// Scans of one count are one look; the first says where the book had it, the last what it measures.
    void readPiece(const std::vector<store::Scan>& scans) {
        Moment before{};
        for (std::size_t first = 0; first < scans.size();) {
            std::size_t last = first;
            while (last + 1 < scans.size() && scans[last + 1].count == scans[first].count)
                ++last;
            if (isWithin(scans[last].at)) add(scans[first], scans[last], before);
            before = scans[last].at;
            first = last + 1;
        }
    }

    void add(const store::Scan& first, const store::Scan& last, Moment before) {
        const auto tolerance = counting::toleranceOf(rules_, last.measured.unit(), last.method);
        AccuracyRow& row = rowOf(last, before);
        ++row.counted;
        if (std::abs(last.gap()) <= tolerance) ++row.right;
        if (first.placeWas != places_.at(first.count).place) ++row.elsewhere;
    }

    void readMissing() {
        for (const store::MissingPiece& missing : counts_.missing()) {
            const store::Count& count = places_.at(missing.count);
            if (!count.closed || !isWithin(*count.closed)) continue;
            const store::StockPiece piece = store::Pieces{shop_.connection}.at(missing.piece);
            const std::optional<store::PersonId> person =
                by_ == AccuracyBy::Person ? cutLast(piece.id, Moment{}, *count.closed) : count.person;
            ++rowFor(count.place, piece.belt, person, *count.closed).missing;
        }
    }

    AccuracyRow& rowOf(const store::Scan& scan, Moment before) {
        const auto person = by_ != AccuracyBy::Person ? std::optional{scan.person}
                            : scan.piece              ? cutLast(*scan.piece, before, scan.at)
                                                      : std::nullopt;
        return rowFor(places_.at(scan.count).place, scan.belt, person, scan.at);
    }

    std::optional<store::PersonId> cutLast(store::PieceId piece, Moment after, Moment until) const {
        std::optional<store::PersonId> person;
        const auto cuts = cuts_.find(piece);
        if (cuts == cuts_.end()) return person;
        for (const store::CutOf& cut : cuts->second)
            if (cut.at > after && cut.at <= until) person = cut.person;
        return person;
    }

    AccuracyRow& rowFor(const std::string& place, store::BeltId belt, std::optional<store::PersonId> person,
                        Moment at) {
        std::pair<std::string, std::string> key;
        if (by_ == AccuracyBy::Place) key.first = place;
        if (by_ == AccuracyBy::Belt) key.first = names_.belt(belt).designation;
        if (by_ == AccuracyBy::Person || by_ == AccuracyBy::Counter)
            key = {person ? names_.person(*person) : "", monthOf(at)};
        return rows_.try_emplace(key, AccuracyRow{.group = key.first, .month = key.second}).first->second;
    }

    const Shop& shop_;
    store::Counts counts_;
    ReportNames names_;
    store::CountRules rules_;
    Period period_;
    AccuracyBy by_;
    std::map<store::CountId, store::Count> places_;
    std::map<store::PieceId, std::vector<store::CutOf>> cuts_;
    std::map<std::pair<std::string, std::string>, AccuracyRow> rows_;
};

} // namespace

std::optional<double> AccuracyRow::share() const {
    if (counted + missing == 0) return std::nullopt;
    return static_cast<double>(right) / static_cast<double>(counted + missing);
}

std::vector<AccuracyRow> accuracy(const Shop& shop, const Period& period, AccuracyBy by) {
    return Rows{shop, period, by}.read();
}

ProvedShare provedShare(const Shop& shop, Moment until, int days) {
    const store::Counts counts{shop.connection};
    const Moment from = until - std::chrono::days{days};
    std::set<store::PieceId> seen;
    for (const store::Scan& scan : counts.allScans())
        if (scan.piece && scan.at >= from && scan.at < until) seen.insert(*scan.piece);
    for (const store::Settlement& settled : counts.settlements()) // a find has its piece from then on
        if (settled.piece && settled.scan && settled.at >= from && settled.at < until)
            seen.insert(*settled.piece);
    for (const store::Scan& open : counts.unsettled())
        if (open.piece) seen.erase(*open.piece);
    for (const store::MissingPiece& missing : counts.unsettledMissing())
        seen.erase(missing.piece);
    ProvedShare share{.days = days};
    for (const store::StockPiece& piece : store::Pieces{shop.connection}.all()) {
        ++share.pieces;
        share.cost = share.cost + piece.cost;
        if (!seen.contains(piece.id)) continue;
        ++share.proved;
        share.provedCost = share.provedCost + piece.cost;
    }
    return share;
}

ReportTable tableOf(const std::vector<AccuracyRow>& rows) {
    ReportTable table{
        {"group", "month", "counted", "right", "elsewhere", "missing", "unlabelled", "right_percent"}, {}};
    for (const AccuracyRow& row : rows) {
        const auto share = row.share();
        table.rows.push_back({row.group, row.month, std::to_string(row.counted), std::to_string(row.right),
                              std::to_string(row.elsewhere), std::to_string(row.missing),
                              std::to_string(row.unlabelled), share ? percentOf(*share) : ""});
    }
    return table;
}

ReportTable tableOf(const ProvedShare& share, const Currency& currency, Sees sees) {
    const double part =
        share.pieces == 0 ? 0 : static_cast<double>(share.proved) / static_cast<double>(share.pieces);
    ReportTable table{{"within_days", "pieces", "proved", "proved_percent"},
                      {{std::to_string(share.days), std::to_string(share.pieces),
                        std::to_string(share.proved), share.pieces == 0 ? "" : percentOf(part)}}};
    if (sees == Sees::WidthOnly) return table;
    table.columns.insert(table.columns.end(), {"cost", "cost_proved"});
    table.rows.front().push_back(printMoney(share.cost, currency));
    table.rows.front().push_back(printMoney(share.provedCost, currency));
    return table;
}

} // namespace riband::shop
