import { expect, test } from "vitest";
import type { ElevationPage } from "../../src/documents/room/elevation.ts";
import { computedFolder } from "./smallFolder.ts";

// The names of cloths under a wall that is drawn: in full where there is room for them. Rules of the project, a made-up room.

const STUDIO = `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: GBP
paper: a3`;

const cloth = (name: string): string =>
  `cloth: ${name}\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]`;

const curtains = (at: string, id: string): string => `  - curtains: ${at}
    at: ${at}
    cloth: ${id}
    pole: 130 cm
    drop: 220 cm
    heading: pencil-pleat`;

/** What stands below the drawn north wall of a room with these cloths at windows a metre wide. */
async function labelsBelow(names: readonly string[]): Promise<ElevationPage["labels"]> {
  const at = (n: number): string => `win${n}`;
  const windows = names.map(
    (_, n) =>
      `      - { window: ${at(n)}, from-left: ${40 + n * 150} cm, size: 100 cm x 120 cm, sill: 90 cm }`,
  );
  const computed = await computedFolder({
    "studio.md": STUDIO,
    ...Object.fromEntries(names.map((name, n) => [`cloths/c${n}.md`, cloth(name)])),
    "projects/quay/project.md": "project: Quay\nclient: { name: Nobody }\nstatus: proposed",
    "projects/quay/den.md": `room: Den
height: 260 cm
walls:
  - wall: north
    length: ${names.length * 150 + 30} cm
    windows:
${windows.join("\n")}
  - { wall: east, length: 300 cm }
  - { wall: south, length: ${names.length * 150 + 30} cm }
  - { wall: west, length: 300 cm }
cloths: [${names.map((_, n) => `c${n}`).join(", ")}]
items:
${names.map((_, n) => curtains(at(n), `c${n}`)).join("\n")}`,
  });
  expect(computed.diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  const boards = computed.pages.flatMap(({ model }) => {
    const { board } = model as { board?: { elevations: readonly ElevationPage[] } };
    return board ? [board] : [];
  });
  return boards[0]?.elevations[0]?.labels ?? [];
}

test("a long name stands in full on two lines, above its words and clear of what is beside and below it", async () => {
  const names = ["Lovage Garden Vine, indigo on ecru", "Pomander", "Harbour Turnstile Lattice"];
  const labels = await labelsBelow(names);
  expect(labels.map((l) => l.lines.join(" ")).sort()).toEqual([...names].sort());
  for (const a of labels)
    for (const b of labels) {
      const isBelow = b.y > a.y && Math.abs(b.x - a.x) < 46;
      if (isBelow) expect(b.y).toBeGreaterThanOrEqual(a.y + 5 * a.lines.length + 4);
    }
});

test("where many long names stand under one wall they are cut short, and stay clear of each other", async () => {
  const names = Array.from(
    { length: 6 },
    (_, n) => `Number ${n + 1} of the Lovage Garden Vines, indigo on ecru`,
  );
  const labels = await labelsBelow(names);
  expect(labels).toHaveLength(6);
  const row = [...labels].sort((a, b) => a.x - b.x);
  expect(new Set(row.map((l) => l.y)).size).toBe(1);
  for (const [at, { x, lines }] of row.entries()) {
    expect(lines).toEqual([`Number ${at + 1} of the Lovage`, "Garden Vines, indigo on…"]);
    // A letter of the names takes 1.8 mm on paper on average (measured on the printed page).
    const next = row[at + 1];
    if (next) expect(next.x).toBeGreaterThan(x + 24 * 1.8);
  }
});
