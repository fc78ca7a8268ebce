import type { Diagnostic } from "../../src/diagnostics/diagnostic.ts";
import { readRecords } from "../../src/records/readRecords.ts";
import type { Records } from "../../src/records/records.ts";
import { TABLE } from "./table.ts";

export const ROOM = "projects/quay/dining-room.md";

/** A small studio without a fault; a test changes what it is about. */
export const STUDIO: Readonly<Record<string, string>> = {
  "studio.md": `---
studio: Larkfield Rooms
language: en-US
units: inches
currency: USD
paper: tabloid
tax: { goods: 8.25, services: 0 }
markup: { cloth: 1.9 }
allowances: { curtains: { hem: 10", fullness: 2.5 }, cushion: { spare: 4 % }, wallpaper: { strips: 2 } }
makers:
  workroom: { name: The Loft, makes: [curtains, cushion], rates: { curtains: 48 per width } }
suppliers: { north-mill: { name: North Mill, disclose: no } }
---
`,
  "cloths/fern-trellis.md": `---
cloth: Fern trellis
photo: { file: fern-trellis.jpg, shows: 27" }
width: 54"
repeat: { up: 25 1/4", across: 13 1/2", match: half-drop }
kind: large-print
supplier: north-mill
price: { trade: 38.00, client: 72.00, per: yard, bolt: { length: 30 yd, trade: 29.00 } }
---
`,
  "cloths/slub-linen.md": `---
cloth: Slub linen
width: 137 cm
kind: plain
---
`,
  "objects/tiled-stove.md": `---
object: Tiled stove
size: 30" x 20" x 72"
owner: client
stays: yes
---
`,
  "projects/quay/project.md": `---
project: Quay House
client: { name: A. Ferrier }
status: proposed
instalments: [{ deposit: 50%, due: approval }, { balance: rest, due: fitting }]
---
`,
  [ROOM]: `---
room: Dining room
height: 8' 9"
floor: 16' 6" x 12' 4"
walls:
  - wall: north
    length: 16' 6"
    windows:
      - { window: bay, from-left: 4' 2", size: 72" x 60", sill: 30" }
anchor: tiled-stove
cloths: [fern-trellis, { slub-linen: plain }]
items:
  - object: tiled-stove
    at: { wall: north, from-left: 1' 2" }
  - curtains: Bay
    at: bay
    cloth: fern-trellis
    drop: 92"
    heading: pinch-pleat
    maker: workroom
  - cushion: Window seat
    at: { on: tiled-stove }
    cloth: slub-linen
    size: 20" x 20"
---
The room faces the water.
`,
};

export const PRESENT = ["cloths/fern-trellis.jpg"];

/** Reads the small studio with some files changed (or added, or with null taken away). */
export function read(
  changes: Readonly<Record<string, string | null>> = {},
  more: Partial<Parameters<typeof readRecords>[0]> = {},
): Records {
  const all: Record<string, string | null> = { ...STUDIO, ...changes };
  const files = Object.entries(all).flatMap(([path, text]) =>
    text === null ? [] : [{ path, text }],
  );
  return readRecords({ files, present: PRESENT, items: TABLE, ...more });
}

/** The text of one of its files with a piece exchanged; the piece must be there. */
export function changed(path: string, from: string, to: string): Record<string, string> {
  const text = STUDIO[path] as string;
  if (!text.includes(from)) throw new Error(`${path} has no ${from}`);
  return { [path]: text.replace(from, () => to) };
}

/** A diagnostic as one line, for exact comparison. */
export function line(d: Diagnostic): string {
  return `${d.file}:${d.line}:${d.column} ${d.severity} ${d.code}: ${d.message} -> ${d.hint}`;
}

/** What reading the changed studio says, a line each. */
export function said(
  changes: Readonly<Record<string, string | null>>,
  more: Partial<Parameters<typeof readRecords>[0]> = {},
): string[] {
  return read(changes, more).diagnostics.map(line);
}
