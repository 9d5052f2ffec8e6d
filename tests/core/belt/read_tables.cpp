#include "tests/core/belt/read_tables.h"

#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace riband::belt {

TableTexts tableTexts() {
    TableTexts texts;
    for (const auto& entry : std::filesystem::directory_iterator(RIBAND_SOURCE_DIR "/resources/tables")) {
        if (entry.path().extension() != ".csv") continue;
        std::ifstream file{entry.path()};
        std::ostringstream text;
        text << file.rdbuf();
        texts.emplace(entry.path().stem().string(), text.str());
    }
    return texts;
}

const Tables& theTables() {
    static const auto tables = [] {
        auto loaded = Tables::load(tableTexts());
        if (!loaded) {
            const TableFault& fault = loaded.reason();
            throw std::runtime_error(fault.file + ":" + std::to_string(fault.line) + ": " + fault.what);
        }
        return *loaded;
    }();
    return *tables;
}

} // namespace riband::belt
