/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief What gives first on one strap: stud, threads, nut, washer's bearing or
 *        the strap itself.
 *
 * Theory, sources and limits: lib/clamp/weakest.c.
 */
#ifndef STRAPWISE_WEAKEST_H
#define STRAPWISE_WEAKEST_H

#include <strapwise/strap.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What stands at both ends of the stud. Set by sw_engage_defaults() first;
 *  nothing is required. */
typedef struct {
    char nut_class[16]; /**< of the nut; "" = by grade of the stud */
    char material[24];  /**< what the stud is screwed into, by its key; "" =
                                  assumed a steel T-nut */
    char strap_material[24];  /**< of the strap, by its key; "" = assumed C45 */
    double engaged_length_mm; /**< full threads screwed in, 0.1 .. 1000 */
    double stud_tensile_MPa;  /**< instead of the grade's, 1 .. 1e4 */
    double stud_shear_ratio;  /**< shear over tensile strength, 0.3 .. 1.5 */
    double shear_strength_MPa; /**< instead of the material's, 0.1 .. 1e4 */
    double nut_proof_MPa;      /**< instead of the class's, 1 .. 1e4 */
    double pressure_limit_MPa; /**< instead of the strap material's, 1 .. 1e4 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                           the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                           question was changed afterwards */
} sw_engage_in;

/** One part that can give. A double that does not apply or is not known is
 *  SW_UNSET; load and limit are forces or stresses, whichever the part has. */
typedef struct {
    int status;                /**< 0 or sw_status */
    uint64_t warnings;         /**< SW_WARN_ bits, of this part */
    int part;                  /**< sw_gives */
    double margin;             /**< tension at which it gives over the strap's;
                                    limit over load where none was found */
    double load_N;             /**< stud tension that it carries */
    double limit_N;            /**< what it holds */
    double load_MPa;           /**< its stress or pressure */
    double limit_MPa;          /**< what it stands */
    double preload_at_limit_N; /**< stud tension at which it gives; none where
                                    the stud would be torn before */
    char how[80];              /**< how it gives */
} sw_gives_out;

/** Sets every field to "left to the library". */
SW_API void sw_engage_defaults(sw_engage_in *in);

/**
 * The part of one strap that gives at this rank.
 *
 * Example, the weakest part:
 * @code
 * sw_engage_in engage;
 * sw_engage_defaults(&engage);
 * strcpy(engage.material, "GJL-250");
 * sw_gives_out first = sw_strap_weakest(&in, &engage, 0, NULL);
 * @endcode
 *
 * @param in     the strap
 * @param engage what stands at both ends of the stud
 * @param rank   0 = least margin; parts of unknown strength come last; status
 *               SW_ERR_RANGE past the end
 * @param err    error record, may be NULL
 */
SW_API SW_NODISCARD sw_gives_out sw_strap_weakest(const sw_strap_in *in,
                                                  const sw_engage_in *engage,
                                                  int rank, sw_error *err);

/** The index-th default of `engage` that entered, 0 .. ; status SW_ERR_RANGE
 *  past the end. Those of the strap are sw_strap_assumed()'s. */
SW_API SW_NODISCARD sw_assumption
sw_strap_weakest_assumed(const sw_strap_in *in, const sw_engage_in *engage,
                         int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
