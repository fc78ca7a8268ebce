import { expect, test } from "vitest";
import { itemId } from "../../src/records/reading/readItems.ts";
import { changed, line, ROOM, read, STUDIO } from "./studio.ts";

const LONG = "A".repeat(100).replace(/A/g, "Ab");

test.each([
  ["Café d’Été", "cushion-cafe-dete"],
  ["<script>alert(1)</script>", "cushion-script-alert-1-script"],
  ["{{ 7*7 }} {% raw %}", "cushion-7-7-raw"],
  ['Tom & Jerry\'s "chair" #2', "cushion-tom-jerrys-chair-2"],
  ["../../etc/passwd", "cushion-etc-passwd"],
  ["窓のカーテン", "cushion-窓のカーテン"],
  ["Straße Ærø Łódź", "cushion-strasse-aero-lodz"],
  ["?!", "cushion-3"],
  [LONG, `cushion-${LONG.toLowerCase()}`.slice(0, 72)],
])("the title %j stays as words and gives a safe name", (title, id) => {
  const typed = `'${title.replace(/'/g, "''")}'`;
  const records = read(changed(ROOM, "cushion: Window seat", `cushion: ${typed}`));
  expect(records.diagnostics.map(line)).toEqual([]);
  const item = records.projects[0]?.rooms[0]?.items[2];
  expect(item?.title).toBe(title);
  expect(item?.id).toBe(id);
  expect(item?.fields).toMatchObject({ cushion: title });
});

test("an id is never a path, empty, or longer than a file's name may be", () => {
  for (const title of [
    "..",
    "/",
    "\\",
    "a/b",
    "con",
    ".hidden",
    "💡".repeat(90),
    "か".repeat(300),
    "e\u0301".repeat(200),
  ]) {
    const id = itemId("cushion", title, 0);
    expect(id).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}\p{M}-]*$/u);
    expect(Buffer.byteLength(id)).toBeLessThan(240);
  }
});

test("files and references with accents and spaces find each other, whichever way the accents are stored", () => {
  const composed = "caf\u00e9 noir";
  const apart = "cafe\u0301 noir";
  for (const [file, typed] of [
    [composed, apart],
    [apart, composed],
  ] as const) {
    const records = read({
      [`cloths/${file}.md`]: "---\ncloth: Café noir\n---\n",
      ...changed(ROOM, "cloth: slub-linen", `cloth: ${typed}`),
    });
    expect(records.diagnostics.map((d) => d.code)).toEqual(["cloth-unused"]);
    expect(records.projects[0]?.rooms[0]?.items[2]?.fields).toMatchObject({ cloth: composed });
    expect(records.cloths.has(composed)).toBe(true);
  }
});

test("two pieces of one card are told apart by their number", () => {
  const chair = "  - object: carver\n    at: { floor: 3' x 4' }\n";
  const records = read({
    "objects/carver.md": "---\nobject: Carver\n---\n",
    [ROOM]: (STUDIO[ROOM] as string).replace(
      "  - curtains: Bay",
      `${chair}${chair}${chair}  - curtains: Bay`,
    ),
  });
  expect(records.diagnostics.map(line)).toEqual([]);
  expect(records.projects[0]?.rooms[0]?.items.map((item) => item.id)).toEqual([
    "object-tiled-stove",
    "object-carver",
    "object-carver-2",
    "object-carver-3",
    "curtains-bay",
    "cushion-window-seat",
  ]);
});

test("markup, braces and 200 characters survive as words in every card", () => {
  const words = `<script>x</script> {{ a }} "q" 'r' ${"é".repeat(170)}`;
  const typed = `'${words.replace(/'/g, "''")}'`;
  const { diagnostics, studio, cloths, projects } = read({
    ...changed("studio.md", "studio: Larkfield Rooms", `studio: ${typed}`),
    ...changed("cloths/slub-linen.md", "cloth: Slub linen", `cloth: ${typed}`),
    ...changed("projects/quay/project.md", "project: Quay House", `project: ${typed}`),
    ...changed(ROOM, "room: Dining room", `room: ${typed}`),
  });
  expect(diagnostics.map(line)).toEqual([]);
  expect([
    studio?.fields.studio,
    cloths.get("slub-linen")?.fields.cloth,
    projects[0]?.fields.project,
    projects[0]?.rooms[0]?.fields.room,
  ]).toEqual([words, words, words, words]);
});
