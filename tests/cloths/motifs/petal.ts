import type { Seeded } from "../ground/seeded.ts";
import { type Point, penStroke, shape, smooth } from "./path.ts";

/** One dye of a flower in four strengths, tip to heart, and its outline. */
export type PetalInks = { tip: string; middle: string; base: string; heart: string; line: string };

/** The closed edge of a petal from the origin along -y, with a notched, slightly wavering tip. */
function edge(length: number, width: number, notch: number, random: Seeded): Point[] {
  const w = width / 2;
  const wave = () => random.between(-0.025, 0.025) * length;
  return [
    [0, 0],
    [-w * 0.5, -length * 0.24 + wave() * 0.4],
    [-w * 0.96, -length * 0.58 + wave()],
    [-w * 0.86, -length * 0.86 + wave()],
    [-w * 0.42, -length * 1.0 + wave()],
    [wave() * 0.6, -length * (1 - notch)],
    [w * 0.45, -length * 0.99 + wave()],
    [w * 0.88, -length * 0.84 + wave()],
    [w * 0.94, -length * 0.56 + wave()],
    [w * 0.5, -length * 0.22 + wave() * 0.4],
  ];
}

/** A petal pointing up from the origin: three tones, veins drawn from the heart, and an outline. */
export function petal(length: number, width: number, inks: PetalInks, random: Seeded): string {
  const notch = random.between(0.05, 0.12);
  const outer = edge(length, width, notch, random);
  const inner = (share: number, w: number) =>
    smooth(
      outer.map(([x, y]): Point => [x * w, y * share + 0]),
      true,
    );
  const hatch: string[] = [];
  const count = Math.max(5, Math.round(width / 2.1));
  for (let i = 0; i < count; i++) {
    const s = ((i + 0.5) / count) * 2 - 1;
    const reach = length * (0.84 - 0.34 * Math.abs(s) + random.between(-0.12, 0.05));
    const x = (s * width) / 2;
    hatch.push(
      penStroke(
        [
          [x * 0.14, -length * 0.06],
          [x * 0.6, -reach * 0.55],
          [x * 0.8, -reach],
        ],
        0.5 + length * 0.011,
        i % 2 === 0 ? inks.heart : inks.base,
      ),
    );
  }
  return [
    shape(smooth(outer, true), { fill: inks.tip }),
    shape(inner(0.8, 0.84), { fill: inks.middle }),
    shape(inner(0.52, 0.7), { fill: inks.base }),
    ...hatch,
    shape(smooth(outer, true), { stroke: inks.line, width: 0.5 + length * 0.006 }),
  ].join("");
}
