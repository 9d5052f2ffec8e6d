#include "core/cutting/plan.h"
