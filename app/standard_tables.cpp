#include "app/standard_tables.h"

#include "resources/table_texts.h"
#include "ui/words/words.h"

#include <stdexcept>

namespace riband::app {

std::shared_ptr<const belt::Tables> standardTables() {
    const auto tables = belt::Tables::load(tableTexts());
    if (!tables) throw std::runtime_error(ui::say(tables.reason()).toStdString());
    return tables.value();
}

} // namespace riband::app
