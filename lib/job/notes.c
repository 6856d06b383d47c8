/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Notes: every default that entered a job, by whom it is of.
 */
#include "job/job.h"

#include <stdlib.h>

static sw_assumption *add(sw_job *job, const char *where, const char *name,
                          sw_error *err)
{
    if (job->assumptions == job->assumed_room) {
        const int room = job->assumed_room ? 2 * job->assumed_room : 64;
        sw_assumption *more =
            realloc(job->assumed, (size_t)room * sizeof *more);
        if (!more) {
            sw__fail_memory(err);
            return NULL;
        }
        job->assumed = more;
        unsigned char *slight = realloc(job->slight, (size_t)room);
        if (!slight) {
            sw__fail_memory(err);
            return NULL;
        }
        job->slight = slight;
        job->assumed_room = room;
    }
    job->slight[job->assumptions] = 0;
    sw_assumption *a = &job->assumed[job->assumptions++];
    *a = sw__no_assumption(SW_OK);
    sw__line line = sw__line_start(a->name, sizeof a->name);
    sw__line_add(&line, where);
    sw__line_add(&line, where[0] ? "." : "");
    sw__line_add(&line, name);
    return a;
}

int sw__job_note(sw_job *job, const char *where, const char *name,
                 const char *unit, double value, double low, double high,
                 const char *source, sw_error *err)
{
    sw_assumption *a = add(job, where, name, err);
    if (!a)
        return SW_ERR_MEMORY;
    sw__copy(a->unit, sizeof a->unit, unit);
    sw__copy(a->source, sizeof a->source, source);
    a->value = value;
    a->low = sw__is_set(low) ? low : value;
    a->high = sw__is_set(high) ? high : value;
    return SW_OK;
}

int sw__job_note_word(sw_job *job, const char *where, const char *name,
                      const char *word, const char *source, sw_error *err)
{
    sw_assumption *a = add(job, where, name, err);
    if (!a)
        return SW_ERR_MEMORY;
    sw__copy(a->word, sizeof a->word, word);
    sw__copy(a->source, sizeof a->source, source);
    return SW_OK;
}

int sw__job_note_as(sw_job *job, const char *where, const sw_assumption *told,
                    sw_error *err)
{
    /* a name is its number, a value that does not apply entered nothing */
    if (!told->word[0] && !sw__is_set(told->value))
        return SW_OK;
    sw_assumption *a = add(job, where, told->name, err);
    if (!a)
        return SW_ERR_MEMORY;
    char name[sizeof a->name];
    sw__copy(name, sizeof name, a->name);
    *a = *told;
    sw__copy(a->name, sizeof a->name, name);
    return SW_OK;
}

void sw__job_slight(sw_job *job)
{
    if (job->assumptions)
        job->slight[job->assumptions - 1] = 1;
}
