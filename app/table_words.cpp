#include "app/table_words.h"

namespace riband::app {

std::string wordFor(cutting::PieceKind kind) {
    switch (kind) {
    case cutting::PieceKind::Sleeve:
        return "sleeve";
    case cutting::PieceKind::Remnant:
        return "remnant";
    case cutting::PieceKind::Ready:
        return "ready";
    }
    return {};
}

std::string wordFor(store::Act act) {
    using store::Act;
    switch (act) {
    case Act::Receive:
        return "receive";
    case Act::Cut:
        return "cut";
    case Act::TakeReady:
        return "take ready";
    case Act::Miscut:
        return "miscut";
    case Act::Cancel:
        return "cancel";
    case Act::Scrap:
        return "scrap";
    case Act::Correct:
        return "correct";
    case Act::Undo:
        return "undo";
    }
    return {};
}

std::string wordFor(store::Account account) {
    using store::Account;
    switch (account) {
    case Account::Bought:
        return "bought";
    case Account::Found:
        return "found";
    case Account::Rack:
        return "rack";
    case Account::Ready:
        return "ready";
    case Account::Sold:
        return "sold";
    case Account::Trim:
        return "trim";
    case Account::Kerf:
        return "kerf";
    case Account::End:
        return "end";
    case Account::Scrap:
        return "scrap";
    case Account::Difference:
        return "difference";
    }
    return {};
}

std::string wordFor(store::ScrapReason reason) {
    using store::ScrapReason;
    switch (reason) {
    case ScrapReason::Stub:
        return "stub";
    case ScrapReason::Miscut:
        return "miscut";
    case ScrapReason::Damaged:
        return "damaged";
    case ScrapReason::Aged:
        return "aged";
    }
    return {};
}

} // namespace riband::app
