/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Map places: what is drawn already, as a raster, so that hundreds of marks
 * and names keep off one another at a cost that does not grow with their
 * number.
 */
#include "sheet/hold_map.h"

#include <stdlib.h>

#define CELL 3.0 /* px */

int sw__occupied_open(sw__occupied *o, const sw__box *room, sw_error *err)
{
    o->room = *room;
    o->columns = (int)ceil((room->right - room->left) / CELL) + 1;
    o->rows = (int)ceil((room->bottom - room->top) / CELL) + 1;
    o->cell = calloc((size_t)o->columns * (size_t)o->rows, 1);
    return o->cell ? SW_OK : sw__fail_memory(err);
}

/* The cells that a box touches, cut to the raster. */
static void cells_of(const sw__occupied *o, const sw__box *b, int range[4])
{
    const double left = fmax(b->left, o->room.left);
    const double right = fmin(b->right, o->room.right);
    const double top = fmax(b->top, o->room.top);
    const double bottom = fmin(b->bottom, o->room.bottom);
    range[0] = (int)floor((left - o->room.left) / CELL);
    range[1] = (int)floor((right - o->room.left) / CELL);
    range[2] = (int)floor((top - o->room.top) / CELL);
    range[3] = (int)floor((bottom - o->room.top) / CELL);
}

int sw__occupied_free(const sw__occupied *o, const sw__box *b)
{
    int range[4];
    if (b->left < o->room.left || b->right > o->room.right ||
        b->top < o->room.top || b->bottom > o->room.bottom)
        return 0;
    cells_of(o, b, range);
    for (int row = range[2]; row <= range[3]; row++)
        for (int column = range[0]; column <= range[1]; column++)
            if (o->cell[row * o->columns + column])
                return 0;
    return 1;
}

void sw__occupied_take(sw__occupied *o, const sw__box *b)
{
    int range[4];
    if (b->right < o->room.left || b->left > o->room.right ||
        b->bottom < o->room.top || b->top > o->room.bottom)
        return;
    cells_of(o, b, range);
    for (int row = range[2]; row <= range[3]; row++)
        for (int column = range[0]; column <= range[1]; column++)
            o->cell[row * o->columns + column] = 1;
}

void sw__occupied_line(sw__occupied *o, sw__point from, sw__point to,
                       double half)
{
    const double length = hypot(to.x - from.x, to.y - from.y);
    const int n = (int)fmin(4000, ceil(length / CELL)) + 1;
    for (int i = 0; i <= n; i++) {
        const double t = (double)i / n;
        const double x = from.x + t * (to.x - from.x);
        const double y = from.y + t * (to.y - from.y);
        const sw__box b = {x - half, y - half, x + half, y + half};
        sw__occupied_take(o, &b);
    }
}

int sw__occupied_place(sw__occupied *o, sw__point at, int over, double off,
                       double far, double width, double height, sw__box *b)
{
    enum { WAYS = 16 };
    static const double upright[WAYS] = {
        90,  270, 67.5, 112.5, 247.5, 292.5, 45, 135,
        225, 315, 22.5, 157.5, 202.5, 337.5, 0,  180};
    const double step = fmax(CELL, 0.4 * height);
    for (double d = off; d <= far + 1e-9; d += step)
        for (int i = 0; i < WAYS; i++) {
            const double deg = over ? upright[i] : 45 - 360.0 * i / WAYS;
            const double ux = cos(SW__RAD(deg)), uy = -sin(SW__RAD(deg));
            const double x = at.x + ux * (d + width / 2);
            const double y = at.y + uy * (d + height / 2);
            *b = (sw__box){x - width / 2, y - height / 2, x + width / 2,
                           y + height / 2};
            if (sw__occupied_free(o, b)) {
                sw__occupied_take(o, b);
                return 1;
            }
        }
    return 0;
}
