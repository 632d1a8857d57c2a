# SPDX-License-Identifier: GPL-3.0-or-later
# Writes OUTPUT: a source file that holds the catalog's files as text. Run at build time with -DFOLDER, -DOUTPUT.
set(source "// Generated from resources/catalog.\n#include \"job/catalog_text.h\"\n\nnamespace drawercast::job::catalog_text {\n\n")
foreach(name foams boards stiffeners closures standard-objects)
    file(READ ${FOLDER}/${name}.json text)
    string(REPLACE "-" "_" function ${name})
    string(APPEND source "std::string_view ${function}() { return R\"catalog(${text})catalog\"; }\n")
endforeach()
file(WRITE ${OUTPUT} "${source}\n} // namespace drawercast::job::catalog_text\n")
