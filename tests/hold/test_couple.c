/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Couple and tripod: the margin from above, by turning the part about points
 * tried all over the plane; supports by solving three equations. Values worked
 * by hand are in tests/cases/.
 */
#include "../common.h"
#include "../near.h"
#include "../random.h"

static sw_couple_in drawn(randoms *r)
{
    sw_couple_in in;
    sw_couple_defaults(&in);
    in.normal1_N = random_between(r, 500, 5000);
    in.normal2_N = random_between(r, 500, 5000);
    in.distance_mm = random_between(r, 50, 400);
    in.across_N = random_between(r, 0, 500);
    in.along_N = random_between(r, 0, 500);
    in.couple_Nm = random_between(r, 0, 60);
    return in;
}

/* Work of friction over work of the cut when the part turns by w about the
 * middle and moves by (u, v) there; pads at -d/2 and d/2. */
static double turned(const sw_couple_in *in, double c1, double c2, double u,
                     double v, double w)
{
    const double h = in->distance_mm / 2;
    const double power =
        in->along_N * u + in->across_N * v + 1000 * in->couple_Nm * w;
    const double friction = c1 * hypot(u, v - w * h) + c2 * hypot(u, v + w * h);
    return power > 0 ? friction / power : INFINITY;
}

/* Least of it, by trials that draw together. */
static double least_turned(const sw_couple_in *in, double c1, double c2,
                           randoms *r)
{
    const double h = in->distance_mm / 2;
    /* about one pad, about the other, straight: where it may have an edge */
    double best[3] = {0, h, 1}, most = 1;
    double least = turned(in, c1, c2, 0, h, 1);
    const double other = turned(in, c1, c2, 0, -h, 1);
    if (other < least) {
        least = other;
        best[1] = -h;
    }
    for (int n = 0; n < 60000; n++) {
        if (n % 4000 == 3999)
            most *= 0.35;
        const double u = best[0] + most * h * random_between(r, -2, 2);
        const double v = best[1] + most * h * random_between(r, -2, 2);
        const double w = best[2] + most * random_between(r, -2, 2);
        const double k = turned(in, c1, c2, u, v, w);
        if (k < least) {
            least = k;
            best[0] = u;
            best[1] = v;
            best[2] = w;
        }
    }
    return least;
}

START_TEST(from_above)
{
    randoms some = {31};
    for (int n = 0; n < 60; n++) {
        const sw_couple_in in = drawn(&some);
        const sw_couple_out out = sw_couple(&in, NULL);
        ck_assert_int_eq(out.status, SW_OK);
        const double c1 = 0.15 * in.normal1_N, c2 = 0.15 * in.normal2_N;
        /* the couple either way round */
        const double k = fmin(least_turned(&in, c1, c2, &some),
                              least_turned(&in, c2, c1, &some));
        must(k > out.margin * (1 - 1e-9), "%g below %g", k, out.margin);
        near(k, out.margin, 0, 2e-3);
    }
}
END_TEST

/* The two closed forms, and what follows from them. */
START_TEST(closed)
{
    randoms some = {32};
    for (int n = 0; n < 300; n++) {
        sw_couple_in in = drawn(&some);
        in.normal2_N = SW_UNSET;
        const double c = 0.15 * in.normal1_N, V = in.across_N / 2;
        const double turn = 1000 * in.couple_Nm / in.distance_mm;
        const double H = in.along_N;
        in.along_N = 0;
        near(sw_couple(&in, NULL).margin, c / (V + turn), 0, 1e-12);
        in.along_N = H;
        in.across_N = 0;
        near(sw_couple(&in, NULL).margin, c / hypot(H / 2, turn), 0, 1e-9);
        in.faces = 2;
        near(sw_couple(&in, NULL).margin, 2 * c / hypot(H / 2, turn), 0, 1e-9);
    }
}
END_TEST

/* Three equations: forces, and moments about two axes, by elimination. */
START_TEST(equations)
{
    randoms some = {33};
    int stands = 0;
    for (int n = 0; n < 2000; n++) {
        double x[3], y[3];
        sw_tripod_in in;
        for (int i = 0; i < 3; i++) {
            x[i] = random_between(&some, -200, 200);
            y[i] = random_between(&some, -200, 200);
        }
        sw_tripod_defaults(&in);
        in.x1_mm = x[0], in.x2_mm = x[1], in.x3_mm = x[2];
        in.y1_mm = y[0], in.y2_mm = y[1], in.y3_mm = y[2];
        in.force_N = 1000;
        in.x_mm = random_between(&some, -100, 100);
        in.y_mm = random_between(&some, -100, 100);
        const double a = x[1] - x[0], b = x[2] - x[0], c = y[1] - y[0],
                     d = y[2] - y[0], det = a * d - b * c;
        const double px = 1000 * (in.x_mm - x[0]), py = 1000 * (in.y_mm - y[0]);
        const double N2 = (px * d - b * py) / det, N3 = (a * py - px * c) / det;
        const double N1 = 1000 - N2 - N3;
        sw_error err;
        const sw_tripod_out out = sw_tripod(&in, &err);
        check_no_error("tripod", out.status, &err);
        if (N1 < 0 || N2 < 0 || N3 < 0) { /* the same equations, and it rocks */
            ck_assert_int_eq(out.rest, SW_REST_ROCKS);
            near(out.support1_N, N1, 1e-6, 1e-9);
            near(out.support2_N, N2, 1e-6, 1e-9);
            near(out.support3_N, N3, 1e-6, 1e-9);
            ck_assert(out.inside_mm < 0 && out.least_share < 0);
            continue;
        }
        ck_assert_int_eq(out.rest, SW_REST_STAYS);
        stands++;
        near(out.support1_N, N1, 1e-6, 1e-9);
        near(out.support2_N, N2, 1e-6, 1e-9);
        near(out.support3_N, N3, 1e-6, 1e-9);
        near(out.least_share, fmin(N1, fmin(N2, N3)) / 1000, 1e-9, 0);
        /* moved outward by what it lies inside, it is on an edge: nothing */
        double reach = INFINITY;
        for (int i = 0; i < 3; i++) {
            const int p = (i + 1) % 3;
            const double ex = x[p] - x[i], ey = y[p] - y[i];
            reach = fmin(reach,
                         fabs(ex * (in.y_mm - y[i]) - ey * (in.x_mm - x[i])) /
                             hypot(ex, ey));
        }
        near(out.inside_mm, reach, 1e-9, 1e-9);
    }
    ck_assert_int_gt(stands, 200);
}
END_TEST

int main(void) { return RUN_TESTS("couple", from_above, closed, equations); }
