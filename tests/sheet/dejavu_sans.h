/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How wide letters are in DejaVu Sans 2.37, as its files say (table hmtx, 2048
 * units an em): what a browser without Helvetica or Arial often sets.
 */
#ifndef TESTS_DEJAVU_SANS_H
#define TESTS_DEJAVU_SANS_H

#include <string.h>

/* from blank to tilde; then the middle dot */
static const int dejavu_units[2][96] = {
    {651,  821,  942,  1716, 1303, 1946, 1597, 563,  799,  799,  1024, 1716,
     651,  739,  651,  690,  1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303,
     1303, 1303, 690,  690,  1716, 1716, 1716, 1087, 2048, 1401, 1405, 1430,
     1577, 1294, 1178, 1587, 1540, 604,  604,  1343, 1141, 1767, 1532, 1612,
     1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799,
     690,  799,  1716, 1024, 1024, 1255, 1300, 1126, 1300, 1260, 721,  1300,
     1298, 569,  569,  1186, 569,  1995, 1298, 1253, 1300, 1300, 842,  1067,
     803,  1298, 1212, 1675, 1212, 1212, 1075, 1303, 690,  1303, 1716, 651},
    {713,  934,  1067, 1716, 1425, 2052, 1786, 627,  936,  936,  1071, 1716,
     778,  850,  778,  748,  1425, 1425, 1425, 1425, 1425, 1425, 1425, 1425,
     1425, 1425, 819,  819,  1716, 1716, 1716, 1188, 2048, 1585, 1561, 1503,
     1700, 1399, 1399, 1681, 1714, 762,  762,  1587, 1305, 2038, 1714, 1741,
     1501, 1741, 1577, 1475, 1397, 1663, 1585, 2259, 1579, 1483, 1485, 936,
     748,  936,  1716, 1024, 1024, 1382, 1466, 1214, 1466, 1389, 891,  1466,
     1458, 702,  702,  1362, 702,  2134, 1458, 1407, 1466, 1466, 1010, 1219,
     979,  1458, 1335, 1892, 1321, 1335, 1192, 1458, 748,  1458, 1716, 778}};

/* em; other letters than these must not occur: -1 */
static inline double dejavu_em(const char *text, int bold)
{
    double units = 0;
    for (const char *c = text; *c; c++) {
        const int middle_dot = memcmp(c, "\xc2\xb7", 2) == 0;
        if (!middle_dot && (*c < ' ' || *c > '~'))
            return -1;
        units += dejavu_units[bold][middle_dot ? 95 : *c - ' '];
        c += middle_dot;
    }
    return units / 2048;
}

#endif
