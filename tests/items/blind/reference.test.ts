import { expect, test } from "vitest";
import { chooseSections, partSections } from "../../../src/items/blind/sections.ts";
import { blindSheet } from "../../../src/items/blind/sheet.ts";
import type { Length } from "../../../src/units/length.ts";
import { printMeasured } from "../../../src/units/printLength.ts";
import { clothFacts, given, inUnit, length, tradeCase, wanted } from "../tradeContext.ts";
import { windowFacts } from "../windowContext.ts";
import { cm, figure, inches, make, PLAIN } from "./madeBlind.ts";

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
  // Nothing of a plain has to run on over the joins: its strips are cut wherever there is room.
  expect(made.cuts.map((cut) => cut.across.how)).toEqual(["free", "whole-width", "free"]);
  const striped = make(
    {
      mount: "outside",
      width: cm(given(c, "cut_width") - 10),
      drop: "160 cm",
    },
    {
      units: "centimetres",
      allowances: { "side-turn": "5 cm", join: cm(given(c, "seam_each_piece")) },
    },
    {
      ...cloth,
      repeat: { up: length("20 cm"), across: null, match: "straight", fromSelvedge: null },
    },
  );
  expect(striped.made.cuts.map((cut) => cut.across)).toEqual([
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
