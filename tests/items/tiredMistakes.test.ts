import { expect, test } from "vitest";
import { cushionKind } from "../../src/items/cushion/kind.ts";
import type { ItemKind, Made } from "../../src/items/itemKind.ts";
import { ITEM_KINDS } from "../../src/items/kinds.ts";
import { lampshadeKind } from "../../src/items/lampshade/kind.ts";
import { tiebackKind } from "../../src/items/tieback/kind.ts";
import { armchairKind } from "../../src/items/upholstery/armchair/kind.ts";
import { headboardKind } from "../../src/items/upholstery/headboard/kind.ts";
import { kindHint } from "../../src/records/reading/kindCalled.ts";
import { cloth, coverlet, runner, tablecloth } from "./bedTableMade.ts";
import { contextFor, fieldsOf } from "./tradeContext.ts";

function told(kind: ItemKind, raw: Record<string, unknown>) {
  const fields = fieldsOf(kind.schema, { cloth: "print", ...raw }) as never;
  const context = contextFor(kind.allowances, { cloths: [cloth('54"')] });
  return said(kind.make(fields, context));
}
const said = (made: Pick<Made, "diagnostics">) =>
  made.diagnostics.map((d) => [
    d.severity,
    d.code,
    (d.keyPath ?? "").replace("items[0].", ""),
    d.message.replace(/\s/g, " "),
  ]);
const BED = { bed: '60" x 80" x 25"' };

test("a headboard whose depth and height have changed places is stopped at its size", () => {
  const board = { headboard: "End" };
  expect(told(headboardKind as never, { ...board, size: '62" x 30" x 3"' })).toEqual([
    [
      "error",
      "headboard-deeper-than-high",
      "size",
      "This headboard is 30″ deep and only 3″ high: size is width x depth x height.",
    ],
  ]);
  expect(told(headboardKind as never, { ...board, size: '62" x 3" x 30"' })).toEqual([]);
});

test("a strip of skirt or boxing that is higher than wide is asked about at its size", () => {
  const chair = (piece: string, size: string) =>
    told(armchairKind as never, {
      armchair: "Club",
      size: '31" x 34" x 36"',
      pieces: [{ piece, size }],
    }).filter(([, code]) => code === "strip-higher-than-wide");
  expect(chair("skirt", '7" x 24"')).toEqual([
    [
      "warning",
      "strip-higher-than-wide",
      "pieces.0.size",
      "The skirt is written 7″ wide and 24″ high: a strip that runs along the thing is wider than high.",
    ],
  ]);
  expect(chair("boxing", '4" x 48"')).toHaveLength(1);
  expect(chair("skirt", '24" x 7"')).toEqual([]);
  expect(chair("inside-back", '20" x 28"')).toEqual([]);
});

test("a shaped tie-back deeper at its ends than in its middle is asked about", () => {
  const tie = { tieback: "Left", length: '26"' };
  expect(told(tiebackKind as never, { ...tie, depth: '3"', "end-depth": '5"' })).toEqual([
    [
      "warning",
      "tieback-deep-at-ends",
      "end-depth",
      "The tie-back is 5″ deep at its ends and only 3″ in its middle.",
    ],
  ]);
  expect(told(tiebackKind as never, { ...tie, depth: '5"', "end-depth": '3"' })).toEqual([]);
});

test("a bolster thicker than it is long is asked about at its size", () => {
  const bolster = { cushion: "Long", form: "bolster" };
  expect(told(cushionKind as never, { ...bolster, size: '7" x 20"' })).toEqual([
    [
      "warning",
      "bolster-thicker-than-long",
      "size",
      "This bolster is 7″ long and 20″ thick: its size is length x diameter.",
    ],
  ]);
  expect(told(cushionKind as never, { ...bolster, size: '20" x 7"' })).toEqual([]);
});

test("a drop beside to: floor is not dropped in silence", () => {
  const both = { drop: '18"', to: "floor" };
  for (const made of [
    coverlet({ ...BED, ...both }),
    tablecloth({ table: '60" x 36" x 29"', ...both }),
  ])
    expect(said(made)).toEqual([
      ["warning", "drop-and-to", "to", "Both drop and to are written; the drop counts."],
    ]);
  expect(said(coverlet({ ...BED, to: "floor" }))).toEqual([]);
});

test("a runner that lies on nothing is told of tables as well as of beds", () => {
  const [first] = said(runner({ drop: '10"', depth: '15"' }));
  expect(first?.[3]).toBe(
    "It is not said what this runner lies on: neither the size of a bed nor of a table is known.",
  );
  expect(said(runner({ ...BED, drop: '10"', depth: '15"' }))).toEqual([]);
});

test("an empire is told of with its own article", () => {
  const shade = { lampshade: "Tall", form: "empire", size: '16" x 10"', top: '9"', slant: '12"' };
  expect(told(lampshadeKind as never, shade)[0]?.[3]).toMatch(/^An empire 16″ × 10″/);
});

test.each([
  ["loveseat", /sofa .* type: loveseat/],
  ["wing-chair", /armchair .* type: wing/],
  ["slipcovers", /armchair or sofa .* cover: loose/],
  ["carver", /dining-chair .* arms: yes/],
])("%s is told how it is written", (word, hint) => {
  expect(kindHint(word, ITEM_KINDS)).toMatch(hint);
});
