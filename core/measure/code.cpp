#include "core/measure/code.h"
