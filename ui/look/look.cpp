#include "ui/look/look.h"
