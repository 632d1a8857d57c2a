#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Solves two screwed plates with CalculiX and keeps the answers here: bare.txt and stiffened.txt.

usage: make.py FOLDER        decks and what CalculiX prints go there; needs its `ccx` (2.20 was used)

A box of 390 by 260 mm inside, walls 16 mm thick and 60 high; a plate of 16 mm (E 2200, Poisson 0.25) over it, pushed
up by 1 kPa over the opening; a closure of 1500 N/mm every 55 mm at most, the first 30 mm from a corner. The wall tops
push only: springs of E/H for each area; those that would pull are taken out and those that sink in are put back, run by
run, until none does either. Shells S4 (bricks with extra bending shapes inside), 2 mm on the wall tops, 5 mm elsewhere.
The stiffeners are 45 by 45 mm (E 10000, Poisson 0.3), loose: bricks of their own, their lower middle line lifting with
the plate, nothing else shared.

Kept: the deck of the last run, the one at rest (NAME.inp.gz), and the answer (NAME.txt): greatest lift over the opening
and on its edge, mm; pull of each closure, N, counter-clockwise.
"""
import gzip
import os
import subprocess
import sys

WIDE, DEEP, WALL, HIGH, THICK = 390, 260, 16, 60, 16
CLOSURE, REST = 1500.0, 2200 / HIGH
PIECE, PARTS = 45, 2


def lines(inside):
    rim = [-WALL + 2 * i for i in range(WALL // 2)]
    return [float(x) for x in rim + list(range(0, inside, 5)) + list(range(inside, inside + WALL + 1, 2))]


XS, YS = lines(WIDE), lines(DEEP)


def node(i, j):
    return 1 + i + len(XS) * j


def share(at, k, low, high):
    """Of the cell around line k, what lies between low and high."""
    left = at[k] if k == 0 else (at[k - 1] + at[k]) / 2
    right = at[k] if k == len(at) - 1 else (at[k] + at[k + 1]) / 2
    return max(0.0, min(right, high) - max(left, low)), right - left


def closures():
    """Counter-clockwise from the front-left corner."""
    across = [30 + 55 * i for i in range(7)]
    deep = [30 + 50 * i for i in range(5)]
    out = WALL / 2
    return ([(x, -out) for x in across] + [(WIDE + out, y) for y in deep] +
            [(WIDE - x, DEEP + out) for x in across] + [(-out, DEEP - y) for y in deep])


def resting_areas():
    """Node to the area of wall top around it."""
    out = {}
    for j in range(len(YS)):
        for i in range(len(XS)):
            open_x, all_x = share(XS, i, 0, WIDE)
            open_y, all_y = share(YS, j, 0, DEEP)
            if all_x * all_y - open_x * open_y > 1e-9:
                out[node(i, j)] = all_x * all_y - open_x * open_y
    return out


def deck(stiffened, resting):
    """`resting`: node to area, of those that are pushed."""
    ground = 100000
    text = ["*NODE,NSET=PLATE"]
    text += [f"{node(i, j)},{x},{y},0." for j, y in enumerate(YS) for i, x in enumerate(XS)]
    text.append("*ELEMENT,TYPE=S4,ELSET=SHELL")
    number = 0
    for j in range(len(YS) - 1):
        for i in range(len(XS) - 1):
            number += 1
            text.append(f"{number},{node(i, j)},{node(i + 1, j)},{node(i + 1, j + 1)},{node(i, j + 1)}")
    text += ["*MATERIAL,NAME=BOARD", "*ELASTIC", "2200.,0.25", "*SHELL SECTION,ELSET=SHELL,MATERIAL=BOARD", f"{THICK}."]
    loads, rests = [], {}
    for j in range(len(YS)):
        for i in range(len(XS)):
            area = share(XS, i, 0, WIDE)[0] * share(YS, j, 0, DEEP)[0]
            if area > 0:
                loads.append(f"{node(i, j)},3,{area * 1e-3}")
    for at, area in resting.items():
        rests.setdefault(round(area, 6), []).append(at)
    springs = [(CLOSURE, [node(XS.index(x), YS.index(y)) for x, y in closures()])]
    springs += [(area * REST, nodes) for area, nodes in rests.items()]
    grounds = []
    for group, (stiffness, nodes) in enumerate(springs):
        text.append("*NODE")
        first = ground
        for at in nodes:
            text.append(f"{ground},{XS[(at - 1) % len(XS)]},{YS[(at - 1) // len(XS)]},-1000.")
            grounds.append(ground)
            ground += 1
        text.append(f"*ELEMENT,TYPE=SPRINGA,ELSET=S{group}")
        for k, at in enumerate(nodes):
            number += 1
            text.append(f"{number},{first + k},{at}")
        text += [f"*SPRING,ELSET=S{group}", "", f"{stiffness}"]
    fixed = [f"{at},1,3" for at in grounds]
    fixed += [f"{node(0, 0)},1,2", f"{node(len(XS) - 1, 0)},2,2"]
    if stiffened:
        brick, equations = 200000, []
        text += ["*MATERIAL,NAME=WOOD", "*ELASTIC", "10000.,0.3"]
        for middle in (WIDE / 3, 2 * WIDE / 3):
            side = PARTS + 1
            at = lambda a, j, c: brick + a + side * (c + side * j)
            text.append("*NODE")
            for j, y in enumerate(YS):
                for c in range(side):
                    for a in range(side):
                        text.append(f"{at(a, j, c)},{middle + PIECE * (a / PARTS - 0.5)},{y},{20 + PIECE * c / PARTS}")
                equations.append((node(XS.index(middle), j), at(PARTS // 2, j, 0)))
                fixed += [f"{at(PARTS // 2, j, c)},1,1" for c in range(side)]
            fixed.append(f"{at(PARTS // 2, len(YS) // 2, PARTS // 2)},2,2")
            text.append("*ELEMENT,TYPE=C3D8I,ELSET=PIECES")
            for j in range(len(YS) - 1):
                for c in range(PARTS):
                    for a in range(PARTS):
                        number += 1
                        corners = [at(a, j, c), at(a + 1, j, c), at(a + 1, j + 1, c), at(a, j + 1, c),
                                   at(a, j, c + 1), at(a + 1, j, c + 1), at(a + 1, j + 1, c + 1), at(a, j + 1, c + 1)]
                        text.append(f"{number}," + ",".join(map(str, corners)))
            brick += 10000
        text.append("*SOLID SECTION,ELSET=PIECES,MATERIAL=WOOD")
        for plate, piece in equations:
            text += ["*EQUATION", "2", f"{piece},3,1.,{plate},3,-1."]
    text += ["*BOUNDARY"] + fixed + ["*STEP", "*STATIC", "*CLOAD"] + loads
    text += ["*NODE PRINT,NSET=PLATE", "U", "*END STEP", ""]
    return "\n".join(text)


def lifts(path):
    lift = {}
    with open(path, encoding="ascii") as file:
        for row in file:
            words = row.split()
            if len(words) == 4 and words[0].isdigit():
                lift[int(words[0])] = float(words[3])
    assert len(lift) == len(XS) * len(YS), len(lift)
    return lift


def at_rest(folder, name):
    """Lifts once no wall top pulls and none is sunk into."""
    areas = resting_areas()
    rests = {at for at in areas if XS[(at - 1) % len(XS)] in (XS[0], XS[-1]) or YS[(at - 1) // len(XS)] in (YS[0], YS[-1])}
    while True:
        with open(os.path.join(folder, name + ".inp"), "w", encoding="ascii") as file:
            file.write(deck(name == "stiffened", {at: areas[at] for at in sorted(rests)}))
        subprocess.run(["ccx", "-i", name], cwd=folder, check=True, stdout=subprocess.DEVNULL)
        lift = lifts(os.path.join(folder, name + ".dat"))
        below = {at for at in areas if lift[at] < 0}
        print(name, "resting", len(rests), "changes", len(below ^ rests))
        if below == rests:
            pushed = -sum(areas[at] * REST * lift[at] for at in rests)
            pulled = sum(CLOSURE * lift[node(XS.index(x), YS.index(y))] for x, y in closures())
            assert abs(pulled - pushed - WIDE * DEEP * 1e-3) < 1e-3, (pulled, pushed)
            return lift
        rests = below


def answer(lift):
    inside = [(i, j) for i, x in enumerate(XS) for j, y in enumerate(YS) if 0 <= x <= WIDE and 0 <= y <= DEEP]
    edge = [(i, j) for i, j in inside if XS[i] in (0, WIDE) or YS[j] in (0, DEEP)]
    out = [f"bow {max(lift[node(i, j)] for i, j in inside):.6e}", f"gap {max(lift[node(i, j)] for i, j in edge):.6e}"]
    out += [f"pull {CLOSURE * lift[node(XS.index(x), YS.index(y))]:.6e}" for x, y in closures()]
    return "\n".join(out) + "\n"


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    here = os.path.dirname(os.path.abspath(__file__))
    for name in ("bare", "stiffened"):
        text = answer(at_rest(sys.argv[1], name))
        with open(os.path.join(here, name + ".txt"), "w", encoding="ascii") as file:
            file.write(text)
        with open(os.path.join(sys.argv[1], name + ".inp"), "rb") as deck_file:
            with open(os.path.join(here, name + ".inp.gz"), "wb") as packed:
                packed.write(gzip.compress(deck_file.read(), mtime=0))


main()
