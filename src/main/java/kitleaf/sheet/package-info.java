/**
 * Turns results into pages: {@link kitleaf.sheet.Sheets} lays out any sheet and is all that stands here. Each kind of
 * sheet has a package of its own below, which knows no other kind: {@code cut}, {@code plan}, {@code label}, {@code tag},
 * {@code list}, {@code goal}, {@code duplex}. They are made of what is in {@code page} and {@code words}; {@code template}
 * writes their page markup. Knows nothing of the library that draws it.
 */
package kitleaf.sheet;
