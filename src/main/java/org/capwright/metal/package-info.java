/**
 * Sheet metal: metals and their gauge tables, bends, seams, beads, edges, rivets and bushings. Every table is a resource
 * beside this package with its source in its head; every formula is one method. Imports {@code units} only.
 */
package org.capwright.metal;
