package clenchbook.einvoice;

import clenchbook.problem.CellRef;

/**
 * What a structured invoice lacks.
 *
 * @param cell where it belongs
 * @param what what is missing, in words
 * @param expected what is to stand there
 */
record EInvoiceNeed(CellRef cell, String what, String expected) {}
