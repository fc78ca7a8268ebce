import { type Kind, kindsOf } from "../laying/kinds.ts";
import { type Mode, mod } from "../laying/modes.ts";
import type { ClothPattern, CutPiece, Grains } from "../piece.ts";
import { type CoverKind, CoverLp, type Refutation } from "./coverLp.ts";
import { capacitiesAt, type Evidence, unrefutedStart } from "./refuted.ts";
import { type AcrossType, acrossTypeOf, SideBySide } from "./sideBySide.ts";
import { measureIn, type Slab, slabsAt } from "./slabs.ts";
import { wholeLines } from "./wholeLines.ts";

/** The programme's rows grow with the slabs: this many, cut at the edges of the pieces that use most cloth. */
const MOST_SLABS = 24;
const MOST_ROWS = 450;
const MOST_ROUNDS = 12;

export interface BoundOptions {
  /** The pattern point where cutting starts; null: the bound holds for whichever serves best. */
  readonly start: Grains | null;
  /** A length known to do: the bound stops there. */
  readonly knownLength: Grains;
  /** False: whole lines, area and tallest piece only, without the slab programme. */
  readonly slabs?: boolean;
}

/**
 * A length that no plan of these pieces on one length of cloth can be shorter than, from the given start or from any. Valid
 * relaxations only: whole lines of the repeat; the slab programme, in which pieces are mixtures of sets side by side; the
 * tallest piece; the area. Every piece must have a legal place across (see `problemsOf`).
 */
export function lowerBound(
  usableWidth: Grains,
  pattern: ClothPattern | null,
  pieces: readonly CutPiece[],
  options: BoundOptions,
): Grains {
  if (pieces.length === 0) return 0;
  const kinds = kindsOf(pieces, pattern, usableWidth);
  const area = kinds.reduce((sum, kind) => sum + kind.area * kind.count, 0);
  const tallest = Math.max(...kinds.map((kind) => leastTop(kind, pattern, options.start)));
  const simple = Math.max(Math.ceil(area / usableWidth), tallest);
  // Ribbons narrower than the programme's grid ask for nothing.
  const asking = kinds.filter((kind) =>
    kind.modes.every((mode) => mode.width * 1000 > usableWidth),
  );
  if (asking.length === 0) return simple;
  const { typeOf, types } = typesOf(asking, usableWidth);
  const sideBySide = new SideBySide(types, usableWidth);
  const period = pattern && pattern.vertical > 0 ? pattern.vertical : null;
  const lines = period ? wholeLines(asking, typeOf, sideBySide, period) : [];
  const vertical = period ?? 1;
  const slabs = period ? heaviestSlabs(asking, period, types.length) : [{ from: 0, to: 1 }];
  const evidence = { vertical, slabs, lines, refutations: [] as Refutation[] };
  let length = leastUnrefuted(evidence, simple, options);
  if (options.slabs === false) return length;
  const programme = new CoverLp(
    sideBySide,
    coversOf(asking, typeOf, slabs, vertical),
    Float64Array.from(slabs, (slab) => (slab.to - slab.from) / vertical),
  );
  let lastStart: number | null = null;
  let lastLength = -1;
  for (let round = 0; round < MOST_ROUNDS && length < options.knownLength; round++) {
    const start = unrefutedStart(evidence, length, options.start);
    // A complete refutation left the same length open at the same start: the next would too.
    const isSame = start === lastStart && length === lastLength;
    if (start === null || (isSame && evidence.refutations.at(-1)?.isComplete)) break;
    lastStart = start;
    lastLength = length;
    const capacities = capacitiesAt(evidence, start, length).map((each) => each / vertical);
    const found = programme.refute(capacities);
    if (!found) break;
    evidence.refutations.push({ ...found, prices: found.prices.map((each) => each / vertical) });
    length = leastUnrefuted(evidence, length, options);
  }
  return length;
}

/** The least length, at least `from`, that the evidence leaves open; at most the known length. */
function leastUnrefuted(evidence: Evidence, from: Grains, options: BoundOptions): Grains {
  let low = Math.min(from, options.knownLength);
  if (unrefutedStart(evidence, low, options.start) !== null) return low;
  let high = options.knownLength;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (unrefutedStart(evidence, middle, options.start) === null) low = middle;
    else high = middle;
  }
  return high;
}

/** The lowest top that a piece of the kind can have. */
function leastTop(kind: Kind, pattern: ClothPattern | null, start: Grains | null): Grains {
  const foot = (mode: Mode) =>
    start === null || mode.yResidue === null || !pattern
      ? 0
      : mod(mode.yResidue - start, pattern.vertical);
  return Math.min(...kind.modes.map((mode) => foot(mode) + mode.height));
}

function typesOf(kinds: readonly Kind[], usableWidth: Grains) {
  const index = new Map<string, number>();
  const types: AcrossType[] = [];
  const typeOf = kinds.map((kind) =>
    kind.modes.map((mode) => {
      const type = acrossTypeOf(mode, usableWidth);
      const key = JSON.stringify(type);
      const known = index.get(key);
      if (known !== undefined) return known;
      index.set(key, types.length);
      types.push(type);
      return types.length - 1;
    }),
  );
  return { typeOf, types };
}

/** Slabs cut at the edges of pieces in register, the heaviest first, as many as the programme can bear. */
function heaviestSlabs(kinds: readonly Kind[], vertical: Grains, types: number): Slab[] {
  const weight = new Map<Grains, number>();
  for (const kind of kinds) {
    for (const { yResidue, height } of kind.modes) {
      if (yResidue === null) continue;
      for (const edge of [mod(yResidue, vertical), mod(yResidue + height, vertical)]) {
        weight.set(edge, (weight.get(edge) ?? 0) + kind.area * kind.count);
      }
    }
  }
  const most = Math.max(4, Math.min(MOST_SLABS, Math.floor(MOST_ROWS / (types + 1))));
  const edges = [...weight].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([edge]) => edge);
  return slabsAt(edges.slice(0, most), vertical);
}

/** What each kind asks of the slabs, in repeats: known in register; else a mixture of the covers where an end meets an edge. */
function coversOf(
  kinds: readonly Kind[],
  typeOf: readonly (readonly number[])[],
  slabs: readonly Slab[],
  vertical: Grains,
): CoverKind[] {
  return kinds.map((kind, k) => ({
    count: kind.count,
    options: kind.modes.flatMap((mode, m) => {
      const feet =
        mode.yResidue !== null
          ? [mode.yResidue]
          : slabs.flatMap(({ from }) => [from, mod(from - mode.height, vertical)]);
      return [...new Set(feet)].map((foot) => ({
        type: typeOf[k]?.[m] as number,
        cover: Float64Array.from(
          slabs,
          (slab) => measureIn(slab, foot, foot + mode.height, vertical) / vertical,
        ),
      }));
    }),
  }));
}
