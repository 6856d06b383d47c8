/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Whether a part stays put: by how much the cut may grow before the part
 *        slides, lifts or tips on its fixture, and how little clamping holds
 *        it. Of libstrapwise-fixture.
 *
 * Theory, sources and limits: lib/hold/hold.c.
 */
#ifndef STRAPWISE_ROOM_HOLD_H
#define STRAPWISE_ROOM_HOLD_H

#include <strapwise/fixture.h>
#include <strapwise/strap_spread.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How much is asked. */
typedef enum {
    SW_DEPTH_FULL = 1, /**< everything */
    SW_DEPTH_MARGIN    /**< margins alone: no ceiling, friction or limits */
} sw_depth;

/** How the part goes. */
typedef enum {
    SW_GOES_REST = 1, /**< before the cut: see the state at rest */
    SW_GOES_LIFT,     /**< it leaves a support that must carry */
    SW_GOES_TIP,      /**< it tips over its supports */
    SW_GOES_SLIDE,    /**< it slides */
    SW_GOES_NONE      /**< the cut cannot move it */
} sw_goes;

/** Where the straps push the part. */
typedef enum {
    SW_PUSHED_NOT = 1, /**< nowhere */
    SW_PUSHED_INTO,    /**< against a stop */
    SW_PUSHED_OFF,     /**< away from a stop */
    SW_PUSHED_FREE     /**< where no stop is */
} sw_pushed;

/** How the worst of the straps' side pulls was found. */
typedef enum {
    SW_CORNERS_NONE = 1, /**< none has a range */
    SW_CORNERS_ALL,      /**< every combination was tried at the worst loads */
    SW_CORNERS_SEARCH    /**< too many: a search from several starts, which
                              could miss the very worst */
} sw_corners;

/** Question about a fixture. Set by sw_hold_defaults() first; nothing is
 *  required. */
typedef struct {
    int depth;              /**< sw_depth; open: full */
    double required_margin; /**< wanted on the cut, 1 .. 20 */
    double largest_margin;  /**< margins end here, 10 .. 1e6: the cut cannot
                                 move the part */
    double disc_sides; /**< of the polygon that stands for a friction disc; 8
                            .. 128, a multiple of 4 */
    double support_least_N; /**< load that every support keeps at the least
                                 clamping, 0 .. 1e6 */
    double stop_least_N;    /**< load that the straps alone give every stop at
                                 the least clamping, 0 .. 1e6 */
    double largest_clamp_N; /**< of one clamp, at the least clamping, 1 ..
                                 1e7 */
    double friction_change; /**< for the margins with less and more friction, 0
                                 .. 0.5 */
    uint64_t assumed; /**< set by the library: bit n = field n is a default */
    uint64_t seal;    /**< set by resolving, else 0 */
} sw_hold_in;

/** The part on its fixture under its worst load. A double that does not apply
 *  is SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    int rest;          /**< sw_rest: before the cut */
    int first_to_go;   /**< sw_goes */
    int contact_part;  /**< sw_part: what kind the contact below is */
    char contact
        [32]; /**< the contact that goes first, or "": the support that is left, or of a sliding part the one that slides fastest, or the stop it leaves */
    double margin; /**< largest factor on the cut; 0 where the part does
                                 not rest */
    double required_margin;      /**< wanted */
    double margin_ceiling;       /**< no fixture of these contacts holds more,
                                 however stiff each support is */
    double margin_stops_idle;    /**< with stops and held toes that do not keep
                                   the part from tipping; does not apply where
                                   all are in the plane of the supports */
    double margin_friction_low;  /**< with less friction everywhere */
    double margin_friction_high; /**< with more friction everywhere */
    double
        rest_margin; /**< factor on the straps' side pulls before the cut; below 1 they move the part; does not apply where there are none */
    double worst_load;    /**< its index, 0 .. */
    char worst_name[32];  /**< its name */
    double worst_x_mm;    /**< its tool point */
    double worst_y_mm;    /**< its tool point */
    double worst_z_mm;    /**< its tool point */
    double centre_x_mm;   /**< about which the part turns as it slides */
    double centre_y_mm;   /**< about which the part turns as it slides */
    double slide_deg;     /**< way in which the middle of the supports goes as
                               the part slides, from +x toward +y */
    double loads;         /**< how many were looked at */
    int corners;          /**< sw_corners */
    double clamp_total_N; /**< of all clamps, as given */
    double hold_limit_N;  /**< the same where the required margin is just
                               reached: all clamps and their side pulls scaled
                               alike */
    double hold_scale;    /**< hold_limit_N over clamp_total_N */
    double
        hold_scale_high; /**< more than this times the clamping and the part is held less again, with the side pulls that are worst as given; does not apply where there is no such end */
    double least_total_N;   /**< least total where each clamp has its own
                                 force */
    char switched_off[128]; /**< clamps that do nothing for it, by name */
    double net_x_N;         /**< of all straps on the part, middle of their
                                 ranges */
    double net_y_N;         /**< of all straps on the part */
    double net_z_N;         /**< of all straps on the part, up */
    double net_moment_Nm;   /**< of all straps about the middle of the
                                 supports, from +x toward +y */
    double net_side_N;      /**< size of the sideways force */
    double net_toward_deg;  /**< its direction */
    int pushed;             /**< sw_pushed: where it pushes the part */
} sw_hold_out;

/** One load of the path. */
typedef struct {
    int status;               /**< 0 or sw_status */
    uint64_t warnings;        /**< SW_WARN_ bits */
    char name[32];            /**< of the load */
    double x_mm;              /**< tool point */
    double y_mm;              /**< tool point */
    double z_mm;              /**< tool point */
    double margin;            /**< largest factor on this cut */
    double margin_ceiling;    /**< as in the whole answer */
    double margin_stops_idle; /**< as in the whole answer */
    int first_to_go;          /**< sw_goes */
    int contact_part;         /**< sw_part */
    char contact[32];         /**< the contact that goes first, or "" */
    double centre_x_mm;       /**< about which the part turns as it slides */
    double centre_y_mm;       /**< about which the part turns as it slides */
} sw_hold_point_out;

/** One contact under one load. */
typedef struct {
    int status;          /**< 0 or sw_status */
    uint64_t warnings;   /**< SW_WARN_ bits */
    char name[32];       /**< of the contact */
    double force_rest_N; /**< that it carries or gives before the cut */
    double
        force_margin_N;  /**< the same where the part goes; does not apply where
                              it does not go, or before the cut */
    double friction_use; /**< share of its friction that is used there */
    double least_total_N; /**< clamps: force at the least clamping */
    int idle;             /**< sw_idle */
} sw_hold_contact_out;

/** Whether a contact carries before the cut. */
typedef enum {
    SW_IDLE_NO = 1, /**< it carries */
    SW_IDLE_YES     /**< it does not touch, or only just */
} sw_idle;

/** Sets every field to "left to the library". */
SW_API void sw_hold_defaults(sw_hold_in *in);

/** Fills every open field in place and sets its bit in `assumed`. A resolved
 *  question that was changed is refused. @return 0 or sw_status, `in`
 *  untouched then */
SW_API SW_NODISCARD int sw_hold_resolve(sw_hold_in *in, sw_error *err);

/** The index-th default that enters; status SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_assumption sw_hold_assumed(const sw_hold_in *in,
                                                  int index, sw_error *err);

/** Answers about one fixture. */
typedef struct sw_hold sw_hold;

/**
 * Looks at every load of a fixture. The fixture may be changed or freed
 * afterwards.
 *
 * A part that rocks or moves before the cut is an answer (margin 0), no error.
 * Refused are a fixture without supports, without clamps and weight, or
 * without loads.
 *
 * Example:
 * @code
 * sw_hold_in in;
 * sw_hold_defaults(&in);
 * sw_hold *h = sw_hold_new(fixture, &in, NULL, NULL, &err);
 * sw_hold_out out = sw_hold_total(h, &err);   // out.margin, out.hold_limit_N
 * sw_hold_free(h);
 * @endcode
 *
 * @param fixture  supports, clamps, stops, weight and loads
 * @param in       how it is judged; may be resolved or not
 * @param progress told now and then, may be NULL
 * @param with     handed to `progress`
 * @param err      error record, may be NULL; SW_ERR_STOPPED where `progress`
 *                 ended the run
 * @return NULL on error
 */
SW_API SW_NODISCARD sw_hold *sw_hold_new(const sw_fixture *fixture,
                                         const sw_hold_in *in,
                                         sw_progress progress, void *with,
                                         sw_error *err);

/** NULL is nothing to free. */
SW_API void sw_hold_free(sw_hold *hold);

/** The whole answer. */
SW_API SW_NODISCARD sw_hold_out sw_hold_total(const sw_hold *hold,
                                              sw_error *err);

/** The answer for one load, 0 .. ; status SW_ERR_RANGE past the end. With more
 *  than 64 loads, those well above the lowest margin may be told with polygons
 *  for discs: margins up to half a per cent low, ceilings as much high. */
SW_API SW_NODISCARD sw_hold_point_out sw_hold_point(const sw_hold *hold,
                                                    int load, sw_error *err);

/** A contact under one load.
 *  @param hold  the answers
 *  @param load  index of the load; -1: the worst
 *  @param part  sw_part: support, clamp or stop
 *  @param index of the contact, 0 ..
 *  @param err   error record, may be NULL; SW_ERR_RANGE past an end, or for
 *               a load other than the worst where so many were given that
 *               their contacts were not kept (more than two million) */
SW_API SW_NODISCARD sw_hold_contact_out sw_hold_contact(const sw_hold *hold,
                                                        int load, int part,
                                                        int index,
                                                        sw_error *err);

/** One sentence on a state at rest (sw_rest), or NULL where there is none. */
SW_API const char *sw_hold_rest_text(int rest);

/** The index-th sentence on what is not looked at, or NULL past the end. */
SW_API const char *sw_hold_not_checked(int index);

#ifdef __cplusplus
}
#endif
#endif
