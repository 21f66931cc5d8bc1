/** Compiles a rig to flat arrays and knows their sparsity. */
package stokewell.network;
