/** Work off the screen's thread: writing files, drawing pages, printing. */
package org.capwright.desk.task;
