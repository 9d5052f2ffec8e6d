#include "ui/drawing/tooth.h"
