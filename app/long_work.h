#pragma once

#include "core/foresight/parallel.h"

namespace riband::app {

/// While it lives, Ctrl-C ends long work in order: nothing is written, and the program says so.
class StopOnInterrupt {
public:
    StopOnInterrupt();
    ~StopOnInterrupt();
    StopOnInterrupt(const StopOnInterrupt&) = delete;
    StopOnInterrupt& operator=(const StopOnInterrupt&) = delete;

    /// Tells each tenth on the standard error.
    static foresight::Work work();

private:
    void (*before_)(int);
};

} // namespace riband::app
