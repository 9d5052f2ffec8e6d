#include "ui/desk/reading.h"

#include "ui/words/words.h"

namespace riband::ui {

QString sayCaught() {
    try {
        throw;
    } catch (const shop::Refusal& refusal) {
        return say(refusal);
    } catch (const store::StoreError& error) {
        return say(error);
    }
}

} // namespace riband::ui
