import { expect, test } from "vitest";
import { roomQuantities } from "../../src/quantities/projectQuantities.ts";
import { quantitiesText } from "../../src/quantities/text/quantitiesText.ts";
import { quantitiesJson } from "../../src/quantities/text/toJson.ts";
import { CLOTHS, CUSHION, cloths, room } from "./smallRooms.ts";
import { quantitiesOf, STUDIO_CM, STUDIO_INCHES } from "./studioOf.ts";

test("a cloth is planned by maker: two makers, two plans; one maker over two rooms, one plan", () => {
  const studio = `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [cushion, curtains] }, berta: { name: Berta, makes: [cushion] } }`;
  const both = cloths({
    studio,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One")), b: room(CUSHION("Two")) },
  });
  expect(both.map((c) => [c.cloth, c.maker, c.plan.pieces.length])).toEqual([["fern", "anna", 8]]);
  const parted = cloths({
    studio,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One")), b: room(`${CUSHION("Two")}    maker: berta\n`) },
  });
  expect(parted.map((c) => [c.maker, c.plan.pieces.length])).toEqual([
    ["anna", 4],
    ["berta", 4],
  ]);
});

test("a room is a filter of its project's plan", () => {
  const whole = quantitiesOf({
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One")), b: room(CUSHION("Two", 3)) },
  });
  const only = roomQuantities(whole, "b");
  const fern = only.cloths[0];
  expect(fern?.plan.length.equals(whole.cloths[0]?.plan.length as never)).toBe(true);
  expect(fern?.buy.text).toBe(whole.cloths[0]?.buy.text);
  expect(fern?.plan.pieces).toEqual(whole.cloths[0]?.plan.pieces.filter((p) => p.room === "b"));
  expect(fern?.plan.pieces).toHaveLength(6);
  expect(only.items.map((i) => i.item)).toEqual(["cushion-two"]);
  expect(only.materials.every((m) => m.room === "b")).toBe(true);
  expect(Object.keys(quantitiesJson(only) as object)).toEqual(
    Object.keys(quantitiesJson(whole) as object),
  );
});

test("usual values that were taken are listed with their source; what was said is not", () => {
  const [silent] = cloths({ cloths: CLOTHS, rooms: { a: room(CUSHION("One")) } });
  const seam = silent?.defaultsUsed.find((d) => d.what.startsWith("seam"));
  expect(seam).toMatchObject({ item: "cushion-one", value: "1.5\u202fcm" });
  expect(seam?.source).toContain("common practice, no source");
  // The card does not say where the first motif stands.
  expect(
    silent?.defaultsUsed.some((d) => d.item === null && d.what.startsWith("from-selvedge")),
  ).toBe(true);
  const [said] = cloths({
    studio: `${STUDIO_CM}\nallowances: { cushion: { seam: 2 cm } }`,
    cloths: {
      fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight, from-selvedge: 30 cm }`,
    },
    rooms: { a: room(CUSHION("One")) },
  });
  expect(
    said?.defaultsUsed.some((d) => d.what.startsWith("seam") || d.what.startsWith("from-selvedge")),
  ).toBe(false);
  expect(said?.plan.pieces[0]?.widthMm).toBe(540);
});

test("an allowance is looked for at the item, its maker, the studio, then the usual", () => {
  const hem = (studio: string, item = "") => {
    const q = quantitiesOf({
      studio,
      cloths: CLOTHS,
      rooms: {
        a: room(
          `  - curtains: Bay\n    cloth: plain\n    pole: 2 m\n    drop: 2 m\n    heading: pencil-pleat\n${item}`,
        ),
      },
    });
    return q.items[0]?.made.figures.plainCutLengthMm as number;
  };
  const makers = (hem: string) => `makers: { anna: { name: Anna, makes: [curtains]${hem} } }`;
  const usual = hem(STUDIO_CM);
  const heading = usual - 2000 - 200;
  expect(hem(`${STUDIO_CM}\nallowances: { curtains: { hem: 12 cm } }`)).toBe(2000 + 120 + heading);
  expect(
    hem(
      `${STUDIO_CM}\nallowances: { curtains: { hem: 12 cm } }\n${makers(", allowances: { curtains: { hem: 14 cm } }")}`,
    ),
  ).toBe(2000 + 140 + heading);
  expect(
    hem(
      `${STUDIO_CM}\nallowances: { curtains: { hem: 12 cm } }\n${makers(", allowances: { curtains: { hem: 14 cm } }")}`,
      "    hem: 16 cm\n",
    ),
  ).toBe(2000 + 160 + heading);
});

test("a cloth on which an item cannot be planned says what to add, and the rest goes on", () => {
  const q = quantitiesOf({
    cloths: { ...CLOTHS, bare: "cloth: Bare" },
    rooms: { a: room(CUSHION("One", 1, "bare") + CUSHION("Two")) },
  });
  const found = q.diagnostics.filter((d) => d.code === "cloth-without-width");
  expect(found).toHaveLength(1);
  expect(found[0]).toMatchObject({
    file: "projects/test/a.md",
    keyPath: "items[0].cloth",
    line: 5,
  });
  expect(found[0]?.hint).toContain("cloths/bare.md");
  expect(q.cloths.map((c) => c.cloth)).toEqual(["fern"]);
});

test("a piece that no plan can place is named with the widest that would do, and the others are planned", () => {
  const q = quantitiesOf({
    cloths: {
      fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }`,
    },
    rooms: {
      a: room(`  - cushion: Long\n    cloth: fern\n    size: 150 cm x 50 cm\n${CUSHION("Two")}`),
    },
  });
  const errors = q.diagnostics.filter((d) => d.severity === "error");
  expect(errors.length).toBeGreaterThan(0);
  expect(errors.every((d) => d.keyPath?.startsWith("items[0]"))).toBe(true);
  expect(q.cloths[0]?.plan.pieces.every((p) => p.item === "cushion-two")).toBe(true);
  expect(q.cloths[0]?.plan.pieces).toHaveLength(4);
  expect(q.cloths[0]?.plan.notForCutting.join(" ")).toContain("left out");
});

test.each([
  ["a quarter yard", `price: { trade: 10, per: yard }`, STUDIO_INCHES, 228.6],
  ["a tenth of a metre", `price: { trade: 10, per: metre }`, STUDIO_CM, 100],
  ["by the metre in a studio of inches", `price: { trade: 10, per: metre }`, STUDIO_INCHES, 100],
  ["as the card says", `price: { trade: 10, per: metre, sold-by: 50 cm }`, STUDIO_CM, 500],
])("bought up to the step in which it is sold: %s", (_, price, studio, step) => {
  const [fern] = cloths({
    studio,
    cloths: { fern: `${CLOTHS.fern}\n${price}` },
    rooms: { a: room(CUSHION("One")) },
  });
  const need = (fern?.plan.lengthMm ?? 0) + (fern?.spareMm ?? 0);
  const bought = fern?.buy.lengthMm ?? 0;
  expect(bought).toBeGreaterThanOrEqual(need);
  expect(bought - need).toBeLessThan(step);
  expect(Math.abs(bought / step - Math.round(bought / step))).toBeLessThan(1e-9);
});

test("no less than the supplier's minimum", () => {
  const [plain] = cloths({
    cloths: { plain: `${CLOTHS.plain}\nprice: { trade: 10, per: metre, minimum: 2 m }` },
    rooms: { a: room(CUSHION("One", 1, "plain")) },
  });
  expect(plain?.plan.lengthMm).toBe(530);
  expect(plain?.buy).toMatchObject({ amount: 2, unit: "metre" });
});

test("what is there and stays is not bought; a chair that stays is re-covered", () => {
  const curtains = `  - curtains: Bay\n    cloth: fern\n    pole: 2 m\n    drop: 2 m\n    heading: pencil-pleat\n    existing: yes\n`;
  const chair = `  - armchair: Carver\n    cloth: plain\n    size: 80 cm x 85 cm x 90 cm\n    existing: yes\n    pieces: [{ piece: seat, size: 60 cm x 60 cm }]\n`;
  const q = quantitiesOf({ cloths: CLOTHS, rooms: { a: room(curtains + chair) } });
  expect(q.cloths.map((c) => c.cloth)).toEqual(["plain"]);
  expect(q.materials.filter((m) => m.item === "curtains-bay")).toEqual([]);
  expect(q.items.map((i) => [i.item, Object.keys(i.made.makingCounts).length > 0])).toEqual([
    ["curtains-bay", false],
    ["armchair-carver", true],
  ]);
  // It is still seen, and drawn from its sizes.
  expect(q.rooms[0]?.items[0]?.seen.length).toBeGreaterThan(0);
  expect(q.items[0]?.made.figures.widths).toBeGreaterThan(0);
});

test("the client's own cloth is planned and marked", () => {
  const q = quantitiesOf({
    cloths: CLOTHS,
    rooms: { a: room(`${CUSHION("One")}    owner: client\n${CUSHION("Two", 1, "plain")}`) },
  });
  expect(q.cloths.map((c) => [c.cloth, c.clientsOwn])).toEqual([
    ["fern", true],
    ["plain", false],
  ]);
  expect(quantitiesText(q, "centimetres", "en-US")).toContain(
    "(the client's own: not to be ordered)",
  );
});

test("one card that is partly the client's own and partly bought is refused: it would be planned and bought as one", () => {
  const of = (second: string) =>
    quantitiesOf({
      studio: `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [cushion] }, berta: { name: Berta, makes: [cushion] } }`,
      cloths: CLOTHS,
      rooms: { a: room(`${CUSHION("One")}    owner: client\n${CUSHION("Two")}${second}`) },
    }).diagnostics.filter((d) => d.code === "owned-in-part");
  expect(of("")).toMatchObject([{ severity: "error", keyPath: "items[0].owner" }]);
  expect(of("    owner: client\n")).toEqual([]);
  // Another maker cuts from another piece.
  expect(of("    maker: berta\n")).toEqual([]);
});

test("the JSON of a small project", async () => {
  const q = quantitiesOf({
    studio: `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [cushion] } }`,
    cloths: CLOTHS,
    rooms: { a: room(`${CUSHION("One", 1)}    back: plain\n`) },
  });
  await expect(`${JSON.stringify(quantitiesJson(q), null, 2)}\n`).toMatchFileSnapshot("small.json");
});

test("items of one name in two rooms are told apart by their rooms; else the name is enough", () => {
  const text = (rooms: Record<string, string>) =>
    quantitiesText(quantitiesOf({ cloths: CLOTHS, rooms }), "centimetres", "en-US");
  const one = room(CUSHION("One"));
  const both = text({ a: one, b: one.replace("room: A", "room: B") });
  for (const id of ["a", "b"]) {
    expect(both).toContain(`  ${id.toUpperCase()}: One, pillow: face`);
    expect(both).toContain(`(${id}/cushion-one)`);
  }
  expect(text({ a: one })).toContain("  One, pillow: face");
});

test("the text can be followed with a pencil: the sum of its lines is what is bought", () => {
  const text = quantitiesText(
    quantitiesOf({ cloths: CLOTHS, rooms: { a: room(CUSHION("One")) } }),
    "centimetres",
    "en-US",
  ).replace(/\u202f/g, " ");
  const found = /To buy: ([\d.]+) cm \+ ([\d.]+) cm = ([\d.]+) cm, [\d.]+ m → ([\d.]+) m/.exec(
    text,
  );
  const [plan, spare, sum, buy] = (found ?? []).slice(1).map(Number) as [
    number,
    number,
    number,
    number,
  ];
  expect(plan + spare).toBeCloseTo(sum, 9);
  expect(buy * 100).toBeGreaterThanOrEqual(sum);
  expect(buy * 100 - sum).toBeLessThan(10);
  expect(text).toContain("NOT FOR CUTTING");
});

test("a usual value that nothing was made by is not told as used", () => {
  const used = (items: string) => {
    const q = quantitiesOf({
      studio: STUDIO_CM,
      cloths: { moss: "cloth: Moss\nwidth: 137 cm\nkind: plain" },
      rooms: { a: `room: A\nitems:\n${items}` },
    });
    return q.items.flatMap((item) => item.defaultsUsed.map(({ what }) => what.split(":")[0]));
  };
  const skirt = (style: string) =>
    used(
      `  - bed-skirt: Bed\n    cloth: moss\n    bed: 150 cm x 200 cm x 60 cm\n    drop: 35 cm\n    style: ${style}`,
    );
  expect(skirt("gathered")).toContain("fullness");
  expect(skirt("tailored")).not.toContain("fullness");
  const headboard = (more: string) =>
    used(`  - headboard: Bed\n    cloth: moss\n    size: 150 cm x 6 cm x 70 cm\n${more}`);
  expect(headboard("    border: 8 cm")).toContain("seam");
  expect(headboard("")).not.toContain("seam");
});
