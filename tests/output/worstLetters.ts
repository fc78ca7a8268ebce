import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { CLOTHS, DEMO, RIGHT_TO_LEFT, type WorstStudio } from "./worstStudio.ts";

const LONG = "The one by the east window that grandmother used to sit beside";

interface RoomLines {
  readonly name: string;
  readonly cloths: readonly string[];
  readonly head?: string;
  readonly items: readonly string[];
}

const room = ({ name, cloths, head = "", items }: RoomLines): string => `---
room: ${name}
height: 8' 2"
floor: 21' x 14'
walls:
  - wall: north
    length: 21'
    windows:
      - { window: bay, from-left: 4', size: 60" x 54", sill: 31", recess: 4" }
      - { window: lane, from-left: 13', size: 60" x 54", sill: 31", recess: 4" }
  - { wall: east, length: 14' }
  - { wall: south, length: 21' }
  - { wall: west, length: 14' }
${head}cloths: [${cloths.join(", ")}]
items:
${items.join("\n")}
---
A room.
`;

const cushion = (title: string, cloth: string, size: string, more = ""): string =>
  `  - { cushion: "${title}", at: { on: settle }, cloth: ${cloth}, size: ${size}, edge: knife, filling: feather, maker: tidewell${more} }`;

const curtains = (title: string, window: string, cloth: string): string =>
  `  - { curtains: "${title}", at: ${window}, mount: outside, cloth: ${cloth}, to: floor, heading: pinch-pleat, lining: tallow, maker: tidewell }`;

const chair = (title: string, cloth: string, at: string): string =>
  `  - { armchair: "${title}", at: { floor: ${at}, facing: east }, cloth: ${cloth}, type: wing, size: 30" x 32" x 40", maker: corran }`;

const paint = (title: string, colour: string, on = "walls"): string =>
  `  - { paint: "${title}", on: ${on}, colour: "${colour}", name: ${title}, coats: 2, maker: marsh }`;

/** Forty items of three makers in one room; every second title has sixty letters. */
function forty(): string[] {
  const cushions = Array.from({ length: 32 }, (_, at) =>
    cushion(
      at % 2 === 0 ? `Number ${at + 1}` : `${LONG.slice(0, 56)} ${at + 1}`,
      CLOTHS[at % CLOTHS.length] as string,
      `${14 + (at % 5) * 2}" x ${14 + (at % 7)}"`,
    ),
  );
  return [
    "  - { object: settle, at: { wall: south, from-left: 3' } }",
    curtains("Bay", "bay", "pomander"),
    curtains(`${LONG.slice(0, 50)} curtains`, "lane", "lovage"),
    chair("Wing chair", "vestry", `3' x 4'`),
    chair(LONG, "mizzle", `16' x 9'`),
    ...cushions,
    paint("Lichen", "#c5c9b8"),
    paint("Skirting white", "#eee8da", "woodwork"),
    `  - { lampshade: "Settle lamp", cloth: caraway, size: 16" x 10", form: drum, maker: tidewell }`,
  ];
}

/** A cut list of thirty lines from one cloth: no two pillows are of one size. */
function manyCuts(): string[] {
  return Array.from({ length: 30 }, (_, at) =>
    cushion(`Number ${at + 1}`, "chaff", `${12 + (at % 15)}" x ${12 + ((at * 7) % 11)}"`),
  ).map((line) => line.replace(", at: { on: settle }", ""));
}

/** What asks most of its maker: nothing is said but the least that must be. */
const UNSAID = [
  curtains("Bay", "bay", "pomander").replace("to: floor", 'drop: 92"'),
  `  - { valance: "Bay valance", at: bay, cloth: hayrick, curtain-drop: 84", heading: pinch-pleat, lower-edge: scalloped, scallops: 5, scallop-depth: 3", lining: tallow, maker: tidewell }`,
  `  - { valance: "Lane valance", at: lane, cloth: deckhouse, depth: 16", heading: gathered, lower-edge: arched, end-depth: 24", lining: tallow, maker: tidewell }`,
  `  - { pelmet: "Lane pelmet", at: lane, cloth: vestry, depth: 14", lower-edge: scalloped, scallops: 5, scallop-depth: 3", maker: tidewell }`,
];

/**
 * A studio of the worst that letters and makers' sheets must bear: forty items of three makers with names of sixty letters, one item,
 * a cut list of thirty lines, items of which little is said, a room with words alone, no budget and no limit, a client's name from right to left. Made from the
 * demo's own cards.
 */
export function worstLetters(
  paper: "a3" | "tabloid",
  units: "inches" | "centimetres",
): WorstStudio {
  const content = mkdtempSync(join(tmpdir(), "roomcloth-letters-"));
  cpSync(DEMO, content, { recursive: true });
  rmSync(join(content, "projects"), { recursive: true });
  const put = (path: string, text: string): void => writeFileSync(join(content, path), text);
  put(
    "studio.md",
    readFileSync(join(DEMO, "studio.md"), "utf8")
      .replace(/^paper:.*$/m, `paper: ${paper}`)
      .replace(/^units:.*$/m, `units: ${units}`)
      .replace(/^language:.*$/m, `language: ${units === "inches" ? "en-US" : "en-GB"}`),
  );
  const project = (id: string, head: string, rooms: Record<string, string>): void => {
    mkdirSync(join(content, `projects/${id}`), { recursive: true });
    put(`projects/${id}/project.md`, `---\n${head}\nstatus: proposed\ndated: 2026-11-23\n---\n`);
    for (const [name, text] of Object.entries(rooms)) put(`projects/${id}/${name}.md`, text);
  };
  project(
    "forty",
    `project: ${LONG}\nclient: { name: ${LONG} }\nfees: { design: 950, survey: 120 }\nbudget: 19000\nprices-hold: 2027-01-15`,
    { drawing: room({ name: "Drawing room", cloths: CLOTHS, items: forty() }) },
  );
  project("one", `project: ${RIGHT_TO_LEFT}\nclient: { name: ${RIGHT_TO_LEFT} }`, {
    den: room({
      name: "Den",
      cloths: ["lovage"],
      items: [cushion("Bed", "lovage", `18" x 18"`).replace(", at: { on: settle }", "")],
    }),
  });
  project("cuts", "project: Cuts\nclient: { name: Ada }\nbudget: 3000", {
    many: room({ name: "Many", cloths: ["chaff"], items: manyCuts() }),
    unsaid: room({
      name: "Unsaid",
      cloths: ["pomander", "hayrick", "deckhouse", "vestry"],
      items: UNSAID,
    }),
  });
  project("begun", `project: Begun\nclient: { name: Ada }`, {
    box: "---\nroom: Box room\n---\nWords alone.\n",
  });
  return { content, remove: () => rmSync(content, { recursive: true, force: true }) };
}
