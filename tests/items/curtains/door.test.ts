import { expect, test } from "vitest";
import { blindAllowances } from "../../../src/items/blind/allowances.ts";
import { makeBlind } from "../../../src/items/blind/pieces.ts";
import { blindSchema } from "../../../src/items/blind/schema.ts";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import { curtainsSheet } from "../../../src/items/curtains/sheet.ts";
import type { Length } from "../../../src/units/length.ts";
import { clothFacts, fieldsOf, inUnit, length, tradeCase, wanted } from "../tradeContext.ts";
import { hangingContext, type WindowAsk, windowFacts } from "../windowContext.ts";

const PRINT = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });
const IVORY = clothFacts({ id: "ivory", type: "lining", usableWidth: length(`54"`) });
const DARK = clothFacts({ id: "dark", type: "lining", usableWidth: length(`54"`) });
const BUMP = clothFacts({ id: "bump", type: "interlining", usableWidth: length(`54"`) });
const LEAF = clothFacts({
  id: "leaf",
  name: "Leaf",
  usableWidth: length(`54"`),
  repeat: { up: length(`20"`), across: length(`18"`), match: "half-drop", fromSelvedge: null },
});
const SPRIG = clothFacts({
  id: "sprig",
  name: "Sprig",
  usableWidth: length(`54"`),
  repeat: { up: length(`20"`), across: length(`6"`), match: "straight", fromSelvedge: null },
});
const DOOR = { ...windowFacts(`36"`, `82"`, `0"`), name: "garden", isDoor: true };

function make(raw: Record<string, unknown>, ask: WindowAsk = {}) {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Garden door",
    cloth: "print",
    heading: "pencil-pleat",
    ...raw,
  });
  const context = hangingContext(curtainsAllowances, {
    cloths: [PRINT, IVORY, DARK, BUMP, LEAF, SPRIG],
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

// Common practice, no source: what is seen from the other room is matched like a face. The sums are the handbook's for any patterned width.
test("a patterned lining is matched across its widths, cut to whole repeats, and hung level with a face of its repeat", () => {
  const raw = { pole: `90"`, "pole-height": `88"`, fullness: "2", lining: "sprig" };
  const { made } = make(raw);
  const lining = made.cuts.filter((c) => c.surface === "lining");
  expect(lining.length).toBeGreaterThan(1);
  // Level in itself: nothing ties a plain face's height to it, so that is asked, since it shows.
  expect(lining.map((c) => c.along.how)).toEqual(lining.map(() => "level"));
  expect(made.questions.join(" ")).toMatch(/At a door Sprig is seen from the other room/);
  const plain = inUnit(lining[0]?.height as Length, "in");
  const bought = made.handbook.find((h) => h.cloth === "sprig")?.length as Length;
  expect(inUnit(bought, "in")).toBe(lining.length * Math.ceil(plain / 20) * 20);
  // Elsewhere its back is to the glass, and nobody asks.
  const window = windowFacts(`36"`, `82"`, `6"`);
  expect(make({ ...raw, to: "floor" }, { window }).made.questions.join(" ")).not.toMatch(
    /from the other room/,
  );

  const both = make({ ...raw, cloth: "leaf", "lowest-motif": `9"` });
  const face = both.made.cuts.filter((c) => c.surface === "face");
  const back = both.made.cuts.filter((c) => c.surface === "lining");
  const heightOf = (cuts: typeof face) =>
    new Set(cuts.map((c) => (c.along.how === "motif-at" ? inUnit(c.along.aboveFoot, "in") : null)));
  const [faceFoot] = heightOf(face);
  const [backFoot] = heightOf(back);
  // The lining ends `lining-up` above the face, its own hem turned up behind: 9 above the face's hem is the same height from the floor.
  const hem = inUnit(both.context.length("hem"), "in");
  const up = inUnit(both.context.length("lining-up"), "in");
  const turned = inUnit(both.context.length("lining-hem"), "in");
  expect(faceFoot).toBe(9 + hem);
  expect(backFoot).toBe(9 - up + turned);
  const sheet = curtainsSheet(both.fields, both.made, { ...both.context, language: "en-US" });
  expect(JSON.stringify(sheet)).toContain("its motifs level with those of the face");
  // A half-drop at the selvedge shifts each next width of a lining too.
  const drop = make({ ...raw, lining: "leaf" }).made.cuts.filter((c) => c.surface === "lining");
  expect(new Set(drop.map((c) => (c.along.how === "free" ? null : c.along.joined))).size).toBe(2);
});
