/**
 * What is said, apart from the language it is said in: phrases by key, the bundles that hold them in English
 * and German, and the word that was probably meant. Knows nothing of what is talked about.
 */
package kitleaf.words;
