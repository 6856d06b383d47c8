/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Vial: the glass of a level and its bubble. The marks count whole divisions
 * from the middle, and the bubble's middle tells, so that a division here is a
 * division on the strap.
 */
#include "sheet/vial.h"

#define HALF_BUBBLE 1.3 /* divisions */
#define GLASS "fill=\"#f4f2ea\" stroke=\"#1a1a1a\" stroke-width=\"1\""
#define MARK "stroke=\"#1a1a1a\" stroke-width=\"0.9\""
#define BUBBLE "fill=\"#d6e4c2\" stroke=\"#1a1a1a\" stroke-width=\"1.1\""

typedef struct {
    sw__point foot;        /* middle of the foot */
    double ux, uy, length; /* along the glass, to the right */
    double height;
} vial;

static sw__point on(const vial *v, double along, double up)
{
    return (sw__point){v->foot.x + along * v->ux + up * v->uy,
                       v->foot.y + along * v->uy - up * v->ux};
}

/* An oblong with round ends. */
static void oblong(sw__svg *s, const vial *v, double middle, double half_length,
                   double half_height, double up, const char *look)
{
    enum { PARTS = 8 };
    sw__point p[2 * PARTS + 2];
    const double r = fmin(half_height, half_length);
    int n = 0;
    for (int side = 1; side >= -1; side -= 2)
        for (int i = 0; i <= PARTS; i++) {
            const double turn = SW__PI * ((double)i / PARTS - 0.5);
            const double out = half_length - r + r * cos(turn);
            const double high = half_height * sin(turn);
            p[n++] = on(v, middle + side * out, up + side * high);
        }
    sw__svg_polygon(s, p, n, look);
}

void sw__vial(sw__svg *s, sw__point from, sw__point to, double height,
              double divisions)
{
    vial v = {{(from.x + to.x) / 2, (from.y + to.y) / 2}, 0, 0, 0, height};
    v.length = hypot(to.x - from.x, to.y - from.y);
    if (!(v.length > 0))
        return;
    v.ux = (to.x - from.x) / v.length;
    v.uy = (to.y - from.y) / v.length;
    const double most = SW__VIAL_DIVISIONS;
    const double division = v.length / (2 * (most + HALF_BUBBLE + 0.3));
    const double held = fmax(-most, fmin(most, divisions));
    sw__svg_group(s, "class=\"level\"");
    oblong(s, &v, 0, v.length / 2, height / 2, height / 2, GLASS);
    oblong(s, &v, held * division, HALF_BUBBLE * division, 0.3 * height,
           0.56 * height, BUBBLE);
    for (int i = -SW__VIAL_DIVISIONS; i <= SW__VIAL_DIVISIONS; i++)
        sw__svg_line(s, on(&v, i * division, 0.06 * height),
                     on(&v, i * division, (i ? 0.42 : 0.94) * height), MARK);
    sw__svg_group_end(s);
}
