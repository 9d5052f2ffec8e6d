#include "app/long_work.h"

#include "app/console.h"
#include "ui/words/tr.h"

#include <csignal>

namespace riband::app {

namespace {
volatile std::sig_atomic_t interrupted = 0;
} // namespace

StopOnInterrupt::StopOnInterrupt() : before_{std::signal(SIGINT, [](int) { interrupted = 1; })} {
    interrupted = 0;
}

StopOnInterrupt::~StopOnInterrupt() { std::signal(SIGINT, before_); }

foresight::Work StopOnInterrupt::work() {
    int told = 0;
    return {[told](double done) mutable {
                if (const int tenth = static_cast<int>(done * 10); tenth > told && tenth < 10) {
                    told = tenth;
                    complain(ui::Words::tr("%1 % played").arg(10 * tenth));
                }
            },
            [] { return interrupted != 0; }};
}

} // namespace riband::app
