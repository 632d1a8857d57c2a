#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Says where a JSON Schema validator and the names of files disagree.

Usage: validate.py SCHEMA FOLDER. Files "valid-*" must be valid, files "refused-*" must not. Ends with 1 on
the first disagreement.
"""
import json
import pathlib
import sys

import jsonschema


def main():
    schema = json.loads(pathlib.Path(sys.argv[1]).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    for path in sorted(pathlib.Path(sys.argv[2]).glob("*.json")):
        errors = list(validator.iter_errors(json.loads(path.read_text(encoding="utf-8"))))
        if path.name.startswith("valid-") == bool(errors):
            said = errors[0].message if errors else "valid"
            print(f"{path.name}: {said}")
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
