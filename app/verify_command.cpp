#include "app/commands.h"
#include "app/options.h"
#include "app/verification_json.h"
#include "core/store/verify.h"
#include "ui/words/tr.h"
#include "ui/words/words.h"

namespace riband::app {

namespace {

Usage usage() {
    return {QStringLiteral("verify"),
            ui::Words::tr("Recomputes the whole book of a shop and names every disagreement."),
            {{QStringLiteral("FILE"), ui::Words::tr("the shop")}},
            {}};
}

} // namespace

Exit verify(const QStringList& arguments) {
    const Options options(usage(), arguments);
    store::Connection connection(options.positional(0).toStdString(), store::Connection::Mode::ReadOnly);
    const store::Verification found = store::verify(connection);
    options.json() ? printJson(jsonOf(found)) : printVerification(found);
    return found.agrees() ? Exit::Done : Exit::No;
}

} // namespace riband::app
