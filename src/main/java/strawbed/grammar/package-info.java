/**
 * Grammars of what may be said: W3C SRGS 1.0 text in ABNF form to rules, word lists to parse trees, rules to sentences.
 *
 * <p>Entry types: {@link strawbed.grammar.GrammarReader} reads, {@link strawbed.grammar.GrammarMatcher} matches, {@link
 * strawbed.grammar.SentenceMaker} makes sentences. A grammar that cannot be read ends in a {@link
 * strawbed.grammar.GrammarException} that points at the place; a word list that does not match is an empty list of
 * trees. Everything read is immutable, and matcher and sentence maker may be used by any number of threads at once.
 */
@NullMarked
package strawbed.grammar;

import org.jspecify.annotations.NullMarked;
