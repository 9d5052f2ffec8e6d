#include "core/shop/price.h"
