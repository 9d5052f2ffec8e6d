#include "ui/review/reading.h"

#include "ui/words/words.h"

namespace riband::ui {

QString sayCaught() {
    try {
        throw;
    } catch (const store::StoreError& error) {
        return say(error);
    } catch (...) {
        return {};
    }
}

} // namespace riband::ui
