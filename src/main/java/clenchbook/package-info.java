/** Clenchbook: a farrier's month and year from one workbook. */
package clenchbook;
