/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Topics of clamps other than straps, and of the closed forms of holding. All
 * have one plain question and one plain answer.
 */
#include "topics.h"

/* Everything of a topic that has its own question. */
#define ROOM(x)                                                                \
    static void x##_defaults(question *q) { sw_##x##_defaults(&q->in.x); }     \
    static void solve_##x(const question *q, answer *a)                        \
    {                                                                          \
        a->out.x = sw_##x(&q->in.x, &a->err);                                  \
    }                                                                          \
    static sw_assumption x##_assumed(const question *q, int i, sw_error *err)  \
    {                                                                          \
        return sw_##x##_assumed(&q->in.x, i, err);                             \
    }                                                                          \
    static const char *x##_not_checked(int index)                              \
    {                                                                          \
        const int count = sizeof x##_open / sizeof x##_open[0];                \
        return index >= 0 && index < count ? x##_open[index] : NULL;           \
    }

static const char *const screw_open[] = {
    "bending of frame, arm and handle; buckling of a long screw",
    "stripping of the thread: strapwise strip; a neck or hole in the screw",
    "tilting of the pad, and a part that turns with the screw",
    "whether the part stays put under the cut and comes off flat",
};
ROOM(screw)

static const char *const cylinder_open[] = {
    "whether the pressure is there: read it at every set-up, have it signed",
    "what happens when it falls: let the machine stop",
    "losses in pipes and valves, leaks, what happens when the supply fails",
    "side load of the rod; the maker's limits of pressure and stroke",
};
ROOM(cylinder)

static const char *const swing_open[] = {
    "the maker's chart governs: constants of arms differ",
    "bending of the arm, which lets the contact walk",
    "the way it swings: keep hands out, it closes fast",
    "whether the pressure is there: read the gauge at every set-up",
};
ROOM(swing)

static const char *const vacuum_open[] = {
    "tipping without the height of the cut, lifting without its lift",
    "leaks and reserve: without vacuum everything goes at once",
    "whether the machine stops when the vacuum goes: let it",
    "a part that bends, or is sucked into the grooves",
    "a cut that goes through into the plate or seal",
    "whether it comes off flat: the vacuum pulls a bowed part flat",
};
ROOM(vacuum)

static const char *const adhesive_open[] = {
    "peel of a thin part that bends: it tears from the edge",
    "heat and coolant under the cut, oil on the face, age of the bond",
    "how it comes off again: heat and solvents bend thin parts",
    "its maker's limits govern",
};
ROOM(adhesive)

static const char *const bar_open[] = {
    "how the part gives under the pads, and whether it marks: strapwise pad",
    "a bar that is not level: strapwise strap",
    "strength of the studs: strapwise torque, strapwise strip",
};
ROOM(bar)

static const char *const contact_open[] = {
    "ends of a line: they bite first",
    "roughness, layers, friction, what happens beyond the onset",
};
ROOM(contact)

static const char *const pad_open[] = {
    "sharp edges of the pad: break them, they mark first",
    "chips and grit under the pad; painted or anodised faces",
    "rubbing while the clamp is tightened",
    "how much the part bends under the force",
};
ROOM(pad)

static const char *const disc_open[] = {
    "tipping by a cut round or toward the axis without its height",
    "rating of the live centre: its axial load is the ceiling",
    "a thrust that slackens: lock quill and tailstock, look again when warm",
    "bending of a thin disc beyond the driver, and chatter",
    "speed: a disc that slips is thrown; guard shut, low speed, stand aside",
};
ROOM(disc)

static const char *const chuck_open[] = {
    "the chuck's own largest speed and force: its maker's limits govern",
    "overhang, weight, unbalance: a long part wants a factor of 4",
    "wear, grease and dirt of the chuck: measure the force",
    "how far the jaws press the part out of round",
};
ROOM(chuck)

static const char *const squeeze_open[] = {
    "tipping and turning, and a cut off the middle",
    "vibration, which lowers friction",
    "how much the squeeze bends the part",
};
ROOM(squeeze)

static const char *const couple_open[] = {
    "more than two pads, and a push off the middle: add its couple",
    "lifting and tipping",
    "vibration, which lowers friction",
};
ROOM(couple)

static const char *const tripod_open[] = {
    "forces along the table at a height: they move the place of the force",
    "whether the cut slides the part",
    "a fourth support: it carries what stiffness and chips decide",
};
ROOM(tripod)

#define ROW(x, X)                                                              \
    {                                                                          \
#x, SW_STRUCT_##X##_IN, 0, SW_STRUCT_##X##_OUT, "", x##_defaults,      \
            solve_##x, x##_assumed, x##_not_checked,                           \
            offsetof(sw_##x##_out, warnings), 0                                \
    }
static const topic list[] = {
    ROW(screw, SCREW),     ROW(cylinder, CYLINDER), ROW(swing, SWING),
    ROW(vacuum, VACUUM),   ROW(adhesive, ADHESIVE), ROW(bar, BAR),
    ROW(contact, CONTACT), ROW(pad, PAD),           ROW(disc, DISC),
    ROW(chuck, CHUCK),     ROW(squeeze, SQUEEZE),   ROW(couple, COUPLE),
    ROW(tripod, TRIPOD),
};

const topic *topic_clamp_at(int index)
{
    const int count = sizeof list / sizeof list[0];
    return index >= 0 && index < count ? &list[index] : NULL;
}
