import fc from "fast-check";
import { expect, test } from "vitest";
import { lampshadeDrawing } from "../../src/items/lampshade/drawing.ts";
import { lampshadeKind } from "../../src/items/lampshade/kind.ts";
import type { LampshadeMade } from "../../src/items/lampshade/pieces.ts";
import type { LampshadeFields } from "../../src/items/lampshade/schema.ts";
import {
  type ContextAsk,
  clothFacts,
  contextFor,
  fieldsOf,
  inUnit,
  length,
} from "./tradeContext.ts";

// Common practice, no source: a strip three times the way round for pleats, twice for gathers, by the side and its two turnings.
const PRINT = clothFacts({
  id: "print",
  name: "Print",
  usableWidth: length(`54"`),
  repeat: { up: length(`8"`), across: length(`6"`), match: "straight", fromSelvedge: null },
});

function make(raw: Record<string, unknown>, ask: ContextAsk = {}, cloth = PRINT) {
  const fields = fieldsOf(lampshadeKind.schema, {
    lampshade: "Lamp",
    cloth: "print",
    size: `15" x 10"`,
    style: "knife-pleat",
    ...raw,
  }) as LampshadeFields;
  const context = contextFor(lampshadeKind.allowances, { cloths: [cloth], ...ask });
  return { fields, context, made: lampshadeKind.make(fields, context) as LampshadeMade };
}

test("a pleated empire: the side by its turnings, three times round the foot in whole widths, pleats closer at the top", () => {
  const { made } = make({ form: "empire", top: `9"` });
  expect(made.diagnostics).toEqual([]);
  // Slant: root of 10 squared and 3 squared; 5/8 turned over each ring.
  const cut = made.cuts[0];
  expect(inUnit(cut?.height as never, "in")).toBeCloseTo(Math.sqrt(109) + 1.25, 4);
  // 15 pi = 47.12; three times and two closing turnings is 142.4: three widths of 54 joined give 160.
  expect(made.figures.widths).toBe(3);
  expect(cut?.count).toBe(3);
  expect(cut?.along.how).toBe("level");
  // Pleats at most 3/4 in wide: 63, each 0.748 in at the foot and 9/15 of that at the top.
  expect(made.figures.pleats).toBe(63);
  const pleats = made.plan?.pleated?.pleats;
  expect(inUnit(pleats?.top as never, "in") / inUnit(pleats?.foot as never, "in")).toBeCloseTo(
    9 / 15,
    6,
  );
  expect(made.materials.map((m) => m.text).join(" ")).toMatch(
    /frame with struts, foot ring 15″, top ring 9″/,
  );
  expect(made.materials.map((m) => m.text).join(" ")).not.toContain("styrene");
});

test("gathers take twice the way round; plain cloth may run sideways in one strip", () => {
  const plain = { ...PRINT, repeat: null, mayTurn: true };
  const { made } = make({ style: "gathered", railroad: "yes" }, {}, plain);
  expect(made.plan?.pleated?.strip.sideways).toBe(true);
  expect(made.figures.flatMm).toBeCloseTo(2 * ((15 * 355) / 113) * 25.4 + 25.4, 3);
  expect(made.plan?.pleated?.pleats).toBeNull();
  // Four strips of 11 1/4 in lie side by side on 54 in.
  expect(made.cuts[0]?.count).toBe(4);
});

test("what the pleats take up and show adds up to the joined strip, and a larger or fuller shade never takes less", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 30 }),
      fc.integer({ min: 5, max: 20 }),
      fc.integer({ min: 2, max: 4 }),
      fc.constantFrom("knife-pleat", "box-pleat"),
      (foot, high, full, style) => {
        const size = (more: number) => ({ style, size: `${foot + more}" x ${high}"` });
        const at = (more: number, fullness = full) =>
          make(size(more), { allowances: { "pleat-fullness": String(fullness) } }).made;
        const one = at(0);
        const pleated = one.plan?.pleated;
        const pleats = pleated?.pleats;
        if (!pleated || !pleats) throw new Error("no pleats");
        const each = pleats.foot.plus(pleats.takeUp).times(pleats.count);
        const joined = pleated.strip.runs[0]?.joined;
        expect(joined?.minus(each).equals(length(`1"`))).toBe(true);
        expect(pleats.foot.isMoreThan(length(`3/4"`))).toBe(false);
        expect(at(2).figures.widths).toBeGreaterThanOrEqual(one.figures.widths as number);
        expect(at(0, full + 1).figures.widths).toBeGreaterThanOrEqual(one.figures.widths as number);
      },
    ),
    { numRuns: 60 },
  );
});

test("drawn with its pleats, its strip flat; a motif that pleats would hide is told", () => {
  for (const style of ["knife-pleat", "box-pleat", "gathered"]) {
    const { fields, made, context } = make({ style, form: "empire", top: `9"`, trim: "print" });
    for (const language of ["en-US", "en-GB"] as const) {
      const look = { ...context, language };
      const smooth = make({ style: "smooth", form: "empire", top: `9"` });
      const shapes = (of: typeof smooth) =>
        lampshadeDrawing.elevation(of.fields, of.made, look)?.shapes;
      expect(JSON.stringify(shapes({ fields, made, context })).length).toBeGreaterThan(
        JSON.stringify(shapes(smooth)).length,
      );
      const [front, strip] = lampshadeDrawing.workshop(fields, made, look);
      expect(front?.dimensions.map((d) => d.text).join(" ")).toMatch(/foot ring.*top ring/);
      expect(strip?.description).toMatch(/^Strip flat: \d widths/);
      const said = JSON.stringify(lampshadeDrawing.sheet(fields, made, look));
      expect(said).toContain(style === "gathered" ? "Gathered 2 times" : "apart at the foot");
      expect(said).not.toMatch(/undefined|NaN|null null/);
    }
  }
  expect(make({ motif: "centred" }).made.diagnostics.map((d) => d.code)).toEqual([
    "pleats-hide-the-motif",
  ]);
});
