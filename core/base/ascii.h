// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What kind of character a byte of a UTF-8 text is, whatever the locale; bytes of longer characters are
/// none.
namespace drawercast {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr bool is_capital(char c) { return c >= 'A' && c <= 'Z'; }
constexpr bool is_letter(char c) { return (c >= 'a' && c <= 'z') || is_capital(c); }
/// Blank, tab, line end.
constexpr bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }
constexpr char small_letter(char c) { return is_capital(c) ? static_cast<char>(c - 'A' + 'a') : c; }

} // namespace drawercast
