import type { Bytes } from "../../cloth/pixels/pixels.ts";
import type { TileCell } from "../../swatches/tileCell.ts";
import { type Step, stepFinder } from "./findStep.ts";

/** Known steps: the photograph may be turned by three degrees or so, and show a few parts of a hundred more or less than was said. */
const KNOWN = { along: 0.035, across: 0.055 };
/** Free steps: as far as a fine weave needs to come into line with itself. */
const FREE = { along: 0.04, across: 0.02 };
/** Under this a cloth does not agree with itself at all, and the card's step is kept. */
const LEAST = 0.12;
/** The steps of a pattern as they lie on a photograph, in its pixels. */
export interface Lattice {
  /** From column to column, level or half a cell lower, and down one cell. */
  readonly across: Step;
  readonly up: Step;
  /** How well the cloth agrees with itself one step on. */
  readonly agrees: number;
  readonly found: readonly Step[];
}

/** Finds the cell's steps on the photograph itself, about where the cell says that they are. */
export async function latticeOf(picture: Bytes, cell: TileCell): Promise<Lattice> {
  const across: Step = [cell.widthPx, cell.halfDrop ? cell.heightPx / 2 : 0];
  const up: Step = [0, cell.heightPx];
  if (cell.ground !== null) return { across, up, agrees: 1, found: [] };
  const find = await stepFinder(picture);
  const a = find(across, cell.repeatsAcross ? KNOWN : FREE);
  const b = find(up, cell.repeatsUp ? KNOWN : FREE);
  const good = [a, b].map((f) => (f && f.agrees >= LEAST ? f : null));
  // What one step tells of the photograph's turn and size holds for the other, where that one cannot be seen.
  const like = (wanted: Step, from: Step, to: Step): Step => {
    const size = from[0] ** 2 + from[1] ** 2;
    const cos = (from[0] * to[0] + from[1] * to[1]) / size;
    const sin = (from[0] * to[1] - from[1] * to[0]) / size;
    return [wanted[0] * cos - wanted[1] * sin, wanted[0] * sin + wanted[1] * cos];
  };
  const [fa, fb] = good;
  const knownA = fa && cell.repeatsAcross ? fa.step : null;
  const knownB = fb && cell.repeatsUp ? fb.step : null;
  return {
    across: fa?.step ?? (knownB ? like(across, up, knownB) : across),
    up: fb?.step ?? (knownA ? like(up, across, knownA) : up),
    agrees: Math.max(0, Math.min(fa?.agrees ?? 1, fb?.agrees ?? 1)),
    found: [fa?.step, fb?.step].filter((s) => s !== undefined),
  };
}

/** The steps by which some point of the cell can be found again in the picture. */
export function nearPlaces(
  across: Step,
  up: Step,
  side: Step,
  cell: TileCell,
  width: number,
  height: number,
): Step[] {
  // The box about the cell as it lies on the picture.
  const half = [
    (Math.abs(side[0]) + Math.abs(up[0])) / 2,
    (Math.abs(side[1]) + Math.abs(up[1])) / 2,
  ] as const;
  const REACH = 12;
  const out: Step[] = [];
  for (let n = -REACH; n <= REACH; n++)
    for (let m = -REACH; m <= REACH; m++) {
      const step: Step = [n * across[0] + m * up[0], n * across[1] + m * up[1]];
      const x = cell.middle.x + step[0];
      const y = cell.middle.y + step[1];
      const meets =
        x + half[0] > 0 && x - half[0] < width && y + half[1] > 0 && y - half[1] < height;
      // Of a small pattern, only what lies about the picture's middle is wanted.
      const central =
        Math.abs(x - width / 2) < Math.max(width / 4, 2 * half[0]) &&
        Math.abs(y - height / 2) < Math.max(height / 4, 2 * half[1]);
      if (meets && central) out.push(step);
    }
  return out;
}
