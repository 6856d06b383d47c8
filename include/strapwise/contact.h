/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Hertz contact of a cylinder or a ball.
 *
 * Theory, sources and limits: lib/clamp/contact.c.
 */
#ifndef STRAPWISE_CONTACT_H
#define STRAPWISE_CONTACT_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** Question to sw_contact(). Set by sw_contact_defaults() first. Required:
 *  force, first radius, length of a line contact, and both materials or
 *  moduli. */
typedef struct {
    double force_N;    /**< force on the contact, 0.001 .. 1e8 */
    int contact;       /**< a cylinder on its line, or a ball */
    double radius1_mm; /**< radius of the first body, 0.001 .. 1e6 */
    double radius2_mm; /**< radius of the second; negative: hollow, -1e9 ..
                            1e9 */
    double contact_length_mm; /**< line contact: its length, 0.001 .. 100000 */
    char material1[24];       /**< material of the first body, by its key */
    char material2[24];       /**< material of the second body, by its key */
    double modulus1_MPa;      /**< Young's modulus of the first, 1 .. 2e6 */
    double modulus2_MPa;      /**< Young's modulus of the second, 1 .. 2e6 */
    double poisson1;          /**< Poisson's ratio of the first, 0 .. 0.5 */
    double poisson2;          /**< Poisson's ratio of the second, 0 .. 0.5 */
    double yield_MPa;         /**< yield of the softer body, 0.1 .. 10000 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default
                           of the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                        question was changed afterwards */
} sw_contact_in;

/** Answer of sw_contact(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;           /**< 0 or sw_status */
    uint64_t warnings;    /**< SW_WARN_ bits */
    double half_width_mm; /**< half-width of a line, or radius of the spot */
    double peak_MPa;      /**< pressure in the middle */
    double mean_MPa;      /**< pressure on the whole contact */
    double approach_mm;   /**< by how much a ball approaches; open for a line */
    double shear_MPa;     /**< largest shear stress, below the surface */
    double onset_MPa;     /**< peak pressure at which yielding starts below the
                           surface */
    double onset_ratio;   /**< peak pressure over it */
    double onset_N;       /**< force at which it starts */
    double reduced_modulus_MPa; /**< of both bodies together */
} sw_contact_out;

/** Sets every field to "left to the library". */
SW_API void sw_contact_defaults(sw_contact_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing. A resolved question is for reading: to ask
 *  another, change the one it came from; a resolved one that was changed is
 *  refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_contact_resolve(sw_contact_in *in, sw_error *err);

/**
 * Hertz line or point contact: half-width, peak pressure, approach, and
 * onset of yield.
 *
 * Example:
 * @code
 * sw_contact_in in;
 * sw_contact_defaults(&in);
 * in.force_N = 2000;
 * in.radius1_mm = 6;
 * in.contact_length_mm = 20;
 * strcpy(in.material1, "C45");
 * strcpy(in.material2, "6061-T6");
 * sw_contact_out out = sw_contact(&in, NULL);   // out.peak_MPa
 * @endcode
 */
SW_API SW_NODISCARD sw_contact_out sw_contact(const sw_contact_in *in,
                                              sw_error *err);

/** The index-th default that entered, 0 .. ; status SW_ERR_RANGE past the
 *  end. `in` may be resolved or not. */
SW_API SW_NODISCARD sw_assumption sw_contact_assumed(const sw_contact_in *in,
                                                     int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
