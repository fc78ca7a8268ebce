import fc from "fast-check";
import { expect, test } from "vitest";
import { lowerBound } from "../../src/cutplan/bound/lowerBound.ts";
import { bandsOf, longestBand } from "../../src/cutplan/laying/bands.ts";
import type { CutPiece } from "../../src/cutplan/piece.ts";
import type { PlanInput } from "../../src/cutplan/plan.ts";
import { planCuts } from "../../src/cutplan/planCuts.ts";
import { problemsOf } from "../../src/cutplan/problems.ts";
import { anyInput } from "./arbitraries.ts";
import { faultsOf } from "./checkPlan.ts";

const SOAK = Boolean(process.env.SOAK);
// The same few rooms in every ordinary run; new ones in a soak.
const seed = SOAK ? undefined : 20;
const numRuns = SOAK ? 5000 : 200;
const TIME = SOAK ? 900_000 : 60_000;

/** The input without the pieces that no cloth of its width holds. */
function placeable(input: PlanInput): PlanInput {
  const bad = new Set(problemsOf(input).map((problem) => problem.pieceId));
  return { ...input, pieces: input.pieces.filter((piece) => !bad.has(piece.id)) };
}

function planned(input: PlanInput) {
  const plan = planCuts(input);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  return plan;
}

/** Turned pieces counted, since some lie only so. */
function tallestOf({ pieces }: PlanInput): number {
  return Math.max(
    ...pieces.map((piece) => (piece.mayTurn ? Math.max(piece.height, piece.width) : piece.height)),
  );
}

test(
  "no overlap, inside the cloth, in register, nothing missing, never under the bound nor over item by item",
  () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const input = placeable(given);
        const plan = planned(input);
        expect(faultsOf(plan, input)).toEqual([]);
        expect(plan.length).toBeLessThanOrEqual(plan.itemByItem ?? 0);
      }),
      { seed, numRuns },
    );
  },
  TIME,
);

test(
  "the same plan twice",
  () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const input = placeable(given);
        expect(planCuts(input)).toEqual(planCuts(input));
      }),
      { seed, numRuns: numRuns / 4 },
    );
  },
  TIME,
);

test(
  "the same plan in another unit",
  () => {
    fc.assert(
      fc.property(anyInput, fc.constantFrom(3, 127, 160), (given, factor) => {
        // Doubled first: halves of odd figures are rounded, and a unit that holds them is another problem.
        const options = { builds: 60, maxBandG: null };
        const input = { ...placeable(times(given, 2)), options };
        const plan = planned(input);
        const scaled = planned(times(input, factor));
        expect(scaled.length).toBe(plan.length * factor);
        expect(scaled.lowerBound).toBe(plan.lowerBound * factor);
        expect(scaled.places.map(({ x, y }) => [x, y])).toEqual(
          plan.places.map(({ x, y }) => [x * factor, y * factor]),
        );
      }),
      { seed, numRuns: numRuns / 2 },
    );
  },
  TIME,
);

function times(input: PlanInput, factor: number): PlanInput {
  const { usableWidth, pattern, pieces } = input;
  return {
    ...input,
    usableWidth: usableWidth * factor,
    pattern: pattern && {
      ...pattern,
      horizontal: pattern.horizontal * factor,
      vertical: pattern.vertical * factor,
    },
    pieces: pieces.map(
      (piece): CutPiece => ({
        ...piece,
        width: piece.width * factor,
        height: piece.height * factor,
        across:
          piece.across.rule === "register"
            ? { rule: "register", residue: piece.across.residue * factor }
            : piece.across.rule === "at"
              ? { rule: "at", positions: piece.across.positions.map((x) => x * factor) }
              : piece.across,
        along:
          piece.along.rule === "register"
            ? { rule: "register", residue: piece.along.residue * factor }
            : piece.along,
      }),
    ),
  };
}

test(
  "lengths hold to their limit, and a longer limit is never worse",
  () => {
    fc.assert(
      fc.property(anyInput, fc.integer({ min: 1, max: 4 }), (given, more) => {
        const input = placeable(given);
        if (input.pieces.length === 0) return;
        const tallest = tallestOf(input);
        const vertical = input.pattern?.vertical ?? 0;
        const costs = [tallest, tallest * more, tallest * more + 50].map((maxLength) => {
          const options = {
            ...input.options,
            maxLength,
            maxBandG: Math.floor(tallest * 1.4),
            straightCutCost: 0,
          };
          const plan = planned({ ...input, options });
          expect(faultsOf(plan, input)).toEqual([]);
          for (const length of plan.lengths) expect(length).toBeLessThanOrEqual(maxLength);
          return plan.length + vertical * (plan.lengths.length - 1);
        });
        expect(costs[1]).toBeLessThanOrEqual(costs[0] as number);
        expect(costs[2]).toBeLessThanOrEqual(costs[1] as number);
      }),
      { seed, numRuns },
    );
  },
  TIME,
);

test(
  "straight cuts: no stretch is longer than asked, unless they cost more than allowed",
  () => {
    fc.assert(
      fc.property(anyInput, (given) => {
        const input = placeable(given);
        if (input.pieces.length === 0) return;
        const tallest = tallestOf(input);
        const options = { builds: 60, maxBandG: tallest, straightCutCost: 0.02 };
        const plan = planned({ ...input, options });
        const free = planned({ ...input, options: { builds: 60, maxBandG: null } });
        const cost = plan.length / free.length - 1;
        if (longestBand(bandsOf(plan.places)) <= tallest) expect(cost).toBeLessThanOrEqual(0.0201);
        else expect(plan.length).toBeLessThanOrEqual(free.length);
      }),
      { seed, numRuns: numRuns / 2 },
    );
  },
  TIME,
);

test(
  "a wider cloth never has a higher bound",
  () => {
    fc.assert(
      fc.property(anyInput, fc.integer({ min: 1, max: 100 }), (given, more) => {
        const input = placeable(given);
        const knownLength = 1e9;
        // What is held to the right selvedge would move with it.
        const pieces = input.pieces.filter(
          ({ across }) => across.rule !== "at" || across.positions[0] === 0,
        );
        const bound = (width: number) =>
          lowerBound(width, input.pattern, pieces, { start: null, knownLength });
        const narrow = bound(input.usableWidth);
        const wide = bound(input.usableWidth + more);
        expect(wide).toBeLessThanOrEqual(narrow * 1.0001 + 1);
      }),
      { seed, numRuns: numRuns / 2 },
    );
  },
  TIME,
);
