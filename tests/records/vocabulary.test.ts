import { expect, test } from "vitest";
import type { CurtainsFields } from "../../src/items/curtains/schema.ts";
import { changed, line, ROOM, read, STUDIO } from "./studio.ts";

test("a room in the other vocabulary is the same room", () => {
  const other = (STUDIO[ROOM] as string)
    .replace(
      "cloths: [fern-trellis, { slub-linen: plain }]",
      "fabrics: [fern-trellis, { slub-linen: solid }]",
    )
    .replace("curtains: Bay", "drapery: Bay")
    .replace("cloth: fern-trellis", "fabric: fern-trellis")
    .replace("heading: pinch-pleat", 'heading: grommet\n    rod: 96"')
    .replace("cushion: Window seat", "pillow: Window seat")
    .replace(
      'size: 20" x 20"',
      'size: 20" x 20"\n    edge: { piping: slub-linen }\n    closure: zipper',
    );
  const records = read({ [ROOM]: other });
  expect(records.diagnostics.map(line)).toEqual([]);
  const room = records.projects[0]?.rooms[0];
  expect(room?.fields.cloths).toEqual(["fern-trellis", { "slub-linen": "plain" }]);
  expect(room?.items.map((item) => [item.kind, item.id])).toEqual([
    ["object", "object-tiled-stove"],
    ["curtains", "curtains-bay"],
    ["cushion", "cushion-window-seat"],
  ]);
  const curtains = room?.items[1]?.fields as CurtainsFields;
  expect([curtains.cloth, curtains.heading, curtains.pole?.toMm()]).toEqual([
    "fern-trellis",
    "eyelet",
    2438.4,
  ]);
  expect(room?.items[2]?.fields).toMatchObject({ edge: { welt: "slub-linen" }, closure: "zip" });
  // Its keys are found by the format's words, where they were typed.
  expect(room?.items[1]?.place(["pole"])).toMatchObject({ line: 20, column: 5 });
});

test("a studio's makers, rates and allowances are the same in both", () => {
  const records = read({
    "studio.md": `---
studio: X
language: en-GB
units: centimeters
currency: GBP
paper: a3
mark-color: "#336655"
allowances: { drapery: { hem: 20 cm } }
makers:
  workroom: { name: The Loft, makes: [Drapery, throw pillows, roman shades], rates: { draperies: 48 per width, pillow: 30, fitting: 60 per hour } }
suppliers: { north-mill: { name: North Mill } }
---
`,
  });
  expect(records.diagnostics.map(line)).toEqual([]);
  const fields = records.studio?.fields;
  expect(fields?.units).toBe("centimetres");
  expect(fields?.["mark-colour"]).toBe("#336655");
  expect(fields?.allowances?.curtains?.hem).toMatchObject({ typed: "20 cm" });
  const maker = fields?.makers?.workroom;
  expect(maker?.makes).toEqual(["curtains", "cushion", "blind"]);
  expect(Object.keys(maker?.rates ?? {})).toEqual(["curtains", "cushion", "fitting"]);
  expect(records.studio?.place(["makers", "workroom", "rates", "curtains"])).toMatchObject({
    line: 10,
    keyPath: "makers.workroom.rates.curtains",
  });
});

test("a word of the other vocabulary is no key where its partner is none", () => {
  expect(
    read(changed(ROOM, "anchor: tiled-stove", "drapery: x")).diagnostics.map((d) => d.code),
  ).toEqual(["key-unknown"]);
});
