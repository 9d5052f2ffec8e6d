#pragma once

#include "tests/app/program.h"

namespace riband::tests {

/// A fresh copy of the demo shop in a folder of its own; the shop itself is made once a run.
class DemoShop {
public:
    DemoShop() {
        static const QByteArray made = [] {
            const Folder once;
            run({"demo", "--shop-only", "--out", once.file("")});
            return once.content("demo.riband");
        }();
        file = folder.with("shop.riband", made);
    }
    Folder folder;
    QString file;
};

} // namespace riband::tests
