/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Limits of size of a thread in its usual fit.
 */
#ifndef SW_FASTENER_FIT_H
#define SW_FASTENER_FIT_H

/* All mm. */
typedef struct {
    double deviation;              /* the largest stud under the basic size */
    double stud_major, stud_pitch; /* tolerances */
    double nut_pitch, nut_minor;
    double Ds_min, Ds_max; /* stud, major diameter */
    double Es_min, Es_max; /* stud, pitch diameter */
    double En_min, En_max; /* nut, pitch diameter */
    double Kn_min, Kn_max; /* nut, minor diameter */
    int hearsay;           /* a formula from memory stands for a missing row */
} sw__fit;

/* system: sw_system; 6g/6H or 2A/2B. Every diameter and pitch has an answer. */
sw__fit sw__fit_of(int system, double nominal_mm, double pitch_mm);

#endif
