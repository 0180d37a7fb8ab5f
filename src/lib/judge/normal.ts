/**
 * The standard normal distribution, to double precision.
 * Rational approximation of Hart et al. 1968 (Computer Approximations, no. 5666) in the form given
 * by West 2005, "Better approximations to cumulative normal functions". Coefficients recalled, and
 * therefore checked against numerical integration and a statistics library in tests/outside.
 * Written here, not taken from a package: it is called tens of millions of times a second.
 */

const INV_SQRT_2PI = 1 / Math.sqrt(2 * Math.PI);
const SQRT_2PI = Math.sqrt(2 * Math.PI);

/** Beyond this many standard deviations the tail is below 1e-15 and taken as nothing. */
export const FAR = 8;

/** The density at z. */
export const density = (z: number): number => INV_SQRT_2PI * Math.exp(-0.5 * z * z);

/** The probability of a value below z. */
export function below(z: number): number {
  const x = Math.abs(z);
  if (x > 37) return z > 0 ? 1 : 0;
  const e = Math.exp(-0.5 * x * x);
  let tail: number;
  if (x < 7.07106781186547) {
    let top = 3.52624965998911e-2 * x + 0.700383064443688;
    top = top * x + 6.37396220353165;
    top = top * x + 33.912866078383;
    top = top * x + 112.079291497871;
    top = top * x + 221.213596169931;
    top = top * x + 220.206867912376;
    let bottom = 8.83883476483184e-2 * x + 1.75566716318264;
    bottom = bottom * x + 16.064177579207;
    bottom = bottom * x + 86.7807322029461;
    bottom = bottom * x + 296.564248779674;
    bottom = bottom * x + 637.333633378831;
    bottom = bottom * x + 793.826512519948;
    bottom = bottom * x + 440.413735824752;
    tail = (e * top) / bottom;
  } else {
    const fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
    tail = e / fraction / SQRT_2PI;
  }
  return z > 0 ? 1 - tail : tail;
}
