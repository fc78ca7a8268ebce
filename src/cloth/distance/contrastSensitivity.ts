/**
 * Sensitivity of the eye to the contrast of a grating, 1 / threshold of Michelson's contrast, at a spatial frequency in cycles
 * per degree: HPmH of Watson and Ahumada (2005), A standard model for foveal detection of spatial contrast, Journal of Vision
 * 5(9):6. For trained viewers in about 30 cd/m2; used alone it is right within a factor of two.
 */
export function contrastSensitivity(cyclesPerDegree: number): number {
  const f = cyclesPerDegree;
  return 373.08 * (sech((f / 4.1726) ** 0.7786) - 0.8493 * sech(f / 1.3625));
}

/** The highest frequency, in cycles per degree, at which a contrast (Michelson's, 0 to 1) is still seen; 0 where none is. */
export function highestVisible(contrast: number): number {
  // Above its peak the sensitivity only falls, so halving the interval finds the one crossing.
  let [seen, unseen] = [PEAK, 100];
  if (contrast * contrastSensitivity(PEAK) < 1) return 0;
  for (let i = 0; i < 40; i++) {
    const middle = (seen + unseen) / 2;
    if (contrast * contrastSensitivity(middle) >= 1) seen = middle;
    else unseen = middle;
  }
  return seen;
}

/** Where the sensitivity is greatest, in cycles per degree. */
export const PEAK = 3.45;

/** Distance, in millimetres, from which a wave of so many millimetres has so many cycles per degree. */
export function distanceFor(cyclesPerDegree: number, waveMm: number): number {
  // One wave then spans 1 / cyclesPerDegree of a degree.
  return waveMm / (2 * Math.tan(Math.PI / 360 / cyclesPerDegree));
}

function sech(x: number): number {
  return 1 / Math.cosh(x);
}
