/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Say torque: torque on a nut and tension in its stud, the asked one first.
 */
#include "cli.h"

#include <string.h>

#define IN_LBF_SAID_NM                                                         \
    27.2 /* below 20 ft-lbf say_torque() says them itself   \
                             */

static void shares(page *p, const sw_torque_out *t)
{
    const size_t start = say_label(p, "of this torque");
    say_percent(p, t->stretch_share);
    page_add(p, " stretches the stud, ");
    say_percent(p, t->thread_share);
    page_add(p, " is lost in the thread, ");
    say_percent(p, t->seat_share);
    page_add(p, " under the nut");
    if (t->prevailing_share > 0) {
        page_add(p, ", ");
        say_percent(p, t->prevailing_share);
        page_add(p, " turns the unloaded nut");
    }
    say_done(p, start);
}

static void strength(page *p, int us, const char *grade, const sw_torque_out *t)
{
    if (!is_known(t->yield_use))
        return;
    const size_t start = say_label(p, "strength");
    say_percent(p, t->yield_use);
    page_add(p, " of the yield of ");
    say_grade(p, grade);
    page_add(p, " with the twist, ");
    say_stress(p, us, t->equivalent_MPa);
    if (is_known(t->proof_use)) {
        page_add(p, "; ");
        say_percent(p, t->proof_use);
        page_add(p, " of its proof load");
    }
    say_done(p, start);
}

static void loosening(page *p, int us, const sw_torque_out *t)
{
    const size_t start = say_label(p, "to loosen");
    if (t->loosening_torque_Nm < 0) {
        page_add(p, "nothing: the nut turns back by itself");
    } else {
        say_torque(p, us, t->loosening_torque_Nm);
    }
    say_done(p, start);
}

void say_torque_answer(page *p, request *r, const sw_torque_out *t,
                       const sw_spread_out *spread)
{
    sw_torque_in full = r->question.in.torque;
    const int us = r->us;
    const int wanted = is_known(full.preload_N) || is_known(full.use);
    if (sw_torque_resolve(&full, NULL)) /* solved before, so it resolves */
        return;
    const sw_thread_out thread = sw_thread(full.thread, NULL);
    page_add(p, thread.designation);
    page_add(p, ", ");
    say_grade(p, full.grade);
    if (full.lubrication[0] && !(t->warnings & SW_WARN_UNUSED_INPUT)) {
        page_add(p, ", lubrication ");
        page_add(p, full.lubrication);
    }
    page_add(p, "\n\n");
    for (int line = 0; line < 2; line++) {
        const int torque = (line == 0) == wanted;
        const size_t start =
            say_label(p, torque ? "torque on the nut" : "clamp force");
        if (torque) {
            say_torque(p, us, t->torque_Nm);
            if (t->torque_Nm >= IN_LBF_SAID_NM) {
                page_add(p, "; ");
                page_number(p, in_unit(t->torque_Nm, "in-lbf", SW_KIND_TORQUE),
                            4);
                page_add(p, KEEP "in-lbf");
            }
        } else {
            say_force(p, us, t->preload_N);
            page_add(p, " in the stud");
        }
        say_done(p, start);
    }
    say_spread(p, r, spread);
    page_add(p, "\n");
    size_t start = say_label(p, "nut factor K");
    page_number(p, t->nut_factor, 3);
    page_add(p, "; friction ");
    page_number(p, t->mu_thread, 3);
    page_add(p, " in the thread, ");
    page_number(p, t->mu_seat, 3);
    page_add(p, " under the nut");
    say_done(p, start);
    shares(p, t);
    start = say_label(p, "under the nut");
    say_torque(p, us, t->seat_torque_Nm);
    page_add(p, " tries to turn the strap: hold it while the nut is turned");
    say_done(p, start);
    loosening(p, us, t);
    strength(p, us, full.grade, t);
    if (is_known(t->turn_from_snug_deg)) {
        start = say_label(p, "turn from snug");
        page_number(p, t->turn_from_snug_deg, 3);
        page_add(p, KEEP "deg for the stretch of the stud alone");
        say_done(p, start);
    }
}
