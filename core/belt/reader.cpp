#include "core/belt/reader.h"
