#include "core/belt/tables.h"
