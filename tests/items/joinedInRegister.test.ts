import fc from "fast-check";
import { expect, test } from "vitest";
import { joinedCuts, joinPiece, middleOfWidth } from "../../src/items/joinPiece.ts";
import { piecesOf, plannedCloth } from "../../src/quantities/cutPieces.ts";
import { grainsDown } from "../../src/quantities/grains.ts";
import { Length } from "../../src/units/length.ts";
import { clothFacts } from "./tradeContext.ts";

// Geometry, no outside source: columns of motifs stand H apart, those of a half-drop each half a repeat off its neighbour, and a width
// of K columns joined at its selvedge goes on with the next column.
const PHASES = { phases: new Map([["room/Back", 700]]), instead: new Map() };

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
