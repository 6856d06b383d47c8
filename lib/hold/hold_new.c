/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Hold, new: the handle and the memory of all that is done for it.
 */
#include "hold/hold.h"

#include <stdlib.h>
#include <string.h>

#define KEPT_MOST 2000000 /* contacts of loads */

void sw_hold_free(sw_hold *h)
{
    if (!h)
        return;
    sw__rig_drop(&h->rig);
    sw_fixture_free(h->names);
    free(h->load);
    free(h->verdict);
    free(h->kept);
    free(h);
}

static void *copy_list(const void *list, int count, size_t size, int *good)
{
    void *copy = count ? malloc((size_t)count * size) : NULL;
    if (copy)
        memcpy(copy, list, (size_t)count * size);
    *good = *good && (copy || !count);
    return copy;
}

/* Contacts of a fixture, for their names. */
static sw_fixture *copy_contacts(const sw_fixture *f)
{
    sw_fixture *c = sw_fixture_new(NULL);
    int good = 1;
    if (!c)
        return NULL;
    c->supports = f->supports;
    c->clamps = f->clamps;
    c->stops = f->stops;
    c->support = copy_list(f->support, f->supports, sizeof *f->support, &good);
    c->clamp = copy_list(f->clamp, f->clamps, sizeof *f->clamp, &good);
    c->stop = copy_list(f->stop, f->stops, sizeof *f->stop, &good);
    if (good)
        return c;
    sw_fixture_free(c);
    return NULL;
}

/* Memory for the answers of every load. */
static int make_room(const sw_fixture *f, sw_hold *h, sw_error *err)
{
    const size_t n = (size_t)f->loads;
    const size_t each = (size_t)(2 * f->supports + f->stops + f->clamps);
    h->names = copy_contacts(f);
    h->load = malloc(n * sizeof *h->load);
    h->verdict = calloc(n, sizeof *h->verdict);
    if (n * each <= KEPT_MOST)
        h->kept = calloc(n * each, sizeof *h->kept);
    if (!h->names || !h->load || !h->verdict ||
        (n * each <= KEPT_MOST && !h->kept))
        return sw__fail_memory(err);
    memcpy(h->load, f->load, n * sizeof *h->load);
    return SW_OK;
}

static int answer(sw_hold *h, sw_progress progress, void *with, sw_error *err)
{
    const double change = h->in.friction_change;
    sw__job *job = calloc(1, sizeof *job);
    if (!job)
        return sw__fail_memory(err);
    job->h = h;
    job->tried = h->rig;
    int status = sw__engine_make(&job->main, &h->rig, &h->in, 1, err);
    if (!status)
        status = sw__engine_make(&job->less, &h->rig, &h->in, 1 - change, err);
    if (!status)
        status = sw__engine_make(&job->more, &h->rig, &h->in, 1 + change, err);
    if (!status)
        status = sw__engine_make(&job->trial, &job->tried, &h->in, 1, err);
    const sw__block_how how = {.sides = (int)h->in.disc_sides, .friction = 1};
    const size_t rays = (size_t)sw__block_rays(&h->rig, &how) + 1;
    for (size_t i = 0; !status && i < sizeof job->ray / sizeof job->ray[0];
         i++) {
        job->ray[i] = malloc(rays * sizeof(sw__ray));
        if (!job->ray[i])
            status = sw__fail_memory(err);
    }
    const size_t n = (size_t)h->rig.loads;
    if (!status) {
        job->rough = malloc(n * sizeof *job->rough);
        job->at = malloc(n * sizeof *job->at);
        if (!job->rough || !job->at)
            status = sw__fail_memory(err);
    }
    if (!status)
        status = sw__guarded(sw__hold_work, job, progress, with, err);
    for (size_t i = 0; i < sizeof job->ray / sizeof job->ray[0]; i++)
        free(job->ray[i]);
    free(job->rough);
    free(job->at);
    sw__engine_drop(&job->main);
    sw__engine_drop(&job->less);
    sw__engine_drop(&job->more);
    sw__engine_drop(&job->trial);
    free(job);
    return status;
}

sw_hold *sw_hold_new(const sw_fixture *f, const sw_hold_in *in,
                     sw_progress progress, void *with, sw_error *err)
{
    sw_hold_in full;
    sw__clear(err);
    if (!f || !in) {
        sw__fail_null(err, f ? "in" : "fixture");
        return NULL;
    }
    if (sw__hold_open(in, &full, err))
        return NULL;
    sw_hold *h = calloc(1, sizeof *h);
    if (!h) {
        sw__fail_memory(err);
        return NULL;
    }
    h->in = full;
    h->scale = h->scale_high = h->least_total = SW_UNSET;
    h->friction_low = h->friction_high = SW_UNSET;
    for (int i = 0; i < SW__MOST; i++)
        h->least[i] = SW_UNSET;
    int status = sw__rig_make(f, &h->rig, err);
    if (!status)
        status = make_room(f, h, err);
    if (!status)
        status = answer(h, progress, with, err);
    if (!status)
        return h;
    sw_hold_free(h);
    return NULL;
}
