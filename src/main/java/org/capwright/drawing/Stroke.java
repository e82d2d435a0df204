package org.capwright.drawing;

import org.capwright.geom.Path;

/**
 * A path on a layer.
 *
 * @param layer what it is for
 * @param path where it runs
 */
public record Stroke(Layer layer, Path path) {
}
