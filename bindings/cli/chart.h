/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Chart: the rows of a wall chart, between run_chart.c, which computes them,
 * and say_chart.c, which prints them.
 */
#ifndef STRAPWISE_CLI_CHART_H
#define STRAPWISE_CLI_CHART_H

#include "cli.h"

typedef struct {
    sw_thread_out thread;
    sw_chart_out chart;
} chart_row;

typedef struct {
    chart_row *row;
    int rows;
    const char *series;
    sw_assumption *assumed; /* of all rows, each once */
    int assumptions;
    char lubrication[24]; /* that entered, "" where K was given */
    char grade[48];       /* that entered, two of them for mixed series */
    double proof_fraction;
} chart_table;

void say_chart(page *p, const request *r, const chart_table *t);

#endif
