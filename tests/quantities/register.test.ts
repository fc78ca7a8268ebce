import { expect, test } from "vitest";
import { type ClothJson, checkPlan } from "./checkPlan.ts";
import { CLOTHS, CUSHION, cloths, room } from "./smallRooms.ts";
import { quantitiesOf } from "./studioOf.ts";

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
