#include "core/measure/date.h"
