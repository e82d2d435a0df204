/**
 * Job files and folders on disk: {@link org.capwright.store.JobFiles} turns a JSON job file into {@link
 * org.capwright.job.JobText} and back, {@link org.capwright.store.JobSchema} publishes the form of that file, {@link
 * org.capwright.store.JobStamp} names what was typed by a short fingerprint, and {@link
 * org.capwright.store.StagedFolder} writes a folder wholly or not at all, {@link
 * org.capwright.store.PrinterFile} keeps what printers get wrong. No axes and no units here: a job file's texts
 * are passed on as typed. May import {@code job}, what {@code job} may import, what {@code export} says of printers and paper,
 * and Jackson.
 *
 * <p>Compromises: null, true and false are passed on as words for the reader of jobs to refuse by their path; a job file
 * is read whole into memory.
 */
package org.capwright.store;
