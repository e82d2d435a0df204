/**
 * The help sheet: every input and check with its words and a small drawing of the cap that is open, keys, cautions. What a drawing
 * points at is in one table, {@link org.capwright.desk.help.Pointers}.
 */
package org.capwright.desk.help;
