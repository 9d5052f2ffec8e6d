#include "tests/catch.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

// From the bottom up. An include may only name a layer with a smaller or the same rank.
const std::map<std::string, int> ranks = {
    {"core/measure", 0}, {"core/belt", 1}, {"core/cutting", 2}, {"core/foresight", 3},
    {"core/store", 4},   {"core/shop", 5}, {"ui", 6},           {"resources", 6},
    {"app", 7},
};

struct Include {
    std::string file; ///< from the root of the tree
    std::string text; ///< what stands between the marks
    bool quoted;
};

std::string layerOf(const std::string& path) {
    for (const auto& [layer, rank] : ranks)
        if (path.rfind(layer + "/", 0) == 0) return layer;
    return "";
}

std::vector<Include> includesBelow(const std::string& folder) {
    static const std::regex line{R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])"};
    std::vector<Include> all;
    const fs::path root = RIBAND_SOURCE_DIR;
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
        const auto ending = entry.path().extension();
        if (ending != ".h" && ending != ".cpp") continue;
        std::ifstream file{entry.path()};
        for (std::string text; std::getline(file, text);)
            if (std::smatch match; std::regex_search(text, match, line))
                all.push_back(
                    {fs::relative(entry.path(), root).generic_string(), match[2], match[1] == "\""});
    }
    return all;
}

std::vector<Include> allIncludes() {
    std::vector<Include> all;
    for (const char* folder : {"core", "ui", "app", "resources"}) {
        const auto more = includesBelow(folder);
        all.insert(all.end(), more.begin(), more.end());
    }
    return all;
}

} // namespace

TEST_CASE("No include points up the layers", "[layers]") {
    const auto all = allIncludes();
    REQUIRE(all.size() > 100);
    for (const auto& include : all) {
        if (!include.quoted) continue;
        const std::string from = layerOf(include.file), to = layerOf(include.text);
        INFO(include.file << " includes " << include.text);
        CHECK_FALSE(from.empty());
        if (to.empty()) continue; // a file made by the build beside the source
        CHECK(ranks.at(to) <= ranks.at(from));
    }
}

TEST_CASE("Only the store speaks SQL, and nothing else in core knows Qt", "[layers]") {
    for (const auto& include : allIncludes()) {
        INFO(include.file << " includes " << include.text);
        const bool inStore = layerOf(include.file) == "core/store";
        if (include.text.find("QSql") != std::string::npos || include.text == "sqlite3.h") CHECK(inStore);
        const bool inCore = include.file.rfind("core/", 0) == 0;
        if (inCore && !inStore) CHECK(include.text.rfind("Q", 0) != 0);
    }
}

TEST_CASE("The pure parts of core ask no clock, no dice and no files", "[layers]") {
    static const std::regex impure{
        R"(system_clock::now|steady_clock|random_device|\btime\(|\brand\(|<fstream>|fopen)"};
    const fs::path root = RIBAND_SOURCE_DIR;
    for (const char* folder : {"core/measure", "core/belt", "core/cutting", "core/foresight", "core/shop"})
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
            std::ifstream file{entry.path()};
            const std::string text{std::istreambuf_iterator<char>{file}, {}};
            INFO(entry.path().string());
            CHECK_FALSE(std::regex_search(text, impure));
        }
}
