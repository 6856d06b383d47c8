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
    {.name = "tight",
     .purpose = "the short way: torque on every nut for a part and a cut",
     .usage =
         "--thread THREAD --straps NUMBER --cut FORCE --stud-to-toe LENGTH "
         "--stud-to-heel LENGTH (--part-height LENGTH --heel-height "
         "LENGTH | --tilt ANGLE) [options]",
     .text = "Equal straps round a part, a support under every toe. The cut is "
             "its largest sideways force; --part-length and --part-width let "
             "turning and tipping be checked; --toe-limit, or --part-material "
             "with --toe-area, bounds the force of one toe.\n",
     .example = "strapwise tight --thread M12 --lubrication oiled --straps 4 "
                "--cut 500N --stud-to-toe 30mm --stud-to-heel 60mm "
                "--part-height 40mm --heel-height 40mm --part-length 240mm "
                "--part-width 160mm --nose round --restraint held --toe-limit "
                "15kN",
     .topic = "tight",
     .more = " assumed nut_factor_from",
     .hidden = " preload_N torque_Nm" TRIALS,
     .positional = "",
     .run = run_tight},
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
    {.name = "pad",
     .purpose = "does a pad, nose or button mark the part?",
     .usage = "--force FORCE --part-material NAME (--pad-diameter LENGTH | "
              "--pad-length LENGTH --pad-width LENGTH | --nose round|ball "
              "--nose-radius LENGTH) [options]",
     .text = "",
     .example = "strapwise pad --force 4kN --pad-diameter 16mm --pad-material "
                "C11000 --part-material 6061-T6",
     .topic = "pad",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "disc",
     .purpose =
         "a disc between driver and live-centre cap: does it turn or tip off?",
     .usage = "--thrust FORCE --driver-diameter LENGTH [--cut-diameter LENGTH "
              "--tangential-cut FORCE] [options]",
     .text = "An axial cut is positive toward the driver. --required-margin is "
             "2 unless you say otherwise.\n",
     .example = "strapwise disc --thrust 5kN --driver-diameter 80mm "
                "--driver-bore 50mm --cut-diameter 120mm --tangential-cut 150N",
     .topic = "disc",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "chuck",
     .purpose = "chuck jaws at speed: grip, margin, and the speed that ends it",
     .usage = "--chuck-force FORCE [--jaw-mass MASS --jaw-radius LENGTH "
              "--speed RPM] [options]",
     .text = "The chuck force is that of all jaws together, standing.\n",
     .example =
         "strapwise chuck --chuck-force 40kN --jaw-mass 2kg --jaw-radius 80mm "
         "--speed 1200rpm --mu-jaw 0.2 --grip-diameter 120mm --cut-diameter "
         "100mm --tangential-cut 1.2kN --feed-cut 500N",
     .topic = "chuck",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "vacuum",
     .purpose = "a vacuum plate: does the part slide, gape or tip?",
     .usage = "--vacuum PRESSURE (--seal-length LENGTH --seal-width LENGTH | "
              "--seal-area AREA) [options]",
     .text = "",
     .example = "strapwise vacuum --vacuum 24inHg --seal-length 150mm "
                "--seal-width 100mm --side-cut 80N --cut-height 20mm",
     .topic = "vacuum",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp screw",
     .purpose = "a screw clamp or through-screw: force of a torque",
     .usage = "(--thread THREAD | --screw-diameter LENGTH --pitch LENGTH) "
              "(--torque TORQUE | --force FORCE | --hand-force FORCE "
              "--handle-length LENGTH) [options]",
     .text = "For a nut on a stud, with its lubrication: strapwise preload.\n",
     .example =
         "strapwise clamp screw --screw-diameter 3/4in --pitch 1/6in --profile "
         "acme --collar-radius 1/2in --hand-force 68lbf --handle-length 3.5in",
     .topic = "screw",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp cylinder",
     .purpose = "a hydraulic or air cylinder, its maker's limit kept",
     .usage = "--pressure PRESSURE (--bore LENGTH | --piston-area AREA) "
              "[--limit FORCE] [options]",
     .text = "",
     .example = "strapwise clamp cylinder --pressure 20bar --piston-area 32cm2 "
                "--efficiency 1 --limit 7kN",
     .topic = "cylinder",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp swing",
     .purpose = "a swing clamp or pivoted arm: force and highest pressure",
     .usage = "--arm LENGTH (--pressure PRESSURE --bore LENGTH | --input-force "
              "FORCE) [--rated-force FORCE --rated-arm LENGTH --rated-pressure "
              "PRESSURE] [options]",
     .text = "The maker's chart governs.\n",
     .example =
         "strapwise clamp swing --arm 65mm --pressure 50bar --bore 32mm --rod "
         "16mm --rated-force 3kN --rated-arm 50mm --rated-pressure 70bar",
     .topic = "swing",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp adhesive",
     .purpose = "tape or glue, by the data sheet alone",
     .usage = "--shear PRESSURE --tension PRESSURE --sheet-factor NUMBER "
              "--bond-length LENGTH --bond-width LENGTH [options]",
     .text = "Without a strength from the maker's data sheet, and its factor, "
             "nothing is calculated.\n",
     .example = "strapwise clamp adhesive --shear 0.5MPa --tension 0.4MPa "
                "--sheet-factor 3 --bond-length 100mm --bond-width 60mm "
                "--side-cut 100N --cut-height 5mm",
     .topic = "adhesive",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp bar",
     .purpose = "a bar pulled down by two studs onto two pads",
     .usage = "--stud1 FORCE --stud2 FORCE --span LENGTH --pad1 LENGTH --pad2 "
              "LENGTH --bar-width LENGTH --bar-thickness LENGTH [options]",
     .text = "Pads are measured from the first stud.\n",
     .example =
         "strapwise clamp bar --stud1 6kN --stud2 6kN --span 200mm --pad1 50mm "
         "--pad2 150mm --bar-width 40mm --bar-thickness 20mm --hole 14mm",
     .topic = "bar",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp squeeze",
     .purpose = "squeeze for a cut that friction holds: one face or two?",
     .usage = "--cut FORCE [--faces 1|2] [--squeeze FORCE] [options]",
     .text = "",
     .example = "strapwise clamp squeeze --cut 1000N --mu-face 0.2",
     .topic = "squeeze",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp couple",
     .purpose = "two pads against a push and a couple, by friction",
     .usage = "--normal1 FORCE --distance LENGTH [--across FORCE] [--along "
              "FORCE] [--couple TORQUE] [options]",
     .text = "The push goes through the middle between the pads.\n",
     .example = "strapwise clamp couple --normal1 4kN --distance 200mm "
                "--across 400N --couple 20N.m",
     .topic = "couple",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
    {.name = "clamp tripod",
     .purpose = "what each of three supports carries, or that the part rocks",
     .usage = "--x1 LENGTH --y1 LENGTH ... --x3 LENGTH --y3 LENGTH --force "
              "FORCE --x LENGTH --y LENGTH",
     .text = "",
     .example = "strapwise clamp tripod --x1 0mm --y1 0mm --x2 200mm --y2 0mm "
                "--x3 100mm --y3 150mm --force 3kN --x 100mm --y 60mm",
     .topic = "tripod",
     .more = "",
     .hidden = "",
     .positional = "",
     .run = run_clamp},
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
    {.name = "check",
     .purpose = "read a job file and tell what was understood",
     .usage = "JOB [options]",
     .text = "JOB is a text file with part, supports, stops, clamps and "
             "operations; every value has its unit. A fault is told with "
             "file, line and column.\n",
     .example = "strapwise check yoke-plate.yaml",
     .topic = "",
     .more = " assumed",
     .hidden = "",
     .positional = "file",
     .run = run_check},
    {.name = "hold",
     .purpose = "whether the part stays put under the cuts of a job",
     .usage = "JOB [--operation NAME] [--required-margin NUMBER] [--map FILE] "
              "[options]",
     .text = "Each operation of the job: by how much its cut may grow before "
             "the part slides, lifts or tips, where on the path, what goes "
             "first, and how little clamping holds it. Exit status 1 where an "
             "operation does not hold with the margin wanted, or a clamp of it "
             "must not be used: its strap walks, its stud or screw is past "
             "yield or proof, or it is over its maker's limit.\n",
     .example = "strapwise hold yoke-plate.yaml --operation skim --map "
                "skim.svg",
     .topic = "",
     .more = " operation required_margin map points assumed",
     .hidden = "",
     .positional = "file",
     .run = run_hold},
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
