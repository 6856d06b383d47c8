/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Utf8: whether bytes are text (RFC 3629).
 */
#include "base/utf8.h"

size_t sw__utf8(const char *at, size_t room)
{
    const unsigned char *c = (const unsigned char *)at;
    if (!room)
        return 0;
    const size_t n = c[0] < 0x80                    ? 1
                     : c[0] >= 0xc2 && c[0] < 0xe0  ? 2
                     : c[0] >= 0xe0 && c[0] < 0xf0  ? 3
                     : c[0] >= 0xf0 && c[0] <= 0xf4 ? 4
                                                    : 0;
    if (n > room)
        return 0;
    for (size_t i = 1; i < n; i++)
        if ((c[i] & 0xc0) != 0x80)
            return 0;
    if ((c[0] == 0xe0 && c[1] < 0xa0) || (c[0] == 0xed && c[1] > 0x9f) ||
        (c[0] == 0xf0 && c[1] < 0x90) || (c[0] == 0xf4 && c[1] > 0x8f))
        return 0;
    return n;
}
