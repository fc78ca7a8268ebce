import fc from "fast-check";
import { expect, test } from "vitest";
import { blindAllowances } from "../../../src/items/blind/allowances.ts";
import { blindSeen } from "../../../src/items/blind/area.ts";
import { makeBlind } from "../../../src/items/blind/pieces.ts";
import { blindSchema } from "../../../src/items/blind/schema.ts";
import { chooseSections, partSections } from "../../../src/items/blind/sections.ts";
import { blindSheet } from "../../../src/items/blind/sheet.ts";
import type { ClothFacts } from "../../../src/items/itemKind.ts";
import { planStrips } from "../../../src/items/joinStrips.ts";
import { Length } from "../../../src/units/length.ts";
import { printMeasured } from "../../../src/units/printLength.ts";
import { clothFacts, fieldsOf, given, inUnit, length, tradeCase, wanted } from "../tradeContext.ts";
import { hangingContext, type WindowAsk, windowFacts } from "../windowContext.ts";

const inches = (n: number) => `${n}"`;
const cm = (n: number) => `${n} cm`;
const PLAIN = clothFacts({ id: "print", name: "Print", usableWidth: length(`54"`) });

function make(raw: Record<string, unknown>, ask: WindowAsk = {}, cloth: ClothFacts = PLAIN) {
  const fields = fieldsOf(blindSchema, { blind: "Bay", cloth: "print", ...raw });
  return {
    fields,
    made: makeBlind(fields, hangingContext(blindAllowances, { cloths: [cloth], ...ask })),
  };
}
const figure = (
  made: { figures: Readonly<Record<string, number>> },
  name: string,
  unit: "in" | "cm",
) => inUnit(Length.mm((made.figures[name] as number).toFixed(6)), unit);
const codes = (made: { diagnostics: readonly { code: string; keyPath: string | null }[] }) =>
  made.diagnostics.map((d) => `${d.code} at ${d.keyPath}`);

test("a doubled inch of hem and a wrap at the top (rb-01, weblog, 2011)", () => {
  const c = tradeCase("roman-blinds", "rb-01");
  const doubled = 2 * given(c, "hem_visible");
  const { made } = make(
    {
      mount: "outside",
      width: inches(given(c, "finished_width")),
      drop: inches(given(c, "finished_drop")),
    },
    {
      allowances: {
        "side-turn": inches(doubled),
        bottom: inches(doubled),
        top: inches(doubled + given(c, "top_wrap")),
      },
    },
  );
  expect(figure(made, "cutWidthMm", "in")).toBe(wanted(c, "cut_width"));
  expect(figure(made, "cutLengthMm", "in")).toBe(wanted(c, "cut_length"));
});

test("sections add back to the drop (rb-02, common practice, no source)", () => {
  const c = tradeCase("roman-blinds", "rb-02");
  const s = partSections(
    length(cm(given(c, "finished_drop"))),
    length(cm(given(c, "headrail_allowance"))),
    given(c, "half_fold_sections"),
  );
  expect(inUnit(s.section, "cm")).toBe(wanted(c, "section"));
  expect(s.rods).toBe(wanted(c, "rods"));
  expect(inUnit(s.rodHeights[0] as Length, "cm")).toBe(wanted(c, "first_rod_from_hem"));
  expect(inUnit((s.rodHeights[1] as Length).minus(s.rodHeights[0] as Length), "cm")).toBe(
    wanted(c, "rod_pitch"),
  );
  expect(inUnit(s.topRodFromTop, "cm")).toBe(wanted(c, "top_rod_to_top_edge"));
  expect(s.rodHeights.map((h) => inUnit(h, "cm"))).toEqual(wanted(c, "rod_heights_from_hem"));
  expect(inUnit(s.stackDepth, "cm")).toBe(wanted(c, "raised_stack_depth"));
});

test("the odd number whose flap lies in the wanted range (rb-03, common practice, no source)", () => {
  const c = tradeCase("roman-blinds", "rb-03");
  const [least, most] = given(c, "wanted_flap") as unknown as [number, number];
  const s = chooseSections(
    length(cm(given(c, "finished_drop"))),
    length(cm(given(c, "headrail_allowance"))),
    length(cm(least)),
    length(cm(most)),
  );
  expect(s.sections).toBe(wanted(c, "sections"));
  expect(inUnit(s.section, "cm")).toBeCloseTo(wanted(c, "flap"), 2);
  expect(s.rods).toBe(wanted(c, "rods"));
  expect(s.wanted).toBe(true);
});

test("three lined blinds of one width, each cut a whole number of repeats (rb-04, common practice, no source)", () => {
  const c = tradeCase("roman-blinds", "rb-04");
  const cloth = {
    ...PLAIN,
    usableWidth: length(cm(given(c, "usable_fabric_width"))),
    repeat: {
      up: length(cm(given(c, "vertical_repeat"))),
      across: null,
      match: "straight" as const,
      fromSelvedge: null,
    },
  };
  const { made } = make(
    {
      mount: "outside",
      width: cm(given(c, "finished_width")),
      drop: cm(given(c, "finished_drop")),
      count: String(given(c, "blinds")),
    },
    {
      units: "centimetres",
      allowances: {
        "side-turn": cm(given(c, "side_turn_each")),
        top: cm(given(c, "top")),
        bottom: cm(given(c, "bottom")),
      },
    },
    cloth,
  );
  expect(figure(made, "cutWidthMm", "cm")).toBe(wanted(c, "cut_width"));
  expect(made.figures.widths).toBe(wanted(c, "widths_per_blind"));
  expect(figure(made, "plainCutLengthMm", "cm")).toBe(177);
  expect(figure(made, "cutLengthMm", "cm")).toBe(wanted(c, "cut_length"));
  expect(inUnit(made.handbook[0]?.length as Length, "m")).toBe(wanted(c, "total"));
});

test("a wide blind has a whole width in the middle and equal strips (rb-05, common practice, no source)", () => {
  const c = tradeCase("roman-blinds", "rb-05");
  const cloth = { ...PLAIN, usableWidth: length(cm(given(c, "usable_fabric_width"))) };
  const { made } = make(
    { mount: "outside", width: cm(given(c, "cut_width") - 10), drop: "160 cm" },
    {
      units: "centimetres",
      allowances: { "side-turn": "5 cm", join: cm(given(c, "seam_each_piece")) },
    },
    cloth,
  );
  expect(made.figures.widths).toBe(wanted(c, "widths"));
  expect(figure(made, "stripMm", "cm")).toBe(wanted(c, "each_side_strip"));
  const widths = made.cuts.map((cut) => inUnit(cut.width, "cm"));
  expect(widths).toEqual([
    wanted(c, "each_side_strip"),
    wanted(c, "centre_panel"),
    wanted(c, "each_side_strip"),
  ]);
  const joined = widths.reduce((a, b) => a + b, 0) - 4 * given(c, "seam_each_piece");
  expect(joined).toBe(wanted(c, "joined_flat_width"));
  expect(made.cuts.map((cut) => cut.across)).toEqual([
    { how: "selvedge", side: "right" },
    { how: "whole-width" },
    { how: "selvedge", side: "left" },
  ]);
});

test("a hobbled blind's face is cut for its folds, its lining for the drop alone (rb-06, common practice, no source)", () => {
  const c = tradeCase("roman-blinds", "rb-06");
  const lining = clothFacts({ id: "ivory", type: "lining", usableWidth: length("137 cm") });
  const ask = (type: string) =>
    make(
      {
        type,
        mount: "outside",
        width: "100 cm",
        drop: cm(given(c, "finished_drop")),
        lining: "ivory",
      },
      {
        units: "centimetres",
        cloths: [PLAIN, lining],
        allowances: {
          top: "5 cm",
          bottom: cm(given(c, "top_and_bottom") - 5),
          "hobble-fullness": String(given(c, "fold_factor")),
        },
      },
    );
  const { fields, made } = ask("hobbled");
  expect(figure(made, "plainCutLengthMm", "cm")).toBe(wanted(c, "cut_length"));
  const cutOf = (from: typeof made, surface: string) =>
    inUnit(from.cuts.find((cut) => cut.surface === surface)?.height as Length, "cm");
  const flat = ask("roman").made;
  expect(cutOf(made, "face")).toBe(wanted(c, "cut_length"));
  expect(cutOf(flat, "face")).toBe(given(c, "finished_drop") + given(c, "top_and_bottom"));
  expect(cutOf(made, "lining")).toBe(cutOf(flat, "lining"));
  const words = blindSheet(fields, made, {
    units: "centimetres",
    language: "en-GB",
    cloth: () => PLAIN,
    object: () => null,
  });
  expect(words.groups.find((g) => g.heading === "Folds")?.lines[0]).toMatch(/^Hobbled: /);
});

test("inside a recess a blind goes down to 1 mm or 1/8 in, and the measure stays as typed (rb-07, rb-08, common practice, no source)", () => {
  const metric = tradeCase("roman-blinds", "rb-07");
  const a = make(
    { at: "bay" },
    {
      units: "centimetres",
      window: windowFacts(cm(given(metric, "recess_width")), "150 cm", "80 cm", "15 cm"),
      allowances: { "recess-clearance": cm(given(metric, "clearance_each_side")) },
    },
  ).made;
  expect(figure(a, "widthMm", "cm")).toBe(wanted(metric, "blind_width"));
  const c = tradeCase("roman-blinds", "rb-08");
  const typed = c.inputs.recess_width_as_typed as unknown as string;
  const window = windowFacts(typed, `60"`, `30"`, `5"`);
  const b = make(
    { at: "bay" },
    { window, allowances: { "recess-clearance": inches(given(c, "clearance_each_side")) } },
  );
  expect(figure(b.made, "widthMm", "in")).toBe(wanted(c, "blind_width"));
  expect(printMeasured(window.width, "inches").replace(/[\u202f\u00a0]/g, " ")).toBe(
    c.expected.site_measure_printed,
  );
  expect(b.made.working[0]?.rounded).toBe("down to 1/8″");
  expect(b.made.plan?.size.measured.replace(/[\u202f\u00a0]/g, " ")).toContain("48 3/16 in");
});

test("strips and whole widths join to the cut width, never with a seam in the middle", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 8000 }),
      fc.integer({ min: 900, max: 3000 }),
      fc.integer({ min: 0, max: 30 }),
      (cut, usable, join) => {
        const s = planStrips(Length.mm(cut), Length.mm(usable), Length.mm(join));
        if (s.strip === null) {
          expect(cut).toBeLessThanOrEqual(usable);
          return;
        }
        expect(s.wholes % 2).toBe(1);
        const joined = Length.mm(usable)
          .times(s.wholes)
          .plus(s.strip.times(2))
          .minus(Length.mm(join).times(2 * s.joins));
        expect(joined.equals(Length.mm(cut))).toBe(true);
        expect(s.strip.isMoreThan(Length.mm(usable))).toBe(false);
        // As many whole widths as need be and no more: with two fewer the strips would be wider than the cloth.
        if (s.wholes > 1)
          expect(s.strip.plus(Length.mm(usable - 2 * join)).isMoreThan(Length.mm(usable))).toBe(
            true,
          );
      },
    ),
    { numRuns: 200 },
  );
});

test("sections are odd and add back to the drop, whatever the drop", () => {
  fc.assert(
    fc.property(fc.integer({ min: 100, max: 4000 }), (drop) => {
      const s = chooseSections(Length.mm(drop), Length.mm(80), Length.mm(180), Length.mm(250));
      expect(s.sections % 2).toBe(1);
      expect(s.section.times(s.sections).plus(Length.mm(80)).equals(Length.mm(drop))).toBe(true);
      const topRod = s.rodHeights.at(-1);
      expect(topRod ? topRod.plus(s.topRodFromTop).equals(Length.mm(drop)) : s.sections === 1).toBe(
        true,
      );
    }),
    { numRuns: 100 },
  );
});

test("a blind never fills its recess, is never less than a step under it", () => {
  fc.assert(
    fc.property(fc.integer({ min: 16 * 12, max: 16 * 120 }), (sixteenths) => {
      const width = Length.inches(`${sixteenths}/16`);
      const window = { ...windowFacts(`60"`, `60"`, `30"`, `5"`), width };
      const size = make({ at: "bay" }, { window }).made.plan?.size.width as Length;
      const left = width.minus(size).minus(length(`1/2"`));
      expect(left.isNegative()).toBe(false);
      expect(left.isLessThan(length(`1/8"`))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test("bad inputs are diagnostics at their place", () => {
  const window = windowFacts(`48"`, `60"`, `30"`, `5"`);
  expect(codes(make({}).made)).toEqual([
    "blind-without-width at items[0].",
    "blind-without-drop at items[0].",
  ]);
  expect(codes(make({ at: "bay", width: `48 1/2"` }, { window }).made)).toEqual([
    "blind-wider-than-recess at items[0].width",
  ]);
  expect(codes(make({ at: "bay", width: `47 3/4"` }, { window }).made)).toEqual([
    "blind-without-clearance at items[0].width",
  ]);
  expect(make({ at: "bay", width: `47 1/2"` }, { window }).made.diagnostics).toEqual([]);
  expect(codes(make({ at: "bay", drop: `61"` }, { window }).made)).toEqual([
    "blind-longer-than-recess at items[0].drop",
  ]);
  expect(codes(make({ at: "bay", mount: "outside", width: `40"` }, { window }).made)).toEqual([
    "blind-narrower-than-opening at items[0].width",
  ]);
  expect(
    codes(make({ width: `40"`, drop: `60"` }, {}, { ...PLAIN, usableWidth: null }).made),
  ).toEqual(["cloth-without-width at items[0].cloth"]);
  expect(codes(make({ width: `40"`, drop: `2"` }).made)).toEqual([
    "blind-shorter-than-headrail at items[0].drop",
  ]);
  const none = make({}).made;
  expect([none.plan, none.cuts, none.figures]).toEqual([null, [], {}]);
});

test("a motif is centred where one can be, and asked about where none can", () => {
  const repeat = {
    up: length(`24"`),
    across: length(`27"`),
    match: "straight" as const,
    fromSelvedge: length(`13 1/2"`),
  };
  const narrow = make({ width: `20"`, drop: `60"` }, {}, { ...PLAIN, repeat }).made;
  const across = narrow.cuts[0]?.across;
  expect(across?.how === "motif-at" && inUnit(across.fromLeft, "in")).toBe(12);
  const broad = make({ width: `40"`, drop: `60"` }, {}, { ...PLAIN, repeat }).made;
  expect(broad.cuts[0]?.across).toEqual({ how: "free" });
  expect(
    broad.questions.some((q) => q.startsWith("No motif of Print can stand in the middle")),
  ).toBe(true);
});

test("cordless where nothing is said; cords always carry their caution and their check", () => {
  const { fields, made } = make({ width: `40"`, drop: `60"` });
  expect(made.plan?.operation).toBe("cordless");
  expect(made.cautions).toContain("cords");
  const context = {
    units: "inches",
    language: "en-GB",
    cloth: () => PLAIN,
    object: () => null,
  } as const;
  const text = (sheet: ReturnType<typeof blindSheet>) =>
    sheet.groups.flatMap((group) => group.lines).join(" ");
  expect(text(blindSheet(fields, made, context))).toContain(
    "Inner cords at the back shrouded or restrained.",
  );
  const chain = make({ width: `40"`, drop: `60"`, operation: "chain" });
  expect(text(blindSheet(chain.fields, chain.made, context))).toContain(
    "no free loop; cordless is safer",
  );
  expect(chain.made.questions.some((q) => q.startsWith("At which side is the chain"))).toBe(true);
  expect(
    blindSheet(fields, made, context).checks.some((check) => check.text.includes("no free loop")),
  ).toBe(true);
});

test("seen let down it is all of its face, raised its stack", () => {
  const { fields, made } = make({ width: `40"`, drop: `60"` });
  const area = (hung: "open" | "closed" | "half") =>
    (blindSeen(fields, made, hung)[0]?.areaMm2 ?? 0) / 25.4 ** 2;
  expect(area("closed")).toBeCloseTo(2400, 6);
  expect(area("open")).toBeCloseTo(40 * ((60 - 3) / (made.figures.sections as number) + 3), 6);
  expect(area("half")).toBeGreaterThan(area("open"));
  expect(area("half")).toBeLessThan(area("closed"));
});

test("a lining whose card gives no width is asked for, not taken to need no join", () => {
  const bare = clothFacts({ id: "ivory", type: "lining", usableWidth: null });
  const { made } = make(
    { mount: "outside", width: "200 cm", drop: "150 cm", lining: "ivory" },
    { units: "centimetres", cloths: [PLAIN, bare] },
  );
  expect(made.diagnostics.map((d) => [d.code, d.severity, d.keyPath])).toContainEqual([
    "cloth-without-width",
    "error",
    "items[0].lining",
  ]);
  expect(made.cuts.some((cut) => cut.surface === "lining")).toBe(false);
});
