/**
 * Files and the numbers in them: rig files in the user's own units, their faults with file and line, the JSON Schema for
 * editors, edits that keep comments, and the weather and readings that lie beside them.
 */
package stokewell.file;
