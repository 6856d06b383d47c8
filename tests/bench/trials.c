/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Seconds for 1e6 trials through one strap, one thread, quantiles included:
 * the smallest of a few runs. One line for each seat.
 */
#define _POSIX_C_SOURCE 200809L
#include <strapwise.h>

#include <stdio.h>
#include <string.h>
#include <time.h>

static double now(void)
{
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return (double)t.tv_sec + 1e-9 * (double)t.tv_nsec;
}

int main(void)
{
    enum { RUNS = 5 };
    sw_strap_in in;
    sw_spread_in spread;
    sw_strap_defaults(&in);
    sw_spread_defaults(&spread);
    snprintf(in.thread, sizeof in.thread, "M12");
    in.torque_Nm = 40;
    in.stud_to_toe_mm = 30;
    in.stud_to_heel_mm = 60;
    in.part_height_mm = 40;
    in.tilt_deg = 3;
    in.nose = SW_NOSE_ROUND;
    spread.scatter_pct = 25;
    spread.trials = 1e6;
    for (in.seat = SW_SEAT_FLAT; in.seat <= SW_SEAT_SPHERICAL; in.seat++) {
        double best = 1e9;
        for (int run = 0; run < RUNS; run++) {
            sw_error err;
            const double start = now();
            const sw_strap_spread_out s =
                sw_strap_spread(&in, &spread, NULL, NULL, &err);
            const double took = now() - start;
            if (s.status) {
                fprintf(stderr, "%s\n", err.message);
                return 1;
            }
            best = took < best ? took : best;
        }
        printf("%s %.4f\n", sw_word(SW_WORDS_SEAT, in.seat), best);
    }
    return 0;
}
