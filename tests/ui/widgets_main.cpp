#define CATCH_CONFIG_RUNNER
#include "tests/catch.h"

#include "ui/look/look.h"

#include <QApplication>

/// The main of every test that needs widgets, fonts or painting: one QApplication in the light look.
int main(int argc, char** argv) {
    QApplication app{argc, argv};
    riband::ui::Look::apply(app, riband::ui::Shade::Light);
    return Catch::Session().run(argc, argv);
}
