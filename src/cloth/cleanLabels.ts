import type { Labels } from "./labels.ts";

/** Labels with each pixel given to the commonest label of its 3 x 3 neighbours, itself counting twice: grain goes, edges stay. */
export function cleanLabels(
  { label }: Labels,
  width: number,
  height: number,
  colours: number,
): Labels {
  const out = Uint8Array.from(label);
  const votes = new Uint8Array(colours);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const p = y * width + x;
      const own = label[p] as number;
      if (isAlike(label, p, width, own)) continue;
      votes.fill(0);
      for (let dy = -width; dy <= width; dy += width) {
        for (let dx = -1; dx <= 1; dx++) {
          const l = label[p + dy + dx] as number;
          votes[l] = (votes[l] as number) + 1;
        }
      }
      votes[own] = (votes[own] as number) + 1;
      let best = own;
      for (let g = 0; g < colours; g++)
        if ((votes[g] as number) > (votes[best] as number)) best = g;
      out[p] = best;
    }
  }
  const counts = new Array<number>(colours).fill(0);
  for (const l of out) counts[l] = (counts[l] as number) + 1;
  return { label: out, counts };
}

/** True where a place's upright neighbours all have its label: six of the ten votes. */
function isAlike(label: Uint8Array, p: number, width: number, own: number): boolean {
  return (
    label[p - 1] === own &&
    label[p + 1] === own &&
    label[p - width] === own &&
    label[p + width] === own
  );
}
