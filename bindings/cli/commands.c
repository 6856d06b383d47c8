/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Commands: the table of topics of the command line. A new topic is a row
 * here and a run function.
 */
#include "cli.h"

#include <string.h>

/* fields that only a strap's trials use */
#define TRIALS " height_scatter_mm trials seed threads vary"

static const command list[] = {
    {.name = "thread",
     .purpose = "what a thread measures: pitch, areas, nut, washer, holes",
     .usage = "THREAD",
     .text = "A metric size without a pitch is the coarse one; an inch size "
             "needs its threads per inch.\n",
     .example = "strapwise thread 1/2-13 UNC",
     .topic = "thread",
     .more = "",
     .hidden = "",
     .positional = "designation",
     .run = run_thread},
    {.name = "torque",
     .purpose = "torque on the nut for a wanted clamp force in the stud",
     .usage = "THREAD (--preload FORCE | --use FRACTION) [options]",
     .text = "The clamp force here is the tension in the stud. How much of it "
             "reaches the part is a question to strapwise strap.\n",
     .example = "strapwise torque M12 --preload 20kN --lubrication oiled",
     .topic = "torque",
     .with = "spread",
     .more = " nut_factor_from",
     .hidden = " torque_Nm" TRIALS,
     .positional = "thread",
     .run = run_torque},
    {.name = "preload",
     .purpose = "clamp force in the stud that a torque on the nut gives",
     .usage = "THREAD --torque TORQUE [options]",
     .text = "The clamp force here is the tension in the stud. How much of it "
             "reaches the part is a question to strapwise strap.\n",
     .example = "strapwise preload 1/2-13 --torque \"25 ft-lbf\"",
     .topic = "preload",
     .with = "spread",
     .more = " nut_factor_from",
     .hidden = " preload_N use" TRIALS,
     .positional = "thread",
     .run = run_preload},
    {.name = "chart",
     .purpose = "a wall chart: torque for every stud size of a series",
     .usage = "[options]",
     .text = "",
     .example = "strapwise chart --series coarse --preload 3kN",
     .topic = "chart",
     .more = " series csv",
     .hidden = " thread",
     .positional = "",
     .run = run_chart},
    {.name = "strap",
     .purpose = "one strap clamp: force at the toe and pull on the part",
     .usage = "--thread THREAD (--preload FORCE | --torque TORQUE) "
              "--stud-to-toe LENGTH --stud-to-heel LENGTH (--part-height "
              "LENGTH --heel-height LENGTH | --tilt ANGLE) [options]",
     .text = "Everything else has a default, and the answer lists which ones "
             "entered. Backwards:\n"
             "  --find tilt    tilts that keep a side pull or a toe error "
             "within a limit\n"
             "  --find place   where the stud must stand for a toe force\n"
             "  --find torque  torque for a toe force\n"
             "  --find window  torque that keeps the toe force between two "
             "limits\n",
     .example = "strapwise strap --thread M12 --torque 20N.m "
                "--stud-to-toe 30mm --stud-to-heel 60mm --part-height 40mm "
                "--heel-height 41mm --nose round",
     .topic = "strap",
     .with = "strap_spread",
     .more = " find side_pull_N toe_error_pct vial_mm_per_m basis toe_force_N "
             "hold_N flat_N assumed nut_factor_from svg tilt_svg",
     .hidden = "",
     .positional = "",
     .run = run_strap},
    {.name = "window",
     .purpose = "torque whose low end holds and whose high end does not bend",
     .usage = "THREAD --hold FORCE --flat FORCE [options]",
     .text = "Both limits are tension in the stud: the low end of the spread "
             "must reach the one, the high end stay under the other. For "
             "limits at the toe: strapwise strap --find window.\n",
     .example = "strapwise window M12 --hold 8kN --flat 18kN --lubrication "
                "oiled",
     .topic = "window",
     .more = " nut_factor_from",
     .hidden = " preload_N torque_Nm use" TRIALS,
     .positional = "thread",
     .run = run_window},
    {.name = "weakest",
     .purpose = "what gives first on one strap: stud, threads, nut, washer",
     .usage = "--thread THREAD (--preload FORCE | --torque TORQUE) "
              "--stud-to-toe LENGTH --stud-to-heel LENGTH (--part-height "
              "LENGTH --heel-height LENGTH | --tilt ANGLE) [options]",
     .text =
         "The strap as for strapwise strap, and what stands at both ends of "
         "its stud.\n",
     .example = "strapwise weakest --thread M12 --torque 60N.m --stud-to-toe "
                "30mm --stud-to-heel 60mm --tilt 1deg --part-height 40mm "
                "--material 6061-T6 --engaged-length 18mm",
     .topic = "strap",
     .with = "weakest",
     .more = " assumed nut_factor_from",
     .hidden = " rank",
     .positional = "",
     .run = run_weakest},
    {.name = "strip",
     .purpose = "how far a stud must be screwed in, and what strips when",
     .usage = "THREAD [--material NAME] [--engaged-length LENGTH] [--preload "
              "FORCE] [options]",
     .text = "",
     .example = "strapwise strip M12 --material 6061-T6 --engaged-length 18mm "
                "--preload 20kN",
     .topic = "strip",
     .more = "",
     .hidden = "",
     .positional = "thread",
     .run = run_strip},
    {.name = "materials",
     .purpose = "materials of parts, plates, straps and T-nuts",
     .usage = "[options]",
     .text = "",
     .example = "strapwise materials",
     .topic = "",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_materials},
    {.name = "cut turn",
     .purpose = "forces of a turning cut on the part, torque, power",
     .usage =
         "--material NAME --depth LENGTH --feed LENGTH [--diameter LENGTH] "
         "[options]",
     .text =
         "Depth is square to the feed. With options that start with --other "
         "a second tool is put beside the first.\n",
     .example = "strapwise cut turn --material C45 --depth 2mm --feed 0.25mm "
                "--diameter 80mm --nose-radius 0.8mm",
     .topic = "turning",
     .more = " other",
     .hidden = "",
     .positional = "",
     .run = run_cut},
    {.name = "cut mill",
     .purpose = "which way a milling cutter pushes the part, and how hard",
     .usage = "--material NAME --diameter LENGTH --teeth N --feed-per-tooth "
              "LENGTH --depth LENGTH [--mode side --way climb --width LENGTH] "
              "[options]",
     .text = "Depth is along the cutter's axis, width across the feed. With "
             "options that start with --other a second cutter is put beside "
             "the first.\n",
     .example = "strapwise cut mill --material 6061-T6 --diameter 12mm --teeth "
                "3 --feed-per-tooth 0.08mm --depth 10mm --width 3mm --mode "
                "side --way climb --other-diameter 8mm --other-rake 12deg",
     .topic = "milling",
     .more = " other",
     .hidden = "",
     .positional = "",
     .run = run_cut},
    {.name = "cut drill",
     .purpose = "torque and thrust of a drill, and its pull at breakthrough",
     .usage = "--material NAME --diameter LENGTH --feed LENGTH [options]",
     .text = "With options that start with --other a second drill is put "
             "beside the first.\n",
     .example = "strapwise cut drill --material 6061-T6 --diameter 10mm --feed "
                "0.2mm",
     .topic = "drilling",
     .more = " other",
     .hidden = "",
     .positional = "",
     .run = run_cut},
    {.name = "cut materials",
     .purpose = "metals whose cutting constants are known",
     .usage = "[options]",
     .text = "",
     .example = "strapwise cut materials",
     .topic = "",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_cut_materials},
    {.name = "methods",
     .purpose = "ways of tightening a nut and how much the force scatters",
     .usage = "[options]",
     .text = "",
     .example = "strapwise methods",
     .topic = "",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_methods},
    {.name = "tool",
     .purpose = "what to set on a torque tool, or which tool would do",
     .usage = "TORQUE [--tool NAME | --range-high TORQUE --resolution TORQUE | "
              "--tools FILE] [options]",
     .text = "Without a tool it lists the usual ones that would do. --tools "
             "tries the shop's own, a CSV table with the columns name, kind, "
             "from, to, step, deviation and units in the header:\n"
             "  name, kind, from [ft-lbf], to [ft-lbf], step [ft-lbf], "
             "deviation [%]\n"
             "  big clicker, setting, 30, 150, 1, 4\n",
     .example = "strapwise tool 8.3N.m --tool click-25Nm",
     .topic = "tool",
     .more = " tools",
     .hidden = "",
     .positional = "torque_Nm",
     .run = run_tool},
    {.name = "calibrate",
     .purpose = "the shop's own nut factor from pairs of torque and force",
     .usage = "FILE [--thread THREAD] [--svg FILE] [options]",
     .text =
         "FILE is a table as a spreadsheet writes it, comma, semicolon or "
         "tab between the columns; - is standard input. First, each "
         "optional, lines such as\n"
         "  name: oiled studs, spring 2026\n"
         "  thread: M12\n"
         "  lubrication: slideway oil\n"
         "  prevailing: 2 N.m\n"
         "then the header with units, then a row for each stud in the order "
         "of tightening:\n"
         "  torque [N.m]; force [kN]\n"
         "  20; 8.31\n"
         "  40; 16.9\n"
         "More columns: thread torque, seat torque (measured apart), no, "
         "note. The force is the tension in the stud. The K can then be "
         "used: strapwise torque M12 --preload 20kN --nut-factor-from "
         "FILE.\n",
     .example = "strapwise calibrate pairs.csv --thread M12 --svg pairs.svg",
     .topic = "calibrate",
     .more = " svg",
     .hidden = "",
     .positional = "file",
     .run = run_calibrate},
    {.name = "page",
     .purpose = "a page to teach with: why a tilted strap pulls the part",
     .usage = "--output FILE [options]",
     .text = "One HTML file that works in any browser without a network: the "
             "strap drawn to scale, its forces, controls for everything, three "
             "experiments. It opens with the strap of the options.\n",
     .example = "strapwise page --thread M16 --torque 50N.m --output tilt.html",
     .topic = "strap",
     .more = "",
     .hidden = " nut",
     .positional = "",
     .run = run_page},
    {.name = "cases",
     .purpose = "recompute files of published values and count what differs",
     .usage = "FILE...",
     .text = "One case a line, its parts parted by tabs: topic, name=value "
             "..., =>, name=value~tolerance ..., # source. Instead of a value "
             "=> may be followed by !error field.\n",
     .example = "strapwise cases strap.cases",
     .topic = "",
     .more = "",
     .hidden = "",
     .positional = "file",
     .run = run_cases},
};

#define COMMANDS ((int)(sizeof list / sizeof list[0]))

const command *command_at(int index)
{
    return index >= 0 && index < COMMANDS ? &list[index] : NULL;
}

const command *command_named(const char *name)
{
    for (int i = 0; i < COMMANDS; i++)
        if (strcmp(list[i].name, name) == 0)
            return &list[i];
    return NULL;
}
