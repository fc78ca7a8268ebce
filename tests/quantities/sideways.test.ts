// Patterned cloth that is run sideways: what hangs or stands side by side is level, and what is not centred is asked about.
// The congruence lies across the cloth then, on x modulo the repeat across (geometry, no outside source).
import { expect, test } from "vitest";
import { PROJECT, quantitiesOf, STUDIO_CM } from "./studioOf.ts";

const STUDIO = `${STUDIO_CM}\nmakers: { anna: { name: Anna, makes: [curtains, pelmet, bed-skirt, cushion, drop-in-seat, headboard] } }`;
const PRINT = "repeat: { up: 50 cm, across: 70 cm, from-selvedge: 35 cm }\nkind: large-print";

function of(items: string, width = "140 cm", pattern = PRINT) {
  return quantitiesOf({
    studio: STUDIO,
    project: PROJECT,
    cloths: { print: `cloth: Print\nwidth: ${width}\n${pattern}` },
    rooms: { a: `room: A\nitems:\n${items}` },
  });
}

/** Left edges across the cloth, modulo 70 cm. */
const phases = (found: ReturnType<typeof of>, item: string) =>
  new Set(
    found.cloths[0]?.plan.pieces.flatMap((p) => (p.item === item ? [p.x.toMm() % 700] : [])) ?? [],
  );
const questions = (found: ReturnType<typeof of>) =>
  found.items.flatMap((each) => each.made.questions).join(" ");

const SKIRT = `  - bed-skirt: Bed
    cloth: print
    bed: 150 cm x 200 cm x 60 cm
    drop: 35 cm
    railroad: yes
`;
const PELMET = `  - pelmet: Pair
    cloth: print
    board: 200 cm
    depth: 30 cm
    count: 2
    railroad: yes
`;

test("the strips of a skirt are level all round, which takes more than strips side by side", () => {
  const found = of(SKIRT);
  // A row of motifs, at 35 cm and every 70 cm, runs along the middle of 42.5 cm: 35 - 21.25.
  expect(phases(found, "bed-skirt-bed")).toEqual(new Set([137.5]));
  // Two rows of motifs lie in 140 cm: two strips, (2 × 550 + 6 + 3) ÷ 2 = 554.5 cm; three of 370.7 cm would not be level.
  expect(found.cloths[0]?.plan.length.toMm()).toBeCloseTo(5545, 1);
  expect(questions(found)).toContain("the pattern breaks off where two are joined");
  const plain = of(SKIRT, "140 cm", "kind: plain");
  expect(plain.cloths[0]?.plan.length.toMm()).toBeCloseTo(3707, 0);
});

test("two pelmets are alike, a row of motifs along the middle of each", () => {
  expect(phases(of(PELMET), "pelmet-pair")).toEqual(new Set([150]));
});

test("both curtains of a pair begin at the selvedge, whatever else is cut beside them", () => {
  const found = of(
    `  - curtains: Bay
    cloth: print
    pole: 120 cm
    drop: 60 cm
    heading: pinch-pleat
    railroad: yes
    count: 2
  - cushion: One
    cloth: print
    size: 30 cm x 30 cm
    motif: as-it-falls
    count: 4
`,
    "200 cm",
  );
  expect(phases(found, "curtains-bay")).toEqual(new Set([0]));
  expect(found.cloths[0]?.plan.pieces.filter((p) => p.item === "curtains-bay")).toHaveLength(4);
});

test("seats that are not centred because the cloth runs sideways are asked about; a headboard's motif is not said to stand in its middle", () => {
  const seat = (more: string) => `  - drop-in-seat: Four
    cloth: print
    size: 50 cm x 45 cm
    count: 4
${more}`;
  expect(questions(of(seat("    railroad: yes\n")))).toContain("cut as the pattern falls");
  expect(questions(of(seat("")))).not.toContain("cut as the pattern falls");
  const board = (more: string) => `  - headboard: Bed
    cloth: print
    size: 60 cm x 8 cm x 40 cm
${more}`;
  expect(questions(of(board("    railroad: yes\n")))).not.toContain("The motif stands");
  expect(questions(of(board(""), "140 cm", "kind: plain"))).not.toContain("The motif stands");
  expect(
    questions(of(board(""), "140 cm", PRINT.replace("70 cm", "140 cm").replace("35", "70"))),
  ).toContain("The motif stands");
});
