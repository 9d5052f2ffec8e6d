#include "core/measure/csv.h"
