/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief How a call tells that it could not answer, and how a result tells
 *        that it is doubtful.
 *
 * Every fallible function returns a flat struct by value whose first member is
 * `int status` (0 = good), and takes a nullable `sw_error *` owned by the
 * caller as its last argument. On an error every double of the result is NaN.
 * A result that is usable but doubtful carries SW_WARN_ bits in
 * `warnings`.
 */
#ifndef STRAPWISE_STATUS_H
#define STRAPWISE_STATUS_H

#include <stddef.h>
#include <stdint.h>

/** @cond */
#if defined(SWIG)
#define SW_API
#define SW_NODISCARD
#elif defined(_WIN32)
#ifdef SW_BUILD
#define SW_API __declspec(dllexport)
#else
#define SW_API __declspec(dllimport)
#endif
#define SW_NODISCARD
#elif defined(__GNUC__)
#define SW_API __attribute__((visibility("default")))
#define SW_NODISCARD __attribute__((warn_unused_result))
#else
#define SW_API
#define SW_NODISCARD
#endif
/** @endcond */

#ifdef __cplusplus
extern "C" {
#endif

/** An optional number that the caller left to the library. Not a NaN: a NaN
 *  given as input is always an error. */
#define SW_UNSET (-1.7976931348623157e308)

/** An optional enumerator that the caller left to the library. */
#define SW_UNSET_WORD 0

/** @cond one list gives the enumerators and their names */
#define SW_ERROR_LIST(X)                                                       \
    X(SW_ERR_NULL, 1, "null_pointer")                                          \
    X(SW_ERR_MISSING, 2, "missing")                                            \
    X(SW_ERR_NAN, 3, "nan")                                                    \
    X(SW_ERR_RANGE, 4, "range")                                                \
    X(SW_ERR_SYNTAX, 5, "syntax")                                              \
    X(SW_ERR_UNIT, 6, "unit")                                                  \
    X(SW_ERR_UNKNOWN, 7, "unknown")                                            \
    X(SW_ERR_CONFLICT, 8, "conflict")                                          \
    X(SW_ERR_NONE, 9, "no_answer")                                             \
    X(SW_ERR_MEMORY, 10, "memory")                                             \
    X(SW_ERR_STOPPED, 11, "stopped")
/** @endcond */

/** Error codes; 0 is good. SW_ERR_NULL: a required pointer is missing.
 *  SW_ERR_MISSING: a required value was not given. SW_ERR_NAN: a value is not a
 *  number. SW_ERR_RANGE: outside the allowed range. SW_ERR_SYNTAX: a text could
 *  not be read. SW_ERR_UNIT: a unit is missing, unknown or of another kind.
 *  SW_ERR_UNKNOWN: a name is in no table. SW_ERR_CONFLICT: values exclude each
 *  other. SW_ERR_NONE: no value in range meets the demand, or the strap has no
 *  equilibrium. SW_ERR_MEMORY: out of memory. SW_ERR_STOPPED: the caller ended
 *  the run. */
typedef enum {
    SW_OK = 0,
#define SW_X(sym, num, name) sym = num,
    SW_ERROR_LIST(SW_X)
#undef SW_X
} sw_status;

/** What went wrong, in one line. Owned by the caller; nothing to free. */
typedef struct {
    int code;          /**< sw_status */
    char field[40];    /**< the offending field of the input, or "" */
    double low;        /**< allowed range, lower end; NaN where there is none */
    double high;       /**< allowed range, upper end; NaN where there is none */
    char message[256]; /**< one line: field, value, allowed range with unit */
} sw_error;

/** Name of an error code ("range"), or "unknown_code". Static text. */
SW_API const char *sw_status_name(int code);

/** Number of error codes that exist (codes run 1 .. count). */
SW_API int sw_status_count(void);

/** @cond one list gives the names of the bits and their meaning */
#define SW_WARNING_LIST(X)                                                     \
    X(SW_WARN_HEEL_LOW, 0, "heel_low",                                         \
      "the strap rises from heel to toe (heel low): it pushes the part away, " \
      "and a flat nose rides on the part's edge")                              \
    X(SW_WARN_TOE_ON_EDGE, 1, "toe_on_edge",                                   \
      "a flat nose bears on the part's edge, not on its face: raise the heel " \
      "a little or use a round nose")                                          \
    X(SW_WARN_TOE_SLIDES, 2, "toe_slides",                                     \
      "the toe is at its friction limit and creeps on the part")               \
    X(SW_WARN_STRAP_WALKS, 3, "strap_walks",                                   \
      "toe and heel together cannot hold the strap: it walks until the end "   \
      "of its slot meets the stud")                                            \
    X(SW_WARN_STUD_YIELDS, 4, "stud_yields",                                   \
      "the stud is past its yield: the elastic answer ends here")              \
    X(SW_WARN_STUD_STRENGTH_UNKNOWN, 5, "stud_strength_unknown",               \
      "the grade has no yield for this size: stud stress was not judged")      \
    X(SW_WARN_SEAT_ANGLE, 6, "seat_angle",                                     \
      "the tilt exceeds what the spherical washer pair takes up")              \
    X(SW_WARN_SEAT_TABLE, 7, "seat_table",                                     \
      "no spherical washer of this size in the table: sphere radius assumed")  \
    X(SW_WARN_TILT_LARGE, 8, "tilt_large",                                     \
      "the tilt is beyond 5 degrees, where the model was never compared")      \
    X(SW_WARN_ON_RIM, 9, "on_rim", "the nut or washer bears on one edge only") \
    X(SW_WARN_NUT_TRAVEL, 10, "nut_travel",                                    \
      "the nut moves sideways by more than the slot's clearance")              \
    X(SW_WARN_STRAP_YIELDS, 11, "strap_yields",                                \
      "the strap or bar bends past the yield assumed for it")                  \
    X(SW_WARN_STUD_NEAR_HEEL, 12, "stud_near_heel",                            \
      "the stud stands nearer the heel than the toe: the heel takes the "      \
      "larger share")                                                          \
    X(SW_WARN_NO_NOMINAL, 13, "no_nominal",                                    \
      "the nut does not turn: only the range from low to high counts, the "    \
      "middle is not a prediction")                                            \
    X(SW_WARN_OVER_PROOF, 14, "over_proof",                                    \
      "the preload exceeds 75 % of the proof load")                            \
    X(SW_WARN_OVER_YIELD, 15, "over_yield",                                    \
      "tension and torsion together exceed the yield of the grade")            \
    X(SW_WARN_PLAY_COVERS_TILT, 16, "play_covers_tilt",                        \
      "thread play is as large as the tilt: the nut may seat flat without "    \
      "bending the stud")                                                      \
    X(SW_WARN_HEIGHTS_ASSUMED, 17, "heights_assumed",                          \
      "neither part height nor stud length was given: both are assumed")       \
    X(SW_WARN_SELF_LOOSENING, 18, "self_loosening",                            \
      "friction is too low to keep the nut: it turns back by itself")          \
    X(SW_WARN_LUBRICATION_CONFLICT, 19, "lubrication_conflict",                \
      "handbooks disagree about this condition: measure your own K")           \
    X(SW_WARN_TABLE_FROM_MEMORY, 20, "table_from_memory",                      \
      "a value of a table that entered was written from memory or by common "  \
      "practice, without a source")                                            \
    X(SW_WARN_UNUSED_INPUT, 21, "unused_input",                                \
      "a value was given that nothing here uses, such as a radius for a flat " \
      "nose or a lubrication beside a nut factor")                             \
    X(SW_WARN_SEAT_TILT_ASSUMED, 22, "seat_tilt_assumed",                      \
      "how far the spherical pair may tilt is from memory, without a source: " \
      "ask its maker")                                                         \
    X(SW_WARN_MEASURES, 23, "measures",                                        \
      "the measures do not fit together: the stud is shorter than what it "    \
      "passes through, or the washer reaches over a contact")                  \
    X(SW_WARN_BETWEEN_EDGES, 24, "between_edges",                              \
      "a flat land is about to change the edge it bears on: the toe force "    \
      "lies between, and a little heel height moves it far")                   \
    X(SW_WARN_HIGH_OVER_PROOF, 25, "high_over_proof",                          \
      "the high end of the spread exceeds 75 % of the proof load")             \
    X(SW_WARN_HIGH_OVER_YIELD, 26, "high_over_yield",                          \
      "the high end of the spread exceeds the yield of the grade")             \
    X(SW_WARN_TRIALS_FAILED, 27, "trials_failed",                              \
      "in some of the trials the strap tips or jams: they are left out")       \
    X(SW_WARN_TOOL_ROUNDING, 28, "tool_rounding",                              \
      "the step of the tool moves the torque by more than a quarter of its "   \
      "permitted deviation: go on with the torque that is set")                \
    X(SW_WARN_TOOL_ASSUMED, 29, "tool_assumed",                                \
      "range, step or permitted deviation of the tool are those usual for "    \
      "its kind: read them on the tool or in its certificate")                 \
    X(SW_WARN_FEW_PAIRS, 30, "few_pairs",                                      \
      "fewer than 10 pairs: the tolerance interval is more than 1.7 times as " \
      "wide as that of many, and an outlier or a trend is hardly seen")        \
    X(SW_WARN_OUTLIER, 31, "outlier",                                          \
      "one pair lies further out than chance allows (Grubbs, 5 %): look at "   \
      "that stud and reading; it is still counted")                            \
    X(SW_WARN_FACTOR_VARIES, 32, "factor_varies",                              \
      "K seems not to be constant: it changes with the torque or from row to " \
      "row (threads that wear, or rows that were sorted), or force and "       \
      "torque "                                                                \
      "do not start at zero together (three looks at 5 %: one clean sample "   \
      "in "                                                                    \
      "ten shows this)")                                                       \
    X(SW_WARN_FACTOR_IMPLAUSIBLE, 33, "factor_implausible",                    \
      "K outside 0.05 to 0.6, friction outside 0 to 0.6, or torques that do "  \
      "not add up: wrong unit, column or thread?")                             \
    X(SW_WARN_THREAD_DIFFERS, 34, "thread_differs",                            \
      "the pairs were taken with another thread: K depends on it")             \
    X(SW_WARN_STRIPS_FIRST, 35, "strips_first",                                \
      "a thread strips before the stud breaks: engage it longer, so that a "   \
      "stud too tight shows itself")                                           \
    X(SW_WARN_ENGAGED_SHORT, 36, "engaged_short",                              \
      "the engaged threads do not hold the load with its factor")              \
    X(SW_WARN_STRENGTH_UNKNOWN, 37, "strength_unknown",                        \
      "the strength of this part is in no table: it was not judged and "       \
      "stands last")                                                           \
    X(SW_WARN_GIVES, 38, "gives", "this part gives under the load asked for")  \
    X(SW_WARN_STUD_ENDS_WINDOW, 39, "stud_ends_window",                        \
      "the stud yields below the upper limit given: its yield ends the "       \
      "window")                                                                \
    X(SW_WARN_METHOD_READS, 40, "method_reads",                                \
      "this way of tightening reads something else than torque: a torque set " \
      "without it scatters more")                                              \
    X(SW_WARN_PAIRS_ALIKE, 41, "pairs_alike",                                  \
      "all pairs have the same K: copied or coarsely rounded readings say "    \
      "nothing about scatter")                                                 \
    X(SW_WARN_FEW_TRIALS, 42, "few_trials",                                    \
      "fewer than ten trials lie beyond each end for so wide a coverage: the " \
      "ends are not known, take more trials")                                  \
    X(SW_WARN_CHIP_THIN, 43, "chip_thin",                                      \
      "the chip is thinner than 0.02 mm: the law of the specific force is "    \
      "extrapolated, and a rounded edge rubs and pushes harder")               \
    X(SW_WARN_CUT_GROUP, 44, "cut_group",                                      \
      "the material stands for a group of many alloys: its cutting constants " \
      "are those of the group")                                                \
    X(SW_WARN_CUT_EDITIONS, 45, "cut_editions",                                \
      "editions of the table of cutting constants disagree about this metal "  \
      "by half or more: its usual range holds both")                           \
    X(SW_WARN_DEVICE_LIMIT, 46, "device_limit",                                \
      "more is asked than the maker of the device allows: lower pressure or "  \
      "thrust, and see that it cannot rise")                                   \
    X(SW_WARN_PAD_CREEPS, 47, "pad_creeps",                                    \
      "a plastic pad creeps: its force falls in minutes to hours by an "       \
      "amount that nobody can calculate; tighten again, measure, or use "      \
      "metal")                                                                 \
    X(SW_WARN_VACUUM_DEEP, 48, "vacuum_deep",                                  \
      "this vacuum is within a tenth of the air's whole pressure here: few "   \
      "workshop pumps hold it, and a leak takes it at once")                   \
    X(SW_WARN_GRIP_LOST, 49, "grip_lost",                                      \
      "the speed takes more than 67 % of the chuck's force, more than EN "     \
      "1550 allows: slow down")                                                \
    X(SW_WARN_GAP_FIRST, 50, "gap_first",                                      \
      "the face opens at its edge before it slides or tips: from there on "    \
      "chips and coolant get in, and vacuum is lost")                          \
    X(SW_WARN_FRICTION_HIGH, 51, "friction_high",                              \
      "a friction above 0.3 was given: clean, dry laboratory values do not "   \
      "hold with coolant and chips; count on them after a pull test alone")
/** @endcond */

/** @name Bits of a result's `warnings`, numbered as in the list.
 *  Macros, since an enumerator need not hold more than 31 of them. @{ */
#define SW_WARN_HEEL_LOW (1ULL << 0)
#define SW_WARN_TOE_ON_EDGE (1ULL << 1)
#define SW_WARN_TOE_SLIDES (1ULL << 2)
#define SW_WARN_STRAP_WALKS (1ULL << 3)
#define SW_WARN_STUD_YIELDS (1ULL << 4)
#define SW_WARN_STUD_STRENGTH_UNKNOWN (1ULL << 5)
#define SW_WARN_SEAT_ANGLE (1ULL << 6)
#define SW_WARN_SEAT_TABLE (1ULL << 7)
#define SW_WARN_TILT_LARGE (1ULL << 8)
#define SW_WARN_ON_RIM (1ULL << 9)
#define SW_WARN_NUT_TRAVEL (1ULL << 10)
#define SW_WARN_STRAP_YIELDS (1ULL << 11)
#define SW_WARN_STUD_NEAR_HEEL (1ULL << 12)
#define SW_WARN_NO_NOMINAL (1ULL << 13)
#define SW_WARN_OVER_PROOF (1ULL << 14)
#define SW_WARN_OVER_YIELD (1ULL << 15)
#define SW_WARN_PLAY_COVERS_TILT (1ULL << 16)
#define SW_WARN_HEIGHTS_ASSUMED (1ULL << 17)
#define SW_WARN_SELF_LOOSENING (1ULL << 18)
#define SW_WARN_LUBRICATION_CONFLICT (1ULL << 19)
#define SW_WARN_TABLE_FROM_MEMORY (1ULL << 20)
#define SW_WARN_UNUSED_INPUT (1ULL << 21)
#define SW_WARN_SEAT_TILT_ASSUMED (1ULL << 22)
#define SW_WARN_MEASURES (1ULL << 23)
#define SW_WARN_BETWEEN_EDGES (1ULL << 24)
#define SW_WARN_HIGH_OVER_PROOF (1ULL << 25)
#define SW_WARN_HIGH_OVER_YIELD (1ULL << 26)
#define SW_WARN_TRIALS_FAILED (1ULL << 27)
#define SW_WARN_TOOL_ROUNDING (1ULL << 28)
#define SW_WARN_TOOL_ASSUMED (1ULL << 29)
#define SW_WARN_FEW_PAIRS (1ULL << 30)
#define SW_WARN_OUTLIER (1ULL << 31)
#define SW_WARN_FACTOR_VARIES (1ULL << 32)
#define SW_WARN_FACTOR_IMPLAUSIBLE (1ULL << 33)
#define SW_WARN_THREAD_DIFFERS (1ULL << 34)
#define SW_WARN_STRIPS_FIRST (1ULL << 35)
#define SW_WARN_ENGAGED_SHORT (1ULL << 36)
#define SW_WARN_STRENGTH_UNKNOWN (1ULL << 37)
#define SW_WARN_GIVES (1ULL << 38)
#define SW_WARN_STUD_ENDS_WINDOW (1ULL << 39)
#define SW_WARN_METHOD_READS (1ULL << 40)
#define SW_WARN_PAIRS_ALIKE (1ULL << 41)
#define SW_WARN_FEW_TRIALS (1ULL << 42)
#define SW_WARN_CHIP_THIN (1ULL << 43)
#define SW_WARN_CUT_GROUP (1ULL << 44)
#define SW_WARN_CUT_EDITIONS (1ULL << 45)
#define SW_WARN_DEVICE_LIMIT (1ULL << 46)
#define SW_WARN_PAD_CREEPS (1ULL << 47)
#define SW_WARN_VACUUM_DEEP (1ULL << 48)
#define SW_WARN_GRIP_LOST (1ULL << 49)
#define SW_WARN_GAP_FIRST (1ULL << 50)
#define SW_WARN_FRICTION_HIGH (1ULL << 51)
/** @} */

/** Name of the warning with this bit number (0 ..), or NULL past the last. */
SW_API const char *sw_warning_name(int bit);

/** One sentence on the warning with this bit number, or NULL past the last. */
SW_API const char *sw_warning_text(int bit);

/** A default that entered a result. */
typedef struct {
    int status;       /**< 0, or SW_ERR_RANGE past the end of the list */
    char name[64];    /**< field of the input that was left open */
    char unit[12];    /**< "mm", "N", ... or "" */
    char word[32];    /**< the value, where it is a word; else "" */
    double value;     /**< the value, where it is a number; else NaN */
    double low;       /**< usual range, lower end; NaN for a word */
    double high;      /**< usual range, upper end; no range where it is not
                           above low */
    char source[160]; /**< where the value comes from */
} sw_assumption;

/** Library version "major.minor.patch". Static text. */
SW_API const char *sw_version(void);

/** Edition and date of the compiled-in tables. Static text. */
SW_API const char *sw_tables_version(void);

#ifdef __cplusplus
}
#endif
#endif
