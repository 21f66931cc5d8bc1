/**
 * The words in which a rig is wired: states, signals, accounts and meters, and the parts whose flows join them. Parts of
 * every kind speak them; {@code network} turns the finished wiring into equations.
 */
package stokewell.balance;
