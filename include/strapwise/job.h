/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief A job file: part, supports, stops, clamps, tools and operations, read
 *        strictly and turned into fixtures. Of libstrapwise-fixture.
 *
 * What may stand in the file, and what its keys are called: lib/job/job.c.
 */
#ifndef STRAPWISE_ROOM_JOB_H
#define STRAPWISE_ROOM_JOB_H

#include <strapwise/fixture.h>
#include <strapwise/hold.h>

#ifdef __cplusplus
extern "C" {
#endif

/** What presses the part. */
typedef enum {
    SW_CLAMP_FORCE = 1, /**< a force that is given */
    SW_CLAMP_STRAP,     /**< a strap on stud and nut */
    SW_CLAMP_SCREW,     /**< a screw that presses with its end */
    SW_CLAMP_THROUGH,   /**< a screw through the part, holding with its head */
    SW_CLAMP_CYLINDER,  /**< a hydraulic or pneumatic cylinder */
    SW_CLAMP_SWING,     /**< a swing clamp or a pivoted arm */
    SW_CLAMP_VACUUM,    /**< a vacuum plate */
    SW_CLAMP_BAR /**< a bar between two studs, on two pads: two of them */
} sw_clamp_kind;

/** What cuts. */
typedef enum {
    SW_CUT_FORCE = 1, /**< a force that is given */
    SW_CUT_MILL,      /**< milling */
    SW_CUT_TURN,      /**< turning on a faceplate */
    SW_CUT_DRILL      /**< drilling */
} sw_cut_kind;

/** Why a clamp must not be used as it is set. */
typedef enum {
    SW_CLAMP_FAULT_NONE = 1, /**< nothing speaks against it */
    SW_CLAMP_FAULT_WALKS,    /**< toe and heel cannot hold the strap */
    SW_CLAMP_FAULT_YIELDS,   /**< its stud or screw is past yield or proof */
    SW_CLAMP_FAULT_DEVICE    /**< it is over what its maker allows */
} sw_clamp_fault;

/** A job that was read. */
typedef struct sw_job sw_job;

/** The part, and how much there is of everything. A double that does not apply
 *  is SW_UNSET. */
typedef struct {
    int status;          /**< 0 or sw_status */
    uint64_t warnings;   /**< SW_WARN_ bits of the whole job */
    char name[64];       /**< of the part, or "" */
    char material[24];   /**< key, or "" */
    double length_mm;    /**< along x */
    double width_mm;     /**< along y */
    double thickness_mm; /**< from the supports up */
    double area_mm2;     /**< of the outline */
    double weight_N;     /**< of the part */
    double centre_x_mm;  /**< centre of gravity */
    double centre_y_mm;  /**< centre of gravity */
    double centre_z_mm;  /**< centre of gravity, over the supports */
    double raised_mm;    /**< plane of the supports over the table */
    double corners;      /**< of the outline */
    double supports;     /**< number of supports */
    double stops;        /**< number of stops */
    double clamps;       /**< number of clamps */
    double operations;   /**< number of operations */
} sw_job_out;

/** One corner of the part's outline, counterclockwise. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits: none */
    double x_mm;       /**< along x */
    double y_mm;       /**< along y */
    double edge_mm;    /**< length of the edge to the next corner */
} sw_job_corner_out;

/** One clamp, and what it does to the part. A double that does not apply is
 *  SW_UNSET. */
typedef struct {
    int status;        /**< 0 or sw_status */
    uint64_t warnings; /**< SW_WARN_ bits */
    char name[32];     /**< its name, or C1, C2, ... */
    int clamp_kind;    /**< sw_clamp_kind */
    double x_mm;       /**< where it presses */
    double y_mm;       /**< where it presses */
    double z_mm;       /**< where it presses, over the supports */
    double toward_deg; /**< from the toe to the stud; open: no stud beside
                                the part */
    double stud_mm;    /**< from there to the stud, along the table; open: no
                                stud beside the part */
    char thread[32];   /**< of the stud or screw, or "" */
    char tool[64];     /**< torque tool it is set with, or "" */
    double torque_Nm;  /**< torque on its nut or screw */
    double setting;    /**< the same as a number on the tool */
    int torque_unit;   /**< sw_torque_unit of the tool; open: no tool */
    double prevailing_torque_Nm; /**< of it, what stretches nothing */
    double scatter_pct;          /**< ± of its stud's tension */
    double preload_low_N;   /**< tension of the stud, low end of the spread */
    double preload_N;       /**< its median */
    double preload_high_N;  /**< high end */
    double force_low_N;     /**< on the part, low end: what holding counts on */
    double force_N;         /**< nominal */
    double force_high_N;    /**< high end: what bends and marks */
    double pull_low_N;      /**< side pull toward the stud, lower end */
    double pull_high_N;     /**< upper end */
    double drag_low_N;      /**< nut drag, lower end; positive to the right of
                                somebody at the stud who faces the part */
    double drag_high_N;     /**< upper end */
    int mark;               /**< sw_mark: whether its pad marks the part at the
                                high end; open: no pad was described */
    double pad_MPa;         /**< pressure under its pad there */
    double mark_N;          /**< force at which the pad's limit is reached */
    int clamp_fault;        /**< sw_clamp_fault */
    double strength_use;    /**< of the stud or screw at its median tension: the
                                larger of stress over yield and tension over
                                proof load; open: no stud, or its strength is
                                not known */
    double yield_N;         /**< tension at which that is 1 */
    double yield_torque_Nm; /**< torque at which that is 1; open: nobody
                                    turns it */
    double limit_use;       /**< what presses over what the maker allows;
                                    open: no limit was given */
    double limit_pressure_MPa; /**< highest pressure that the maker allows */
    double support_gap_mm;     /**< from where it presses to the nearest
                                    support */
} sw_job_clamp_out;

/** One operation. A double that does not apply is SW_UNSET. */
typedef struct {
    int status;             /**< 0 or sw_status */
    uint64_t warnings;      /**< SW_WARN_ bits */
    char name[32];          /**< its name, or its number */
    int cut_kind;           /**< sw_cut_kind */
    int milling_mode;       /**< sw_milling_mode; open: no milling */
    int cut_way;            /**< sw_cut_way of side milling: up, and the work
                                 lies on the left of the feed, or climb, and it
                                 lies on the right; open: none */
    double push_deg;        /**< way of the mean sideways force of milling on
                                 the part, counterclockwise from the feed */
    double clamps;          /**< how many clamps it has */
    double required_margin; /**< wanted on the cut */
    double points;          /**< of the path */
    double samples;         /**< loads at each point */
    double loads;           /**< of both together */
    double side_most_N;     /**< largest force along the table */
    double lift_most_N;     /**< largest force up; 0 where nothing lifts */
    double press_most_N;    /**< largest force down; 0 where nothing presses */
    double twist_most_Nm;   /**< largest moment about the tool's axis, either
                                 way */
} sw_job_operation_out;

/**
 * Reads a job file. Every fault is one line, "FILE:LINE:COLUMN: ...".
 *
 * Example:
 * @code
 * sw_job *job = sw_job_read(text, strlen(text), "yoke.yaml", &err);
 * sw_fixture *f = sw_job_fixture(job, 0, &err);
 * sw_hold_in in;
 * int bad = sw_job_hold_in(job, 0, &in, &err);
 * sw_hold *h = sw_hold_new(f, &in, NULL, NULL, &err);
 * @endcode
 *
 * @param text    the file, UTF-8; need not end with a zero
 * @param length  of text in bytes, at most 256 KiB
 * @param file    its name, for messages; may be NULL
 * @param err     error record, may be NULL
 * @return to be freed by sw_job_free(), or NULL with an error
 */
SW_API SW_NODISCARD sw_job *sw_job_read(const char *text, size_t length,
                                        const char *file, sw_error *err);

/** NULL is nothing to free. */
SW_API void sw_job_free(sw_job *job);

/** The part, and how much there is of everything. */
SW_API SW_NODISCARD sw_job_out sw_job_about(const sw_job *job, sw_error *err);

/** The index-th corner of the outline; status SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_job_corner_out sw_job_corner(const sw_job *job,
                                                    int index, sw_error *err);

/** The index-th clamp; status SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_job_clamp_out sw_job_clamp(const sw_job *job, int index,
                                                  sw_error *err);

/** The index-th operation; status SW_ERR_RANGE past the end. */
SW_API SW_NODISCARD sw_job_operation_out sw_job_operation(const sw_job *job,
                                                          int index,
                                                          sw_error *err);

/** Index of the operation with this name, or -1. */
SW_API int sw_job_find_operation(const sw_job *job, const char *name);

/** Whether an operation has a clamp, both by index: 1, or 0. */
SW_API int sw_job_has_clamp(const sw_job *job, int operation, int clamp);

/** Index of a clamp of an operation that rocks the part when it presses with the
 *  high end of its spread and the others with their low ends, or -1. An error
 *  is told in `err`, and -1. */
SW_API int sw_job_rocks(const sw_job *job, int operation, sw_error *err);

/** The part on its fixture for one operation: supports, stops, the clamps it
 *  has, each at the low end of its spread with its pulls as ranges, the weight,
 *  and at every point of the path each load of the cut, named by the point.
 *  @return to be freed by sw_fixture_free(), or NULL with an error */
SW_API SW_NODISCARD sw_fixture *sw_job_fixture(const sw_job *job, int operation,
                                               sw_error *err);

/** How an operation wants to be judged.
 *  @return 0 or sw_status, `in` untouched then */
SW_API SW_NODISCARD int sw_job_hold_in(const sw_job *job, int operation,
                                       sw_hold_in *in, sw_error *err);

/** The index-th default that entered, by the name of its clamp, support, stop
 *  or operation and its field: "C1.nut_factor"; status SW_ERR_RANGE past the
 *  end. */
SW_API SW_NODISCARD sw_assumption sw_job_assumed(const sw_job *job, int index,
                                                 sw_error *err);

/** Whether a default by its index can move a clamp's force or pull by more than
 *  1 % of the force, over its usual range, or enters elsewhere than in a strap:
 *  1, or 0. */
SW_API int sw_job_matters(const sw_job *job, int index);

/** The index-th sentence on what looks doubtful in this job, with the name of
 *  whom it is about, or NULL past the end. It lives as long as the job. */
SW_API const char *sw_job_remark(const sw_job *job, int index);

/** The index-th sentence on what a job leaves out, or NULL past the end. */
SW_API const char *sw_job_not_checked(int index);

#ifdef __cplusplus
}
#endif
#endif
