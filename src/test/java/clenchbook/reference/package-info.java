/**
 * A second, plain computation of a month's figures, written from the description of the figures
 * alone and sharing no code with the program: straight-line arithmetic over a workbook read with
 * the spreadsheet library. Where both agree to the cent, a slip would have to be made twice.
 *
 * <p>Start at {@link clenchbook.reference.ReferenceMonth}.
 */
package clenchbook.reference;
