package strawbed.statement;

import strawbed.event.Event;
import strawbed.grammar.ParseTree;

/** Reads the fact that one rule of the grammar stands for. */
@FunctionalInterface
interface FactReader {
    Event read(ParseTree tree, SpeechTime speech);
}
