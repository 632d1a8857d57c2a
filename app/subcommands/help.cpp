// SPDX-License-Identifier: GPL-3.0-or-later
#include "subcommands/command_line.h"

namespace drawercast::subcommands {

std::string help_text() {
    return R"(drawercast plans foam inserts cast for drawers: whether a layout fits, how much
foam to mix, and the templates to build the mold by. It reads a job file
(NAME.drawercast.json) and never changes it.

  drawercast check JOB
        Lists what must be mended, what deserves a look, and what is worth
        knowing, each with its figure and its limit; then keys of the file that
        are not known: they are kept but not used.
  drawercast figures JOB
        Prints every figure as JSON.
  drawercast templates JOB --out FILE.pdf [--paper PAPER] [--sheet SHEET]
                       [--orientation portrait|landscape] [--language LANGUAGE]
        True-size templates, tiled with overlap, scales and a map: the pattern
        board (mirrored), the trial sheet, the pressure plate and the base to
        drill; then strips for the walls' screws, and labels. SHEET is
        pattern-board, drawer-check, pressure-plate, base-drilling, wall-strips
        or labels; all where it is left out. Without an orientation each
        drawing gets the one that takes fewer tiles. Where something must be
        mended they are written all the same, that is said, and the exit code
        is 1.
  drawercast summary JOB --out FILE.pdf [--paper PAPER] [--language LANGUAGE]
        The job on paper: each drawer's plan, foam, pressure, times, objects
        and checks; what to cut and buy; then assumptions and cautions.
  drawercast drawings JOB --out FOLDER [--language LANGUAGE]
        Each sheet of each drawer as an SVG drawing, one unit to the millimeter;
        exit code as of templates.
  drawercast arrange JOB --out JOB2 [--seconds SECONDS]
                     [--into DRAWER | --one-drawer]
        Places what is not placed yet, walls and edges kept, in the turns allowed,
        and writes the job that has it: split over all drawers in turn, or with
        --into in one alone. DRAWER is its id as check prints it: d1, d2. With
        --one-drawer each is tried by itself, what it takes is said, and the
        one that takes the most, of those the smallest, is written. Locked
        pockets stay. Takes at most SECONDS, 60 where they are left out; exit
        code 1 where something found no room; then what objects, fit and walls
        need of the room is said. A job that was there is kept beside the new one
        as JOB2.before.
  drawercast quote [JOB] --drawer WxDxT [--drawer …] [--objects N] [--area PERCENT]
        About what drawers cost before anything is measured: inside width and
        depth and the insert's thickness in mm, about how many objects in all
        (10 where left out), about how much of the inserts they cover (50).
        Foam, days, hours and price, each with its spread; with the foam, shop
        and prices of JOB, else of a new job.
  drawercast measuring-sheet --out FILE.pdf [--paper a4|letter]
                             [--language LANGUAGE]
        The sheet to photograph objects on, at true size. Printed at 100 %, not
        scaled to the page, its scales must measure 100 mm and 4 in.
  drawercast capture PICTURE --out JOB [--on SHEET | --scan DPI]
                     [--height MM] [--lens MM]
        Measures what lies on a sheet in a JPEG or PNG picture, and writes a new
        job with an object for each outline, its doubt in the note. SHEET is
        measuring-a4 (where it is left out) or measuring-letter, or a4 or letter
        for white paper seen whole, or scan for a flatbed's picture; with --scan
        its resolution is said too. MM of --height is how high the objects'
        widest edge lies above the sheet, of --lens how far the lens was from it,
        else told from the picture. What gives no sure outline is refused. A job
        that was there is kept beside the new one as JOB.before.
  drawercast --help | --version

PAPER is a4, letter, a3 or tabloid; a4 where it is left out. LANGUAGE is en or
de, of the words on paper; en where it is left out, whatever the window speaks.
An existing file is replaced only when the new one is complete; the file that is
read never is, nor is any job by a PDF. No display is needed.

Exit codes: 0 done, nothing to mend; 1 something must be mended (told by check,
templates and drawings), something found no room, nothing could be drawn or
quoted, a picture gives no outline, or half an hour was too short for what takes
long; 2 the job or picture can't be read; 3 the output can't be written, or would
take the place of what is read or of a job; 64 the command line is not
understood; 70 a fault of the program.
)";
}

} // namespace drawercast::subcommands
