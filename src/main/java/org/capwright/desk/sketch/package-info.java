/**
 * Drawing on the screen: surfaces, colours by role, and one class for each picture. The plane of a sketch is in mm with y up;
 * pictures take a solved cap and compute no figure of their own.
 */
package org.capwright.desk.sketch;
