#include "core/cutting/planner.h"
