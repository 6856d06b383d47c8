/* SPDX-License-Identifier: GPL-3.0-or-later */
/**
 * @file
 * @brief Screw threads: designation to geometry, with the nut, washer and
 *        clearance hole that go with the size.
 */
#ifndef STRAPWISE_THREAD_H
#define STRAPWISE_THREAD_H

#include <strapwise/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/** System of a thread. */
typedef enum {
    SW_SYSTEM_METRIC = 1, /**< ISO 68-1 profile, millimetres */
    SW_SYSTEM_UNIFIED     /**< ASME B1.1 (same 60 degree profile), inches */
} sw_system;

/** Geometry of one thread and the hardware of its size. */
typedef struct {
    int status;              /**< 0 or sw_status */
    uint64_t warnings;       /**< SW_WARN_ bits */
    char designation[24];    /**< as the table spells it: "M12", "1/2-13 UNC" */
    char size[12];           /**< "M12", "1/2", "#10" */
    char series[12];         /**< coarse fine constant unc unf 8un */
    int system;              /**< sw_system */
    double nominal_mm;       /**< major diameter d */
    double pitch_mm;         /**< P */
    double threads_per_inch; /**< 25.4 / P */
    double pitch_diameter_mm;  /**< d2 = d - 0.649519 P (ISO 724) */
    double root_diameter_mm;   /**< metric d3 = d - 1.226869 P (ISO 68-1),
                                    unified d - 1.299038 P */
    double minor_diameter_mm;  /**< internal D1 = d - 1.082532 P (ISO 724) */
    double triangle_height_mm; /**< H = 0.866025 P (ISO 68-1) */
    double flank_angle_deg;    /**< half the thread angle, 30 */
    double lead_angle_deg;     /**< atan(P / (pi d2)) */
    double stress_area_mm2;    /**< pi/4 (d - 0.938194 P)^2 (ISO 898-1),
                                    unified pi/4 (d - 0.9743 P)^2 (ASME B1.1) */
    double root_area_mm2;      /**< pi/4 of root_diameter_mm squared */
    double minor_area_mm2;  /**< pi/4 (d - 1.299038 P)^2, as tabled beside the
                                 stress area (ASME B1.1); not of D1 */
    double across_flats_mm; /**< hexagon nut */
    double nut_height_mm;   /**< hexagon nut, maximum */
    double bearing_diameter_mm; /**< washer face of the hexagon, minimum */
    double clearance_hole_mm;   /**< medium (normal) fit */
    double hole_fine_mm;        /**< close fit */
    double hole_coarse_mm;      /**< loose fit */
    double washer_hole_mm;      /**< plain washer, inner diameter */
    double washer_diameter_mm;  /**< plain washer, outer diameter */
    double washer_thickness_mm; /**< plain washer */
    double play_mean_deg;       /**< mean tilt of a nut on its thread */
    double play_max_deg;        /**< largest tilt of a nut on its thread */
} sw_thread_out;

/**
 * Looks a thread up by its designation, as people write it: "M12",
 * "m12 x 1.25", "1/2-13", "1/2-13 UNC", "#10-32", "10-32 UNF", "1-1/2-6".
 *
 * A metric size without a pitch is the coarse one. A unified size needs its
 * threads per inch. Nothing is interpolated: a pitch that is in no table is
 * refused and the nearest designations are offered.
 *
 * @param designation  at most 64 characters
 * @param err          error record, may be NULL
 */
SW_API SW_NODISCARD sw_thread_out sw_thread(const char *designation,
                                            sw_error *err);

/** Number of threads in the table. */
SW_API int sw_thread_count(void);

/** Designation of the index-th thread in the table, or NULL past the end. */
SW_API const char *sw_thread_name(int index);

#ifdef __cplusplus
}
#endif
#endif
