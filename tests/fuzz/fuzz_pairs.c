/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fuzz target: a file of pairs, what is reckoned from it, and its plot.
 *
 * Built and run by run.sh.
 */
#include "must.h"

#include <stddef.h>
#include <stdint.h>

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size);

static void check_plot(const sw_calibrate_in *in, const sw_pairs *pairs)
{
    sw_error err;
    sw_drawing *d = sw_calibrate_plot(in, pairs, &err);
    must(d, "no plot: %s", err.message);
    const char *svg = sw_drawing_svg(d);
    must(strncmp(svg, "<svg ", 5) == 0 &&
             strcmp(svg + strlen(svg) - 7, "</svg>\n") == 0,
         "no whole drawing");
    must(!strstr(svg, "nan") ||
             strstr(sw_pairs_about(pairs, &err).name, "nan") ||
             strstr(sw_pairs_about(pairs, &err).lubrication, "nan"),
         "nan in the drawing");
    for (const char *c = svg; *c; c++)
        must((unsigned char)*c >= 0x20 || *c == '\n', "control byte in it");
    sw_drawing_free(d);
}

static void check_pairs(const sw_calibrate_in *in, const sw_pairs *pairs)
{
    sw_error err;
    const int n = sw_pairs_count(pairs);
    for (int i = n > 20 ? n - 20 : 0; i <= n; i++) {
        const sw_pair_out p = sw_pairs_at(in, pairs, i, &err);
        check_record(&err, p.status);
        check_result(&p, SW_STRUCT_PAIR_OUT, p.status);
        must(i < n || p.status == SW_ERR_RANGE, "a pair past the end");
    }
}

static void check_answer(const char *thread, const sw_pairs *pairs)
{
    sw_error err;
    sw_calibrate_in in;
    sw_calibrate_defaults(&in);
    strcpy(in.thread, thread);
    const sw_calibrate_out out = sw_calibrate(&in, pairs, &err);
    check_record(&err, out.status);
    check_result(&out, SW_STRUCT_CALIBRATE_OUT, out.status);
    if (out.status)
        return;
    must(out.nut_factor > 0 && out.sigma_ln >= 0, "K %.17g, sigma %.17g",
         out.nut_factor, out.sigma_ln);
    must(out.nut_factor_low == SW_UNSET ||
             (out.nut_factor_low <= out.nut_factor &&
              out.nut_factor <= out.nut_factor_high),
         "%.17g is not within its interval", out.nut_factor);
    must(out.scatter_pct >= 0 && out.tolerance_pct <= 100, "%.17g, %.17g",
         out.scatter_pct, out.tolerance_pct);
    check_pairs(&in, pairs);
    check_plot(&in, pairs);
}

int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size)
{
    sw_error err;
    sw_pairs *pairs = sw_pairs_new(&err);
    /* no larger than the text, so that a read past its end is seen */
    char *text = malloc(size ? size : 1);
    if (pairs && text) {
        if (size)
            memcpy(text, data, size);
        must(!sw_pairs_add(pairs, 1, 2, SW_UNSET, SW_UNSET, &err), "%s",
             err.message);
        const int status = sw_pairs_read(pairs, text, size, "pairs.csv", &err);
        check_record(&err, status);
        if (status) {
            must(strncmp(err.message, "pairs.csv:", 10) == 0, "%s",
                 err.message);
            must(sw_pairs_count(pairs) == 1, "half a file was taken");
        } else {
            check_answer(sw_pairs_about(pairs, &err).thread[0] ? "" : "M12",
                         pairs);
        }
    }
    free(text);
    sw_pairs_free(pairs);
    return 0;
}
