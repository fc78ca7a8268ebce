import type { Seeded } from "../ground/seeded.ts";
import { cubic, type Point, penStroke } from "./path.ts";

/** An umbel seen from the side, as three carved blocks: its rays, its florets, and the floret's hearts. */
export type Umbel = { rays: string; florets: string; hearts: string };

const dot = (x: number, y: number, r: number, fill = "#000") =>
  `<circle cx="${x.toFixed(2)}" cy="${y.toFixed(2)}" r="${r.toFixed(2)}" fill="${fill}"/>`;

/** Rays fan upward from the origin over `spread` degrees, each ending in a cluster of florets. */
export function umbel(
  radius: number,
  rays: number,
  spread: number,
  florets: number,
  random: Seeded,
): Umbel {
  const out = { rays: "", florets: "", hearts: "" };
  const golden = Math.PI * (3 - Math.sqrt(5));
  // Far rays first, near ones last and lower, so that the head reads as a dome.
  for (const near of [0, 1]) {
    const count = near === 0 ? rays : Math.max(2, Math.round(rays * 0.6));
    for (let i = 0; i < count; i++) {
      const s = count === 1 ? 0 : (i / (count - 1)) * 2 - 1;
      const angle = ((s * spread * (near ? 0.36 : 0.5)) / 180) * Math.PI;
      const reach = radius * (near ? 0.66 : 0.97 - 0.1 * s * s) * random.between(0.96, 1.04);
      const tip: Point = [Math.sin(angle) * reach, -Math.cos(angle) * reach];
      const line = cubic(
        [0, 0],
        [Math.sin(angle * 0.55) * reach * 0.4, -reach * 0.34],
        [tip[0] * 0.84, tip[1] * 0.72],
        tip,
        10,
      );
      out.rays += penStroke([...line].reverse(), radius * 0.017 + 0.7, "#000");
      out.rays += penStroke(line, radius * 0.026 + 0.5, "#000");
      const size = radius * (near ? 0.15 : 0.17) * (1 - 0.12 * Math.abs(s));
      for (let k = 0; k < florets; k++) {
        const d = size * Math.sqrt((k + 0.5) / florets);
        const a = k * golden + angle;
        const x = tip[0] + d * Math.cos(a);
        const y = tip[1] + d * Math.sin(a) * 0.82 - size * 0.2;
        const r = (size / Math.sqrt(florets)) * 0.62 * random.between(0.86, 1.1);
        if (k % 2 === 0)
          out.rays += penStroke(
            [tip, [(tip[0] + x) / 2, (tip[1] + y) / 2 + 0.4], [x, y]],
            0.9,
            "#000",
          );
        const turn = random.between(0, Math.PI);
        for (let p = 0; p < 5; p++) {
          const t = turn + (p / 5) * 2 * Math.PI;
          out.florets += dot(x + r * 0.62 * Math.cos(t), y + r * 0.62 * Math.sin(t), r * 0.56);
        }
        out.hearts += dot(x, y, r * 0.34);
      }
    }
  }
  return out;
}
