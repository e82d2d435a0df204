/**
 * What the shop decides about a cap, and nothing that follows from it. Each input is declared once ({@link
 * org.capwright.job.Input}: path, label, kind, range, default, help) and everything that needs to know about inputs (the
 * reader of job files, the published schema, the form, the docs) reads that declaration. {@link
 * org.capwright.job.JobText} is what was typed, right or wrong; {@link org.capwright.job.CapJob} is what was typed and
 * found good. Imports {@code units} and {@code metal} only.
 */
package org.capwright.job;
