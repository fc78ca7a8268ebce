import fc from "fast-check";
import { expect, test } from "vitest";
import { modesOf } from "../../src/cutplan/laying/modes.ts";
import { centredPlace } from "../../src/items/common/join/centredMotif.ts";
import type { ItemCut } from "../../src/items/itemKind.ts";
import { piecesOf, plannedCloth } from "../../src/quantities/cutPieces.ts";
import { grainsDown } from "../../src/quantities/grains.ts";
import { Length } from "../../src/units/length.ts";
import { clothFacts, length } from "../items/tradeContext.ts";

// Geometry: on a half-drop cloth motifs stand at (first + k H, k odd ? V/2 : 0) modulo V. No outside source.
test("pieces of every width have a true motif of one and the same half-drop lattice in their middle", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 80 }),
      fc.integer({ min: 2, max: 80 }),
      fc.integer({ min: 0, max: 40 }),
      (width, height, first) => {
        const facts = clothFacts({
          id: "drop",
          usableWidth: length('54"'),
          repeat: {
            up: length('20"'),
            across: length('13 1/2"'),
            match: "half-drop",
            fromSelvedge: Length.inches(first).dividedBy(3),
          },
        });
        const usable = facts.usableWidth as Length;
        const cloth = plannedCloth(facts, usable, grainsDown(usable));
        const [w, h] = [Length.inches(width).dividedBy(2), Length.inches(height).dividedBy(2)];
        const place = centredPlace(facts, w, h);
        const cut: ItemCut = {
          piece: "face",
          surface: "face",
          cloth: "drop",
          width: w,
          height: h,
          count: 1,
          mayTurn: false,
          across: place.across,
          along: place.along,
          because: "",
        };
        const from = { room: "room", item: "item", at: 0, cut };
        const [named] = piecesOf(from, cloth, { phases: new Map(), instead: new Map() });
        if (!named || !cloth.pattern) throw new Error("no piece");
        const { horizontal: H, vertical: V } = cloth.pattern;
        const motif = Math.round(cloth.motifX.toMm() * 160);
        for (const mode of modesOf(named.piece, cloth.pattern, cloth.usableWidthG)) {
          const column = Math.round((mode.xResidue + mode.width / 2 - motif) / H);
          expect(Math.abs(mode.xResidue + mode.width / 2 - motif - column * H)).toBeLessThan(2);
          const middle = (mode.yResidue as number) + mode.height / 2;
          const off = middle - (Math.abs(column) % 2 === 1 ? V / 2 : 0);
          expect(Math.abs(off - Math.round(off / V) * V)).toBeLessThan(2);
        }
      },
    ),
    { numRuns: 200 },
  );
});
