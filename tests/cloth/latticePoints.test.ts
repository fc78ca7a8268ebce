import { describe, expect, it } from "vitest";
import type { Correlation } from "../../src/cloth/repeat/autocorrelation.ts";
import type { Basis } from "../../src/cloth/repeat/lattice.ts";
import { nearestWithin, shiftsWithin } from "../../src/cloth/repeat/latticePoints.ts";

const reach: Correlation = { reachX: 210, reachY: 157, values: new Float32Array(0) };

/** From cells of a pixel or two to some of which hardly a point is within reach, level, leaning and drawn out. */
const BASES: readonly Basis[] = [
  [
    [3, 0],
    [0, 3],
  ],
  [
    [7.3, 1.1],
    [-2.9, 8.2],
  ],
  [
    [4, 0.1],
    [0.3, 150],
  ],
  [
    [40, -13],
    [22, 61],
  ],
  [
    [190, 20],
    [-60, 140],
  ],
];

describe("the points of a lattice within reach", () => {
  it.each(BASES)("are as many as a count one by one finds (%#)", (a, b) => {
    const found = shiftsWithin(reach, [a, b]);
    let counted = 0;
    for (let i = -900; i <= 900; i++) {
      for (let j = -900; j <= 900; j++) {
        const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
        if (Math.abs(x) <= 209 && Math.abs(y) <= 156) counted++;
      }
    }
    // One half plane, without the origin.
    expect(found).toHaveLength((counted - 1) / 2);
    const far = found.map(({ x, y }) => x ** 2 + y ** 2);
    expect(far).toEqual([...far].sort((p, q) => p - q));
  });

  it.each([2, 6, 60, 80, 5000])("the nearest %i are the first of all of them", (most) => {
    for (const basis of BASES) {
      const all = shiftsWithin(reach, basis);
      const { shifts, count } = nearestWithin(reach, basis, most);
      expect(shifts).toEqual(all.slice(0, most));
      expect(count).toBe(all.length);
    }
  });

  it("within a part of the reach are those of all that lie there", () => {
    for (const basis of BASES) {
      const inPart = shiftsWithin(reach, basis).filter(
        ({ x, y }) => Math.abs(x) <= 0.5 * 210 && Math.abs(y) <= 0.5 * 157,
      );
      expect(shiftsWithin(reach, basis, 0.5)).toEqual(inPart);
    }
  });
});
