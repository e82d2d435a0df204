/**
 * What the window has open: what was typed, the last good cap, history, files, drafts against a crash, settings. Properties
 * of JavaFX, but no screen: all of it runs without a display.
 */
package org.capwright.desk.session;
