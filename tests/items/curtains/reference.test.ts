import { expect, test } from "vitest";
import { curtainsAllowances } from "../../../src/items/curtains/allowances.ts";
import { makeCurtains } from "../../../src/items/curtains/pieces.ts";
import { curtainsSchema } from "../../../src/items/curtains/schema.ts";
import type { ClothFacts } from "../../../src/items/itemKind.ts";
import { Length } from "../../../src/units/length.ts";
import { clothFacts, fieldsOf, given, inUnit, length, tradeCase, wanted } from "../tradeContext.ts";
import { hangingContext, type WindowAsk } from "../windowContext.ts";

const inches = (n: number | string) => `${n}"`;
const cm = (n: number | string) => `${n} cm`;
const NOTHING = {
  heading: `0"`,
  hem: `0"`,
  "side-hem": `0"`,
  join: `0"`,
  return: `0"`,
  overlap: `0"`,
};

function cloth(
  width: string,
  up: string | null = null,
  match: "straight" | "half-drop" = "straight",
): ClothFacts {
  return clothFacts({
    id: "print",
    usableWidth: length(width),
    repeat: up ? { up: length(up), across: null, match, fromSelvedge: null } : null,
  });
}

function make(raw: Record<string, unknown>, print: ClothFacts, ask: WindowAsk = {}) {
  const fields = fieldsOf(curtainsSchema, {
    curtains: "Bay",
    cloth: "print",
    heading: "pinch-pleat",
    pole: `96"`,
    drop: `92"`,
    ...raw,
  });
  return makeCurtains(fields, hangingContext(curtainsAllowances, { cloths: [print], ...ask }));
}
const figure = (made: ReturnType<typeof make>, name: string, unit: "in" | "cm") =>
  inUnit(Length.mm((made.figures[name] as number).toFixed(6)), unit);

test("cut lengths go up to whole repeats (curt-01 trade newsletter 2011; curt-02 magazine how-to; curt-03 weblog)", () => {
  const one = tradeCase("curtains", "curt-01");
  const hung = make(
    { drop: inches(given(one, "finished_length")) },
    cloth(`54"`, inches(given(one, "vertical_repeat"))),
    { allowances: { heading: `8"`, hem: inches(given(one, "heading_and_hem") - 8) } },
  );
  expect(figure(hung, "plainCutLengthMm", "in")).toBe(wanted(one, "cut_length_plain"));
  expect(figure(hung, "cutLengthMm", "in")).toBe(wanted(one, "cut_length_repeat"));
  expect(figure(hung, "wastePerCutMm", "in")).toBe(wanted(one, "waste_per_cut"));

  const two = tradeCase("curtains", "curt-02");
  const needed = make(
    { drop: inches(given(two, "needed_length")) },
    cloth(`54"`, inches(given(two, "vertical_repeat"))),
    { allowances: NOTHING },
  );
  expect(needed.figures.repeats).toBe(wanted(two, "repeats"));
  expect(figure(needed, "cutLengthMm", "in")).toBe(wanted(two, "cut_length"));
  expect(figure(needed, "wastePerCutMm", "in")).toBe(wanted(two, "waste_per_cut"));

  const three = tradeCase("curtains", "curt-03");
  const third = make(
    { drop: inches(given(three, "cut_length_plain")) },
    cloth(`54"`, inches(given(three, "vertical_repeat"))),
    { allowances: NOTHING },
  );
  expect(third.figures.repeats).toBe(wanted(three, "repeats"));
  // The 130 in is the reference's own product; the page stops at the count of repeats.
  expect(figure(third, "cutLengthMm", "in")).toBe(wanted(three, "cut_length"));
});

test("widths and yards with the returns added flat (curt-04, how-to article; it prints 4.1 for 4.1667)", () => {
  const c = tradeCase("curtains", "curt-04");
  const made = make(
    {
      pole: inches(given(c, "covered_width")),
      drop: inches(given(c, "finished_length")),
      fullness: String(given(c, "fullness")),
      panels: "single",
    },
    cloth(inches(given(c, "fabric_width"))),
    {
      allowances: {
        ...NOTHING,
        return: inches(given(c, "returns_total") / 2),
        "side-hem": inches(given(c, "side_hems_total") / 2),
        heading: inches(given(c, "hem_and_heading")),
        "returns-in-fullness": "0",
      },
    },
  );
  expect(figure(made, "flatWidthMm", "in")).toBe(wanted(c, "flat_width"));
  expect(made.figures.widths).toBe(wanted(c, "widths"));
  expect(figure(made, "cutLengthMm", "in")).toBe(wanted(c, "cut_length"));
  const total = made.handbook[0]?.length as Length;
  expect(inUnit(total, "in")).toBe(wanted(c, "total"));
  expect(inUnit(total, "yd")).toBeCloseTo(wanted(c, "yards"), 2);
});

test("track times fullness over the cloth (curt-05, curt-06, how-to articles: no returns, hems or joins)", () => {
  const c = tradeCase("curtains", "curt-05");
  const made = make(
    {
      pole: inches(given(c, "track")),
      drop: inches(given(c, "drop")),
      fullness: String(given(c, "fullness")),
      panels: "single",
    },
    cloth(inches(given(c, "fabric_width"))),
    { allowances: { ...NOTHING, heading: inches(given(c, "hem_and_heading")) } },
  );
  expect(figure(made, "flatWidthMm", "in")).toBe(wanted(c, "flat_width"));
  expect(made.figures.widths).toBe(wanted(c, "widths"));
  expect(inUnit(made.handbook[0]?.length as Length, "yd")).toBe(wanted(c, "yards"));

  const d = tradeCase("curtains", "curt-06");
  const other = make(
    {
      pole: inches(given(d, "finished_width")),
      fullness: String(given(d, "fullness")),
      panels: "single",
    },
    cloth(inches(given(d, "fabric_width"))),
    { allowances: NOTHING },
  );
  expect(other.figures.widths).toBe(wanted(d, "widths"));
});

test("pleats take up what is flat and not finished (curt-07, instruction booklet)", () => {
  const c = tradeCase("curtains", "curt-07");
  const flat = given(c, "flat_panel_after_side_hems");
  // One width of cloth that gives just this panel; spaces as wide as the booklet's thirteen pleats leave them.
  const made = make(
    {
      pole: inches(2 * given(c, "half_coverage")),
      return: inches(given(c, "return")),
      overlap: inches(2 * given(c, "centre_overlap")),
      fullness: "2.5",
      "half-widths": "no",
    },
    cloth(inches(flat + 4)),
    { allowances: { ...NOTHING, "side-hem": `2"`, "pleat-space": `4 1/8"` } },
  );
  expect(figure(made, "finishedPanelMm", "in")).toBe(wanted(c, "finished_panel"));
  expect(figure(made, "flatPanelMm", "in") - figure(made, "finishedPanelMm", "in")).toBe(
    wanted(c, "fabric_for_pleats"),
  );
  expect(made.figures.pleats).toBe(wanted(c, "pleats"));
  expect(figure(made, "takeUpMm", "in")).toBeCloseTo(given(c, "takeup_per_pleat"), 6);
});

test("a window's height and its turnings, one or two cuts a panel (curt-09, how-to article; it rounds 4.556 yd down to 4.5, a buying figure goes up)", () => {
  const c = tradeCase("curtains", "curt-09");
  const raw = {
    drop: inches(given(c, "window_height")),
    "heading-turn": inches(given(c, "top")),
    hem: inches(given(c, "bottom")),
    fullness: "1",
  };
  const narrow = make({ ...raw, pole: `80"` }, cloth(inches(given(c, "fabric_width"))), {
    allowances: NOTHING,
  });
  expect(figure(narrow, "cutLengthMm", "in")).toBe(wanted(c, "cut_length"));
  expect(inUnit(narrow.handbook[0]?.length as Length, "in")).toBe(wanted(c, "one_cut_each"));
  expect(inUnit(narrow.handbook[0]?.length as Length, "yd")).toBeCloseTo(4.5556, 4);
  const wide = make(
    { ...raw, pole: inches(2 * given(c, "panel_width")), "half-widths": "no" },
    cloth(inches(given(c, "fabric_width"))),
    { allowances: NOTHING },
  );
  expect(wide.figures.widthsPerCurtain).toBe(wanted(c, "cuts_per_panel"));
});

test("usual allowances lie inside the published tables (curt-10 and curt-12 historic; curt-13 how-to article 2013)", () => {
  const modern = tradeCase("curtains", "curt-13");
  const usual = (name: keyof typeof curtainsAllowances) =>
    inUnit(length(curtainsAllowances[name].usual.inches), "in");
  expect(2 * usual("join")).toBe(wanted(modern, "join_allowance"));
  expect(usual("floor-clearance")).toBe(wanted(modern, "floor_clearance"));
  expect(2 * usual("lining-in")).toBe(wanted(modern, "lining_narrower_by"));
  const [least, most] = wanted(modern, "lining_shorter_by") as unknown as [number, number];
  expect(usual("lining-up")).toBeGreaterThanOrEqual(least);
  expect(usual("lining-up")).toBeLessThanOrEqual(most);
  const fullness = modern.expected.fullness as unknown as { value: [number, number] };
  for (const heading of ["fullness-pinch-pleat", "fullness-pencil-pleat"] as const) {
    expect(Number(curtainsAllowances[heading].usual.inches)).toBeGreaterThanOrEqual(
      fullness.value[0],
    );
    expect(Number(curtainsAllowances[heading].usual.inches)).toBeLessThanOrEqual(fullness.value[1]);
  }
});

test("half widths join at the outer side (curt-11, Papers Past EG19350524.2.6.2, 1935)", () => {
  const c = tradeCase("curtains", "curt-11");
  const made = make({ pole: `60"`, fullness: "2" }, cloth(`54"`));
  expect(made.figures.widthsPerCurtain).toBe(given(c, "widths_per_curtain"));
  const face = made.cuts
    .filter((cut) => cut.surface === "face")
    .map((cut) => [cut.piece, cut.across]);
  expect(face).toEqual([
    ["left curtain, half width 1 of 2 from its left", { how: "selvedge", side: "right" }],
    ["left curtain, width 2 of 2 from its left", { how: "whole-width" }],
    ["right curtain, width 1 of 2 from its left", { how: "whole-width" }],
    ["right curtain, half width 2 of 2 from its left", { how: "selvedge", side: "left" }],
  ]);
});

test("shrinkage lengthens the cut by at least what it loses (curt-14, USDA Bureau of Home Economics: 2 in more)", () => {
  const c = tradeCase("curtains", "curt-14");
  const extra = wanted(c, "extra_for_shrinkage");
  const made = make({ drop: `95"` }, cloth(`54"`), {
    allowances: {
      ...NOTHING,
      heading: inches(wanted(c, "heading")),
      hem: inches(2 * wanted(c, "bottom_double_hem")),
      shrinkage: "2 %",
    },
  });
  const plain = 95 + wanted(c, "heading") + 2 * wanted(c, "bottom_double_hem");
  expect(figure(made, "plainCutLengthMm", "in")).toBeGreaterThanOrEqual(plain + extra);
  // Of what is cut, two in a hundred go; what is left is the plain cut, within the workroom's eighth.
  expect(figure(made, "plainCutLengthMm", "in") * 0.98 - plain).toBeGreaterThanOrEqual(0);
  expect(figure(made, "plainCutLengthMm", "in") * 0.98 - plain).toBeLessThan(0.125);
});

test("eyelets are even in number (curt-16, how-to article)", () => {
  const c = tradeCase("curtains", "curt-16");
  const made = make(
    { pole: inches(given(c, "panel_width")), fullness: "1", heading: "eyelet", panels: "single" },
    cloth(inches(given(c, "panel_width"))),
    { allowances: NOTHING },
  );
  expect(figure(made, "flatPanelMm", "in")).toBe(given(c, "panel_width"));
  expect(made.figures.eyelets).toBe(wanted(c, "eyelets"));
});

test("a metric pair with half widths (curt-17, common practice, no source)", () => {
  const c = tradeCase("curtains", "curt-17");
  const made = make(
    {
      pole: cm(given(c, "track")),
      drop: cm(given(c, "drop")),
      fullness: String(given(c, "fullness")),
      return: cm(given(c, "returns_total") / 2),
      overlap: cm(given(c, "overlap_total")),
      hem: cm(given(c, "hem")),
      "heading-turn": cm(given(c, "heading")),
    },
    cloth(cm(given(c, "usable_fabric_width")), cm(given(c, "vertical_repeat"))),
    {
      units: "centimetres",
      allowances: {
        "side-hem": cm(given(c, "side_hems_total") / 4),
        join: cm(given(c, "join_allowance_each_piece")),
      },
    },
  );
  expect(figure(made, "flatWidthMm", "cm")).toBe(wanted(c, "flat_width"));
  expect(made.figures.widths).toBe(wanted(c, "widths"));
  expect(made.figures.widthsPerCurtain).toBe(wanted(c, "widths_per_curtain"));
  expect(figure(made, "cutLengthMm", "cm")).toBe(wanted(c, "cut_length"));
  expect(figure(made, "joinedWidthMm", "cm")).toBe(673);
  expect(made.figures.fullnessReached).toBeCloseTo(2.47, 2);
  expect(inUnit(made.handbook[0]?.length as Length, "m")).toBe(wanted(c, "total"));
});

test("the simple half-drop rule adds half a repeat for every second cut (curt-18, common practice, no source)", () => {
  const c = tradeCase("curtains", "curt-18");
  const made = make(
    { pole: "240 cm", fullness: "2.25", drop: cm(given(c, "cut_length_plain")) },
    cloth("137 cm", cm(given(c, "vertical_repeat")), "half-drop"),
    {
      units: "centimetres",
      allowances: {
        ...NOTHING,
        return: "8 cm",
        overlap: "10 cm",
        "side-hem": "4 cm",
        join: "1.5 cm",
      },
    },
  );
  expect(made.figures.widths).toBe(given(c, "cuts"));
  expect(figure(made, "cutLengthMm", "cm")).toBe(wanted(c, "cut_each"));
  expect(inUnit(made.handbook[0]?.length as Length, "cm")).toBe(wanted(c, "total_simple_rule"));
});

test("a wide cloth runs sideways without joins (curt-19, common practice, no source)", () => {
  const c = tradeCase("curtains", "curt-19");
  const made = make(
    {
      pole: cm(given(c, "coverage")),
      fullness: String(given(c, "fullness")),
      drop: cm(given(c, "drop")),
      railroad: "yes",
      heading: "pencil-pleat",
    },
    cloth(cm(given(c, "fabric_width"))),
    {
      units: "centimetres",
      allowances: {
        ...NOTHING,
        heading: cm(given(c, "heading_and_hem")),
        "side-hem": cm(given(c, "side_hems_total") / 4),
      },
    },
  );
  expect(inUnit(made.handbook[0]?.length as Length, "m")).toBe(wanted(c, "length_to_buy"));
  expect(made.cuts.map((cut) => [inUnit(cut.width, "cm"), inUnit(cut.height, "cm")])).toEqual([
    [278, 370],
    [278, 370],
  ]);
});

test("the lining finishes 3 cm in and up (curt-21, common practice, no source)", () => {
  const c = tradeCase("curtains", "curt-21");
  const lining = clothFacts({ id: "ivory", type: "lining", usableWidth: length("137 cm") });
  // One width of 218 cm, less 4 cm at each side, is a panel of 210 cm.
  const wide = cloth(cm(given(c, "face_finished_width") + 8));
  const made = make(
    { drop: cm(given(c, "face_finished_length")), pole: "180 cm", fullness: "2", lining: "ivory" },
    wide,
    {
      units: "centimetres",
      cloths: [wide, lining],
    },
  );
  expect(figure(made, "flatPanelMm", "cm")).toBe(given(c, "face_finished_width"));
  expect(figure(made, "liningWidthMm", "cm")).toBe(wanted(c, "lining_finished_width"));
  expect(figure(made, "liningLengthMm", "cm")).toBe(wanted(c, "lining_finished_length"));
});

test("drawn back, curtains take a quarter to a third of what they cover (curt-22, common practice, no source)", () => {
  const c = tradeCase("curtains", "curt-22");
  const [low, high] = wanted(c, "stack_total") as unknown as [number, number];
  const made = make({ pole: cm(given(c, "covered_width")) }, cloth("137 cm"), {
    units: "centimetres",
  });
  expect(figure(made, "stackMm", "cm")).toBeGreaterThanOrEqual(low);
  expect(figure(made, "stackMm", "cm")).toBeLessThanOrEqual(high);
});

test("goblets stand a markable eighth apart, half a space at each end (curt-08, Goblet pleats, curtain-making notes)", () => {
  const c = tradeCase("curtains", "curt-08");
  const made = make(
    {
      heading: "goblet",
      pole: inches(given(c, "finished_width")),
      panels: "single",
      pleats: String(given(c, "pleats")),
      fullness: "2",
    },
    cloth(`108"`),
    { allowances: NOTHING },
  );
  expect(figure(made, "facePanelMm", "in")).toBe(given(c, "finished_width"));
  expect(figure(made, "spaceMm", "in")).toBe(wanted(c, "space_rounded"));
  expect(figure(made, "leftOverMm", "in")).toBe(wanted(c, "width_lost"));
  const heading = made.plan?.heading;
  if (heading?.heading !== "goblet") throw new Error("no goblets");
  // Two ends and the spaces between make the whole front again: nothing is lost in the making.
  expect(inUnit(heading.end.times(2).plus(heading.space.times(heading.pleats - 1)), "in")).toBe(50);
});

test("an s-fold hangs from an even number of carriers (curt-20, common practice, no source)", () => {
  const c = tradeCase("curtains", "curt-20");
  const made = make({ heading: "s-fold", pole: cm(given(c, "track")) }, cloth("137 cm"), {
    units: "centimetres",
    allowances: {
      "carrier-spacing": cm(given(c, "carrier_spacing")),
      "cloth-per-carrier": cm(given(c, "cloth_per_carrier")),
    },
  });
  expect(made.figures.curtains).toBe(given(c, "panels"));
  expect(made.figures.carriers).toBe(wanted(c, "carriers_per_panel"));
  expect(figure(made, "flatPanelMm", "cm")).toBe(wanted(c, "flat_per_panel_before_side_hems"));
  // The widths bought reach it with their side hems, and what is over is trimmed.
  expect(made.plan?.trimmed.isNegative()).toBe(false);
});
test("hem and heading together are no less than the turnings of long curtains (curt-10, Papers Past EG19350517.2.7.2, 1935)", () => {
  const long = wanted(tradeCase("curtains", "curt-10"), "long_curtains");
  const usual = (name: "hem" | "heading") =>
    inUnit(length(curtainsAllowances[name].usual.inches), "in");
  expect(usual("hem") + usual("heading")).toBeGreaterThanOrEqual(long);
});

test("joins can tip the count of widths: 820 cm is 5.99 of 137, yet takes seven (trade note, section 3; common practice, no source)", () => {
  const made = make({ pole: "820 cm", fullness: "1", panels: "single" }, cloth("137 cm"), {
    units: "centimetres",
    allowances: { ...NOTHING, join: "1.5 cm" },
  });
  expect(made.figures.widths).toBe(7);
  expect(figure(made, "joinedWidthMm", "cm")).toBe(7 * 137 - 6 * 3);
});

// Common practice, no source: an inch and a half of flat width is not worth a width of cloth and of every lining without being asked.
test("widths that come out much fuller than is wanted are asked about, with what one less gives", () => {
  const ask = { heading: "slot", pole: `57 1/2"`, "half-widths": "no" };
  const fuller = (raw: Record<string, unknown>, width: string) =>
    make({ ...ask, ...raw }, cloth(width)).questions.filter((q) => q.includes("so full"));
  // 57 1/2 ÷ 2 = 28 3/4" finished, 61 1/2" flat; two widths of 60" give 119 - 4 = 115", one gives 56".
  expect(fuller({}, `60"`)).toEqual([
    "At 2 widths a curtain the fullness is 4, where 2 is wanted, and every layer behind it follows. With 1 it is 1.95. Is it to be so full, or cut down to the flat width after joining?",
  ]);
  expect(fuller({}, `62"`)).toEqual([]);
  expect(fuller({ railroad: "yes", drop: `30"` }, `60"`)).toEqual([]);
  expect(fuller({ heading: "s-fold" }, `60"`)).toEqual([]);
});
