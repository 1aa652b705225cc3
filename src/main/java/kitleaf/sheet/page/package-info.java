/**
 * What every sheet is made of: which sheets there are and how they are to be laid out, the frame around a page, type sizes and
 * their measure, rows and passages that flow from page to page, and the boxes, texts and swatches views have. Takes
 * settings and words, gives view records. Knows no sheet and nothing of templates.
 */
package kitleaf.sheet.page;
