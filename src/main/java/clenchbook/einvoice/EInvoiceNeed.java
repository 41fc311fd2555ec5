package clenchbook.einvoice;

import clenchbook.problem.CellRef;
import clenchbook.texts.Message;

/**
 * What a structured invoice lacks.
 *
 * @param cell where it belongs
 * @param what what is missing: a heading or setting as the book has it, or words
 * @param expected what is to stand there
 */
record EInvoiceNeed(CellRef cell, Message what, Message expected) {}
