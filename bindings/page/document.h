/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef STRAPWISE_PAGE_DOCUMENT_H
#define STRAPWISE_PAGE_DOCUMENT_H

#include <stddef.h>

/* The teaching page as one HTML document, without its settings; empty where it
 * was not built. */
extern const unsigned char page_document[];
extern const size_t page_document_size;

/* Stands once in the document where the settings go, as a JSON object. */
#define PAGE_SETTINGS "@settings@"

#endif
