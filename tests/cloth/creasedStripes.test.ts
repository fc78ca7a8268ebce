import { expect, test } from "vitest";
import { measureCloth } from "../../src/cloth/measureCloth.ts";
import { sizeOf, tryOn } from "../bench/cloth/repeat.ts";
import { drawingsOf, subjectOf } from "../bench/cloth/subjects.ts";
import { creased } from "./creased.ts";
import { type Design, stripes } from "./made.ts";
import { PLACE, SHOT } from "./shown.ts";

// Made photographs with known truth; a person sees these bands at once.

const RUN_DEG = 24;
/** Two bands, the first so many millimetres wide, that run upwards to the right. */
function bands(ground: string, band: string, bandMm: number, periodMm: number): Design {
  const turn = (RUN_DEG * Math.PI) / 180;
  const straight = stripes([band, bandMm], [ground, periodMm - bandMm]);
  return (x, y) => straight(x * Math.sin(turn) + y * Math.cos(turn), 0);
}
const patternOf = (design: Design, seed: number) =>
  measureCloth(creased(design, seed), SHOT.widthMm, { place: PLACE }).value?.pattern;

test.each([1, 2, 3, 4])(
  "folds that cross wide bands are no figures on them, and make no weave of them (%i)",
  (seed) => {
    const found = patternOf(bands("#a7a282", "#8c8768", 52, 105), seed);
    expect(found?.kind).toBe("stripe");
    expect(Math.abs((found?.directionDeg ?? 0) - RUN_DEG)).toBeLessThan(1.5);
    expect(Math.abs(Math.hypot(...(found?.repeat?.lattice[0] ?? [0, 0])) / 105 - 1)).toBeLessThan(
      0.02,
    );
  },
);

test.each([
  ["textures-lines-3", 1_081_073, 72],
  ["textures-lines-6", 1_083_075, 74],
])(
  "bands so near in colour that they cannot be parted, in folds, are stripes all the same: %s",
  async (name, seed, size) => {
    const found = drawingsOf("held-out").find(({ drawing }) => drawing.name === name);
    if (!found) throw new Error(`no ${name}`);
    const subject = await subjectOf(found.drawing, found.origin);
    const { measure, directionDeg } = await tryOn(subject, "hard", seed, sizeOf(subject, size));
    expect(measure.colours).toHaveLength(1);
    expect(measure.pattern.kind).toBe("stripe");
    const off = Math.abs((measure.pattern.directionDeg ?? 999) - (directionDeg ?? 0));
    expect(Math.min(off, Math.abs(180 - off))).toBeLessThan(1.5);
  },
);
