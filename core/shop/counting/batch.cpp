#include "core/shop/counting/batch.h"

#include <map>

namespace riband::shop {

using counting::Verdict;

Collected collect(const Shop& shop, const std::vector<CollectedScan>& scans, bool close) {
    store::Transaction transaction{shop.connection};
    Collected done;
    std::map<std::string, store::CountId> counts;
    for (const CollectedScan& scan : scans)
        if (!counts.contains(scan.place)) counts.emplace(scan.place, counting::openAt(shop, scan.place));
    for (const CollectedScan& scan : scans) {
        const store::CountId count = counts.at(scan.place);
        if (!scan.piece) {
            counting::noteFindIn(shop, count, *scan.belt, *scan.measured, scan.method, scan.remark);
            done.verdicts.push_back(Verdict::Agrees);
            continue;
        }
        const Noted noted =
            counting::noteIn(shop, count, *scan.piece, scan.measured, scan.method, scan.remark);
        done.verdicts.push_back(noted.verdict);
        done.voided.insert(done.voided.end(), noted.voided.begin(), noted.voided.end());
    }
    for (const auto& [place, count] : counts) {
        done.counts.push_back(count);
        if (!close) continue;
        for (const store::PieceId piece : counting::closeIn(shop, count))
            done.missing.emplace_back(count, piece);
    }
    transaction.commit();
    return done;
}

} // namespace riband::shop
