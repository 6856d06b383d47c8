/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief A part on its fixture: supports that carry it, clamps that press it,
 *        stops that it is pushed against, its weight, and the loads of the cut.
 *        Of libstrapwise-fixture.
 *
 * Frame: x and y in the table's plane, z up, heights from the plane of the
 * supports. Angles turn from +x toward +y, seen from above. Every force is the
 * one on the part.
 */
#ifndef STRAPWISE_ROOM_FIXTURE_H
#define STRAPWISE_ROOM_FIXTURE_H

#include <strapwise/words.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What a fixture is made of. */
typedef enum {
    SW_PART_SUPPORT = 1, /**< pushes up, and rubs */
    SW_PART_CLAMP,       /**< presses down */
    SW_PART_STOP,        /**< pushes sideways */
    SW_PART_LOAD         /**< the cut at one point of its path */
} sw_part;

/** Whether a support must go on carrying. */
typedef enum {
    SW_NEEDED_REST = 1, /**< if it carries load before the cut */
    SW_NEEDED_YES,      /**< yes: the part must not leave it */
    SW_NEEDED_NO        /**< no: the part may lift off it */
} sw_needed;

/** A point that carries the part: pad, rest button, jack. */
typedef struct {
    char name[32];             /**< "" = S1, S2, ... */
    double x_mm;               /**< place; required, -1e5 .. 1e5 */
    double y_mm;               /**< place; required, -1e5 .. 1e5 */
    double z_mm;               /**< height of its top, -1e5 .. 1e5; open: 0 */
    double friction;           /**< against the part, 0 .. 2 */
    double stiffness_N_per_mm; /**< 1 .. 1e9; only the ratios count */
    int needed;                /**< sw_needed; open: if it carries at rest */
    double least_N;   /**< load it must keep while it is needed, 0 .. 1e7 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default */
    uint64_t seal;    /**< set by resolving, else 0 */
} sw_support_in;

/** What one clamp does to the part. Its force stays the same while the part
 *  gives way. */
typedef struct {
    char name[32];      /**< "" = C1, C2, ... */
    double x_mm;        /**< where it presses; required, -1e5 .. 1e5 */
    double y_mm;        /**< where it presses; required, -1e5 .. 1e5 */
    double z_mm;        /**< height of that point, -1e5 .. 1e5; open: 0 */
    double force_N;     /**< down, at the low end of its spread; required,
                             0 .. 1e7 */
    double toward_deg;  /**< direction from the toe to the stud, -360 .. 360 */
    double pull_low_N;  /**< side pull on the part, positive toward the stud,
                             -1e7 .. 1e7; open: 0 */
    double pull_high_N; /**< its other end; open: the low end */
    double drag_low_N;  /**< nut drag on the part, positive to the right of
                             somebody at the stud who faces the part, -1e7 ..
                             1e7; open: 0 */
    double drag_high_N; /**< its other end; open: the low end */
    double held_friction; /**< friction at a toe that cannot move sideways, 0 ..
                               2; open: 0, the toe goes with the part */
    uint64_t assumed; /**< set by the library: bit n = field n is a default */
    uint64_t seal;    /**< set by resolving, else 0 */
} sw_clamp_in;

/** A point that the part is pushed against from the side; it only pushes. */
typedef struct {
    char name[32];   /**< "" = A, B, ... Z, then AA, ... */
    double x_mm;     /**< place; required, -1e5 .. 1e5 */
    double y_mm;     /**< place; required, -1e5 .. 1e5 */
    double z_mm;     /**< height of the contact, -1e5 .. 1e5; open: 0 */
    double push_deg; /**< direction in which it pushes the part; required, -360
                          .. 360 */
    double friction; /**< against the part, 0 .. 2; open: 0 */
    double least_N;  /**< seating force it must keep before the cut, 0 .. 1e7 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default */
    uint64_t seal;    /**< set by resolving, else 0 */
} sw_stop_in;

/** What the cut does to the part at one point of its path. */
typedef struct {
    char name[32];      /**< "" = P1, P2, ...; several loads may share a name */
    double x_mm;        /**< tool point; required, -1e5 .. 1e5 */
    double y_mm;        /**< tool point; required, -1e5 .. 1e5 */
    double z_mm;        /**< tool point; required, -1e5 .. 1e5 */
    double force_x_N;   /**< on the part, -1e7 .. 1e7; open: 0 */
    double force_y_N;   /**< on the part, -1e7 .. 1e7; open: 0 */
    double force_z_N;   /**< on the part, up, -1e7 .. 1e7; open: 0 */
    double moment_x_Nm; /**< beside the force, -1e6 .. 1e6; open: 0 */
    double moment_y_Nm; /**< beside the force, -1e6 .. 1e6; open: 0 */
    double moment_z_Nm; /**< beside the force, from +x toward +y, -1e6 .. 1e6;
                             open: 0 */
    uint64_t assumed;   /**< set by the library: bit n = field n is a default */
    uint64_t seal;      /**< set by resolving, else 0 */
} sw_load_in;

/** The part's weight. */
typedef struct {
    double weight_N;  /**< 0 .. 1e7; required */
    double x_mm;      /**< centre of gravity; required, -1e5 .. 1e5 */
    double y_mm;      /**< centre of gravity; required, -1e5 .. 1e5 */
    double z_mm;      /**< centre of gravity, -1e5 .. 1e5; open: 0 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default */
    uint64_t seal;    /**< set by resolving, else 0 */
} sw_weight_in;

/** Sets every field to "left to the library". */
SW_API void sw_support_defaults(sw_support_in *in);
/** Sets every field to "left to the library". */
SW_API void sw_clamp_defaults(sw_clamp_in *in);
/** Sets every field to "left to the library". */
SW_API void sw_stop_defaults(sw_stop_in *in);
/** Sets every field to "left to the library". */
SW_API void sw_load_defaults(sw_load_in *in);
/** Sets every field to "left to the library". */
SW_API void sw_weight_defaults(sw_weight_in *in);

/** Fills every open field in place and sets its bit in `assumed`. A resolved
 *  question that was changed is refused. @return 0 or sw_status, `in`
 *  untouched then */
SW_API SW_NODISCARD int sw_support_resolve(sw_support_in *in, sw_error *err);
/** As sw_support_resolve(). */
SW_API SW_NODISCARD int sw_clamp_resolve(sw_clamp_in *in, sw_error *err);
/** As sw_support_resolve(). */
SW_API SW_NODISCARD int sw_stop_resolve(sw_stop_in *in, sw_error *err);
/** As sw_support_resolve(). */
SW_API SW_NODISCARD int sw_load_resolve(sw_load_in *in, sw_error *err);
/** As sw_support_resolve(). */
SW_API SW_NODISCARD int sw_weight_resolve(sw_weight_in *in, sw_error *err);

/** The index-th default that enters, with its usual range and source; status
 *  SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_assumption sw_support_assumed(const sw_support_in *in,
                                                     int index, sw_error *err);
/** As sw_support_assumed(). */
SW_API SW_NODISCARD sw_assumption sw_clamp_assumed(const sw_clamp_in *in,
                                                   int index, sw_error *err);
/** As sw_support_assumed(). */
SW_API SW_NODISCARD sw_assumption sw_stop_assumed(const sw_stop_in *in,
                                                  int index, sw_error *err);

/** A part on its fixture. */
typedef struct sw_fixture sw_fixture;

/** An empty fixture; NULL when memory runs out. */
SW_API SW_NODISCARD sw_fixture *sw_fixture_new(sw_error *err);

/** NULL is nothing to free. */
SW_API void sw_fixture_free(sw_fixture *fixture);

/** Adds one part of each kind, resolved. A name that another of its kind has
 *  is refused, but for loads. At most 64 supports, clamps and stops each, and
 *  100,000 loads.
 *  @return 0 or sw_status, the fixture as it was then */
SW_API SW_NODISCARD int sw_fixture_add_support(sw_fixture *fixture,
                                               const sw_support_in *in,
                                               sw_error *err);
/** As sw_fixture_add_support(). */
SW_API SW_NODISCARD int
sw_fixture_add_clamp(sw_fixture *fixture, const sw_clamp_in *in, sw_error *err);
/** As sw_fixture_add_support(). */
SW_API SW_NODISCARD int
sw_fixture_add_stop(sw_fixture *fixture, const sw_stop_in *in, sw_error *err);
/** As sw_fixture_add_support(). */
SW_API SW_NODISCARD int
sw_fixture_add_load(sw_fixture *fixture, const sw_load_in *in, sw_error *err);

/** Gives the part its weight, instead of an earlier one.
 *  @return 0 or sw_status, the fixture as it was then */
SW_API SW_NODISCARD int sw_fixture_set_weight(sw_fixture *fixture,
                                              const sw_weight_in *in,
                                              sw_error *err);

/** How many of a kind (sw_part) there are; 0 for NULL or no such kind. */
SW_API int sw_fixture_count(const sw_fixture *fixture, int part);

/** The index-th support as it was added, resolved.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_fixture_support(const sw_fixture *fixture, int index,
                                           sw_support_in *in, sw_error *err);
/** As sw_fixture_support(). */
SW_API SW_NODISCARD int sw_fixture_clamp(const sw_fixture *fixture, int index,
                                         sw_clamp_in *in, sw_error *err);
/** As sw_fixture_support(). */
SW_API SW_NODISCARD int sw_fixture_stop(const sw_fixture *fixture, int index,
                                        sw_stop_in *in, sw_error *err);
/** As sw_fixture_support(). */
SW_API SW_NODISCARD int sw_fixture_load(const sw_fixture *fixture, int index,
                                        sw_load_in *in, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
