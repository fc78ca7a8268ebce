import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import sharp from "sharp";

export const DEMO = resolve(import.meta.dirname, "../../content");

/** The demo's sixteen cloths, the patterned ones first. */
export const CLOTHS = [
  "pomander",
  "lovage",
  "deckhouse",
  "hayrick",
  "turnstile",
  "ripple",
  "vestry",
  "caraway",
  "peppercorn",
  "slipway",
  "mizzle",
  "chaff",
] as const;

const SIXTY = "The very long name of a cloth that somebody wished to call so";
const LONG_ROOM = "The garden room on the upper landing behind the old nursery";
/** Hebrew for “the house of the sea”, an invented name. */
export const RIGHT_TO_LEFT = "בית הים";

/** The colours of a stripe that is still to be photographed, as its card declares them. */
const AWAITED_COLOURS = `colours:
  - { colour: "#b8604a", share: 45 %, name: Clay }
  - { colour: "#e2c98f", share: 35 %, name: Straw }
  - { colour: "#27324a", share: 12 %, name: Ink }
  - { colour: "#f4efe2", share: 8 %, name: Chalk }
`;

const PARAGRAPH =
  "The curtains hang where the light is best and the chairs stand where one sits down without thinking about it. Nothing was chosen to match, and nothing quarrels. ";

const cushion = (cloth: string, at: number): string => `  - cushion: Number ${at + 1}
    at: { on: settle }
    cloth: ${cloth}
    size: 20" x 20"
    edge: knife
    filling: feather
    maker: tidewell`;

interface Room {
  readonly name: string;
  readonly cloths: readonly string[];
  readonly words: string;
  readonly more?: string;
}

const roomFile = ({ name, cloths, words, more = "" }: Room): string => `---
room: ${name}
height: 8' 2"
floor: 13' x 11'
walls:
  - wall: north
    length: 13'
    windows:
      - { window: bay, from-left: 4', size: 60" x 54", sill: 31", recess: 4" }
  - { wall: east, length: 11' }
  - { wall: south, length: 13' }
  - wall: west
    length: 11'
    doors:
      - { door: hall, from-left: 2', size: 32" x 80" }
${more}cloths: [${cloths.join(", ")}]
items:
  - object: settle
    at: { wall: south, from-left: 3' }
  - curtains: Bay
    at: bay
    mount: outside
    cloth: ${cloths[0]}
    pole: 84"
    pole-height: 90"
    to: floor
    heading: pinch-pleat
    maker: tidewell
${cloths.slice(1).map(cushion).join("\n")}
  - paint: Walls
    on: walls
    colour: "#c5c9b8"
    name: Lichen
    coats: 2
    maker: marsh
---
${words}
`;

/** The two papers with the units that go with them. */
export const PAPERS = [
  ["a3", "centimetres"],
  ["tabloid", "inches"],
] as const;

export interface WorstStudio {
  readonly content: string;
  readonly remove: () => void;
}

/**
 * A studio of the worst inputs that pages must bear: two cloths and one word, twelve cloths and six hundred words, names of sixty
 * letters, no photograph yet, a very wide and a very tall one, a client's name from right to left; in the units and on the paper
 * that are asked for. Made from the demo's own cards.
 */
export async function worstStudio(
  paper: "a3" | "tabloid",
  units: "inches" | "centimetres",
): Promise<WorstStudio> {
  const content = mkdtempSync(join(tmpdir(), "roomcloth-worst-"));
  cpSync(DEMO, content, { recursive: true });
  rmSync(join(content, "projects"), { recursive: true });
  const put = (path: string, text: string): void => writeFileSync(join(content, path), text);
  const card = (id: string): string => readFileSync(join(DEMO, `cloths/${id}.md`), "utf8");
  const studio = readFileSync(join(DEMO, "studio.md"), "utf8");
  put(
    "studio.md",
    studio
      .replace(/^paper:.*$/m, `paper: ${paper}`)
      .replace(/^units:.*$/m, `units: ${units}`)
      .replace(/^language:.*$/m, `language: ${units === "inches" ? "en-US" : "en-GB"}`),
  );
  put("cloths/sixty.md", card("pomander").replace(/^cloth:.*$/m, `cloth: ${SIXTY}`));
  put(
    "cloths/sixty-plain.md",
    card("chaff").replace(/^cloth:.*$/m, `cloth: ${SIXTY.replace("cloth", "plain")}`),
  );
  // Nobody has photographed these yet: colours declared with shares, a plain in one colour, and nothing said at all.
  const awaited = (from: string, name: string, colours: string): string =>
    card(from)
      .replace(/^cloth:.*$/m, `cloth: ${name}`)
      .replace(/^photo:.*\n/m, colours);
  put("cloths/no-photo.md", awaited("deckhouse", "Awaited", AWAITED_COLOURS));
  put(
    "cloths/no-photo-plain.md",
    awaited("mizzle", "Awaited plain", 'colours: [{ colour: "#4f6d5a" }]\n'),
  );
  put("cloths/no-word.md", awaited("hayrick", "Untold", ""));
  const source = join(DEMO, "cloths/pomander.jpg");
  const { width, height } = await sharp(source).metadata();
  const cut = (name: string, w: number, h: number) =>
    sharp(source)
      .extract({ left: 0, top: 0, width: Math.round(w), height: Math.round(h) })
      .jpeg({ quality: 90 })
      .toFile(join(content, `cloths/${name}.jpg`));
  await cut("wide", width, height * 0.12);
  await cut("tall", width * 0.12, height);
  for (const [id, shows] of [
    ["wide", `30"`],
    ["tall", `3 5/8"`],
  ] as const)
    put(
      `cloths/${id}.md`,
      card("pomander")
        .replace(/^cloth:.*$/m, `cloth: ${id === "wide" ? "Very wide" : "Very tall"}`)
        .replace(/^photo:.*$/m, `photo: { file: ${id}.jpg, shows: ${shows} }`),
    );
  mkdirSync(join(content, "projects/worst"), { recursive: true });
  put(
    "projects/worst/project.md",
    `---
project: ${RIGHT_TO_LEFT}
client: { name: ${RIGHT_TO_LEFT} }
status: proposed
dated: 2026-11-23
fees: { design: 100 }
---
`,
  );
  const rooms: Record<string, Room> = {
    two: { name: "Den", cloths: ["lovage", "chaff"], words: "Quiet." },
    twelve: {
      name: "Drawing room",
      cloths: CLOTHS,
      words: `${PARAGRAPH.repeat(2)}\n\n${`${PARAGRAPH.repeat(5)}\n\n`.repeat(4)}`,
      more: "anchor: tiled-stove\n",
    },
    long: {
      name: LONG_ROOM,
      cloths: ["sixty", "sixty-plain", "hayrick", "caraway"],
      words: PARAGRAPH,
      more: "anchor: harbour-picture\n",
    },
    awaited: {
      name: "Hall",
      cloths: ["no-photo", "wide", "tall", "no-photo-plain", "no-word"],
      words: PARAGRAPH,
    },
  };
  for (const [id, room] of Object.entries(rooms)) put(`projects/worst/${id}.md`, roomFile(room));
  return { content, remove: () => rmSync(content, { recursive: true, force: true }) };
}
