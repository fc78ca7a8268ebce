import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { CLOTHS, DEMO, type WorstStudio } from "./worstStudio.ts";

/** What follows each cloth's own name: about sixty letters in all. */
const OF_CLOTH = "and Trellis on Unbleached Oatmeal Linen, Small Colorway";
const PROJECT = "Saint Botolph's Grange: the Great Room and Its Alcove";
const MAKER = "Ottoline and Daughters Soft Furnishing Workroom at Old Creamery Yard";

const room = (name: string, cloths: readonly string[], items: readonly string[]): string => `---
room: ${name}
height: 9' 6"
floor: 28' x 20'
walls:
  - wall: north
    length: 28'
    windows:
      - { window: bay, from-left: 8', size: 108" x 72", sill: 24", recess: 5" }
  - { wall: east, length: 20' }
  - { wall: south, length: 28' }
  - { wall: west, length: 20' }
measured: { by: studio, on: 2026-11-01, checked: 2026-11-12 }
cloths: [${cloths.join(", ")}]
items:
${items.join("\n")}
---
A room.
`;

const cushion = (title: string, cloth: string): string =>
  `  - { cushion: "${title}", cloth: ${cloth}, count: 2, size: 20" x 18", maker: tidewell }`;

const PAD = `  - seat-pad: Window step pad, one hundred and ten inches long
    cloth: slipway
    size: 110" x 18"
    thickness: 3"
    join: both-sides
    closure: sewn
    maker: tidewell`;
const SKIRT = `  - bed-skirt: Alcove daybed skirt, gathered, with a platform
    bed: 60" x 80" x 25"
    cloth: slipway
    drop: 14"
    maker: tidewell`;
const BAY = `  - curtains: Great bay toward the orchard and the water meadows
    at: bay
    cloth: pomander
    pole: 126"
    pole-height: 100"
    to: floor
    heading: pinch-pleat
    lining: tallow
    maker: tidewell`;

/** A studio whose project, cloths, items and maker all have long names, with twelve cloths in one room and five more rooms. Made from the demo's own cards. */
export function longNames(): WorstStudio {
  const content = mkdtempSync(join(tmpdir(), "roomcloth-names-"));
  cpSync(DEMO, content, { recursive: true });
  rmSync(join(content, "projects"), { recursive: true });
  const change = (path: string, to: (text: string) => string): void =>
    writeFileSync(join(content, path), to(readFileSync(join(content, path), "utf8")));
  for (const cloth of CLOTHS)
    change(`cloths/${cloth}.md`, (text) => text.replace(/^cloth: (.*)$/m, `cloth: $1 ${OF_CLOTH}`));
  change("studio.md", (text) => text.replace("name: Tidewell Workroom", `name: ${MAKER}`));
  mkdirSync(join(content, "projects/names"), { recursive: true });
  const put = (name: string, text: string): void =>
    writeFileSync(join(content, `projects/names/${name}.md`), text);
  put(
    "project",
    `---\nproject: "${PROJECT}"\nclient: { name: Ada }\nstatus: proposed\ndated: 2026-11-23\n---\n`,
  );
  const each = CLOTHS.map((cloth) => cushion(`Squares of ${cloth} along the window seat`, cloth));
  put("great", room("The Great Room with Its Alcove and Bay", CLOTHS, [BAY, PAD, SKIRT, ...each]));
  for (const name of ["Hall", "Parlor", "Kitchen", "Bedroom", "Attic"])
    put(name.toLowerCase(), room(name, ["slipway"], [cushion("Settle", "slipway")]));
  return { content, remove: () => rmSync(content, { recursive: true, force: true }) };
}
