# Writes ${OUT}: the numbered SQL files of ${FOLDER} as C++ literals, so that the library needs no files at run time.
file(GLOB files "${FOLDER}/[0-9][0-9][0-9][0-9]_*.sql")
list(SORT files)
set(text "#include \"core/store/schema.h\"\n\nnamespace riband::store {\n\n")
string(APPEND text "std::vector<Migration> migrations() {\n    return {\n")
foreach(file IN LISTS files)
    get_filename_component(name "${file}" NAME_WE)
    string(REGEX MATCH "^[0-9]+" number "${name}")
    math(EXPR number "1${number} - 10000") # decimal, although it begins with zeros
    file(READ "${file}" sql)
    string(APPEND text "        {${number}, \"${name}\", R\"sql(${sql})sql\"},\n")
endforeach()
string(APPEND text "    };\n}\n\n} // namespace riband::store\n")
file(WRITE "${OUT}" "${text}")
