/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief The short way: from strap, part and cut to the torque on every nut,
 *        by closed forms alone.
 *
 * Theory and limits: lib/hold/tight_need.c.
 */
#ifndef STRAPWISE_TIGHT_H
#define STRAPWISE_TIGHT_H

#include <strapwise/strap_spread.h>

#ifdef __cplusplus
extern "C" {
#endif

/** How the straps stand to one another. */
typedef enum {
    SW_FACING_OPPOSED = 1, /**< in pairs across the part: their side pulls
                                work against each other */
    SW_FACING_ALIKE        /**< all from one side: their side pulls add up */
} sw_facing;

/** What asks for the most force. */
typedef enum {
    SW_GOVERNS_SLIDE = 1, /**< the part slides or turns on its supports */
    SW_GOVERNS_LIFT       /**< it lifts off a support */
} sw_governs;

/** A part under equal straps, each with a support below its toe. Set by
 *  sw_tight_defaults() first. */
typedef struct {
    double straps; /**< how many, whole, 1 .. 24; required */
    double cut_N;  /**< largest force of the cut in the table's plane, 0 .. 1e6;
                        required */
    double lift_N; /**< largest pull of the cut upward, 0 .. 1e6 */
    double part_length_mm; /**< longer side of the part, 1 .. 1e5; open: neither
                                turning nor tipping is checked */
    double
        part_width_mm; /**< shorter side, 1 .. 1e5; open: as the longer one */
    double cut_height_mm;   /**< of the cut over the supports, 0 .. 1e4; open:
                                 the part height */
    double cut_offset_mm;   /**< how far the cut's line passes from the middle
                                 between the straps, 0 .. 1e5 */
    double strap_radius_mm; /**< of the toes from that middle, 1 .. 1e5 */
    double weight_N;        /**< of the part, 0 .. 1e7; open: 0 */
    double friction;        /**< part on its supports, 0.01 .. 2 */
    double required_margin; /**< on the cut, 1 .. 20 */
    double seat_N; /**< force that seats a toe, whatever the cut, 0 .. 1e6 */
    double
        toe_limit_N; /**< largest force that one toe may press with, 1e-3 .. 1e7;
                         open: from toe_area_mm2, else none */
    double toe_area_mm2;    /**< area on which one toe bears, 0.1 .. 1e5 */
    char part_material[24]; /**< of the part, by its key: with toe_area_mm2 its
                              pressure limit, or its yield, bounds the force */
    int facing;       /**< sw_facing; open: opposed where there are pairs */
    uint64_t assumed; /**< set by the library: bit n = field n is a default of
                              the library and may change with the others */
    uint64_t seal;    /**< set by resolving, else 0: tells that a resolved
                              question was changed afterwards */
} sw_tight_in;

/** Answer of sw_tight(). A double that does not apply is SW_UNSET. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    int verdict;             /**< sw_verdict */
    int governs;             /**< sw_governs: what hold_N is for */
    double straps;           /**< how many */
    double torque_Nm;        /**< on each nut; SW_UNSET where none works */
    double torque_low_Nm;    /**< least that holds */
    double torque_high_Nm;   /**< most that keeps the limit */
    double preload_low_N;    /**< stud tension that torque_Nm gives, low end */
    double preload_N;        /**< its median */
    double preload_high_N;   /**< high end */
    double toe_force_low_N;  /**< force of each toe, low end of everything */
    double toe_force_N;      /**< at the median */
    double toe_force_high_N; /**< high end of everything */
    double hold_N;           /**< force that each toe must reach; SW_UNSET where
                                  no force does */
    double hold_slide_N;     /**< so that the part neither slides nor turns */
    double hold_lift_N;      /**< so that it stays on every support */
    double flat_N;           /**< force that no toe may exceed, or SW_UNSET */
    double margin; /**< on the cut, at the low end of torque_Nm; SW_UNSET where
                        there is no torque or no cut */
    double required_margin; /**< as asked for */
    double pull_share; /**< part of the friction that the straps' own side pulls
                            use up */
    double twist_factor; /**< friction needed over that for a cut through the
                              middle */
    double alpha;    /**< largest over smallest stud tension of one torque */
    double coverage; /**< part of all tightenings that keep both limits */
    double yield_use_high; /**< the stud's stress at the high end over yield */
    char sentence[240];    /**< the answer in one sentence */
} sw_tight_out;

/** Sets every field to "left to the library". */
SW_API void sw_tight_defaults(sw_tight_in *in);

/** Fills every open field in place and sets its bit in `assumed`. Resolving
 *  twice changes nothing; a resolved question that was changed is refused.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int
sw_tight_resolve(sw_tight_in *in, const sw_strap_in *strap, sw_error *err);

/**
 * Torque on each nut of equal straps, so that the part stays put under the cut
 * and no toe presses harder than it may; or that no torque does.
 *
 * Example:
 * @code
 * sw_tight_in in;
 * sw_strap_in strap;
 * sw_spread_in spread;
 * sw_tight_defaults(&in);
 * sw_strap_defaults(&strap);
 * sw_spread_defaults(&spread);
 * strcpy(strap.thread, "M12");
 * strap.stud_to_toe_mm = 30;
 * strap.stud_to_heel_mm = 60;
 * strap.tilt_deg = 0;
 * in.straps = 4;
 * in.cut_N = 500;
 * sw_tight_out out = sw_tight(&in, &strap, &spread, NULL); // out.torque_Nm
 * @endcode
 *
 * @param in     part, cut, limits
 * @param strap  one of the straps; its preload and torque are not used
 * @param spread how the tightening scatters
 * @param err    error record, may be NULL
 */
SW_API SW_NODISCARD sw_tight_out sw_tight(const sw_tight_in *in,
                                          const sw_strap_in *strap,
                                          const sw_spread_in *spread,
                                          sw_error *err);

/** The index-th default of `in` that entered, 0 .. ; status SW_ERR_RANGE past
 *  the end. Those of strap and spread: sw_strap_assumed(),
 *  sw_strap_window_assumed(). */
SW_API SW_NODISCARD sw_assumption sw_tight_assumed(const sw_tight_in *in,
                                                   const sw_strap_in *strap,
                                                   int index, sw_error *err);

/** The index-th sentence of what was not checked, or NULL past the end. */
SW_API const char *sw_tight_not_checked(const sw_tight_in *in, int index);

/** A single change that a shop can make. */
typedef enum {
    SW_REMEDY_STRAPS = 1, /**< more straps; value: how many in all */
    SW_REMEDY_CUT,        /**< a lighter cut; value: its force, lift in
                               proportion, in newtons */
    SW_REMEDY_TIGHTENING, /**< a surer way of tightening; value: its +- in
                               per cent */
    SW_REMEDY_LEVEL,      /**< straps level under a spherical seat; value: 0 */
    SW_REMEDY_GRIP        /**< rougher supports; value: their friction */
} sw_remedy;

/** One change that lets a torque exist. */
typedef struct {
    int status;            /**< 0 or sw_status */
    uint64_t warnings;     /**< SW_WARN_ bits of the changed answer */
    int remedy;            /**< sw_remedy */
    double value;          /**< as sw_remedy says */
    double torque_Nm;      /**< torque on each nut then */
    double torque_low_Nm;  /**< least that holds then */
    double torque_high_Nm; /**< most that keeps the limit then */
} sw_remedy_out;

/** The index-th single change that opens the window, each tried and computed
 *  anew, 0 .. ; status SW_ERR_NONE past the last. */
SW_API SW_NODISCARD sw_remedy_out sw_tight_remedy(const sw_tight_in *in,
                                                  const sw_strap_in *strap,
                                                  const sw_spread_in *spread,
                                                  int index, sw_error *err);

#ifdef __cplusplus
}
#endif
#endif
