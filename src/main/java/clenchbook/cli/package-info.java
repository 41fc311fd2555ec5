/** Arguments in, exit code out: the only package that may end the process. */
package clenchbook.cli;
