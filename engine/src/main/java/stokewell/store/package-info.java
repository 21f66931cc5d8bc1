/**
 * The store as a body: its shape cut into layers, what it stands on, and how its loss is judged. m, m², m³, W, K.
 */
package stokewell.store;
