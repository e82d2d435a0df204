package org.capwright.layout;

/** Kinds of lines in views, after ISO 128-2. */
public enum LineKind {
    /** Visible outlines and cut faces: continuous wide. */
    OUTLINE,
    /** Edges behind the section, simplified things: continuous narrow. */
    NARROW,
    /** Hidden edges: dashed narrow. */
    HIDDEN,
    /** Middle lines: long-dashed dotted narrow. */
    CENTER,
    /** Other positions of moving parts, neighbouring parts: long-dashed double-dotted narrow. */
    PHANTOM
}
