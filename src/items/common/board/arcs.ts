/** Radius of the arc over a chord with this height: (c² / 4 + s²) / (2 s), by Pythagoras. */
export function arcRadius(chord: number, height: number): number {
  return (chord * chord) / (8 * height) + height / 2;
}

/** Its length and the area between arc and chord. The arc is at most a half circle (height ≤ chord / 2). */
export function arcMeasures(chord: number, height: number): { length: number; area: number } {
  const radius = arcRadius(chord, height);
  const angle = 2 * Math.asin(Math.min(1, chord / (2 * radius)));
  return {
    length: radius * angle,
    area: (radius * radius * (angle - Math.sin(angle))) / 2,
  };
}
