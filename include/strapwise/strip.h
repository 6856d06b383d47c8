/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Stripping: whether a stud breaks before the threads that hold it shear
 *        off, and how far it must be screwed in.
 *
 * Theory, sources and limits: lib/fastener/strip.c.
 */
#ifndef STRAPWISE_STRIP_H
#define STRAPWISE_STRIP_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_strip(). Set by sw_strip_defaults() first. Only the thread is
 *  required. */
typedef struct {
    char thread[32];   /**< designation of the stud; required */
    char grade[16];    /**< of the stud; "" = assumed 8.8 or grade-5 */
    char material[24]; /**< what it is screwed into, by its key; "" = assumed
                            a steel T-nut */
    double preload_N; /**< load on the threads, 1e-3 .. 1e8; open: no margins */
    double engaged_length_mm; /**< full threads in engagement, 0.1 .. 1000 */
    double factor;           /**< wanted over what the load strips, 0.1 .. 20 */
    double stud_tensile_MPa; /**< instead of the grade's, 1 .. 1e4 */
    double stud_shear_ratio; /**< shear over tensile strength, 0.3 .. 1.5 */
    double tensile_MPa;      /**< instead of the material's, 1 .. 1e4 */
    double shear_strength_MPa;    /**< of the material, 0.1 .. 1e4 */
    double major_diameter_mm;     /**< stud, least, 0.5 .. 200 */
    double pitch_diameter_mm;     /**< stud, least, 0.5 .. 200 */
    double nut_pitch_diameter_mm; /**< tapped thread, largest, 0.5 .. 200 */
    double nut_minor_diameter_mm; /**< tapped thread, largest, 0.5 .. 200 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_strip_in;

/** Answer of sw_strip(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;                    /**< 0 or sw_status */
    uint64_t warnings;             /**< SW_WARN_ bits */
    int first;                     /**< sw_gives: what gives first */
    double first_N;                /**< load at which it gives */
    double stud_break_N;           /**< tensile strength times stress area */
    double stud_strip_N;           /**< shears the stud's thread off */
    double tapped_strip_N;         /**< shears the tapped thread off */
    double stud_area_mm2;          /**< shear area of the stud's thread */
    double tapped_area_mm2;        /**< shear area of the tapped thread */
    double stud_area_per_mm_mm2;   /**< the same for 1 mm of engagement */
    double tapped_area_per_mm_mm2; /**< the same for 1 mm of engagement */
    double relative_strength;   /**< J: stud thread over tapped thread; above 1
                                   the tapped thread strips first */
    double stud_margin;         /**< stud_break_N over the load */
    double stud_strip_margin;   /**< stud_strip_N over the load */
    double tapped_strip_margin; /**< tapped_strip_N over the load */
    double length_full_mm;   /**< engagement at which the stud breaks first */
    double length_needed_mm; /**< engagement for the load with its factor */
} sw_strip_out;

/** Sets every field to "left to the library". */
SW_API void sw_strip_defaults(sw_strip_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask another,
 *  change the one it came from; a resolved one that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_strip_resolve(sw_strip_in *in, sw_error *err);

/**
 * Stripping strength of a stud's engagement, and the engagement needed.
 *
 * Example:
 * @code
 * sw_strip_in in;
 * sw_strip_defaults(&in);
 * strcpy(in.thread, "M12");
 * strcpy(in.material, "6061-T6");
 * in.engaged_length_mm = 12;
 * sw_strip_out out = sw_strip(&in, NULL);   // out.first, out.length_full_mm
 * @endcode
 */
SW_API SW_NODISCARD sw_strip_out sw_strip(const sw_strip_in *in, sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_strip_assumed(const sw_strip_in *in,
                                                   int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
