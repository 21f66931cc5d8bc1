/**
 * Weather as a run sees it: smooth curves of outdoor temperature, wind, sky temperature and sun on each surface.
 *
 * <p>Hourly records have kinks where they are joined by straight lines, and each kink would cost the integrator a
 * restart. So every quantity here is a uniform cubic B-spline, twice continuously differentiable. Temperature is
 * interpolated: the curve goes through each hourly value (prefilter of Unser, Aldroubi and Eden, IEEE Trans. Signal
 * Processing 41 (1993) 821). Wind, sky and sun take the hourly values as control points: the curve stays inside the
 * range of its neighbours, is never negative, and its integral is the sum of the hours.
 *
 * <p>Sun: position by Reda and Andreas (2004) four times an hour; global split into beam and diffuse by Erbs et al.
 * (1982); tilted surfaces by Hay and Davies (1980) with ground reflection; clear sky by Haurwitz (1945). Sky: clear
 * emissivity by Berdahl and Martin (1984), clouds by Unsworth and Monteith (1975) and Kasten and Czeplak (1980).
 */
package stokewell.weather;
