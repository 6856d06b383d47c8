/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fuzz target: the structs of torque, chart and strap, filled from bytes. For
 * each field one byte says how: left open, any double at all (8 bytes), or a
 * place within its allowed range (2 bytes); words and texts likewise.
 *
 * Built and run by run.sh.
 */
#include "must.h"

#include <stddef.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

typedef struct {
    const uint8_t *at, *end;
} bytes;

static unsigned byte(bytes *b) { return b->at < b->end ? *b->at++ : 0; }

static void raw(bytes *b, void *to, size_t size)
{
    for (size_t i = 0; i < size; i++)
        ((unsigned char *)to)[i] = (unsigned char)byte(b);
}

static double number(bytes *b, const sw_field *f)
{
    const unsigned how = byte(b);
    double v = SW_UNSET;
    if (how < 96)
        return v;
    if (how < 112) {
        raw(b, &v, sizeof v);
        return v;
    }
    const unsigned high = byte(b), low = byte(b);
    const double part = (double)(256 * high + low) / 65535;
    if (how < 224 && f->min > 0) /* spread over the logarithm */
        return fmin(f->max, fmax(f->min, f->min * pow(f->max / f->min, part)));
    return f->min + part * (f->max - f->min);
}

static void text(bytes *b, const sw_field *f, char *to)
{
    const unsigned how = byte(b);
    const char *name = NULL;
    if (how < 64)
        return;
    if (how < 80) {
        raw(b, to, f->size);
        return;
    }
    if (strcmp(f->name, "thread") == 0)
        name = sw_thread_name((int)byte(b));
    else if (strcmp(f->name, "grade") == 0)
        name = sw_grade_name((int)byte(b) % 40);
    else
        name = sw_lubrication_name((int)byte(b) % 20);
    if (name)
        snprintf(to, f->size, "%s", name);
}

static void fill(bytes *b, void *in, int structure)
{
    for (int i = 0; sw_field_at(structure, i); i++) {
        const sw_field *f = sw_field_at(structure, i);
        char *to = (char *)in + f->offset;
        if (f->type == SW_FIELD_NUMBER) {
            const double v = number(b, f);
            memcpy(to, &v, sizeof v);
        } else if (f->type == SW_FIELD_WORD) {
            int v = (int)byte(b);
            if (v < 240)
                v %= 4;
            else
                raw(b, &v, sizeof v);
            memcpy(to, &v, sizeof v);
        } else {
            text(b, f, to);
        }
    }
}

static void ordered(const char *what, double low, double value, double high)
{
    must(low <= value && value <= high, "%s: not %.17g <= %.17g <= %.17g", what,
         low, value, high);
}

static void fuzz_torque(bytes *b)
{
    sw_torque_in in;
    sw_error err;
    sw_torque_defaults(&in);
    fill(b, &in, SW_STRUCT_TORQUE_IN);
    const sw_torque_out out = sw_torque(&in, &err);
    check_record(&err, out.status);
    check_result(&out, SW_STRUCT_TORQUE_OUT, out.status);
    if (!out.status) {
        must(out.loosening_torque_Nm < out.torque_Nm,
             "loosening %.17g of "
             "%.17g",
             out.loosening_torque_Nm, out.torque_Nm);
        const double sum = out.stretch_share + out.thread_share +
                           out.seat_share + out.prevailing_share;
        must(fabs(sum - 1) < 1e-9, "shares add up to %.17g", sum);
    }
    const sw_assumption a = sw_torque_assumed(&in, (int)byte(b) - 1, &err);
    check_record(&err, a.status);
}

static void fuzz_chart(bytes *b)
{
    sw_chart_in in;
    sw_error err;
    sw_chart_defaults(&in);
    fill(b, &in, SW_STRUCT_CHART_IN);
    const sw_chart_out out = sw_chart(&in, &err);
    check_record(&err, out.status);
    check_result(&out, SW_STRUCT_CHART_OUT, out.status);
    const sw_assumption a = sw_chart_assumed(&in, (int)byte(b) - 1, &err);
    check_record(&err, a.status);
}

/* Questions put backwards; slow, so not for every input. */
static void fuzz_ask(bytes *b, const sw_strap_in *in)
{
    sw_error err;
    const double toe = exp((double)byte(b) / 16);
    switch (byte(b)) {
    case 1: {
        const sw_tilt_out out =
            sw_strap_tilt(in, toe, SW_UNSET, 0.02, 1 + (byte(b) & 1), &err);
        check_record(&err, out.status);
        check_result(&out, SW_STRUCT_TILT_OUT, out.status);
        if (!out.status)
            ordered("tilt", -10, out.tilt_low_deg, out.tilt_high_deg);
        break;
    }
    case 2: {
        const sw_place_out out = sw_strap_place(in, toe, &err);
        check_record(&err, out.status);
        check_result(&out, SW_STRUCT_PLACE_OUT, out.status);
        break;
    }
    case 3: {
        const sw_strap_torque_out out = sw_strap_torque(in, toe, &err);
        check_record(&err, out.status);
        check_result(&out, SW_STRUCT_STRAP_TORQUE_OUT, out.status);
        break;
    }
    case 4: {
        const sw_matter_out out = sw_strap_matters(in, (int)byte(b), &err);
        check_record(&err, out.status);
        check_result(&out, SW_STRUCT_MATTER_OUT, out.status);
        break;
    }
    default:
        break;
    }
}

static void fuzz_strap(bytes *b)
{
    sw_strap_in in;
    sw_error err;
    sw_strap_defaults(&in);
    fill(b, &in, SW_STRUCT_STRAP_IN);
    const sw_strap_out out = sw_strap(&in, &err);
    check_record(&err, out.status);
    check_result(&out, SW_STRUCT_STRAP_OUT, out.status);
    if (!out.status) {
        const double F = out.preload_N;
        ordered("toe", out.toe_force_low_N, out.toe_force_N,
                out.toe_force_high_N);
        ordered("pull", out.side_pull_low_N, out.side_pull_N,
                out.side_pull_high_N);
        ordered("drag", out.drag_low_N, out.drag_N, out.drag_high_N);
        ordered("share", 0, out.toe_force_N, F);
        must(fabs(out.toe_force_N + out.heel_force_N - F) <= 1e-9 * F,
             "toe %.17g and heel %.17g of %.17g", out.toe_force_N,
             out.heel_force_N, F);
        const double X = out.side_load_on_strap_N;
        const double left =
            X + out.heel_side_N + out.side_pull_N + out.unheld_N;
        must(fabs(left) <= 1e-9 * (F + fabs(X)),
             "along the table %.17g of "
             "%.17g",
             left, F);
    }
    const sw_assumption a = sw_strap_assumed(&in, (int)byte(b) - 1, &err);
    check_record(&err, a.status);
    sw_strap_in full = in;
    const int status = sw_strap_resolve(&full, &err);
    check_record(&err, status);
    must(!status || memcmp(&full, &in, sizeof in) == 0,
         "a refused question was changed");
    fuzz_ask(b, &in);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    bytes b = {data, data + size};
    switch (byte(&b) % 8) {
    case 0:
        fuzz_torque(&b);
        break;
    case 1:
        fuzz_chart(&b);
        break;
    default:
        fuzz_strap(&b);
    }
    return 0;
}
