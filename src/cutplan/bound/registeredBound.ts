import type { Kind } from "../laying/kinds.ts";
import { type Mode, mod, X_AT, X_FREE } from "../laying/modes.ts";
import { startsFor } from "../laying/starts.ts";
import type { Grains } from "../piece.ts";
import { type AcrossType, acrossTypeOf, SideBySide } from "./sideBySide.ts";
import { type LineCount, wholeLines } from "./wholeLines.ts";

/** Beyond these the search for a proof is not begun, or is given up: a budget in steps, never a clock. */
const MOST_PIECES = 14;
const MOST_POSITIONS = 400;
const MOST_STEPS = 40_000;

interface Position {
  readonly kind: number;
  readonly x: Grains;
  readonly right: Grains;
  readonly y: Grains;
  readonly top: Grains;
}

interface Proof {
  readonly kinds: readonly Kind[];
  readonly usableWidth: Grains;
  readonly vertical: Grains;
  readonly lines: readonly LineCount[];
  steps: number;
}

/**
 * For rooms with few pieces: the pieces in register both ways have so few legal places that all their plans can be searched. The
 * largest length, between `low` (known to be a bound) and `high` (known to do), of which it is proved that these pieces alone
 * need it, from the given start or from any. What is free is left out, which can only make the bound lower.
 */
export function registeredBound(
  kinds: readonly Kind[],
  usableWidth: Grains,
  vertical: Grains,
  start: Grains | null,
  low: Grains,
  high: Grains,
): Grains {
  const bound = kinds.filter((kind) =>
    kind.modes.every((mode) => mode.xRule !== X_FREE && mode.yResidue !== null),
  );
  const pieces = bound.reduce((sum, kind) => sum + kind.count, 0);
  if (low >= high || pieces < 2 || pieces > MOST_PIECES) return low;
  const types: AcrossType[] = [];
  const typeOf = bound.map((kind) =>
    kind.modes.map((mode) => types.push(acrossTypeOf(mode, usableWidth)) - 1),
  );
  const sideBySide = new SideBySide(types, usableWidth);
  const lines = wholeLines(bound, typeOf, sideBySide, vertical);
  const proof = { kinds: bound, usableWidth, vertical, lines, steps: 0 };
  // The lowest piece can be taken to lie at y = 0: the residues are all the starts there are.
  const starts = start === null ? startsFor(bound, vertical, Number.POSITIVE_INFINITY) : [start];
  const needsMoreThan = (length: Grains) => starts.every((s) => isRefuted(proof, s, length));
  if (needsMoreThan(high - 1)) return high;
  // What these pieces need is the top of one of them.
  const tops = new Set<Grains>();
  for (const s of starts) {
    for (const { yResidue, height } of bound.flatMap((kind) => kind.modes)) {
      const first = mod((yResidue as number) - s, vertical) + height;
      const from = Math.max(0, Math.ceil((low + 1 - first) / vertical));
      for (let top = first + from * vertical; top < high; top += vertical) tops.add(top);
    }
  }
  const ascending = [...tops].sort((a, b) => a - b);
  let proved = low;
  let from = 0;
  let to = ascending.length - 1;
  while (from <= to) {
    const middle = (from + to) >> 1;
    const top = ascending[middle] as Grains;
    if (needsMoreThan(top - 1)) {
      proved = top;
      from = middle + 1;
    } else to = middle - 1;
  }
  return proved;
}

/** True if no plan of the pieces from this start is within the length; false if there is one, or the budget ran out. */
function isRefuted(proof: Proof, start: Grains, length: Grains): boolean {
  const positions = positionsAt(proof, start, length);
  if (positions.length > MOST_POSITIONS) return false;
  const { kinds } = proof;
  const later = kinds.map((_, k) => {
    const counts = new Int32Array(positions.length + 1);
    for (let i = positions.length - 1; i >= 0; i--) {
      counts[i] = (counts[i + 1] as number) + (positions[i]?.kind === k ? 1 : 0);
    }
    return counts;
  });
  const room = linesLeft(proof, start, length, positions);
  const rest = Int32Array.from(kinds, (kind) => kind.count);
  const failed = new Set<string>();

  /** Whether the rest finds places among the positions from i on, with the active pieces reaching over their feet. */
  const finds = (i: number, active: readonly Position[]): boolean => {
    if (rest.every((count) => count === 0)) return true;
    const here = positions[i];
    if (!here || proof.steps > MOST_STEPS) return proof.steps > MOST_STEPS;
    proof.steps++;
    for (let k = 0; k < rest.length; k++) {
      if ((rest[k] as number) > ((later[k] as Int32Array)[i] as number)) return false;
    }
    for (const { worth, left } of room) {
      let asked = 0;
      for (let k = 0; k < rest.length; k++) asked += (rest[k] as number) * (worth[k] as number);
      if (asked > (left[i] as number) + 1e-6) return false;
    }
    const still = active.filter((piece) => piece.top > here.y);
    const key = `${i};${rest.join()};${still.map((p) => `${p.x},${p.right},${p.top}`).join(";")}`;
    if (failed.has(key)) return false;
    if (
      (rest[here.kind] as number) > 0 &&
      still.every((piece) => piece.right <= here.x || here.right <= piece.x)
    ) {
      rest[here.kind] = (rest[here.kind] as number) - 1;
      const next = [...still, here].sort((a, b) => a.x - b.x);
      const found = finds(i + 1, next);
      rest[here.kind] = (rest[here.kind] as number) + 1;
      if (found) return true;
    }
    if (finds(i + 1, still)) return true;
    failed.add(key);
    return false;
  };
  return !finds(0, []);
}

/** All legal places with their tops within the length, the lowest feet first. */
function positionsAt(proof: Proof, start: Grains, length: Grains): Position[] {
  const { kinds, usableWidth, vertical } = proof;
  const positions: Position[] = [];
  kinds.forEach(({ modes }, kind) => {
    for (const mode of modes) {
      for (const x of leftsOf(mode, usableWidth)) {
        let y = mod((mode.yResidue as number) - start, vertical);
        for (; y + mode.height <= length; y += vertical) {
          positions.push({ kind, x, right: x + mode.width, y, top: y + mode.height });
          if (positions.length > MOST_POSITIONS) return;
        }
      }
    }
  });
  return positions.sort((a, b) => a.y - b.y || a.x - b.x || a.kind - b.kind);
}

function leftsOf(mode: Mode, usableWidth: Grains): readonly Grains[] {
  if (mode.xRule === X_AT) return mode.xPositions;
  const lefts: Grains[] = [];
  for (let x = mode.xResidue; x + mode.width <= usableWidth; x += mode.xPeriod) {
    lefts.push(x);
    if (lefts.length > MOST_POSITIONS) break;
  }
  return lefts;
}

/** For each slab: what a copy of each kind takes of its lines, at most one a line, and the whole lines left from each position on. */
function linesLeft(
  { lines, vertical }: Proof,
  start: Grains,
  length: Grains,
  positions: readonly Position[],
): { worth: readonly number[]; left: Int32Array }[] {
  return lines
    .filter((line) => line.lines > 0)
    .map(({ slab, worth }) => {
      const first = mod(slab.from - start, vertical);
      const last = length - (slab.to - slab.from);
      const left = Int32Array.from(positions, ({ y }) => {
        const from = Math.max(0, Math.ceil((y - first) / vertical));
        return Math.max(0, Math.floor((last - first) / vertical) - from + 1);
      });
      return { worth, left };
    });
}
