#include "core/cutting/setup.h"
