import { expect, test } from "vitest";
import { blindAllowances } from "../../../src/items/blind/allowances.ts";
import { makeBlind } from "../../../src/items/blind/pieces.ts";
import { blindSchema } from "../../../src/items/blind/schema.ts";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import { curtainsSheet } from "../../../src/items/curtains/sheet.ts";
import { clothFacts, fieldsOf, inUnit, length, tradeCase, wanted } from "../tradeContext.ts";
import { hangingContext, type WindowAsk, windowFacts } from "../windowContext.ts";

const PRINT = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });
const IVORY = clothFacts({ id: "ivory", type: "lining", usableWidth: length(`54"`) });
const DARK = clothFacts({ id: "dark", type: "lining", usableWidth: length(`54"`) });
const BUMP = clothFacts({ id: "bump", type: "interlining", usableWidth: length(`54"`) });
const DOOR = { ...windowFacts(`36"`, `82"`, `0"`), name: "garden", isDoor: true };

function make(raw: Record<string, unknown>, ask: WindowAsk = {}) {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Garden door",
    cloth: "print",
    heading: "pencil-pleat",
    ...raw,
  });
  const context = hangingContext(curtainsAllowances, {
    cloths: [PRINT, IVORY, DARK, BUMP],
    window: DOOR,
    ...ask,
  });
  return { fields, context, made: makeCurtains(fields, context) };
}
const codes = (made: { diagnostics: readonly { code: string; keyPath: string | null }[] }) =>
  made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);

test("a portière clears the floor (curt-12, A Manual of Home-Making, Portieres, 1919)", () => {
  const c = tradeCase("curtains", "curt-12");
  const clear = wanted(c, "floor_clearance");
  const { made } = make(
    { "pole-height": `88"`, pole: `44"` },
    { allowances: { "door-clearance": `${clear}"`, "below-pole": `0"` } },
  );
  expect(made.figures.finishedDropMm).toBeCloseTo((88 - clear) * 25.4, 6);
  expect(made.figures.hemAboveFloorMm).toBeCloseTo(clear * 25.4, 6);
});

test("one curtain that stacks at the hinges; a rising rod has no returns and is on the list", () => {
  const { made, fields, context } = make({ "door-rod": "portiere", "door-hinge": "right" });
  expect(made.figures.curtains).toBe(1);
  expect(made.plan?.coverage.hangs).toBe("right");
  expect(made.plan?.coverage.returnEach.isZero()).toBe(true);
  // 36 + 2 × 2 beyond the door.
  expect(made.figures.poleMm).toBeCloseTo(40 * 25.4, 6);
  expect(made.materials.map((m) => m.text).join(" ")).toContain("rising portière rod of 40″");
  expect(made.cautions).toContain("way-out");
  const lines = curtainsSheet(fields, made, { ...context, language: "en-GB" }).groups.find(
    (g) => g.heading === "Hardware",
  )?.lines;
  expect(lines?.[0]).toMatch(/lifts the curtain as the door opens/);
  expect(make({}).made.questions.join(" ")).toMatch(/fixed pole or from a portière rod.*hinges/);
  expect(make({ panels: "pair" }).made.figures.curtains).toBe(2);
});

test("a door has no sill; a door's words mean nothing at a window", () => {
  expect(codes(make({ to: "sill" }).made)).toEqual(["door-without-sill at items[0].to"]);
  const window = windowFacts(`72"`, `60"`, `30"`);
  expect(codes(make({ to: "floor", "door-rod": "rising" }, { window }).made)).toEqual([
    "curtains-at-no-door at items[0].door-rod",
  ]);
});

// Sizes of a blackout: common practice, no source.
test("interlined, blacked out and lined: three layers, each with its own cut", () => {
  const { made } = make({
    pole: `44"`,
    drop: `84"`,
    lining: "ivory",
    blackout: "dark",
    interlining: "bump",
  });
  const high = (cloth: string) => {
    const cut = made.cuts.find((each) => each.cloth === cloth);
    return cut ? inUnit(cut.height, "in") : null;
  };
  // Lining 84 − 2 + 4 hem + 1 heading; blackout the same without a hem; interlining the drop.
  expect([high("ivory"), high("dark"), high("bump")]).toEqual([87, 83, 84]);
  expect(made.cuts.find((cut) => cut.cloth === "dark")?.piece).toMatch(/^blackout, /);
  expect(made.handbook.map((h) => h.cloth).sort()).toEqual(["bump", "dark", "ivory", "print"]);
  for (const cut of made.cuts) expect(inUnit(cut.width, "in")).toBeLessThanOrEqual(54);
  expect(
    make({ heading: "eyelet", pole: `44"`, drop: `84"`, blackout: "dark" }).made.questions.join(
      " ",
    ),
  ).toContain("light passes at both sides");
  const blind = makeBlind(
    fieldsOf(blindSchema, {
      blind: "Bay",
      cloth: "print",
      mount: "outside",
      width: `40"`,
      drop: `60"`,
      lining: "ivory",
      blackout: "dark",
    }),
    hangingContext(blindAllowances, { cloths: [PRINT, IVORY, DARK] }),
  );
  const dark = blind.cuts.find((cut) => cut.cloth === "dark");
  expect(dark?.piece).toBe("blackout");
  expect(dark && [inUnit(dark.width, "in"), inUnit(dark.height, "in")]).toEqual([40, 60]);
});
