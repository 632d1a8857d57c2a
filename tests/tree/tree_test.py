#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Each rule of tree.py is broken once in a small tree of its own, and must be the one breach found."""
import pathlib
import tempfile
import unittest

import tree

LICENSE = "// SPDX-License-Identifier: GPL-3.0-or-later\n"
WHOLE = {
    "DEVELOPERS.md": "`core/base/unit.h`\n",
    "CMakeLists.txt": "",
    "core/base/unit.h": LICENSE + "#pragma once\n",
    "core/CMakeLists.txt": "# SPDX-License-Identifier: GPL-3.0-or-later\n",
}


class Rules(unittest.TestCase):
    def found(self, more):
        with tempfile.TemporaryDirectory() as folder:
            top = pathlib.Path(folder)
            for name, text in {**WHOLE, **more}.items():
                (top / name).parent.mkdir(parents=True, exist_ok=True)
                (top / name).write_text(text, encoding="utf-8")
            return list(tree.breaches(top))

    def broken(self, name, text, words):
        found = self.found({name: text})
        self.assertEqual(len(found), 1, found)
        self.assertIn(words, found[0])

    def test_a_tree_that_keeps_them_all(self):
        self.assertEqual(self.found({}), [])

    def test_the_top(self):
        self.broken("notes.txt", "", "nothing else may stand at the top")

    def test_the_license(self):
        self.broken("core/base/bare.cpp", "int one;\n", "license")
        self.broken("packaging/bare.sh", "#!/bin/sh\n", "license")

    def test_a_header_is_read_once(self):
        self.broken("core/base/twice.h", LICENSE, "#pragma once")

    def test_the_own_header_comes_first(self):
        self.broken("core/base/unit.cpp", LICENSE + '#include <vector>\n#include "base/unit.h"\n', "does not come first")

    def test_libraries_stay_where_they_are(self):
        self.broken("core/layout/x.cpp", LICENSE + "#include <boost/geometry.hpp>\n", "boost/geometry")
        self.broken("core/shape/x.h", LICENSE + "#pragma once\n#include <boost/geometry.hpp>\n", "boost/geometry")
        self.broken("core/plan/x.cpp", LICENSE + "#include <boost/json.hpp>\n", "boost/json")
        self.broken("core/base/x.cpp", LICENSE + "#include <Eigen/Core>\n", "Eigen")

    def test_the_system_is_asked_in_one_file(self):
        self.broken("core/job/x.cpp", LICENSE + "#include <unistd.h>\n", "unistd.h")
        self.broken("app/window/x.cpp", LICENSE + "#include <sys/stat.h>\n", "sys/stat.h")

    def test_core_knows_no_qt(self):
        self.broken("core/base/x.cpp", LICENSE + "#include <QString>\n", "no Qt")

    def test_the_arrows(self):
        self.broken("core/shape/x.cpp", LICENSE + '#include "job/job.h"\n', "may not know core/job")

    def test_the_arrows_of_the_window(self):
        header = LICENSE + "#pragma once\n"
        for own, known in (("print", "subcommands"), ("outline", "forms"), ("panes/explain", "panes"), ("canvas", "panes")):
            found = self.found({f"app/{known}/a.h": header, f"app/{own}/x.cpp": LICENSE + f'#include "{known}/a.h"\n'})
            self.assertEqual(found, [f"app/{own}/x.cpp: app/{own} may not know app/{known} ({known}/a.h)"])
        self.assertEqual(self.found({"app/panes/explain/a.h": header,
                                     "app/panes/x.cpp": LICENSE + '#include "panes/explain/a.h"\n'}), [])

    def test_paths_on_the_page(self):
        self.broken("DEVELOPERS.md", "`core/base/gone.h`\n", "is not there")


if __name__ == "__main__":
    unittest.main()
