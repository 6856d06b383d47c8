/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * No document: where the teaching page was not built.
 */
#include "document.h"

const unsigned char page_document[] = {0};
const size_t page_document_size = 0;
