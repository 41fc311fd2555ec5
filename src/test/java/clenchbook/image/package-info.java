/**
 * Builds the program for a machine without Java: its own runtime, a lean jar, a class-data archive,
 * starters, licences and, where the tool is there, a package to install. Nothing here is a test but
 * what ends in IT. Start at {@link clenchbook.image.ImageBuild}.
 */
package clenchbook.image;
