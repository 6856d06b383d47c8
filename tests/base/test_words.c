/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Words: every list both ways, and the words that machine-readable output has
 * promised.
 */
#include "../common.h"
#include "../near.h"

START_TEST(both_ways)
{
    for (int list = 1; list <= SW_WORDS_COUNT; list++) {
        int count = 0;
        while (sw_word(list, count + 1))
            count++;
        ck_assert_int_ge(count, 2);
        for (int v = 1; v <= count; v++) {
            const char *word = sw_word(list, v);
            ck_assert_int_eq(sw_word_value(list, word), v);
            ck_assert_uint_gt(strlen(word), 0);
            for (const char *c = word; *c; c++)
                must((*c >= 'a' && *c <= 'z') || *c == ' ' || *c == '+' ||
                         list == SW_WORDS_TORQUE_UNIT,
                     "%s", word);
        }
        ck_assert_ptr_null(sw_word(list, count + 1));
        ck_assert_ptr_null(sw_word(list, 0));
    }
}
END_TEST

START_TEST(enumerators)
{
    static const struct {
        int list, value;
        const char *word;
    } row[] = {
        {SW_WORDS_FORM, SW_FORM_LINEAR, "linear"},
        {SW_WORDS_FORM, SW_FORM_EXACT, "exact"},
        {SW_WORDS_TORSION, SW_TORSION_PLASTIC, "plastic"},
        {SW_WORDS_TORSION, SW_TORSION_ELASTIC, "elastic"},
        {SW_WORDS_SEAT, SW_SEAT_FLAT, "flat"},
        {SW_WORDS_SEAT, SW_SEAT_SPHERICAL, "spherical"},
        {SW_WORDS_NOSE, SW_NOSE_FLAT, "flat"},
        {SW_WORDS_NOSE, SW_NOSE_ROUND, "round"},
        {SW_WORDS_NOSE, SW_NOSE_BALL, "ball"},
        {SW_WORDS_HEEL, SW_HEEL_BLOCK, "block"},
        {SW_WORDS_HEEL, SW_HEEL_SERRATED, "serrated"},
        {SW_WORDS_HEEL, SW_HEEL_SCREW, "screw"},
        {SW_WORDS_FOOT, SW_FOOT_HELD, "held"},
        {SW_WORDS_FOOT, SW_FOOT_ROCKING, "rocking"},
        {SW_WORDS_NUT, SW_NUT_TURNED, "turned"},
        {SW_WORDS_NUT, SW_NUT_STILL, "still"},
        {SW_WORDS_STRAP, SW_STRAP_BENDING, "bending"},
        {SW_WORDS_STRAP, SW_STRAP_RIGID, "rigid"},
        {SW_WORDS_STRAP, SW_STRAP_FULL, "full"},
        {SW_WORDS_STATE, SW_STATE_LEVEL, "level"},
        {SW_WORDS_STATE, SW_STATE_CONFORMED, "conformed"},
        {SW_WORDS_STATE, SW_STATE_RIM, "on rim"},
        {SW_WORDS_STATE, SW_STATE_SWIVELLED, "swivelled"},
        {SW_WORDS_GIVES, SW_GIVES_STUD, "stud"},
        {SW_WORDS_GIVES, SW_GIVES_STUD_THREAD, "stud thread"},
        {SW_WORDS_GIVES, SW_GIVES_TAPPED_THREAD, "tapped thread"},
        {SW_WORDS_GIVES, SW_GIVES_NUT, "nut"},
        {SW_WORDS_GIVES, SW_GIVES_WASHER_BEARING, "washer bearing"},
        {SW_WORDS_GIVES, SW_GIVES_STRAP, "strap"},
        {SW_WORDS_RESTRAINT, SW_RESTRAINT_SHARED, "shared"},
        {SW_WORDS_RESTRAINT, SW_RESTRAINT_HELD, "held"},
        {SW_WORDS_RESTRAINT, SW_RESTRAINT_FREE, "free"},
        {SW_WORDS_SHOW, SW_SHOW_SI_FIRST, "si first"},
        {SW_WORDS_SHOW, SW_SHOW_US_FIRST, "us first"},
        {SW_WORDS_SHOW, SW_SHOW_SI, "si"},
        {SW_WORDS_SHOW, SW_SHOW_US, "us"},
        {SW_WORDS_VIEW, SW_VIEW_BOTH, "both"},
        {SW_WORDS_VIEW, SW_VIEW_SIDE, "side"},
        {SW_WORDS_VIEW, SW_VIEW_PLAN, "plan"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_FORCE, "force"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_STRAP, "strap"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_SCREW, "screw"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_THROUGH, "through screw"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_CYLINDER, "cylinder"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_SWING, "swing"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_VACUUM, "vacuum"},
        {SW_WORDS_CLAMP_KIND, SW_CLAMP_BAR, "bar"},
        {SW_WORDS_CUT_KIND, SW_CUT_FORCE, "force"},
        {SW_WORDS_CUT_KIND, SW_CUT_MILL, "mill"},
        {SW_WORDS_CUT_KIND, SW_CUT_TURN, "turn"},
        {SW_WORDS_CUT_KIND, SW_CUT_DRILL, "drill"},
        {SW_WORDS_CLAMP_FAULT, SW_CLAMP_FAULT_NONE, "none"},
        {SW_WORDS_CLAMP_FAULT, SW_CLAMP_FAULT_WALKS, "walks"},
        {SW_WORDS_CLAMP_FAULT, SW_CLAMP_FAULT_YIELDS, "yields"},
        {SW_WORDS_CLAMP_FAULT, SW_CLAMP_FAULT_DEVICE, "over limit"},
        {SW_WORDS_ABOUT, SW_ABOUT_PART, "part"},
        {SW_WORDS_ABOUT, SW_ABOUT_REASON, "reason"},
        {SW_WORDS_ABOUT, SW_ABOUT_CHANGE, "change"},
        {SW_WORDS_TURNING, SW_TURNING_ALONG, "along"},
        {SW_WORDS_TURNING, SW_TURNING_FACING, "facing"},
        {SW_WORDS_TURNING, SW_TURNING_BORING, "boring"},
        {SW_WORDS_MILLING, SW_MILL_SLOT, "slot"},
        {SW_WORDS_MILLING, SW_MILL_SIDE, "side"},
        {SW_WORDS_MILLING, SW_MILL_FACE, "face"},
        {SW_WORDS_CUT_WAY, SW_CUT_UP, "up"},
        {SW_WORDS_CUT_WAY, SW_CUT_CLIMB, "climb"},
        {SW_WORDS_PULL, SW_PULL_TOWARD, "toward stud"},
        {SW_WORDS_PULL, SW_PULL_AWAY, "away from stud"},
        {SW_WORDS_PULL, SW_PULL_NONE, "none"},
        {SW_WORDS_BAND, SW_BAND_MODEL, "model"},
        {SW_WORDS_BAND, SW_BAND_SCATTER, "model+scatter"},
        {SW_WORDS_BEARS, SW_BEARS_EDGE, "inner edge"},
        {SW_WORDS_BEARS, SW_BEARS_TIP, "outer end"},
        {SW_WORDS_BEARS, SW_BEARS_NOSE, "nose"},
        {SW_WORDS_BASIS, SW_BASIS_NOMINAL, "nominal"},
        {SW_WORDS_BASIS, SW_BASIS_BAND, "band"},
        {SW_WORDS_SYSTEM, SW_SYSTEM_METRIC, "metric"},
        {SW_WORDS_SYSTEM, SW_SYSTEM_UNIFIED, "unified"},
        {SW_WORDS_VARY, SW_VARY_ALL, "all"},
        {SW_WORDS_VARY, SW_VARY_PRELOAD, "preload"},
        {SW_WORDS_VERDICT, SW_VERDICT_FITS, "fits"},
        {SW_WORDS_VERDICT, SW_VERDICT_NONE, "none"},
        {SW_WORDS_TOOL_KIND, SW_TOOL_SETTING, "setting"},
        {SW_WORDS_TOOL_KIND, SW_TOOL_INDICATING, "indicating"},
        {SW_WORDS_TORQUE_UNIT, SW_TORQUE_NM, "N.m"},
        {SW_WORDS_TORQUE_UNIT, SW_TORQUE_INLBF, "in-lbf"},
        {SW_WORDS_TORQUE_UNIT, SW_TORQUE_FTLBF, "ft-lbf"},
        {SW_WORDS_PART, SW_PART_SUPPORT, "support"},
        {SW_WORDS_PART, SW_PART_CLAMP, "clamp"},
        {SW_WORDS_PART, SW_PART_STOP, "stop"},
        {SW_WORDS_PART, SW_PART_LOAD, "load"},
        {SW_WORDS_NEEDED, SW_NEEDED_REST, "rest"},
        {SW_WORDS_NEEDED, SW_NEEDED_YES, "yes"},
        {SW_WORDS_NEEDED, SW_NEEDED_NO, "no"},
        {SW_WORDS_DEPTH, SW_DEPTH_FULL, "full"},
        {SW_WORDS_DEPTH, SW_DEPTH_MARGIN, "margin"},
        {SW_WORDS_REST, SW_REST_STAYS, "stays"},
        {SW_WORDS_REST, SW_REST_ROCKS, "rocks"},
        {SW_WORDS_REST, SW_REST_MOVES, "moves"},
        {SW_WORDS_REST, SW_REST_LIGHT, "light"},
        {SW_WORDS_REST, SW_REST_LOOSE, "loose"},
        {SW_WORDS_GOES, SW_GOES_REST, "rest"},
        {SW_WORDS_GOES, SW_GOES_LIFT, "lift"},
        {SW_WORDS_GOES, SW_GOES_TIP, "tip"},
        {SW_WORDS_GOES, SW_GOES_SLIDE, "slide"},
        {SW_WORDS_GOES, SW_GOES_NONE, "none"},
        {SW_WORDS_PUSHED, SW_PUSHED_NOT, "nowhere"},
        {SW_WORDS_PUSHED, SW_PUSHED_INTO, "into stop"},
        {SW_WORDS_PUSHED, SW_PUSHED_OFF, "off stop"},
        {SW_WORDS_PUSHED, SW_PUSHED_FREE, "free"},
        {SW_WORDS_CORNERS, SW_CORNERS_NONE, "none"},
        {SW_WORDS_CORNERS, SW_CORNERS_ALL, "all"},
        {SW_WORDS_CORNERS, SW_CORNERS_SEARCH, "search"},
        {SW_WORDS_IDLE, SW_IDLE_NO, "carries"},
        {SW_WORDS_IDLE, SW_IDLE_YES, "idle"},
        {SW_WORDS_SCREW, SW_SCREW_PRESSING, "pressing"},
        {SW_WORDS_SCREW, SW_SCREW_THROUGH, "through"},
        {SW_WORDS_PROFILE, SW_PROFILE_V, "v"},
        {SW_WORDS_PROFILE, SW_PROFILE_TRAPEZOIDAL, "trapezoidal"},
        {SW_WORDS_PROFILE, SW_PROFILE_ACME, "acme"},
        {SW_WORDS_PROFILE, SW_PROFILE_SQUARE, "square"},
        {SW_WORDS_SIDE, SW_SIDE_PUSH, "push"},
        {SW_WORDS_SIDE, SW_SIDE_PULL, "pull"},
        {SW_WORDS_ARM, SW_ARM_SWING, "swing"},
        {SW_WORDS_ARM, SW_ARM_LEVER, "lever"},
        {SW_WORDS_CONTACT, SW_CONTACT_LINE, "line"},
        {SW_WORDS_CONTACT, SW_CONTACT_POINT, "point"},
        {SW_WORDS_FACE, SW_FACE_WEAR, "wear"},
        {SW_WORDS_FACE, SW_FACE_EVEN, "even"},
        {SW_WORDS_GRIP, SW_GRIP_OUTSIDE, "outside"},
        {SW_WORDS_GRIP, SW_GRIP_INSIDE, "inside"},
        {SW_WORDS_STAYS, SW_STAYS_YES, "holds"},
        {SW_WORDS_STAYS, SW_STAYS_BARELY, "too little margin"},
        {SW_WORDS_STAYS, SW_STAYS_NOT, "does not hold"},
        {SW_WORDS_LOSES, SW_LOSES_SLIDE, "slide"},
        {SW_WORDS_LOSES, SW_LOSES_TURN, "turn"},
        {SW_WORDS_LOSES, SW_LOSES_GAP, "first gap"},
        {SW_WORDS_LOSES, SW_LOSES_TIP, "tip"},
        {SW_WORDS_LOSES, SW_LOSES_LIFT, "lift"},
        {SW_WORDS_LOSES, SW_LOSES_BOND, "bond"},
        {SW_WORDS_LOSES, SW_LOSES_SPEED, "speed"},
        {SW_WORDS_MARK, SW_MARK_UNLIKELY, "unlikely"},
        {SW_WORDS_MARK, SW_MARK_POSSIBLE, "possible"},
        {SW_WORDS_MARK, SW_MARK_LIKELY, "likely"},
        {SW_WORDS_MARK, SW_MARK_UNKNOWN, "unknown"},
        {SW_WORDS_LIMIT, SW_LIMIT_GIVEN, "given"},
        {SW_WORDS_LIMIT, SW_LIMIT_YIELD, "yield"},
        {SW_WORDS_LIMIT, SW_LIMIT_PRESSURE, "pressure limit"},
        {SW_WORDS_LIMIT, SW_LIMIT_ONSET, "onset of yield"},
        {SW_WORDS_LIMIT, SW_LIMIT_TENSILE, "half tensile"},
        {SW_WORDS_LIMIT, SW_LIMIT_UNKNOWN, "unknown"},
        {SW_WORDS_FACING, SW_FACING_OPPOSED, "opposed"},
        {SW_WORDS_FACING, SW_FACING_ALIKE, "alike"},
        {SW_WORDS_GOVERNS, SW_GOVERNS_SLIDE, "slide"},
        {SW_WORDS_GOVERNS, SW_GOVERNS_LIFT, "lift"},
        {SW_WORDS_REMEDY, SW_REMEDY_STRAPS, "straps"},
        {SW_WORDS_REMEDY, SW_REMEDY_CUT, "cut"},
        {SW_WORDS_REMEDY, SW_REMEDY_TIGHTENING, "tightening"},
        {SW_WORDS_REMEDY, SW_REMEDY_LEVEL, "level"},
        {SW_WORDS_REMEDY, SW_REMEDY_GRIP, "grip"},
    };
    size_t words = 0;
    for (int list = 1; list <= SW_WORDS_COUNT; list++)
        for (int v = 1; sw_word(list, v); v++)
            words++;
    ck_assert_uint_eq(words, sizeof row / sizeof row[0]);
    for (size_t i = 0; i < words; i++)
        ck_assert_str_eq(sw_word(row[i].list, row[i].value), row[i].word);
}
END_TEST

START_TEST(no_word)
{
    static const int none[] = {0, -1, SW_WORDS_COUNT + 1, 1000000, -1000000};
    for (size_t i = 0; i < sizeof none / sizeof none[0]; i++) {
        ck_assert_ptr_null(sw_word(none[i], 1));
        ck_assert_ptr_null(sw_word(SW_WORDS_SEAT, none[i]));
        ck_assert_int_eq(sw_word_value(none[i], "flat"), SW_UNSET_WORD);
    }
    static const char *const strange[] = {"",    "Flat",  "FLAT",  "flat ",
                                          "fla", "flats", " flat", "round"};
    for (size_t i = 0; i < sizeof strange / sizeof strange[0]; i++)
        ck_assert_int_eq(sw_word_value(SW_WORDS_SEAT, strange[i]),
                         SW_UNSET_WORD);
    ck_assert_int_eq(sw_word_value(SW_WORDS_SEAT, NULL), SW_UNSET_WORD);
}
END_TEST

/* Two words of the trade for one thing. */
START_TEST(synonyms)
{
    ck_assert_int_eq(sw_word_value(SW_WORDS_CUT_WAY, "conventional"),
                     SW_CUT_UP);
    ck_assert_int_eq(sw_word_value(SW_WORDS_CUT_WAY, "down"), SW_CUT_CLIMB);
    ck_assert_int_eq(sw_word_value(SW_WORDS_SEAT, "down"), SW_UNSET_WORD);
}
END_TEST

int main(void)
{
    return RUN_TESTS("words", both_ways, enumerators, synonyms, no_word);
}
