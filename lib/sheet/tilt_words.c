/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tilt words: title, this strap's place, and its four values.
 */
#include "sheet/tilt_words.h"

#include <strapwise/say.h>

static void quantity(sw__line *line, double value, int kind, int show)
{
    char text[100];
    sw_say(value, kind, show, text, sizeof text);
    sw__line_add(line, text);
}

static const char *way(int pull_direction)
{
    return pull_direction == SW_PULL_TOWARD ? ", drawn toward the stud"
           : pull_direction == SW_PULL_AWAY ? ", pushed away"
                                            : "";
}

static void say_seat(const sw__tilts *t, int seat, int show, char *text)
{
    const sw__tilt_point *q = &t->here[seat];
    sw__line line = sw__line_start(text, SW__TILT_TEXT);
    sw__line_add(&line, seat == SW__TILT_FLAT ? "flat seat" : "spherical seat");
    if (!q->known) {
        sw__line_add(&line, ": no answer at this tilt");
        return;
    }
    sw__line_add(&line, ": side pull ");
    quantity(&line, q->pull_N, SW_KIND_FORCE, show);
    sw__line_add(&line, way(q->direction));
    sw__line_add(&line, "; toe force error ");
    const double share = q->error_pct / 100;
    quantity(&line, fabs(share) < 1e-9 ? 0 : share, SW_KIND_RATIO, show);
}

static void say_here(const sw__tilts *t, int show, char *text)
{
    const double tilt = t->out.tilt_deg;
    const double heel = t->span_mm * tan(SW__RAD(tilt));
    sw__line line = sw__line_start(text, SW__TILT_TEXT);
    quantity(&line, t->out.preload_N, SW_KIND_FORCE, show);
    sw__line_add(&line, " in the stud; this strap: ");
    if (fabs(tilt) < 1e-6) {
        sw__line_add(&line, "level");
    } else {
        sw__line_add(&line, "tilt ");
        quantity(&line, tilt, SW_KIND_ANGLE, show);
        sw__line_add(&line, ", heel ");
        quantity(&line, fabs(heel), SW_KIND_LENGTH, show);
        sw__line_add(&line, heel > 0 ? " above level" : " below level");
    }
}

void sw__tilt_say(const sw__tilts *t, int show, sw__tilt_words *w)
{
    sw__line line = sw__line_start(w->title, sizeof w->title);
    sw__line_add(&line, t->in.thread);
    sw__line_add(&line, " strap: what tilt does");
    say_here(t, show, w->here);
    for (int seat = 0; seat < SW__TILT_SEATS; seat++)
        say_seat(t, seat, show, w->seat[seat]);
    line = sw__line_start(w->about, sizeof w->about);
    sw__line_add(&line, "Side pull and toe force against tilt. ");
    sw__line_add(&line, w->here);
    for (int seat = 0; seat < SW__TILT_SEATS; seat++) {
        sw__line_add(&line, seat ? "; " : ". ");
        sw__line_add(&line, w->seat[seat]);
    }
    sw__line_add(&line, ".");
}
