#include "core/belt/belt.h"
