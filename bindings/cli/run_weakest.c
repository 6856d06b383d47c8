/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Run weakest: what gives first on one strap, the weakest part first.
 */
#include "cli.h"

#include <math.h>
#include <string.h>

/* As many as the library ranks. */
enum { PARTS_MOST = 16 };

typedef struct {
    answer part[PARTS_MOST];
    int parts;
} ranking;

static int rank_parts(request *r, ranking *all)
{
    for (all->parts = 0; all->parts < PARTS_MOST; all->parts++) {
        answer *a = &all->part[all->parts];
        r->question.arguments.rank = all->parts;
        r->with->solve(&r->question, a);
        if (a->out.status == SW_ERR_RANGE && all->parts > 0 &&
            strcmp(a->err.field, "rank") == 0)
            return DONE;
        if (a->out.status)
            return complain_error(r, &a->err);
        r->warnings |= topic_warnings(r->with, a);
    }
    return DONE;
}

static void say_load(page *p, int us, const sw_gives_out *g)
{
    if (is_known(g->load_N)) {
        say_force(p, us, g->load_N);
        page_add(p, " of ");
        say_force(p, us, g->limit_N);
    } else {
        say_stress(p, us, g->load_MPa);
        page_add(p, " of ");
        say_stress(p, us, g->limit_MPa);
    }
}

static void say_part(page *p, int us, const sw_gives_out *g)
{
    enum { MARGIN = 18, REST = 26 };
    page_add(p, "  ");
    page_add(p, sw_word(SW_WORDS_GIVES, g->part));
    page_tab(p, MARGIN);
    if (is_known(g->margin))
        page_number(p, g->margin, 3);
    else
        page_add(p, "-");
    page_tab(p, REST);
    const size_t start = p->length;
    if (is_known(g->margin)) {
        say_load(p, us, g);
        if (is_known(g->preload_at_limit_N)) {
            page_add(p, "; gives at ");
            say_force(p, us, g->preload_at_limit_N);
            page_add(p, " in the stud");
        }
        page_add(p, "; ");
        page_add(p, g->how);
    } else {
        page_add(p, "not judged: its strength is in no table");
    }
    page_wrap(p, start, REST);
    page_add(p, "\n");
}

static void say_engaged(page *p, const request *r, const sw_strap_out *s)
{
    sw_engage_in full = r->question.beside.engage;
    sw_strip_in q;
    sw_strip_defaults(&q);
    copy_cut(q.thread, sizeof q.thread, r->question.in.strap.thread);
    copy_cut(q.grade, sizeof q.grade, r->question.in.strap.grade);
    copy_cut(q.material, sizeof q.material, full.material);
    q.stud_tensile_MPa = full.stud_tensile_MPa;
    q.stud_shear_ratio = full.stud_shear_ratio;
    q.shear_strength_MPa = full.shear_strength_MPa;
    q.preload_N = s->preload_N;
    const sw_strip_out strip = sw_strip(&q, NULL);
    if (strip.status || !is_known(strip.length_full_mm))
        return;
    const size_t start = say_label(p, "screw it in");
    say_length(p, r->us, strip.length_full_mm);
    page_add(p, " of full thread, so that the stud breaks before a thread "
                "strips");
    say_done(p, start);
}

/* What a strap and a nut are asked alike, by the names of the fields. */
static sw_torque_in torque_of(const sw_strap_in *in)
{
    sw_torque_in q;
    sw_torque_defaults(&q);
    for (int i = 0; sw_field_at(SW_STRUCT_TORQUE_IN, i); i++) {
        const sw_field *to = sw_field_at(SW_STRUCT_TORQUE_IN, i);
        const sw_field *from = sw_field_named(SW_STRUCT_STRAP_IN, to->name);
        if (from && from->size == to->size)
            memcpy((char *)&q + to->offset, (const char *)in + from->offset,
                   to->size);
    }
    return q;
}

/* The same torque gives more now and then: which parts that would break. */
static void say_scatter(page *p, const request *r, const ranking *all)
{
    const sw_strap_in *in = &r->question.in.strap;
    sw_spread_in usual;
    const sw_torque_in q = torque_of(in);
    sw_spread_defaults(&usual);
    if (r->calibration.scatters)
        usual.factor_scatter_pct = r->calibration.out.tolerance_pct;
    const sw_spread_out s = sw_spread(&q, &usual, NULL);
    if (s.status || in->nut == SW_NUT_STILL)
        return;
    const size_t start = say_label(p, "with the scatter");
    page_add(p, "one torque gives up to ");
    say_force(p, r->us, s.preload_high_N);
    page_add(p, " (±");
    page_number(p, s.scatter_pct, 3);
    page_add(p, KEEP "%, ");
    say_coverage(p, s.coverage);
    page_add(p, "): ");
    int gives = 0;
    for (int i = 0; i < all->parts; i++) {
        const sw_gives_out *g = &all->part[i].out.gives;
        if (!is_known(g->preload_at_limit_N) ||
            g->preload_at_limit_N > s.preload_high_N)
            continue;
        page_add(p, gives++ ? ", " : "");
        page_add(p, sw_word(SW_WORDS_GIVES, g->part));
    }
    page_add(p, gives ? " would give" : "nothing gives");
    say_done(p, start);
}

static void ranking_json(page *p, request *r, ranking *all)
{
    json j = json_start(p);
    json_open(&j, "parts", '[');
    for (int i = 0; i < all->parts; i++) {
        json_open(&j, NULL, '{');
        json_fields(&j, r, r->with, &all->part[i]);
        json_warnings(&j, "warnings", topic_warnings(r->with, &all->part[i]));
        json_close(&j, '}');
    }
    json_close(&j, ']');
    json_calibration(&j, r);
    json_assumed(&j, r->with, &r->question, NULL);
    json_not_checked(&j, r->with);
    json_warnings(&j, "warnings", r->warnings);
    json_end(&j);
}

int run_weakest(request *r, page *p)
{
    ranking all;
    answer strap;
    int status = calibration_take(r);
    if (status)
        return status;
    r->topic->solve(&r->question, &strap);
    if (strap.out.status)
        return complain_error(r, &strap.err);
    r->warnings = topic_warnings(r->topic, &strap) | r->calibration.warnings;
    status = rank_parts(r, &all);
    if (status)
        return status;
    const sw_gives_out *first = &all.part[0].out.gives;
    status = is_known(first->margin) && first->margin < 1 ? NOT_MET : DONE;
    if (r->json) {
        ranking_json(p, r, &all);
        return status;
    }
    const sw_strap_out *s = &strap.out.strap;
    page_add(p, "What gives first at ");
    say_force(p, r->us, s->preload_N);
    page_add(p, " in the stud, ");
    say_torque(p, r->us, s->torque_Nm);
    page_add(p, "\n\n  part            margin  load of limit\n");
    for (int i = 0; i < all.parts; i++)
        say_part(p, r->us, &all.part[i].out.gives);
    page_add(p, "\n");
    say_scatter(p, r, &all);
    say_engaged(p, r, s);
    say_calibration(p, r);
    say_warnings(p, r->warnings);
    say_assumed(p, r->us, r->assumed ? r->with : NULL, &r->question, NULL);
    if (!r->assumed)
        say_assumed_second(p, r->us, r);
    say_not_checked(p, r->with);
    say_caution(p);
    return status;
}
