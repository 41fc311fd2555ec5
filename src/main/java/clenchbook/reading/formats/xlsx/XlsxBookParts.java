package clenchbook.reading.formats.xlsx;

/**
 * What all sheets of a book share.
 *
 * @param from1904 whether days count from 1904
 */
record XlsxBookParts(XlsxStyles styles, CompactTexts texts, boolean from1904) {}
