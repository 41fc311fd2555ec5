package clenchbook.matching;

import clenchbook.matching.bank.BankEntry;
import clenchbook.texts.Message;

/**
 * An entry that is not proposed.
 *
 * @param entry the entry
 * @param why a sentence
 */
public record LeftEntry(BankEntry entry, Message why) {}
