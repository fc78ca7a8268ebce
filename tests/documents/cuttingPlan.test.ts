import { expect, test } from "vitest";
import { boltRows, offCutWords } from "../../src/documents/sheets/bolt.ts";
import { ROW_MM, rowsOf, scaleOf } from "../../src/documents/sheets/boltScale.ts";
import { cutGroups, cutNumbers } from "../../src/documents/sheets/cutNumbers.ts";
import { type LabelBox, meets } from "../../src/documents/sheets/labelPlaces.ts";
import { offCutsOf } from "../../src/documents/sheets/offCuts.ts";
import { stripLabel } from "../../src/documents/sheets/stripLabel.ts";
import type { ClothQuantity } from "../../src/quantities/quantityTypes.ts";
import { Length } from "../../src/units/length.ts";
import { PROJECT, quantitiesOf } from "../quantities/studioOf.ts";

// What a drawn plan must say; common practice, no source.
const curtains = (pole: number, drop: number) =>
  `  - curtains: Bay\n    cloth: fern\n    pole: ${pole} cm\n    drop: ${drop} cm\n    heading: pencil-pleat\n    half-widths: yes\n`;
const cushions = (count: number, size: number) =>
  `  - cushion: Seat ${size}\n    cloth: fern\n    count: ${count}\n    size: ${size} cm x ${size} cm\n`;
const clothOf = (items: string, project = PROJECT): ClothQuantity =>
  quantitiesOf({
    project,
    cloths: {
      fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }`,
    },
    rooms: {
      a: `room: A\nmeasured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }\nitems:\n${items}`,
    },
  }).cloths[0] as ClothQuantity;
const ROOMS = [
  curtains(240, 230),
  curtains(400, 295) + cushions(4, 50),
  cushions(7, 45) + cushions(3, 60),
  cushions(1, 40),
];
const LEAST = Length.mm(100);

test.each(ROOMS)("off-cuts lie in the cloth, clear of pieces, flaws and each other", (items) => {
  const flaws = `${PROJECT}\nreceipts: [{ cloth: fern, lot: A, length: 60 m, flaws: [{ from: 2 m, length: 10 cm, from-left: 30 cm, width: 10 cm }] }]`;
  for (const cloth of [clothOf(items), clothOf(items, flaws)]) {
    const cuts = offCutsOf(cloth.plan, cloth.usableWidth, LEAST);
    const all = [...cuts, ...cloth.plan.pieces, ...cloth.plan.flaws];
    cuts.forEach((cut, i) => {
      expect(cut.width.isLessThan(LEAST)).toBe(false);
      expect(cut.height.isLessThan(LEAST)).toBe(false);
      expect(cut.x.plus(cut.width).isMoreThan(cloth.usableWidth)).toBe(false);
      expect(cut.y.plus(cut.height).isMoreThan(cloth.plan.lengths[cut.length] as Length)).toBe(
        false,
      );
      all.forEach((other, j) => {
        if (i === j || other.length !== cut.length) return;
        const apart =
          !other.x.plus(other.width).isMoreThan(cut.x) ||
          !cut.x.plus(cut.width).isMoreThan(other.x) ||
          !other.y.plus(other.height).isMoreThan(cut.y) ||
          !cut.y.plus(cut.height).isMoreThan(other.y);
        expect(apart).toBe(true);
      });
    });
    expect(offCutWords(cloth, "centimetres").length > 0).toBe(cuts.length > 0);
  }
});

test("a full width of waste between two drops is one off-cut, with its size", () => {
  // Each drop begins at the same point of the pattern: whole repeats of 64 cm less the cut length are left after each but the last.
  const cloth = clothOf(curtains(240, 230));
  const height = cloth.plan.pieces[0]?.height ?? Length.zero;
  const left = height.upTo(Length.cm(64)).minus(height);
  const cuts = offCutsOf(cloth.plan, cloth.usableWidth, Length.mm(1));
  const full = cuts.filter((cut) => cut.width.equals(cloth.usableWidth));
  expect(full.length).toBeGreaterThan(0);
  for (const cut of full) expect(cut.height.toMm()).toBeCloseTo(left.toMm(), 6);
});

test.each(ROOMS)(
  "rows cover the cloth once, fit the page, and none begins out of turn",
  (items) => {
    const cloth = clothOf(items);
    const scale = scaleOf(cloth);
    const rows = rowsOf(cloth, scale);
    for (const [index, length] of cloth.plan.lengths.entries()) {
      const own = rows.filter((row) => row.length === index);
      expect(own[0]?.from).toBe(0);
      expect(own.at(-1)?.to).toBeCloseTo(length.toMm(), 6);
      own.slice(1).forEach((row, i) => {
        expect(row.from).toBe(own[i]?.to);
      });
    }
    for (const row of rows) expect((row.to - row.from) / scale).toBeLessThanOrEqual(ROW_MM + 0.1);
    expect(cloth.usableWidth.toMm() / scale).toBeGreaterThan(17);
  },
);

test("the plan is drawn face up: with the pattern pointing right the left selvedge is at the top", () => {
  const cloth = clothOf(curtains(240, 230) + cushions(2, 50));
  const scale = scaleOf(cloth);
  const rows = rowsOf(cloth, scale);
  const drawn = boltRows(cloth, cutNumbers(cloth), "centimetres", "t").map((each) => each.html);
  const text = drawn.join("");
  expect(text).toContain(">left selvedge<");
  expect(text).toContain(">start<");
  // Every piece of one row stands in the drawing at its distances from start and left selvedge.
  for (const p of cloth.plan.pieces) {
    const at = rows.findIndex(
      (row) => p.y.toMm() >= row.from - 0.01 && p.y.plus(p.height).toMm() <= row.to + 0.01,
    );
    if (at < 0) continue;
    const row = rows[at] as (typeof rows)[number];
    const round = (n: number) => (Math.round(n * 100) / 100).toString();
    const y0 = row.from === 0 ? 5.4 : 2;
    expect(drawn[at]).toContain(
      `<rect x="${round((p.y.toMm() - row.from) / scale)}" y="${round(y0 + p.x.toMm() / scale)}" width="${round(p.height.toMm() / scale)}"`,
    );
  }
});

test("every piece is in the cut list once, by name; numbers run in the order of the cloth", () => {
  for (const items of ROOMS) {
    const cloth = clothOf(items);
    const groups = cutGroups(cloth);
    expect(groups.flatMap((each) => each.pieces)).toHaveLength(cloth.plan.pieces.length);
    for (const { words, pieces } of groups) for (const p of pieces) expect(p.piece).toBe(words);
    const numbers = cutNumbers(cloth);
    expect([...numbers.values()]).toEqual(cloth.plan.pieces.map((_, i) => i + 1));
  }
});

// A piece's number and name, or an off-cut's size, stand on white. Half a lozenge under it would be read as another mark.
const NAMED = [...ROOMS, curtains(120, 260) + cushions(2, 30) + cushions(9, 20)];
const REPEATS = [
  "up: 51 cm, across: 45 cm, match: half-drop",
  "up: 28 cm, across: 22 cm, match: straight",
];
test.each(REPEATS)("no words hide a part of a motif (%s)", (repeat) => {
  let seen = 0;
  for (const items of NAMED) {
    const cloth = quantitiesOf({
      project: PROJECT,
      cloths: { fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { ${repeat} }` },
      rooms: { a: `room: A\nitems:\n${items}` },
    }).cloths[0] as ClothQuantity;
    const drawn = boltRows(cloth, cutNumbers(cloth), "centimetres", "t").map((each) => each.html);
    const lozenges = drawn.map((html) =>
      [...html.matchAll(/M([-\d.]+) ([-\d.]+)l1\.5 -1\.1/g)].map(([, x, y]) => ({
        x: Number(x),
        y: Number(y) - 1.1,
        width: 3,
        height: 2.2,
      })),
    );
    const grounds = drawn.map((html) => groundsOf(html));
    seen += lozenges.flat().length;
    expect(grounds.flat().length).toBeGreaterThan(0);
    for (const [row, own] of grounds.entries())
      for (const ground of own)
        for (const lozenge of lozenges[row] as LabelBox[]) {
          // Two figures after the point are drawn.
          const inner = {
            ...lozenge,
            x: lozenge.x + 0.02,
            y: lozenge.y + 0.02,
            width: 2.96,
            height: 2.16,
          };
          expect(meets(ground, inner)).toBe(false);
        }
  }
  expect(seen).toBeGreaterThan(40);
});

/** The white grounds of a drawing's words, where they stand on paper: those of upright words are turned about their middle. */
function groundsOf(html: string): LabelBox[] {
  const white =
    /(rotate\(-90 ([-\d.]+) ([-\d.]+)\)"><)?rect x="([-\d.]+)" y="([-\d.]+)" width="([-\d.]+)" height="([-\d.]+)" fill="#fff"\/>/g;
  return [...html.matchAll(white)].map(([, turn, ...found]) => {
    const [cx, cy, x, y, width, height] = found.map(Number) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    if (turn === undefined) return { x, y, width, height };
    return { x: cx - height / 2, y: cy - width / 2, width: height, height: width };
  });
}

// At one to forty a strip of 2 1/4 inches is 1.4 mm high: two numbers of 3.5 mm on two such strips could be read either way.
test("numbers of strips too thin for them stand beside them, each with its own line", () => {
  const cloth = { top: 0.3, foot: 34 };
  const strips = [
    { x: 20, y: 0.5, width: 21, height: 1.4 },
    { x: 20, y: 2, width: 21, height: 1.4 },
  ];
  const whole = { x: 0, y: 0.3, width: 19.5, height: 33.7 };
  const taken: LabelBox[] = [];
  const drawn = strips.map((at, i) =>
    stripLabel(String(i + 2), at, taken, [...strips, whole], cloth),
  );
  for (const [i, html] of drawn.entries()) {
    const [ground] = groundsOf(html as string) as [LabelBox];
    for (const piece of [...strips, whole]) expect(meets(ground, piece)).toBe(false);
    const [, cx, cy] = (html as string).match(/cx="([\d.]+)" cy="([\d.]+)"/) as RegExpMatchArray;
    const at = strips[i] as LabelBox;
    expect(Number(cx) > at.x && Number(cx) < at.x + at.width).toBe(true);
    expect(Number(cy) > at.y && Number(cy) < at.y + at.height).toBe(true);
  }
  const grounds = drawn.flatMap((html) => groundsOf(html as string)) as [LabelBox, LabelBox];
  expect(meets(...grounds)).toBe(false);
  // Between pieces nothing is free, and a piece with room for its number keeps it.
  const full = [{ x: 0, y: 3.4, width: 60, height: 31 }];
  expect(stripLabel("9", strips[1] as LabelBox, [], [...strips, ...full], cloth)).toBeNull();
  expect(stripLabel("1", whole, [], [whole], cloth)).toBeNull();
});

// Common practice, no source: a stripe is set out by the middle of its repeat across; along it nothing comes again.
test("a stripe has lines along it where another pattern has lozenges, through the middles of its pieces", () => {
  const plan = (repeat: string, kind: string) =>
    quantitiesOf({
      project: PROJECT,
      cloths: { fern: `cloth: Fern\nwidth: 137 cm\nkind: ${kind}\nrepeat: { ${repeat} }` },
      rooms: { a: `room: A\nitems:\n${cushions(2, 50)}` },
    }).cloths[0] as ClothQuantity;
  const drawn = (cloth: ClothQuantity) =>
    boltRows(cloth, cutNumbers(cloth), "centimetres", "t")
      .map((each) => each.html)
      .join("");
  const striped = plan("across: 22 cm", "stripe");
  const scale = scaleOf(striped);
  expect(drawn(striped)).not.toContain("l1.5 -1.1");
  const [, lines] = drawn(striped).match(/d="([^"]+)" stroke="#000" stroke-width=".18"/) ?? [];
  const at = [...(lines ?? "").matchAll(/M0 ([\d.]+)H/g)].map(([, y]) => Number(y));
  expect(at.length).toBeGreaterThanOrEqual(6);
  const centred = striped.plan.pieces.filter((p) => p.register?.x);
  expect(centred.length).toBeGreaterThan(0);
  for (const p of centred) {
    const middle = 5.4 + (p.x.toMm() + p.width.toMm() / 2) / scale;
    expect(Math.min(...at.map((y) => Math.abs(y - middle)))).toBeLessThan(0.02);
  }
  const print = drawn(plan("up: 30 cm, across: 22 cm", "large-print"));
  expect(print).toContain("l1.5 -1.1");
  expect(print).not.toContain('stroke-width=".18"');
});

test("strips too narrow for their numbers make a plan larger, though its list then goes over the page", () => {
  const boxes = (count: number) =>
    `  - cushion: Box\n    cloth: fern\n    count: ${count}\n    size: 60 cm x 60 cm\n    thickness: 10 cm\n`;
  // A zip's boxing of 8 cm: the largest at which the plan keeps to its page, where its list would have asked for a smaller one.
  const many = clothOf(curtains(240, 230) + boxes(6));
  const high = (scale: number) =>
    rowsOf(many, scale).length * (many.usableWidth.toMm() / scale + 16);
  expect(high(scaleOf(many))).toBeLessThanOrEqual(177);
  const larger = [30, 35, 40, 45, 50, 60, 65, 70].filter((scale) => scale < scaleOf(many));
  for (const scale of larger) expect(high(scale)).toBeGreaterThan(177);
  expect(high(scaleOf(many)) + 4.9 * cutGroups(many).length).toBeGreaterThan(177);
  // Wide pieces in a low row are drawn as they were.
  expect(scaleOf(clothOf(cushions(1, 40)))).toBe(40);
});
