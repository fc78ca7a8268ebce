import { expect, test } from "vitest";
import { roomQuantities } from "../../src/quantities/projectQuantities.ts";
import { quantitiesText } from "../../src/quantities/quantitiesText.ts";
import { quantitiesJson } from "../../src/quantities/toJson.ts";
import { type ClothJson, checkPlan } from "./checkPlan.ts";
import { PROJECT, quantitiesOf, type SmallStudio, STUDIO_CM, STUDIO_INCHES } from "./studioOf.ts";

const CLOTHS = {
  fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }`,
  plain: `cloth: Plain\nwidth: 140 cm\nkind: plain`,
};
const CUSHION = (title: string, count = 2, cloth = "fern") =>
  `  - cushion: ${title}\n    cloth: ${cloth}\n    count: ${count}\n    size: 50 cm x 50 cm\n`;
const room = (items: string, more = "") => `room: A\n${more}items:\n${items}`;
const MEASURED = "measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }\n";
const cloths = (small: SmallStudio) =>
  (quantitiesJson(quantitiesOf(small)) as unknown as { cloths: ClothJson[] }).cloths;

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

test("not for cutting until the measures are checked and the cloth has arrived", () => {
  const received = `${PROJECT}\nreceipts: [{ cloth: fern, lot: 0123, length: 5 m, width: 137 cm }]`;
  const plan = (more: string, project = PROJECT) =>
    cloths({ project, cloths: CLOTHS, rooms: { a: room(CUSHION("One"), more) } })[0];
  expect(plan("")?.plan).toMatchObject({ forCutting: false });
  expect(plan("")?.plan.notForCutting).toHaveLength(2);
  expect(plan(MEASURED)?.plan.notForCutting).toEqual([
    "The cloth has not been received and checked.",
  ]);
  expect(plan("", received)?.plan.forCutting).toBe(false);
  expect(plan("measured: { by: studio, on: 2026-10-02 }\n", received)?.plan.forCutting).toBe(false);
  const ready = plan(MEASURED, received);
  expect(ready?.plan).toMatchObject({ forCutting: true, notForCutting: [] });
  expect(ready?.lot).toBe("0123");
});

test("what arrived is planned on as it is: narrower, with its flaws, with a repeat kept for the pattern's start", () => {
  const project = `${PROJECT}\nreceipts: [{ cloth: plain, lot: A, length: 2 m, width: 120 cm, flaws: [{ from: 30 cm, length: 5 cm }] }]`;
  const q = quantitiesOf({
    project,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One", 2, "plain"), MEASURED) },
  });
  expect(q.diagnostics.map((d) => d.code)).toContain("arrived-narrower");
  const cloth = q.cloths[0];
  expect(cloth?.usableWidth.toMm()).toBe(1200);
  for (const piece of cloth?.plan.pieces ?? []) {
    const clear = piece.y.toMm() + piece.height.toMm() <= 300 || piece.y.toMm() >= 350;
    expect(clear, `${piece.y.toMm()}`).toBe(true);
  }
});

test("too little of any one lot is said, and the plan stays as ordered", () => {
  const project = `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 1 m }, { cloth: fern, lot: B, length: 1 m }]`;
  const q = quantitiesOf({
    project,
    cloths: CLOTHS,
    rooms: { a: room(CUSHION("One", 4), MEASURED) },
  });
  const found = q.diagnostics.find((d) => d.code === "received-not-enough");
  expect(found).toMatchObject({ severity: "warning", file: "projects/test/project.md" });
  expect(found?.message).toContain("lot A");
  expect(q.cloths[0]).toMatchObject({ lot: null });
  expect(q.cloths[0]?.plan.forCutting).toBe(false);
});

test("an estimate is a length on top, marked, and never for cutting", () => {
  const chair = `  - armchair: Carver\n    cloth: fern\n    type: club\n    size: 80 cm x 85 cm x 90 cm\n`;
  const q = quantitiesOf({ cloths: CLOTHS, rooms: { a: room(CUSHION("One") + chair, MEASURED) } });
  const fern = q.cloths[0];
  expect(fern?.estimates.map((e) => e.item)).toEqual(["armchair-carver"]);
  expect(fern?.plan.pieces.every((p) => p.item === "cushion-one")).toBe(true);
  const need =
    (fern?.plan.length.toMm() ?? 0) +
    (fern?.spare.toMm() ?? 0) +
    (fern?.estimates[0]?.length.toMm() ?? 0);
  expect(fern?.buy.length.toMm()).toBeGreaterThanOrEqual(need);
  expect(fern?.buy.length.toMm()).toBeLessThan(need + 100);
  expect(fern?.plan.notForCutting.join(" ")).toContain("estimated");
  expect(quantitiesText(q, "centimetres")).toContain("ESTIMATE armchair-carver");
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

test("a bolt's length splits the plan; each length keeps a repeat for its start", () => {
  const [fern] = cloths({
    cloths: {
      fern: `${CLOTHS.fern}\nprice: { trade: 10, per: metre, bolt: { length: 4 m, trade: 8 } }`,
    },
    rooms: { a: room(CUSHION("One", 12)) },
  });
  expect(fern?.plan.lengths.length).toBeGreaterThan(1);
  for (const length of fern?.plan.lengths ?? []) expect(length).toBeLessThanOrEqual(4000 - 640);
  expect(fern?.spareMm).toBe(640 * (fern?.plan.lengths.length ?? 0));
  checkPlan(fern as ClothJson);
});

test("no reserve where nothing lies in register", () => {
  const [plain] = cloths({ cloths: CLOTHS, rooms: { a: room(CUSHION("One", 2, "plain")) } });
  expect(plain).toMatchObject({ spareMm: 0, plan: { pattern: null } });
});

test("a handbook's figure that is too short to cut in register is called so", () => {
  // Whole repeats a drop and a row ignore that drops and centred cushions begin at different points of the repeat: a drop of
  // exactly five repeats leaves no gap to make up for it.
  const items = (motif: string) =>
    `  - curtains: Bay\n    cloth: fern\n    pole: 80 cm\n    drop: 292 cm\n    heading: pencil-pleat\n    fullness: 2\n    half-widths: no\n    lowest-motif: ${motif}\n  - cushion: Seat\n    cloth: fern\n    back: plain\n    size: 50 cm x 50 cm\n`;
  const [bad] = cloths({ cloths: CLOTHS, rooms: { a: room(items("44 cm")) } });
  const [good] = cloths({ cloths: CLOTHS, rooms: { a: room(items("16 cm")) } });
  expect(bad?.handbookMm).toBe(2 * 3200 + 640);
  expect(good?.handbookMm).toBe(bad?.handbookMm);
  expect(bad?.plan.lengthMm).toBeGreaterThan(7040);
  expect(bad?.handbook).toContain("too short to cut these pieces in register");
  expect(good?.handbook).toContain("less");
});

test("where the pattern begins on pieces that need only be level is chosen, and said", () => {
  const curtains = `  - curtains: Bay\n    cloth: fern\n    pole: 240 cm\n    drop: 230 cm\n    heading: pinch-pleat\n    fullness: 2.25\n`;
  const q = quantitiesOf({ cloths: CLOTHS, rooms: { a: room(curtains + CUSHION("One", 3)) } });
  const plan = q.cloths[0]?.plan;
  expect(plan?.saved?.toMm()).toBeGreaterThan(0);
  const above = plan?.levels[0]?.motifAboveFoot?.toMm() as number;
  // Every drop has a motif's middle that far above its foot.
  for (const piece of plan?.pieces.filter((p) => p.item === "curtains-bay") ?? []) {
    expect((piece.y.toMm() + (plan?.start.toMm() ?? 0) + above) % 640).toBeCloseTo(0, 6);
  }
});

test("half-drop: centred faces lie on the lattice, each with its own column's register", () => {
  const [fern] = cloths({
    cloths: {
      fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 45.5 cm, match: half-drop }`,
    },
    rooms: { a: room(CUSHION("One", 6).replace("50 cm x 50 cm", "40 cm x 40 cm")) },
  });
  checkPlan(fern as ClothJson);
  const faces = fern?.plan.pieces.filter((p) => p.register?.xMm != null) ?? [];
  expect(faces).toHaveLength(6);
  const [one] = faces;
  for (const face of faces) {
    const column = Math.round((face.xMm - (one?.xMm ?? 0)) / 455);
    const up = face.yMm - (one?.yMm ?? 0) - (Math.abs(column) % 2) * 320;
    expect(Math.abs(up / 640 - Math.round(up / 640))).toBeLessThan(1e-6);
  }
});

test("stripes on a free match are centred across, and nothing is kept for a start along the length", () => {
  const [fern] = cloths({
    cloths: {
      fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 1 cm, across: 20 cm, match: free, from-selvedge: 10 cm }`,
    },
    rooms: { a: room(CUSHION("One")) },
  });
  checkPlan(fern as ClothJson);
  expect(fern?.spareMm).toBe(0);
  const faces = fern?.plan.pieces.filter((p) => p.register?.xMm != null) ?? [];
  expect(faces).toHaveLength(2);
  // 53 cm wide, a stripe at 10 cm and every 20 cm: middles at 30, 50 … cm.
  for (const face of faces) expect((face.xMm + 265 - 100) % 200).toBeCloseTo(0, 6);
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
  expect(quantitiesText(q, "centimetres")).toContain("(the client's own)");
});

test("a receipt of a cloth that two makers cut must say whose it is", () => {
  const studio = `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [cushion] }, berta: { name: Berta, makes: [cushion] } }`;
  const rooms = { a: room(`${CUSHION("One")}${CUSHION("Two")}    maker: berta\n`, MEASURED) };
  const unsaid = quantitiesOf({
    studio,
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 5 m }]`,
    cloths: CLOTHS,
    rooms,
  });
  expect(unsaid.diagnostics.map((d) => d.code)).toEqual(["no-plan", "receipt-without-maker"]);
  expect(unsaid.cloths.map((c) => c.plan.forCutting)).toEqual([false, false]);
  const said = quantitiesOf({
    studio,
    project: `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 5 m, maker: berta }]`,
    cloths: CLOTHS,
    rooms,
  });
  expect(said.cloths.map((c) => [c.maker, c.lot, c.plan.forCutting])).toEqual([
    ["anna", null, false],
    ["berta", "A", true],
  ]);
  expect(said.diagnostics.map((d) => d.code)).toEqual(["no-plan"]);
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
    quantitiesText(quantitiesOf({ cloths: CLOTHS, rooms }), "centimetres");
  const one = room(CUSHION("One"));
  const both = text({ a: one, b: one });
  for (const id of ["a", "b"]) {
    expect(both).toContain(`  ${id}/cushion-one, face`);
    expect(both).toContain(`(${id}/cushion-one)`);
  }
  expect(text({ a: one })).toContain("  cushion-one, face");
});

test("the text can be followed with a pencil: the sum of its lines is what is bought", () => {
  const text = quantitiesText(
    quantitiesOf({ cloths: CLOTHS, rooms: { a: room(CUSHION("One")) } }),
    "centimetres",
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
