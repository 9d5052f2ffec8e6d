#include "ui/drawing/band.h"
