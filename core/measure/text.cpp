#include "core/measure/text.h"
