import type { Labels } from "../pixels/labels.ts";

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
      count(votes, label, p - width);
      count(votes, label, p);
      count(votes, label, p + width);
      let best = own;
      let most = (votes[own] as number) + 1;
      for (let g = 0; g < colours; g++) {
        const n = votes[g] as number;
        if (n > most) {
          most = n;
          best = g;
        }
      }
      out[p] = best;
    }
  }
  const counts = new Uint32Array(colours);
  for (let p = 0; p < out.length; p++) {
    const l = out[p] as number;
    counts[l] = (counts[l] as number) + 1;
  }
  return { label: out, counts: [...counts] };
}

/** Counts the labels of a place and of its neighbours to the left and right. */
function count(votes: Uint8Array, label: Uint8Array, p: number): void {
  const [left, here, right] = [label[p - 1] as number, label[p] as number, label[p + 1] as number];
  votes[left] = (votes[left] as number) + 1;
  votes[here] = (votes[here] as number) + 1;
  votes[right] = (votes[right] as number) + 1;
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
