/**
 * Whether a rig is safe: drills run what happens when a part fails, from the worst moment of a normal day; findings say what
 * is wrong with a rig, why, and how to mend it. Numbers defer to local code and a licensed person.
 */
package stokewell.check;
