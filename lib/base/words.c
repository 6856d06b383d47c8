/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Words: every enumerator and its word, both ways.
 */
#include "base/internal.h"

#include <string.h>

#define MOST 8

static const char *const word[SW_WORDS_COUNT + 1][MOST + 1] = {
    [SW_WORDS_FORM] = {NULL, "linear", "exact"},
    [SW_WORDS_TORSION] = {NULL, "plastic", "elastic"},
    [SW_WORDS_SEAT] = {NULL, "flat", "spherical"},
    [SW_WORDS_NOSE] = {NULL, "flat", "round", "ball"},
    [SW_WORDS_HEEL] = {NULL, "block", "serrated", "screw"},
    [SW_WORDS_FOOT] = {NULL, "held", "rocking"},
    [SW_WORDS_NUT] = {NULL, "turned", "still"},
    [SW_WORDS_STRAP] = {NULL, "bending", "rigid", "full"},
    [SW_WORDS_STATE] = {NULL, "level", "conformed", "on rim", "swivelled"},
    [SW_WORDS_PULL] = {NULL, "toward stud", "away from stud", "none"},
    [SW_WORDS_BAND] = {NULL, "model", "model+scatter"},
    [SW_WORDS_BEARS] = {NULL, "inner edge", "outer end", "nose"},
    [SW_WORDS_BASIS] = {NULL, "nominal", "band"},
    [SW_WORDS_SYSTEM] = {NULL, "metric", "unified"},
    [SW_WORDS_VARY] = {NULL, "all", "preload"},
    [SW_WORDS_VERDICT] = {NULL, "fits", "none"},
    [SW_WORDS_TOOL_KIND] = {NULL, "setting", "indicating"},
    [SW_WORDS_TORQUE_UNIT] = {NULL, "N.m", "in-lbf", "ft-lbf"},
    [SW_WORDS_GIVES] = {NULL, "stud", "stud thread", "tapped thread", "nut",
                        "washer bearing", "strap"},
    [SW_WORDS_RESTRAINT] = {NULL, "shared", "held", "free"},
    [SW_WORDS_SHOW] = {NULL, "si first", "us first", "si", "us"},
    [SW_WORDS_VIEW] = {NULL, "both", "side", "plan"},
    [SW_WORDS_ABOUT] = {NULL, "part", "reason", "change"},
    [SW_WORDS_PART] = {NULL, "support", "clamp", "stop", "load"},
    [SW_WORDS_NEEDED] = {NULL, "rest", "yes", "no"},
    [SW_WORDS_TURNING] = {NULL, "along", "facing", "boring"},
    [SW_WORDS_MILLING] = {NULL, "slot", "side", "face"},
    [SW_WORDS_CUT_WAY] = {NULL, "up", "climb"},
    [SW_WORDS_SCREW] = {NULL, "pressing", "through"},
    [SW_WORDS_PROFILE] = {NULL, "v", "trapezoidal", "acme", "square"},
    [SW_WORDS_SIDE] = {NULL, "push", "pull"},
    [SW_WORDS_ARM] = {NULL, "swing", "lever"},
    [SW_WORDS_CONTACT] = {NULL, "line", "point"},
    [SW_WORDS_FACE] = {NULL, "wear", "even"},
    [SW_WORDS_GRIP] = {NULL, "outside", "inside"},
    [SW_WORDS_STAYS] = {NULL, "holds", "too little margin", "does not hold"},
    [SW_WORDS_LOSES] = {NULL, "slide", "turn", "first gap", "tip", "lift",
                        "bond", "speed"},
    [SW_WORDS_MARK] = {NULL, "unlikely", "possible", "likely", "unknown"},
    [SW_WORDS_LIMIT] = {NULL, "given", "yield", "pressure limit",
                        "onset of yield", "half tensile", "unknown"},
    [SW_WORDS_CLAMP_KIND] = {NULL, "force", "strap", "screw", "through screw",
                             "cylinder", "swing", "vacuum", "bar"},
    [SW_WORDS_CUT_KIND] = {NULL, "force", "mill", "turn", "drill"},
    [SW_WORDS_CLAMP_FAULT] = {NULL, "none", "walks", "yields", "over limit"},
    [SW_WORDS_DEPTH] = {NULL, "full", "margin"},
    [SW_WORDS_REST] = {NULL, "stays", "rocks", "moves", "light", "loose"},
    [SW_WORDS_GOES] = {NULL, "rest", "lift", "tip", "slide", "none"},
    [SW_WORDS_PUSHED] = {NULL, "nowhere", "into stop", "off stop", "free"},
    [SW_WORDS_CORNERS] = {NULL, "none", "all", "search"},
    [SW_WORDS_IDLE] = {NULL, "carries", "idle"},
    [SW_WORDS_FACING] = {NULL, "opposed", "alike"},
    [SW_WORDS_GOVERNS] = {NULL, "slide", "lift"},
    [SW_WORDS_REMEDY] = {NULL, "straps", "cut", "tightening", "level", "grip"},
};

const char *sw_word(int list, int value)
{
    if (list < 1 || list > SW_WORDS_COUNT || value < 1 || value > MOST)
        return NULL;
    return word[list][value];
}

/* What the trade says too. */
static const struct {
    int list, value;
    const char *word;
} also[] = {
    {SW_WORDS_CUT_WAY, SW_CUT_UP, "conventional"},
    {SW_WORDS_CUT_WAY, SW_CUT_CLIMB, "down"},
};

int sw_word_value(int list, const char *text)
{
    for (int v = 1; text && sw_word(list, v); v++)
        if (strcmp(sw_word(list, v), text) == 0)
            return v;
    for (size_t i = 0; text && i < sizeof also / sizeof also[0]; i++)
        if (also[i].list == list && strcmp(also[i].word, text) == 0)
            return also[i].value;
    return SW_UNSET_WORD;
}
