import type { Seeded } from "../ground/seeded.ts";
import { placed } from "./path.ts";
import { type PetalInks, petal } from "./petal.ts";

export type RosetteForm = {
  diameter: number;
  /** Petals of each ring, outermost first. */
  rings: readonly number[];
};

/** An open flower seen from the front, its rings of petals laid from the outside in, with a stippled eye. */
export function rosette(
  form: RosetteForm,
  inks: PetalInks,
  eye: { fill: string; dot: string; line: string },
  random: Seeded,
): string {
  const parts: string[] = [];
  const rings = form.rings.length;
  form.rings.forEach((count, ring) => {
    const reach = (form.diameter / 2) * (1 - (ring / rings) * 0.72);
    const width = ((2 * Math.PI * reach) / count) * (ring === 0 ? 0.94 : 1.02);
    const turn = random.between(0, 360 / count);
    for (let i = 0; i < count; i++) {
      const angle = turn + (360 / count) * i + random.bell() * 3;
      const length = reach * random.between(0.93, 1.05);
      parts.push(
        placed(petal(length, width * random.between(0.94, 1.06), inks, random), 0, 0, angle),
      );
    }
  });
  const r = form.diameter * 0.066;
  parts.push(
    `<circle r="${(r * 1.25).toFixed(2)}" fill="${inks.heart}"/><circle r="${r.toFixed(2)}" fill="${eye.fill}" stroke="${eye.line}" stroke-width="0.6"/>`,
  );
  const golden = Math.PI * (3 - Math.sqrt(5));
  for (let i = 1; i < 26; i++) {
    const d = r * 0.92 * Math.sqrt(i / 26);
    parts.push(
      `<circle cx="${(d * Math.cos(i * golden)).toFixed(2)}" cy="${(d * Math.sin(i * golden)).toFixed(2)}" r="${(r * 0.085).toFixed(2)}" fill="${eye.dot}"/>`,
    );
  }
  for (let i = 0; i < 18; i++) {
    const angle = ((i + random.between(-0.2, 0.2)) / 18) * 2 * Math.PI;
    const d = r * random.between(1.45, 2.1);
    const x = d * Math.cos(angle);
    const y = d * Math.sin(angle);
    parts.push(
      `<path d="M${(x * 0.6).toFixed(2)} ${(y * 0.6).toFixed(2)}L${x.toFixed(2)} ${y.toFixed(2)}" stroke="${eye.fill}" stroke-width="0.55"/><circle cx="${x.toFixed(2)}" cy="${y.toFixed(2)}" r="${(r * 0.13).toFixed(2)}" fill="${eye.fill}"/>`,
    );
  }
  return parts.join("");
}
