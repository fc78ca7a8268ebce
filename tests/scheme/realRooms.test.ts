import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { compute } from "../../src/site/compute.ts";
import type { Computed } from "../../src/site/computed.ts";
import { drawCloths } from "./drawnCloths.ts";

/*
 * Rooms of every approach and tradition on a user's own terms: files, photographs that are measured, windows, chairs. Each is good in its
 * way, so that nothing may be complained of. All common practice, no source.
 */

interface Way {
  readonly room: string;
  readonly lines?: string;
  readonly mix: readonly string[];
  /** Cloths of curtains, chair, its cushion, and two cushions by the window. */
  readonly uses: readonly [string, string, string, string];
  readonly wall?: string;
  readonly more?: string;
}
const WAYS: Readonly<Record<string, Way>> = {
  tartans: {
    room: "Tartans together",
    mix: ["glen", "moor", "drift"],
    uses: ["glen", "moor", "glen", "drift"],
  },
  toile: {
    room: "A toile with its ticking",
    mix: ["pastoral", "ticking"],
    uses: ["pastoral", "ticking", "pastoral", "ticking"],
  },
  botanical: {
    room: "Botanicals all over",
    mix: ["bower", "arbour", "bower-paper"],
    uses: ["bower", "arbour", "bower", "arbour"],
    wall: "  - wallpaper: Walls\n    on: walls\n    cloth: bower-paper\n    maker: hand\n",
  },
  animal: {
    room: "An animal marking as a neutral",
    mix: ["bower", "leafgreen", "coral", "{ dapple: accent }"],
    uses: ["bower", "leafgreen", "dapple", "coral"],
    more: "accessories:\n  - { what: jug, height: table, colours: [Coral] }\n  - { what: fern, height: table, colours: [Leaf, Sage] }\n  - { what: plate, height: wall, colours: [Cream, Sage] }\n",
    lines: `colours: [{ colour: "#3f6b45", name: Leaf }, { colour: "#6f9460", name: Sage }, { colour: "#c46a5a", name: Coral }, { colour: "#e9e3cf", name: Cream }]`,
  },
  textures: {
    room: "A room of textures",
    mix: ["oatmeal", "nubble", "drift"],
    uses: ["oatmeal", "nubble", "drift", "nubble"],
  },
  restrained: {
    room: "Restrained",
    lines: "approach: restrained",
    mix: ["tide", "pinstripe", "slate"],
    uses: ["tide", "slate", "pinstripe", "pinstripe"],
    wall: `  - paint: Walls\n    on: walls\n    colour: "#dfe6ec"\n    maker: hand\n`,
  },
  collection: {
    room: "One range",
    lines: `approach: collection\ncolours: [{ colour: "#b4535f", name: Rose }, { colour: "#f1e8d6", name: Cream }]`,
    mix: ["range-rose", "range-check", "drift"],
    uses: ["range-rose", "range-check", "drift", "range-check"],
  },
  free: {
    room: "Free",
    lines: "approach: free",
    mix: ["glen", "bower", "dapple"],
    uses: ["glen", "bower", "dapple", "glen"],
  },
};

function roomFile({ room, lines, mix, uses, wall, more }: Way): string {
  const cushion = (title: string, cloth: string, at: string, count: number) =>
    `  - cushion: ${title}\n${at}    cloth: ${cloth}\n    count: ${count}\n    size: 45 cm x 45 cm\n    edge: knife\n    maker: hand\n    hardware: [{ what: feather insert, trade: 9, count: ${count} }]\n`;
  return `---
room: ${room}
height: 2.6 m
floor: 4.8 m x 4 m
walls:
  - { wall: north, length: 4.8 m, windows: [{ window: bay, from-left: 1.4 m, size: 180 cm x 140 cm, sill: 75 cm, recess: 12 cm }] }
  - { wall: south, length: 4.8 m, doors: [{ door: hall, from-left: 40 cm, size: 85 cm x 205 cm }] }
flooring: { what: oak, colour: "#a37b4f" }
light: [table lamp, pendant]
${lines ?? ""}
cloths: [${mix.join(", ")}]
items:
  - curtains: Bay
    at: bay
    mount: outside
    cloth: ${uses[0]}
    pole: 220 cm
    to: floor
    heading: pinch-pleat
    maker: hand
  - armchair: Easy chair
    at: { floor: 3.2 m x 2 m, facing: west }
    existing: yes
    cloth: ${uses[1]}
    size: 78 cm x 84 cm x 90 cm
    pieces: [{ piece: seat, size: 60 cm x 62 cm }, { piece: inside-back, size: 60 cm x 62 cm }, { piece: outside-back, size: 64 cm x 60 cm }]
    maker: hand
${cushion("Chair", uses[2], "    at: { on: armchair-easy-chair }\n", 1)}${cushion("Spare", uses[3], "", 2)}${wall ?? `  - paint: Walls\n    on: walls\n    colour: "#e9e3d2"\n    maker: hand\n`}${more ?? ""}---
`;
}

let dir: string;
let computed: Computed;
beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), "roomcloth-ways-"));
  for (const folder of ["cloths", "projects/ways"])
    await mkdir(join(dir, folder), { recursive: true });
  const names = Object.values(WAYS).flatMap((w) =>
    w.mix.map((m) => /[a-z][a-z-]*/.exec(m)?.[0] ?? m),
  );
  await drawCloths(join(dir, "cloths"), new Set(names));
  await writeFile(
    join(dir, "studio.md"),
    "---\nstudio: Alder Lane Rooms\nlanguage: en-GB\nunits: centimetres\ncurrency: GBP\npaper: a3\nmakers: { hand: { name: Hand, makes: [curtains, cushion, armchair, wallpaper, paint], rates: { curtains: 55 per width, cushion: 30, armchair: 400, wallpaper: 60 per roll, paint: 9 per square-metre } } }\n---\n",
  );
  await writeFile(
    join(dir, "projects/ways/project.md"),
    "---\nproject: All the ways\nclient: { name: Nobody }\nstatus: proposed\ndated: 2026-11-20\n---\n",
  );
  for (const [id, way] of Object.entries(WAYS))
    await writeFile(join(dir, `projects/ways/${id}.md`), roomFile(way));
  computed = await compute(dir, { only: null, useCache: false });
});
afterAll(() => rm(dir, { recursive: true, force: true }));

const of = (room: string) => computed.findings.filter((f) => f.room === `ways/${room}`);

test("the files are read and the rooms are judged", () => {
  expect(computed.diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  expect(new Set(computed.findings.map((f) => f.room)).size).toBeGreaterThanOrEqual(7);
});

test.each(Object.keys(WAYS))("nothing is complained of: %s", (room) => {
  // What a photograph makes of a drawn cloth is no matter of taste.
  const complaints = of(room).filter(
    (f) => f.level !== "works" && f.code !== "card-and-photo-differ",
  );
  expect(complaints.map((f) => `${f.code}: ${f.message}`)).toEqual([]);
});

test.each([
  ["tartans", "checks-together"],
  ["toile", "toile-and-stripe"],
  ["botanical", "one-print-all-over"],
  ["textures", "room-of-textures"],
])("%s is known as what it is", (room, name) => {
  const scheme = computed.schemes.find((s) => s.room === `ways/${room}`);
  expect(scheme?.traditions.map((t) => t.name)).toContain(name);
});

test("an approach says what it praises", () => {
  const codes = (room: string) => of(room).map((f) => f.code);
  expect(codes("restrained")).toContain("hues-few");
  expect(codes("collection")).toContain("collection-shared");
  expect(codes("animal")).toContain("animal-marking");
  expect(
    of("free").filter((f) => f.level === "worth-a-look" && f.code !== "card-and-photo-differ"),
  ).toEqual([]);
});
