/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Guard: GLPK ends the process when it is called wrongly or out of memory, and
 * may print. Its environment is per thread, so a thread of its own keeps all
 * that away from the caller, who may use GLPK as well: an error hook that jumps
 * out, the environment freed at the end. Before it gives up GLPK turns its
 * terminal on again to say why, so what it writes is taken by a hook, which
 * finds out there whether memory was what it lacked.
 */
#include "hold/guard.h"

#include "base/internal.h"

#include <glpk.h>
#include <pthread.h>
#include <setjmp.h>
#include <string.h>
#include <time.h>

#define TELL_NS 20000000L /* how often progress is told */

struct sw__guard {
    int (*work)(sw__guard *g, void *with);
    void *with;
    pthread_mutex_t lock;
    pthread_cond_t ended_now;
    double done; /* these three under the lock */
    int stop, ended;
    int status; /* of the worker, read after it was joined */
    int memory; /* GLPK spoke of memory */
    jmp_buf out;
};

int sw__guard_tell(sw__guard *g, double done)
{
    pthread_mutex_lock(&g->lock);
    g->done = done;
    const int stop = g->stop;
    pthread_mutex_unlock(&g->lock);
    return stop;
}

/* What GLPK would print. */
static int swallow(void *with, const char *text)
{
    sw__guard *g = with;
    g->memory |= strstr(text, "memory") || strstr(text, "alloc");
    return 1;
}

/* GLPK is about to abort. */
static void jump_out(void *with)
{
    sw__guard *g = with;
    longjmp(g->out, 1);
}

static void *run(void *with)
{
    sw__guard *g = with;
    if (glp_init_env() > 1) {
        g->status = SW_ERR_MEMORY;
    } else {
        glp_term_out(GLP_OFF);
        glp_term_hook(swallow, g);
        glp_error_hook(jump_out, g);
        if (setjmp(g->out)) {
            g->status = g->memory ? SW_ERR_MEMORY : SW_ERR_NONE;
        } else {
            g->status = g->work(g, g->with);
        }
        glp_error_hook(NULL, NULL);
        glp_free_env();
    }
    pthread_mutex_lock(&g->lock);
    g->ended = 1;
    pthread_cond_signal(&g->ended_now);
    pthread_mutex_unlock(&g->lock);
    return NULL;
}

/* Tells progress until the worker has ended. */
static void wait_for(sw__guard *g, sw_progress progress, void *with)
{
    pthread_mutex_lock(&g->lock);
    while (!g->ended) {
        struct timespec until;
        timespec_get(&until, TIME_UTC);
        until.tv_nsec += TELL_NS;
        if (until.tv_nsec >= 1000000000L) {
            until.tv_nsec -= 1000000000L;
            until.tv_sec++;
        }
        if (!progress) {
            pthread_cond_wait(&g->ended_now, &g->lock);
            continue;
        }
        pthread_cond_timedwait(&g->ended_now, &g->lock, &until);
        const double done = g->done;
        if (g->ended || g->stop)
            continue;
        pthread_mutex_unlock(&g->lock);
        const int stop = progress(done, with);
        pthread_mutex_lock(&g->lock);
        g->stop = stop != 0;
    }
    pthread_mutex_unlock(&g->lock);
}

int sw__guarded(int (*work)(sw__guard *g, void *with), void *with,
                sw_progress progress, void *progress_with, sw_error *err)
{
    static const char stopped[] = "progress: the caller ended the run";
    sw__guard g = {.work = work, .with = with};
    pthread_t worker;
    if (progress && progress(0, progress_with))
        return sw__fail(err, SW_ERR_STOPPED, "progress", stopped);
    if (pthread_mutex_init(&g.lock, NULL))
        return sw__fail_memory(err);
    if (pthread_cond_init(&g.ended_now, NULL)) {
        pthread_mutex_destroy(&g.lock);
        return sw__fail_memory(err);
    }
    const int none = pthread_create(&worker, NULL, run, &g);
    if (!none) {
        wait_for(&g, progress, progress_with);
        pthread_join(worker, NULL);
    }
    pthread_cond_destroy(&g.ended_now);
    pthread_mutex_destroy(&g.lock);
    if (none)
        return sw__fail_memory(err);
    if (g.status == SW_ERR_STOPPED)
        return sw__fail(err, SW_ERR_STOPPED, "progress", stopped);
    if (g.status == SW_ERR_MEMORY)
        return sw__fail_memory(err);
    if (g.status == SW_ERR_NONE)
        return sw__fail(err, SW_ERR_NONE, "fixture",
                        "fixture: the linear program could not be solved");
    return g.status;
}
