import { colourName } from "../../src/colour/colourName.ts";
import { family } from "../../src/colour/family.ts";
import { lightReflectance } from "../../src/colour/luminance.ts";
import { oklchOf } from "../../src/colour/oklab.ts";
import type { Finding } from "../../src/scheme/finding.ts";
import { type RoomScheme, roomScheme } from "../../src/scheme/roomScheme.ts";
import type {
  ClothUse,
  Contact,
  ItemFacts,
  SchemeInput,
  SeenPart,
  SizeFacts,
} from "../../src/scheme/schemeInput.ts";
import type { PatternKind, Swatch } from "../../src/swatches/swatch.ts";
import { recordsOf } from "../quantities/studioOf.ts";

/** A made-up cloth: its kind, the height of its motif, and its colours with their shares. */
export interface MadeCloth {
  readonly kind: PatternKind;
  readonly motifMm?: number;
  readonly colours: Readonly<Record<string, number>>;
  readonly animal?: boolean;
  readonly photo?: boolean;
  readonly readsPlainFromM?: number;
  readonly disagreements?: Swatch["disagreements"];
  /** Further lines of its card. */
  readonly card?: string;
  /** The role that the room file fixes. */
  readonly role?: string;
  /** Where nothing is said its photograph, 300 mm square, shows all there is to see. */
  readonly period?: Swatch["period"];
}

export interface MadeRoom {
  readonly cloths: Readonly<Record<string, MadeCloth>>;
  /** Lines of the room file beside its name. */
  readonly room?: string;
  readonly seen: readonly (Partial<SeenPart> & { readonly areaMm2: number })[];
  readonly contacts?: readonly Contact[];
  /** Pieces that stay, by id, with what their photograph says. */
  readonly objects?: Readonly<Record<string, MadeCloth>>;
  /** Cloths that are used and not seen, or not said to be by `seen`. */
  readonly uses?: readonly ClothUse[];
  readonly items?: readonly (Partial<ItemFacts> & { readonly item: string })[];
  readonly sizes?: SizeFacts;
  readonly objectPrices?: SchemeInput["objectPrices"];
  readonly unpriced?: SchemeInput["unpriced"];
  readonly closed?: MadeRoom["seen"];
  /** The list `cloths` of the room file, where a role is fixed in it. */
  readonly listed?: readonly string[];
  readonly language?: string;
  readonly units?: SchemeInput["units"];
  readonly on?: string;
}

/** A swatch with the given measures. */
export function swatchOf(id: string, made: MadeCloth): Swatch {
  const place = () => ({ file: `cloths/${id}.md`, line: 1, column: 1, keyPath: null });
  const photo =
    made.photo === false
      ? null
      : {
          source: `cloths/${id}.jpg`,
          widthPx: 900,
          heightPx: 900,
          showsMm: 300,
          sha256: id,
          motifAt: null,
        };
  return {
    id,
    of: "cloth",
    name: id.charAt(0).toUpperCase() + id.slice(1),
    photo,
    colours: Object.entries(made.colours).map(([hex, share]) => ({
      hex,
      share,
      oklch: oklchOf(hex),
      name: colourName(hex).name,
      family: family(hex),
      lrv: lightReflectance(hex),
    })),
    coloursFrom: "measured",
    average: Object.keys(made.colours)[0] ?? null,
    contrast: null,
    busyness: null,
    kind: made.kind,
    kindFrom: "declared",
    motifMm: made.motifMm ?? null,
    motifFrom: made.motifMm ? "declared" : "unknown",
    repeat: null,
    repeatFrom: "unknown",
    period:
      made.period === undefined ? { acrossMm: null, upMm: null, halfDrop: false } : made.period,
    readsPlainFromM: made.readsPlainFromM ?? null,
    animal: made.animal ?? false,
    disagreements: made.disagreements ?? [],
    confirm: [],
    place,
  };
}

/** Judges a made-up room: its file is read by the program, its cloths and what is seen of them are given. */
export function schemeOf(made: MadeRoom): RoomScheme {
  const cards = Object.fromEntries(
    Object.entries(made.cloths).map(([id, c]) => [id, `cloth: ${id}\nwidth: 54"\n${c.card ?? ""}`]),
  );
  const objects = Object.keys(made.objects ?? {});
  const records = recordsOf({
    cloths: cards,
    objects: Object.fromEntries(objects.map((id) => [id, `object: ${id}`])),
    rooms: {
      den: `room: Den\n${made.room ?? ""}\ncloths: [${(
        made.listed ??
          Object.entries(made.cloths).map(([id, c]) => (c.role ? `{ ${id}: ${c.role} }` : id))
      ).join(", ")}]`,
    },
  });
  const room = records.projects[0]?.rooms[0];
  if (!room) throw new Error(records.diagnostics.map((d) => `${d.line}: ${d.message}`).join("\n"));
  const swatches = new Map(Object.entries(made.cloths).map(([id, c]) => [id, swatchOf(id, c)]));
  const seen = made.seen.map(seenPart);
  const used = seen.flatMap(({ item, title, kind, surface, cloth }) =>
    item && cloth ? [{ item, title, kind, surface, cloth }] : [],
  );
  const facts = new Map(
    [...used, ...seen.filter((s) => s.item)].map(({ item, title, kind }) => [
      item as string,
      { title, kind },
    ]),
  );
  return roomScheme({
    room,
    cloths: records.cloths,
    swatches,
    objects: new Map(
      Object.entries(made.objects ?? {}).map(([id, c]) => [
        id,
        { ...swatchOf(id, c), of: "object" as const },
      ]),
    ),
    seen,
    overhead: [],
    closed: made.closed?.map(seenPart) ?? seen,
    contacts: made.contacts ?? [],
    uses: [...used, ...(made.uses ?? [])],
    items: [...facts].map(
      ([item, own]): ItemFacts => ({
        item,
        ...own,
        atWindow: own.kind === "curtains" || own.kind === "blind",
        operation: null,
        isLoose: false,
        phase: 1,
        views: { doorM: null, seatM: null },
        ...made.items?.find((i) => i.item === item),
      }),
    ),
    objectPrices: made.objectPrices ?? [],
    unpriced: made.unpriced ?? [],
    sizes: made.sizes ?? { rugs: [], pictures: [] },
    language: made.language ?? "en-GB",
    units: made.units ?? "centimetres",
    on: made.on ?? "2026-11-25",
  });
}

function seenPart(part: MadeRoom["seen"][number], at: number): SeenPart {
  return {
    item: `item-${at}`,
    title: `thing ${at}`,
    kind: "cushion",
    surface: "face",
    cloth: null,
    object: null,
    colour: null,
    zone: "seat",
    wall: null,
    ...part,
  };
}

export const codesOf = (scheme: RoomScheme): string[] => scheme.findings.map((f) => f.code);
export const findingOf = (scheme: RoomScheme, code: string): Finding | undefined =>
  scheme.findings.find((f) => f.code === code);
