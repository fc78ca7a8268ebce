import fc from "fast-check";
import { expect, test } from "vitest";
import { depthAt, lowerEdge, onFlatCloth } from "../../src/items/common/board/lowerEdge.ts";
import { newNotes } from "../../src/items/common/notes.ts";
import { valanceAllowances } from "../../src/items/valance/allowances.ts";
import { valanceSeen } from "../../src/items/valance/area.ts";
import { valanceDrawing } from "../../src/items/valance/drawing.ts";
import { makeValance } from "../../src/items/valance/pieces.ts";
import { valanceSchema } from "../../src/items/valance/schema.ts";
import { clothFacts, fieldsOf, inUnit, length } from "./tradeContext.ts";
import { hangingContext, windowFacts } from "./windowContext.ts";

const PLAIN = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });
const IVORY = clothFacts({ id: "ivory", type: "lining", usableWidth: length(`54"`) });

function make(raw: Record<string, unknown>) {
  const fields = fieldsOf(valanceSchema, {
    valance: "Bay",
    cloth: "print",
    board: `80"`,
    depth: `14"`,
    heading: "gathered",
    lining: "ivory",
    ...raw,
  });
  const context = hangingContext(valanceAllowances, {
    cloths: [PLAIN, IVORY],
    window: windowFacts(`72"`, `60"`, `30"`),
    allowances: { return: `4"` },
  });
  return { fields, context, made: makeValance(fields, context) };
}

// Common practice, no source: a shaped edge is sewn to its lining, so a seam stands in place of the hem, and the deepest place sets the cut.
test("a scalloped valance is cut to its deepest place, with a seam along the edge, its lining like it", () => {
  const straight = make({}).made;
  const { made, context } = make({
    "lower-edge": "scalloped",
    scallops: "5",
    "scallop-depth": `3"`,
  });
  expect(made.diagnostics).toEqual([]);
  const heading = inUnit(context.length("heading"), "in");
  const [face, lining] = ["face", "lining"].map(
    (surface) => made.cuts.find((c) => c.surface === surface)?.height,
  );
  expect(inUnit(face as never, "in")).toBe(17 + heading + 0.5);
  expect(inUnit(lining as never, "in")).toBe(17 + 1 + 0.5);
  expect(made.figures.widths).toBe(straight.figures.widths);
  expect(made.figures.deepestMm).toBeCloseTo(17 * 25.4, 6);
  const bare = make({ "lower-edge": "arched", "end-depth": `20"`, lining: undefined }).made;
  expect(bare.questions.join(" ")).toMatch(/lined to the edge, or faced/);
  expect(straight.questions.join(" ")).not.toMatch(/faced/);
});

// Geometry, no outside source: Pythagoras on the chord and its height.
test("on the flat cloth each arc is as high and its chord as much longer as the cloth is full; it ends where the front ends", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 1, max: 4 }),
      fc.integer({ min: 40, max: 140 }),
      fc.integer({ min: 10, max: 30 }),
      (arcs, rise, board, times) => {
        if (2 * rise > board / arcs) return;
        const { context } = make({});
        const said = {
          "lower-edge": "scalloped" as const,
          scallops: arcs,
          "scallop-depth": length(`${rise}"`),
        };
        const front = length(`${board}"`);
        const hung = lowerEdge(said, front, length(`12"`), "valance", context, newNotes());
        if (!hung) throw new Error("no edge");
        const flatFront = front.times(times).dividedBy(10);
        const flat = onFlatCloth(hung, flatFront);
        expect(flat.chord.times(arcs).equals(flatFront)).toBe(true);
        const radius = (flat.radiusMm as number) / 25.4;
        const half = (board * times) / 10 / arcs / 2;
        expect(half ** 2 + (radius - rise) ** 2).toBeCloseTo(radius ** 2, 6);
        const wide = flatFront.toMm();
        for (const at of [0, wide / arcs, wide])
          expect(depthAt(flat, at)).toBeCloseTo(12 * 25.4, 3);
        expect(depthAt(flat, wide / arcs / 2)).toBeCloseTo((12 + rise) * 25.4, 3);
        // Gathered up again every place hangs a little less deep than the arc that was wanted: both lie between a parabola (the
        // flattest arc of that height) and half a circle (the fullest), which are sqrt(w) - w of the height apart, w = 4s(1 - s).
        for (const share of [0.1, 0.3, 0.45]) {
          const w = 4 * share * (1 - share);
          const wanted = depthAt(hung, (board * 25.4 * share) / arcs);
          const less = wanted - depthAt(flat, (wide / arcs) * share);
          expect(less).toBeGreaterThan(-1e-3);
          expect(less).toBeLessThan(rise * 25.4 * (Math.sqrt(w) - w) + 1e-3);
        }
      },
    ),
    { numRuns: 400 },
  );
});

test("drawn within its outline, with a template of the flat front; every heading, both shapes, both vocabularies", () => {
  for (const heading of ["gathered", "pencil-pleat", "pinch-pleat", "box-pleat"])
    for (const shape of [
      { "lower-edge": "arched", "end-depth": `20"` },
      { "lower-edge": "scalloped", scallops: "4", "scallop-depth": `3"` },
    ]) {
      const { fields, made, context } = make({ heading, ...shape, trim: "print" });
      const look = { ...context, language: "en-US" as const };
      const deepest = shape["end-depth"] ? 20 : 17;
      expect(valanceDrawing.elevation(fields, made, look)?.heightMm).toBeCloseTo(deepest * 25.4, 6);
      const drawings = valanceDrawing.workshop(fields, made, look);
      const template = drawings.find((d) => d.title.startsWith("Front flat"));
      const { flatFront, flatEdge } = made.plan as NonNullable<typeof made.plan>;
      const shown = (template?.widthMm as number) / flatEdge.chord.toMm();
      expect(shown).toBeCloseTo(Math.round(shown), 6);
      expect(template?.widthMm).toBeLessThanOrEqual(flatFront.toMm() + 1e-6);
      expect(template?.dimensions.map((d) => d.text).join(" ")).toMatch(/front, flat/);
      for (const language of ["en-US", "en-GB"] as const) {
        const said = JSON.stringify(valanceDrawing.sheet(fields, made, { ...look, language }));
        expect(said).toMatch(/radius \d/);
        expect(said).not.toMatch(/undefined|NaN/);
      }
      const seen = valanceSeen(fields, made)[0]?.areaMm2 as number;
      expect(seen).toBeGreaterThan(80 * 14 * 25.4 ** 2);
      expect(seen).toBeLessThan(80 * deepest * 25.4 ** 2);
      // Trim follows the curves.
      const trim = made.materials.find((m) => m.cloth === "print")?.amount.valueOf() as number;
      expect(trim * 36).toBeGreaterThan(inUnit(made.plan?.flat as never, "in"));
    }
  expect(make({ "lower-edge": "arched", "end-depth": `10"` }).made.diagnostics[0]).toMatchObject({
    code: "lower-edge-impossible",
  });
});
