import type { Seeded } from "../ground/seeded.ts";
import { cubic, type Point, placed, shape, smooth } from "./path.ts";

/** A fan of thin stalks from the origin upward, each with a berry: fills the holes between large motifs. */
export function spray(
  height: number,
  stalks: number,
  inks: { stalk: string; berry: string; line: string; glint: string },
  random: Seeded,
): string {
  const parts: string[] = [];
  for (let i = 0; i < stalks; i++) {
    const s = stalks === 1 ? 0 : (i / (stalks - 1)) * 2 - 1;
    const reach = height * random.between(0.86, 1.04) * (1 - 0.18 * s * s);
    const tip: Point = [s * height * 0.55, -reach];
    parts.push(
      shape(
        smooth(
          cubic(
            [0, 0],
            [s * height * 0.04, -reach * 0.4],
            [s * height * 0.3, -reach * 0.75],
            tip,
            6,
          ),
        ),
        {
          stroke: inks.stalk,
          width: 0.5 + height * 0.012,
        },
      ),
    );
    const r = height * 0.075 * random.between(0.85, 1.15);
    parts.push(
      placed(
        `<circle r="${r.toFixed(2)}" fill="${inks.berry}" stroke="${inks.line}" stroke-width="0.5"/><circle cx="${(-r * 0.3).toFixed(2)}" cy="${(-r * 0.3).toFixed(2)}" r="${(r * 0.28).toFixed(2)}" fill="${inks.glint}"/>`,
        tip[0],
        tip[1],
      ),
    );
  }
  return parts.join("");
}
