/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * No files: in the place of what the C library would import from its host for
 * stdio, which snprintf() drags in and never calls. So the engine imports
 * nothing and can reach nothing outside itself.
 *
 * The names are those under which wasi-libc declares its imports.
 */
#include <stdint.h>

#define IMPORTED(name) __imported_wasi_snapshot_preview1_##name
enum { NO_SUCH_FILE = 8 }; /* errno "badf" of the interface */

int32_t IMPORTED(fd_close)(int32_t fd);
int32_t IMPORTED(fd_seek)(int32_t fd, int64_t by, int32_t from, int32_t at);
int32_t IMPORTED(fd_write)(int32_t fd, int32_t part, int32_t n, int32_t done);

int32_t IMPORTED(fd_close)(int32_t fd)
{
    (void)fd;
    return NO_SUCH_FILE;
}

int32_t IMPORTED(fd_seek)(int32_t fd, int64_t by, int32_t from, int32_t at)
{
    (void)fd, (void)by, (void)from, (void)at;
    return NO_SUCH_FILE;
}

int32_t IMPORTED(fd_write)(int32_t fd, int32_t part, int32_t n, int32_t done)
{
    (void)fd, (void)part, (void)n, (void)done;
    return NO_SUCH_FILE;
}
