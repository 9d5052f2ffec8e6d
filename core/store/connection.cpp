#include "core/store/connection.h"
