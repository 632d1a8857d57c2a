// SPDX-License-Identifier: GPL-3.0-or-later
// Every test program takes the locale it is started in, as Qt's do: where 1.5 is written 1,5, which is what
// "packaging/test.sh --comma" tries, all files, figures and pages come out the same.
#include <clocale>
#include <locale>

namespace {

[[maybe_unused]] const bool taken = [] {
    if (std::setlocale(LC_ALL, "") == nullptr) return false;
    std::locale::global(std::locale(""));
    return true;
}();

} // namespace
