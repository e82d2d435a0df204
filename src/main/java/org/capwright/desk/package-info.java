/**
 * The window. {@code session} holds what is open, with its history; {@code view} shows it and computes nothing; {@code task}
 * works off the screen's thread. What is shown derives from one solved cap. {@link org.capwright.desk.Start} is where the
 * program begins: with a command's words it is the command line, else the window.
 */
package org.capwright.desk;
