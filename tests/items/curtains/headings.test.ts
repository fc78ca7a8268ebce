import { expect, test } from "vitest";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { curtainsDrawing } from "../../../src/items/curtains/drawing.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import { clothFacts, fieldsOf, inUnit, length } from "../tradeContext.ts";
import { hangingContext } from "../windowContext.ts";

const PLAIN = clothFacts({ id: "linen", name: "Slub linen", usableWidth: length(`54"`) });

function make(raw: Record<string, unknown>, allowances: Record<string, string> = {}) {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Bay",
    cloth: "linen",
    pole: `96"`,
    drop: `92"`,
    ...raw,
  });
  return {
    fields,
    made: makeCurtains(fields, hangingContext(curtainsAllowances, { cloths: [PLAIN], allowances })),
  };
}

// Common practice, no source: the sums below are worked by hand from the allowances that they name.
test("tabs: one at each edge, evenly, each strip over the pole and back", () => {
  const { made } = make(
    { heading: "tab", panels: "single", fullness: "1" },
    {
      "tab-width": `2"`,
      "tab-spacing": `7"`,
      "tab-drop": `3"`,
      "pole-thickness": `1 3/4"`,
      join: `1/2"`,
    },
  );
  // 96 × 1 + 4 side hems = 100 flat needs two widths: 107 joined, 103 between the hems; (103 − 2) ÷ 7 = 14.4.
  expect(made.figures.widths).toBe(2);
  expect(made.figures.tabs).toBe(16);
  const strip = made.cuts.find((cut) => cut.piece === "tab");
  // 2 × 3 + 1 3/4 × 11/7 = 8.75, and two turnings; twice 2 and a turning each.
  expect(inUnit(strip?.height as never, "in")).toBe(9.75);
  expect(inUnit(strip?.width as never, "in")).toBe(5);
  expect(strip?.count).toBe(16);
  // Ten strips lie across 54: two rows more than the two drops of 108.
  expect(inUnit(made.handbook[0]?.length as never, "in")).toBe(2 * 108 + 2 * 9.75);
});

test("a slot: the pole's half round and its ease, the frill above, the edge turned under", () => {
  const { made } = make(
    { heading: "slot" },
    {
      "pole-thickness": `1 3/4"`,
      "slot-ease": `1/2"`,
      "slot-frill": `1"`,
      "slot-turn": `1/2"`,
      hem: `8"`,
    },
  );
  // 1 3/4 × 11/7 + 1/2 = 3 1/4; turned down 1 + 3 1/4 + 1/2.
  expect(made.figures.slotMm).toBeCloseTo(3.25 * 25.4, 6);
  expect(made.figures.plainCutLengthMm).toBeCloseTo((92 + 4.75 + 8) * 25.4, 6);
  expect(made.plan?.coverage.returnEach.isZero()).toBe(true);
});

test("an s-fold whose fullness is written takes its cloth from the carriers' spacing", () => {
  const { made } = make(
    { heading: "s-fold", fullness: "1.8", panels: "single" },
    { "carrier-spacing": `3"` },
  );
  // 96 ÷ 3 = 32 spaces, 33 carriers, made even: 34, with 33 spaces of 5.4.
  expect(made.figures.carriers).toBe(34);
  expect(made.figures.flatPanelMm).toBeCloseTo(33 * 5.4 * 25.4, 6);
});

// Common practice, no source: carriers on a cord stand no further apart than their spacing.
test("a closed s-fold reaches over all of its track, whatever its length", () => {
  for (let inches = 20; inches <= 200; inches += 1) {
    const { made } = make(
      { heading: "s-fold", pole: `${inches}"`, panels: "single" },
      { "carrier-spacing": `3"`, "cloth-per-carrier": `6"` },
    );
    const carriers = made.figures.carriers as number;
    expect(carriers % 2).toBe(0);
    expect((carriers - 1) * 3).toBeGreaterThanOrEqual(inches);
    // Nor more than the even number needs.
    expect((carriers - 3) * 3).toBeLessThan(inches);
  }
});

test("a number of pleats counts for pinch pleats and is refused with a warning where there are none", () => {
  const pinch = make({ heading: "pinch-pleat", pleats: "11" }).made;
  expect(pinch.figures.pleats).toBe(11);
  expect(pinch.figures.spaces).toBe(10);
  const slot = make({ heading: "slot", pleats: "11" }).made;
  expect(slot.diagnostics.map((d) => [d.code, d.severity])).toEqual([
    ["pleats-of-no-pleat", "warning"],
  ]);
});

test.each([
  ["goblet", /^Goblet, .*: \d+ a curtain/],
  ["tab", /^Tabs .*: \d+ a curtain/],
  ["slot", /^Slot .* both ends open/],
  ["s-fold", /\d+ carriers/],
])("the sheet of a %s heading says how it is made", (heading, words) => {
  const { fields, made } = make({ heading });
  const sheet = curtainsDrawing.sheet(fields, made, {
    units: "inches",
    language: "en-US",
    cloth: () => PLAIN,
    object: () => null,
  });
  const lines = sheet.groups.find((group) => group.heading === "Heading")?.lines ?? [];
  expect(lines[0]).toMatch(words);
});

test("tabs of patterned cloth: as the pattern falls, and asked; or alike, each with a motif in its middle", () => {
  const print = {
    ...PLAIN,
    repeat: {
      up: length(`6"`),
      across: length(`6"`),
      match: "straight" as const,
      fromSelvedge: length(`3"`),
    },
  };
  const tabs = (raw: Record<string, unknown>, cloth = print) => {
    const fields = fieldsOf(curtainsSchema, {
      curtains: "Bay",
      cloth: "linen",
      pole: `96"`,
      drop: `92"`,
      heading: "tab",
      ...raw,
    });
    const allowances = { "tab-width": `2"`, join: `1/2"`, "tab-drop": `3"` };
    return makeCurtains(
      fields,
      hangingContext(curtainsAllowances, { cloths: [cloth], allowances }),
    );
  };
  const falls = tabs({});
  expect(falls.questions.join(" ")).toContain("all alike, a motif in the middle of each");
  expect(falls.cuts.find((cut) => cut.piece === "tab")?.across.how).toBe("free");
  const alike = tabs({ "tab-match": "alike" });
  const cut = alike.cuts.find((each) => each.piece === "tab");
  // Half-way across the strip; half-way up the front: a turning and half of the 3 in that are seen.
  expect(cut?.across.how === "motif-at" && inUnit(cut.across.fromLeft, "in")).toBe(2.5);
  expect(cut?.along.how === "motif-at" && inUnit(cut.along.aboveFoot, "in")).toBe(2);
  expect(alike.questions.join(" ")).not.toContain("all alike");
  // Nine motifs stand across 54, each row is two repeats of 6.
  const count = cut?.count ?? 0;
  const rows = Math.ceil(count / 9) * 12;
  const drops = (falls.handbook[0] && inUnit(falls.handbook[0].length, "in")) ?? 0;
  const strips = Math.ceil(count / 10);
  const strip = cut ? inUnit(cut.height, "in") : 0;
  expect(alike.handbook[0] && inUnit(alike.handbook[0].length, "in")).toBeCloseTo(
    drops - strips * strip + rows,
    9,
  );
  const wide = {
    ...print,
    repeat: { ...print.repeat, across: length(`53"`), fromSelvedge: length(`1"`) },
  };
  expect(tabs({ "tab-match": "alike" }, wide).diagnostics.map((d) => d.code)).toEqual([
    "tab-motif-no-room",
  ]);
});
