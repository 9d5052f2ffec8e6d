#include "ui/papers/papers.h"
