/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Slots: one value of a question or answer, read and written by its field.
 */
#include "topics.h"

#include <string.h>

double slot_number(slot s)
{
    double value;
    memcpy(&value, s.place, sizeof value);
    return value;
}

int slot_word(slot s)
{
    int value;
    memcpy(&value, s.place, sizeof value);
    return value;
}

void slot_set_number(slot s, double value)
{
    memcpy(s.place, &value, sizeof value);
}

void slot_set_word(slot s, int value) { memcpy(s.place, &value, sizeof value); }

int slot_set_text(slot s, const char *text)
{
    size_t n = strlen(text);
    if (n >= s.field->size)
        return 0;
    memcpy(s.place, text, n + 1);
    return 1;
}

int topic_kind(const char *name)
{
    static const struct {
        const char *ending;
        int kind;
    } row[] = {
        {"_mm_per_N", SW_KIND_COMPLIANCE},
        {"_mm_per_m", SW_KIND_SLOPE},
        {"_mm", SW_KIND_LENGTH},
        {"_N", SW_KIND_FORCE},
        {"_Nm", SW_KIND_TORQUE},
        {"_MPa", SW_KIND_PRESSURE},
        {"_deg", SW_KIND_ANGLE},
        {"_rpm", SW_KIND_ROTATION},
        {"_m_per_min", SW_KIND_SPEED},
        {"_W", SW_KIND_POWER},
        {"_kg", SW_KIND_MASS},
        {"_mm2", SW_KIND_AREA},
        {"_m", SW_KIND_ALTITUDE},
    };
    size_t n = strlen(name);
    for (size_t i = 0; i < sizeof row / sizeof row[0]; i++) {
        size_t m = strlen(row[i].ending);
        if (n > m && strcmp(name + n - m, row[i].ending) == 0)
            return row[i].kind;
    }
    return SW_KIND_RATIO;
}

int topic_kind_named(const char *word)
{
    static const char *const name[SW_KIND_COUNT + 1] = {
        NULL,       "ratio", "length", "force",      "torque",
        "pressure", "angle", "slope",  "compliance", "speed",
        "rotation", "power", "mass",   "area",       "altitude"};
    for (int k = 1; word && k <= SW_KIND_COUNT; k++)
        if (strcmp(name[k], word) == 0)
            return k;
    return 0;
}
