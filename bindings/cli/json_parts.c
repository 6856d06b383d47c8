/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Json parts: what answers have in common: one field, one default, warnings.
 */
#include "cli.h"

void json_slot(json *j, slot s)
{
    if (s.field->type == SW_FIELD_NUMBER)
        json_number(j, s.field->name, slot_number(s));
    else if (s.field->type == SW_FIELD_WORD)
        json_text(j, s.field->name, sw_word(s.field->words, slot_word(s)));
    else
        json_text(j, s.field->name, s.place);
}

void json_assumed_one(json *j, const sw_assumption *a)
{
    json_open(j, NULL, '{');
    json_text(j, "name", a->name);
    if (a->word[0])
        json_text(j, "value", a->word);
    else
        json_number(j, "value", a->value);
    json_text(j, "unit", a->unit);
    /* no usual range is written as two equal ends */
    const int range = is_known(a->low) && is_known(a->high) && a->low < a->high;
    json_number(j, "low", range ? a->low : SW_UNSET);
    json_number(j, "high", range ? a->high : SW_UNSET);
    json_text(j, "source", a->source);
    json_close(j, '}');
}

void json_warnings(json *j, const char *name, uint64_t bits)
{
    json_open(j, name, '[');
    for (int bit = 0; sw_warning_name(bit); bit++)
        if (bits >> bit & 1)
            json_text(j, NULL, sw_warning_name(bit));
    json_close(j, ']');
}
