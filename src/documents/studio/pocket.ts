import { itemName } from "../../items/itemName.ts";
import { pricesIn } from "../../money/pricesIn.ts";
import type { FindingCode } from "../../scheme/finding.ts";
import { capital } from "../../units/capital.ts";
import type { Length } from "../../units/length.ts";
import { printMoney } from "../../units/money.ts";
import { printMeasured, printSize } from "../../units/printLength.ts";
import { spelled } from "../../units/spelling.ts";
import type { Page } from "../page.ts";
import { studioTree } from "../paths.ts";
import { clothSwatch } from "../pictures/clothSwatch.ts";
import { type PictureBook, pictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData, RoomData } from "../projectData.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { type Markup, marked } from "../words/marks.ts";
import { type Language, listed } from "../words/phrases.ts";
import { isTallCard } from "./pocketHeight.ts";
import { studioPage } from "./studioPage.ts";

/** A cutting on the card, in millimetres; cloth stands at one quarter of its size. */
const CUTTING = { width: 19, height: 15, scale: 4, name: "pocket-swatch" };

/** What a further find can mend: what the room has too little or none of. What is wrong with a cloth or a card is on the findings. */
const LACKS: ReadonlySet<FindingCode> = new Set([
  "no-main-cloth",
  "rungs-close",
  "plain-short",
  "colour-once",
  "hues-few",
  "one-light",
  "shares-level",
  "rug-small",
]);

/** A colour of the room, and in how many places it is. */
interface PocketColour {
  readonly hex: string;
  readonly name: string;
  readonly places: string;
}

/** What she has with her in a shop for one room. */
interface PocketCard {
  readonly room: string;
  readonly inHand: string;
  readonly colours: readonly PocketColour[];
  readonly cuttings: readonly { readonly swatch: Markup; readonly name: string }[];
  readonly lacks: readonly Markup[];
  /** Items of which a price or a cloth is still to come. */
  readonly open: readonly string[];
  readonly measures: readonly { readonly what: string; readonly size: Markup }[];
}

/** Cards for the pocket, one a room: its colours and cloths, what it still lacks, what is left to spend, and the measures that a find must fit. */
export function pocketPage(data: ProjectData): Page {
  const { project, studio } = data;
  const book = pictureBook(studioTree(project.id), "");
  return studioPage(data, "pocket", {
    to: ["findings", "samples"],
    model: {
      itsColours: spelled("Its colours", studio.fields.language),
      cards: data.rooms.map((room, at) => {
        const card = cardOf(data, room, book, `p${at}`);
        return { ...card, isTall: isTallCard({ ...card, lists: listsOf(card) }) };
      }),
    },
    pictures: book.pictures,
  });
}

function cardOf(data: ProjectData, room: RoomData, book: PictureBook, prefix: string): PocketCard {
  const { scheme, record } = room;
  const open = data.money.lines.filter((l) => l.room === record.id && l.open);
  return {
    room: capital(record.fields.room),
    inHand: inHandOf(data, room),
    colours: scheme.carried.map(({ colour, items, touches }) => ({
      hex: colour.hex,
      name: capital(colour.name),
      places: placesWords(items.length, touches.length),
    })),
    cuttings: scheme.roles.flatMap(({ cloth, name }, at) => {
      const swatch = data.swatches.get(cloth);
      return swatch
        ? [{ swatch: clothSwatch(swatch, book, CUTTING, `${prefix}-${at}`), name }]
        : [];
    }),
    lacks: scheme.findings
      .filter((f) => LACKS.has(f.code) && f.level !== "works" && f.accepted === null)
      .map((f) => marked(f.message)),
    open: room.items.flatMap((item) => {
      const labels = open.filter((l) => l.item === item.record.id).map((l) => l.label);
      const named = itemName(item.kind, item.record.title, data.studio.fields.language);
      return labels.length > 0 ? [`${named}: ${listed([...new Set(labels)])}`] : [];
    }),
    measures: measuresOf(data, room),
  };
}

/** The lines of a card's lists, plainly. */
function listsOf({ lacks, open, measures }: PocketCard): string[][] {
  const plain = ({ html }: Markup): string => html.replace(/<[^>]+>/g, "");
  return [lacks.map(plain), [...open], measures.map((m) => `${m.what} ${plain(m.size)}`)];
}

function placesWords(count: number, touches: number): string {
  if (count === 0) return touches > 0 ? "small touches" : "nowhere yet";
  // Always in figures, since one of the list may be over twelve.
  return `${count} place${count === 1 ? "" : "s"}`;
}

/** What is left of the room's own limit; empty where it has none. */
function inHandOf(data: ProjectData, { record }: RoomData): string {
  const totals = data.money.rooms.find((r) => r.room === record.id)?.totals;
  if (!totals?.budget || !totals.remaining) return "";
  const { language } = data.studio.fields;
  const lines = data.money.lines.filter((l) => l.room === record.id);
  const known = pricesIn(lines, [totals.client]);
  if (known === "none")
    return `${printMoney(totals.budget, language, true)} for the room; no price is in yet`;
  const left = totals.remaining;
  const sum = printMoney({ ...left, minor: left.minor < 0n ? -left.minor : left.minor }, language);
  return `${sum} ${left.minor < 0n ? "over" : "in hand"} of ${printMoney(totals.budget, language, true)}${known === "some" ? ", with prices still to come" : ""}`;
}

/** What a find has to fit: the floor, the height, windows and doors. */
function measuresOf(data: ProjectData, { record, plan }: RoomData): PocketCard["measures"] {
  const { units, language } = data.studio.fields;
  const size = (sizes: readonly Length[]): Markup => marked(printSize(sizes, units));
  const { height } = record.fields;
  // As it was typed, where it was.
  const floor = record.fields.floor ?? (plan.floor ? [plan.floor.length, plan.floor.width] : null);
  const said = (length: Length): string => printMeasured(length, units);
  const named = (what: string): string => capital(inVocabulary(what, language as Language));
  return [
    ...(floor ? [{ what: "Floor", size: marked(floor.map(said).join(" × ")) }] : []),
    ...(height ? [{ what: "Height", size: marked(said(height)) }] : []),
    ...[...plan.windows.values()].map((w) => ({
      what: w.isDoor ? named(`door ${w.name}`) : named(`window ${w.name}`),
      size: size([w.width, w.height]),
    })),
  ];
}
