import { expect } from "vitest";
import { computedFolder } from "./smallFolder.ts";

// The fitter's sheet of a made-up room: every number is reckoned by hand from its measures. What the sheet must say is common
// practice, no source.

export const STUDIO = `studio: Alder Lane Rooms
language: en-GB
units: centimetres
currency: GBP
paper: a3
makers:
  bench: { name: Bench Workroom, makes: [curtains, blind, pelmet, valance, tieback], rates: { curtains: 71 per width } }
  brush: { name: Brush and Son, makes: [painting] }
  hook: { name: Hook Fitting, makes: [fitting], rates: { fitting: 43 per hour } }
suppliers:
  poles: { name: Hidden Poles, disclose: no }`;

const CLOTH = `cloth: Plain\nwidth: 140 cm\nkind: plain\ncolours: [{ colour: "#8a7a66" }]`;

const WALLS = `height: 260 cm
walls:
  - wall: north
    length: 400 cm
    windows:
      - { window: quay, from-left: 90 cm, size: 160 cm x 120 cm, sill: 85 cm, recess: 12 cm }
  - wall: east
    length: 350 cm
    windows:
      - { window: lane, from-left: 120 cm, size: 100 cm x 140 cm, sill: 80 cm, recess: 10 cm }
  - { wall: south, length: 400 cm }
  - wall: west
    length: 350 cm
    doors:
      - { door: hall, from-left: 40 cm, size: 80 cm x 200 cm }`;

export const CURTAINS = `  - curtains: Quay
    at: quay
    mount: outside
    cloth: plain
    pole: 200 cm
    pole-height: 225 cm
    to: floor
    heading: pencil-pleat
    return: 8 cm
    stack-back: 40 cm
    note: Rings on the left are numbered.
    hardware: [{ what: iron pole, supplier: poles, trade: 987.65 }]`;

interface Entry {
  readonly number: number;
  readonly of: string;
  readonly heading: string;
  readonly about: string;
  readonly groups: readonly { heading: string; lines: readonly { html: string }[] }[];
  readonly questions: readonly { html: string }[];
  readonly checks: readonly { text: { html: string }; asked: { html: string } | null }[];
}
interface Sheet {
  readonly rate: string;
  readonly cautions: readonly { word: string }[];
  readonly walls: readonly {
    heading: string;
    before: string;
    drawings: readonly { svg: { html: string } }[];
    entries: readonly Entry[];
  }[];
}

export async function computedRoom(
  items: string,
  studio = STUDIO,
  more: Record<string, string> = {},
) {
  const computed = await computedFolder({
    ...more,
    "studio.md": studio,
    "cloths/plain.md": CLOTH,
    "objects/view.md":
      "object: View\nshape: picture\nsize: 60 cm x 40 cm\nweight: 4 kg\nowner: client",
    "projects/quay/project.md":
      "project: Quay\nclient: { name: Nobody }\nstatus: proposed\nfitting: 2027-03-08",
    "projects/quay/den.md": `room: Den\n${WALLS}\ncloths: [plain]\nitems:\n${items}`,
  });
  expect(computed.diagnostics.filter((d) => d.severity === "error")).toEqual([]);
  return computed;
}

/** The fitter's sheet of a room with these items. */
export async function sheetOf(items: string, more: Record<string, string> = {}): Promise<Sheet> {
  const { pages } = await computedRoom(items, STUDIO, more);
  const page = pages.find(({ path }) => path === "makers/hook/quay/den/fitting.html");
  expect(page?.reader).toBe("maker");
  return page?.model as unknown as Sheet;
}

export const linesOf = (entry: Entry | undefined, heading: string): string[] =>
  entry?.groups
    .find((g) => g.heading === heading)
    ?.lines.map((l) => l.html.replace(/[\u202f\u00a0]/g, " ")) ?? [];
export const askedOf = (entry: Entry | undefined): string[] =>
  (entry?.questions ?? []).map((q) => q.html.replace(/\u202f/g, " "));
