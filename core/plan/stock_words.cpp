// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/stock_words.h"

namespace drawercast::plan {

std::string_view word_of(stock::Make make) {
    switch (make) {
    case stock::Make::stack:
        return "stack";
    case stock::Make::discs:
        return "discs";
    case stock::Make::tube:
        return "tube";
    case stock::Make::half_tube:
        return "half-tube";
    case stock::Make::shaped:
        return "shaped";
    }
    return "";
}

std::string_view word_of(stock::Rest rest) {
    switch (rest) {
    case stock::Rest::on_board:
        return "on-board";
    case stock::Rest::on_body:
        return "on-body";
    case stock::Rest::butts:
        return "butts";
    }
    return "";
}

std::string_view word_of(stock::Goods goods) {
    switch (goods) {
    case stock::Goods::board:
        return "board";
    case stock::Goods::stiffener:
        return "stiffener";
    case stock::Goods::tube:
        return "tube";
    case stock::Goods::screw:
        return "screw";
    case stock::Goods::closure:
        return "closure";
    case stock::Goods::pin:
        return "pin";
    }
    return "";
}

std::string_view word_of(stock::Supply supply) {
    switch (supply) {
    case stock::Supply::sealer:
        return "sealer";
    case stock::Supply::release:
        return "release";
    case stock::Supply::clay_length:
        return "clay-fillet";
    case stock::Supply::clay_volume:
        return "clay";
    case stock::Supply::seal:
        return "joint-seal";
    case stock::Supply::glue:
        return "wood-glue";
    case stock::Supply::pigment:
        return "pigment";
    case stock::Supply::solvent:
        return "solvent";
    case stock::Supply::gloves:
        return "gloves";
    case stock::Supply::cups:
        return "cups";
    }
    return "";
}

std::string_view word_of(stock::Rate rate) {
    switch (rate) {
    case stock::Rate::counted:
        return "counted";
    case stock::Rate::practice:
        return "practice";
    case stock::Rate::guess:
        return "guess";
    }
    return "";
}

} // namespace drawercast::plan
