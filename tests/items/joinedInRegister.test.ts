import fc from "fast-check";
import { expect, test } from "vitest";
import { acrossCuts } from "../../src/items/common/join/joinedAcross.ts";
import {
  hasMotifInMiddle,
  joinedCuts,
  joinPiece,
  middleOfWidth,
} from "../../src/items/common/join/joinPiece.ts";
import { stripsCentred } from "../../src/items/common/join/stripsCentred.ts";
import type { ClothFacts, ItemCut } from "../../src/items/itemKind.ts";
import { piecesOf, plannedCloth } from "../../src/quantities/cutPieces.ts";
import { grainsDown } from "../../src/quantities/grains.ts";
import { Length } from "../../src/units/length.ts";
import { clothFacts } from "./tradeContext.ts";

/** A cloth of so many columns between its selvedges, each so many millimetres wide, and its usable width. */
function patterned(
  columns: number,
  across: number,
  first: number,
  match: "straight" | "half-drop",
) {
  const usable = Length.mm(columns * across);
  const repeat = {
    up: Length.cm(30),
    across: Length.mm(across),
    match,
    fromSelvedge: Length.mm(first),
  };
  return { usable, facts: clothFacts({ id: "c", usableWidth: usable, repeat }) };
}

const PHASES = { phases: new Map([["room/Back", 700]]), instead: new Map() };

// Geometry, no outside source: columns of motifs stand H apart, those of a half-drop each half a repeat off its neighbour, and a width
// of K columns joined at its selvedge goes on with the next column.

test("where no motif stands in the middle of the width, a narrower middle has one in the piece's very middle, and every part is in register", () => {
  let centred = 0;
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 12 }),
      fc.integer({ min: 60, max: 300 }),
      fc.integer({ min: 0, max: 59 }),
      fc.integer({ min: 20, max: 120 }),
      fc.constantFrom("straight" as const, "half-drop" as const),
      fc.constantFrom("both-sides" as const, "one-side" as const),
      fc.integer({ min: 5, max: 600 }),
      (columns, across, first, height, match, way, over) => {
        const { usable, facts } = patterned(columns, across, first, match);
        const turning = Length.mm(10);
        const whole = usable.plus(Length.mm(over));
        const parts = joinPiece(whole, usable, turning, way, facts);
        if (!parts || !hasMotifInMiddle(parts)) return;
        centred += 1;
        const cut = {
          piece: "back",
          surface: "cover",
          cloth: "c",
          width: whole,
          height: Length.cm(height),
          count: 1,
          because: "",
        };
        const cuts = joinedCuts(parts, cut, facts, true, "Back");
        inRegister(cuts, facts, whole, turning, Length.cm(height).dividedBy(2));
        const middle = parts.find((p) => p.selvedge === null);
        expect(middle && !middle.width.isLessThan(usable.dividedBy(2))).toBe(true);
      },
    ),
    { numRuns: 300 },
  );
  expect(centred).toBeGreaterThan(50);
});

test("strips joined to a whole width carry its pattern on, column by column; a centred piece has a motif in its very middle", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 6 }),
      fc.integer({ min: 10, max: 60 }),
      fc.integer({ min: 20, max: 90 }),
      fc.integer({ min: 20, max: 120 }),
      fc.constantFrom("straight" as const, "half-drop" as const),
      fc.boolean(),
      fc.constantFrom("both-sides" as const, "one-side" as const),
      (columns, across, up, height, match, centred, way) => {
        const usable = Length.cm(columns * across);
        const facts = clothFacts({
          id: "c",
          usableWidth: usable,
          repeat: { up: Length.cm(up), across: Length.cm(across), match, fromSelvedge: null },
        });
        const turning = Length.mm(10);
        const parts = joinPiece(usable.times(2).minus(Length.cm(5)), usable, turning, way);
        if (parts === null) return;
        const cuts = joinedCuts(
          parts,
          {
            piece: "back",
            surface: "cover",
            cloth: "c",
            width: usable,
            height: Length.cm(height),
            count: 1,
            because: "",
          },
          facts,
          centred,
          "Back",
        );
        const cloth = plannedCloth(facts, usable, grainsDown(usable));
        const [V, half] = [up * 1600, match === "half-drop" ? up * 800 : 0];
        const phaseOf = (n: number, column: number): number => {
          const cut = cuts[n];
          if (!cut) throw new Error("no cut");
          const [named] = piecesOf({ room: "room", item: "item", at: n, cut }, cloth, PHASES);
          const along = named?.piece.along;
          if (along?.rule !== "register") throw new Error("not in register");
          const odd = Math.abs(column) % 2 === 1;
          // Height of a motif of this column above the foot.
          return (((-along.residue + (odd ? half : 0)) % V) + V) % V;
        };
        const same = (a: number, b: number) => {
          const off = Math.abs(a - b) % V;
          expect(Math.min(off, V - off)).toBeLessThan(2);
        };
        for (const [n, part] of parts.entries()) {
          if (n === 0) continue;
          const left = parts[n - 1];
          // The last column of what lies left, and the first of what lies right, are neighbours: at the left piece's own count it is column K.
          same(phaseOf(n - 1, columns), phaseOf(n, 0));
          expect(
            part.selvedge !== null || left?.selvedge !== null || part.width.equals(usable),
          ).toBe(true);
        }
        const whole = parts.findIndex((p) => p.selvedge === null);
        const middle = middleOfWidth(facts);
        expect(middle.motif).toBe(columns % 2 === 1);
        if (centred && middle.motif && parts.length === 3)
          same(phaseOf(whole, (columns - 1) / 2), (height * 1600) / 2);
      },
    ),
    { numRuns: 300 },
  );
});

/**
 * That every motif of joined cuts lies, turnings overlapped, on one pattern with a motif `aboveFoot` in the very middle of the whole,
 * and that each can be cut somewhere across the width.
 */
function inRegister(
  cuts: readonly ItemCut[],
  facts: ClothFacts,
  whole: Length,
  turning: Length,
  aboveFoot: Length,
): void {
  const { usableWidth: usable, repeat } = facts;
  if (!usable || !repeat?.across || !repeat.fromSelvedge) throw new Error("no repeat");
  const grains = (l: Length) => l.toMm() * 160;
  const cloth = plannedCloth(facts, usable, grainsDown(usable));
  const [H, V, middle] = [grains(repeat.across), grains(repeat.up), grains(whole) / 2];
  const drop = repeat.match === "half-drop" ? V / 2 : 0;
  const mod = (a: number, b: number) => ((a % b) + b) % b;
  // The left cut edge of each part in the joined piece: both pieces of a join give up their turning.
  let at = 0;
  for (const [n, cut] of cuts.entries()) {
    const [named] = piecesOf({ room: "room", item: "item", at: n, cut }, cloth, PHASES);
    if (!named) throw new Error("no piece");
    const { across: x, along: y } = named.piece;
    if (x.rule !== "register" || y.rule !== "register") throw new Error("not in register");
    // Left edge r + kH, foot s and half a repeat where k is odd: the lattice in the joined piece is the same for every k.
    const motif = at + (grains(repeat.fromSelvedge) - x.residue);
    const fromMiddle = Math.round((motif - middle) / H);
    expect(Math.abs(motif - middle - fromMiddle * H)).toBeLessThan(2);
    const level = mod(-y.residue + (Math.abs(fromMiddle) % 2) * drop, V);
    const off = mod(level - grains(aboveFoot), V);
    expect(Math.min(off, V - off)).toBeLessThan(2);
    const width = grains(cut.width);
    expect(mod(x.residue, H) + width).toBeLessThanOrEqual(grains(usable) + 1);
    at += width - 2 * grains(turning);
  }
  expect(at + 2 * grains(turning)).toBeCloseTo(grains(whole), 3);
}

test("a front that hangs or covers a pelmet is joined round a motif in its middle too", () => {
  let centred = 0;
  fc.assert(
    fc.property(
      fc.integer({ min: 3, max: 12 }),
      fc.integer({ min: 60, max: 300 }),
      fc.integer({ min: 0, max: 59 }),
      fc.constantFrom("straight" as const, "half-drop" as const),
      fc.integer({ min: 5, max: 600 }),
      (columns, across, first, match, over) => {
        const { usable, facts } = patterned(columns, across, first, match);
        const [turning, whole] = [Length.mm(10), usable.plus(Length.mm(over))];
        const strips = stripsCentred(whole, usable, turning, facts);
        if (!strips.motif) return;
        centred += 1;
        const aboveFoot = Length.cm(17);
        const cuts = acrossCuts({
          piece: "front",
          surface: "face",
          cloth: "c",
          strips,
          cutWidth: whole,
          usableWidth: usable,
          height: Length.cm(40),
          count: 1,
          across: { how: "free" },
          mayTurn: false,
          patterned: true,
          along: (n) => ({ how: "motif-at", aboveFoot, joined: n % 2 }),
          because: "",
        });
        expect(cuts).toHaveLength(3);
        inRegister(cuts, facts, whole, turning, aboveFoot);
      },
    ),
    { numRuns: 300 },
  );
  expect(centred).toBeGreaterThan(50);
});
