/**
 * What sheets say: the words on them in one language, figures and days as that language writes them, and the phrases of cloth and
 * thread that several sheets share. Takes reckoned records, gives texts. Knows nothing of pages.
 */
package kitleaf.sheet.words;
