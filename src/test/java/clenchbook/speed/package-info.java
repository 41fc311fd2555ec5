/**
 * Speed and memory, measured against floors: generators of books, the floors' own code, and the
 * report that runs both as fresh processes in turn. Nothing here is a test; nothing passes or
 * fails.
 */
package clenchbook.speed;
