/**
 * What gives the heat to the room: radiators, tubes of air through the store, fan coils, pipes in the floor. Film coefficients
 * and properties are arguments; W, K, kg, s, m, a capacity rate is m c in W/K.
 */
package stokewell.emitter;
