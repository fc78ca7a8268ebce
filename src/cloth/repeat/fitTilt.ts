import { leastSquares } from "../pixels/leastSquares.ts";
import type { Relief } from "../pixels/reliefOf.ts";
import type { Shift } from "./lattice.ts";
import { SQUARE, type Tilt } from "./tilt.ts";
import { type WindowLooks, windowLooks } from "./windowLooks.ts";
import { type WindowMatch, windowMatches } from "./windowMatch.ts";

/** Fewest windows that a tilt is fitted to, and of one shift. */
const FEWEST = 10;
const FEWEST_OF_ONE = 5;
/** A tilt that moves the picture's rim by more than this part of it is a fault of the fit. */
const MOST = 0.35;
/** A window counts where it lies within so many pixels of the fit, or so many times the middle one's distance. */
const NEAR_PX = 0.3;
const NEAR = 2.2;
/** The tilt is sought in thousandths, which keeps all unknowns of one size. */
const UNIT = 1000;

/**
 * The tilt of the camera over a cloth whose pattern comes back after some shifts: windows are looked for one shift further on, and
 * what the shifts are and how they grow over the picture is fitted by least squares, first on the relief at half its size.
 * `SQUARE` where too few windows are found.
 */
export function fitTilt(relief: Relief, shifts: readonly Shift[]): Tilt {
  const halves = shifts.map(([x, y]): Shift => [x / 2, y / 2]);
  const [gx, gy] = closer(windowLooks(halved(relief), 4), halves, SQUARE);
  let tilt: Tilt = [gx / 2, gy / 2];
  const looks = windowLooks(relief, 2);
  for (let round = 0; round < 2; round++) tilt = closer(looks, shifts, tilt);
  return tilt;
}

function closer(looks: WindowLooks, shifts: readonly Shift[], from: Tilt): Tilt {
  const all = windowMatches(looks, shifts, from);
  const used = shifts
    .map((_, k) => k)
    .filter((k) => all.filter(({ shift }) => shift === k).length >= FEWEST_OF_ONE);
  // Each shift is an unknown of its own.
  const parts = shifts.map((_, k) => used.map((u) => (u === k ? 1 : 0)));
  const matches = all.filter(({ shift }) => used.includes(shift));
  const found = solveTilt(matches, shifts, parts)?.tilt;
  const rim = found ? Math.hypot(...found) * Math.max(looks.width, looks.height) : 0;
  return found && rim <= MOST ? found : from;
}

/** A tilt and the vectors that the shifts are made of, as they are at the picture's middle. */
export interface FittedTilt {
  readonly tilt: Tilt;
  readonly vectors: readonly Shift[];
  /** Middle distance of a window from the fit, in pixels, and windows that were kept. */
  readonly offPx: number;
  readonly windows: number;
}

/**
 * The tilt, and with it the vectors that the shifts are whole multiples of (`parts`, for each shift how often each vector), at the
 * middle; windows that lie far off are left out.
 */
export function solveTilt(
  matches: readonly WindowMatch[],
  shifts: readonly Shift[],
  parts: readonly (readonly number[])[],
): FittedTilt | null {
  const rows = matches.map((match) =>
    equations(match, shifts[match.shift] as Shift, parts[match.shift] as readonly number[]),
  );
  const unknowns = 2 + 2 * (parts[0]?.length ?? 0);
  let kept = rows;
  let solved: number[] | null = null;
  let offPx = 0;
  for (let round = 0; round < 4; round++) {
    if (kept.length < FEWEST) return null;
    const sums = leastSquares(unknowns, 1e-7);
    for (const { weight, terms } of kept.flat())
      sums.add(
        terms.slice(0, -1).map((t) => t * weight),
        (terms.at(-1) as number) * weight,
      );
    solved = sums.solve();
    if (!solved) return null;
    const answer = solved;
    const off = rows.map((pair) => Math.hypot(...pair.map(({ terms }) => error(terms, answer))));
    offPx = [...off].sort((p, q) => p - q)[Math.floor(off.length / 2)] ?? 0;
    const most = Math.max(NEAR_PX, NEAR * offPx);
    kept = rows.filter((_, n) => (off[n] as number) <= most);
  }
  const [gx = 0, gy = 0, ...rest] = solved ?? [];
  const vectors: Shift[] = [];
  for (let k = 0; k + 1 < rest.length; k += 2)
    vectors.push([rest[k] as number, rest[k + 1] as number]);
  return { tilt: [gx / UNIT, gy / UNIT], vectors, offPx, windows: kept.length };
}

/** One equation: what stands before each unknown, and last what they come to. */
interface Equation {
  readonly terms: readonly number[];
  readonly weight: number;
}

function error(terms: readonly number[], answer: readonly number[]): number {
  return answer.reduce((sum, v, i) => sum + v * (terms[i] as number), -(terms.at(-1) as number));
}

/** What one window says of the tilt and of its shift at the middle: both ways, or across a ridge alone. */
function equations(
  { x, y, seen, across, agreement: weight }: WindowMatch,
  shift: Shift,
  parts: readonly number[],
): Equation[] {
  const [vx, vy] = [shift[0] / UNIT, shift[1] / UNIT];
  const one = [2 * x * vx, y * vx + vy * x, ...parts.flatMap((part) => [part, 0]), seen[0]];
  const two = [x * vy + vx * y, 2 * y * vy, ...parts.flatMap((part) => [0, part]), seen[1]];
  if (!across) return [one, two].map((terms) => ({ terms, weight }));
  const terms = one.map((t, i) => across[0] * t + across[1] * (two[i] as number));
  return [{ terms, weight }];
}

/** The relief at half its size. */
function halved({ width, height, channels, scale }: Relief): Relief {
  const [w, h] = [width >> 1, height >> 1];
  const half = (from: Float32Array) => {
    const to = new Float32Array(w * h);
    for (let y = 0; y < h; y++) {
      for (let x = 0; x < w; x++) {
        const p = 2 * (y * width + x);
        const top = (from[p] as number) + (from[p + 1] as number);
        const foot = (from[p + width] as number) + (from[p + width + 1] as number);
        to[y * w + x] = (top + foot) / 4;
      }
    }
    return to;
  };
  const [l, g, b] = channels;
  return { width: w, height: h, channels: [half(l), half(g), half(b)], scale: scale * 2 };
}
