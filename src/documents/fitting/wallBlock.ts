import type { Wall } from "../../room/walls.ts";
import { capital, within } from "../../units/capital.ts";
import { printLength } from "../../units/printLength.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { checkRow } from "../sheets/blockWords.ts";
import { type Row, rowsOf, scaleOf } from "../sheets/drawingRows.ts";
import { TEXT_WIDTH } from "../sheets/itemHeights.ts";
import { headingOf, openWords } from "../sheets/itemWords.ts";
import { sinceSent } from "../sheets/sinceSent.ts";
import { workshopDrawings } from "../sheets/workshopDrawings.ts";
import { inItemWords } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import { type Language, listed } from "../words/phrases.ts";
import type { NumberedItem } from "./fittingItems.ts";
import { wallDrawing } from "./wallDrawing.ts";

/** How tall a wall itself is drawn at most, with few things on it and with many, and what each chain of measures below it takes, millimetres. */
const TALLEST = { few: 51, many: 60 } as const;
const CHAIN = 7.6;
/** The column of words beside a drawing with its gap, as the style sheet has them. */
const BESIDE = 66;
/** With more things on it than this a wall has the whole width where it is drawn larger so, or its measures would crowd. */
const MOST_BESIDE = 2;

/** What is painted or papered on a wall, which comes before anything is fixed to it; woodwork too, since a frame may be drilled. */
function before(data: ProjectData, room: RoomData, wall: Wall | null): string {
  const on = room.plan.covers.filter(({ faces }) => faces.some((face) => face.wall === wall?.name));
  const isFirst = ({ record }: ItemData) =>
    on.some(({ item }) => item === record.id) ||
    (record.fields as { on?: unknown }).on === "woodwork";
  const language = data.studio.fields.language as Language;
  const names = room.items
    .filter(isFirst)
    .map(({ kind, record }) => `${within(record.title)} (${kind.words[language].one})`);
  return names.length > 0 ? `First, and dry: ${listed([...new Set(names)])}.` : "";
}

/** Items that an item's file says come before it. */
function afterWords(room: RoomData, { item }: NumberedItem): string {
  const ids = (item.record.fields as { after?: readonly string[] }).after ?? [];
  const names = room.items.filter(({ record }) => ids.includes(record.id));
  return names.length > 0 ? `After ${listed(names.map(({ record }) => record.title))}.` : "";
}

/** Who made an item that comes to be fitted; nothing of an object, which nobody makes. */
function madeWords(data: ProjectData, { item }: NumberedItem, fitter: string): string {
  if (item.kind.kind === "object" || item.maker === null || item.maker === fitter) return "";
  const name = data.studio.fields.makers?.[item.maker]?.name;
  return name ? `Made by ${name}.` : "";
}

/** Of several alike at one place only that one is known; a picture asks for itself, and tie-backs are two by nature. */
function othersAsked({ item }: NumberedItem): string[] {
  const { count = 1 } = item.record.fields as { count?: number };
  return count > 1 && item.kind.kind !== "object" && item.kind.kind !== "tieback"
    ? [`There are ${count} alike, and the place of one is said: where do the others go?`]
    : [];
}

/** One thing that goes up, as the sheet shows it. */
function entry(data: ProjectData, room: RoomData, one: NumberedItem, of: number, fitter: string) {
  const language = data.studio.fields.language as Language;
  const say = (text: string) => inItemWords(text, one.item.kind.kind, language);
  const { note } = one.item.record.fields as { note?: string };
  const since = sinceSent(data, room.record.id, one.item.record.id);
  const about = [madeWords(data, one, fitter), afterWords(room, one)].filter((t) => t !== "");
  return {
    number: one.number,
    of: `${one.number} of ${of}`,
    heading: headingOf(data, one.item, language),
    about: about.join(" "),
    groups: [
      ...(since === "" ? [] : [{ heading: "Not as it was", lines: [marked(since)] }]),
      ...one.line.groups.map(({ heading, lines }) => ({
        heading: capital(say(heading)),
        lines: lines.map((l) => marked(say(l))),
      })),
      ...(note ? [{ heading: "Note", lines: [marked(note)] }] : []),
    ],
    questions: [...openWords(one.item), ...othersAsked(one), ...one.line.questions].map((q) =>
      marked(say(q)),
    ),
    checks: one.line.checks.map((c) => checkRow({ ...c, text: say(c.text) })),
  };
}

/** One wall of the fitter's sheet: its drawing, and what goes up on it; or a bed by its name; null for what no wall is named of. */
export function wallBlock(
  data: ProjectData,
  room: RoomData,
  on: Wall | string | null,
  items: readonly NumberedItem[],
  { of, fitter, at }: { readonly of: number; readonly fitter: string; readonly at: number },
) {
  const { units } = data.studio.fields;
  const wall = typeof on === "string" ? null : on;
  const piece = typeof on === "string" ? on : null;
  const drawing = wall && wallDrawing(wall, items, room.plan.height, units);
  const chains = new Set(
    drawing?.dimensions.filter(({ side }) => side === "bottom").map(({ level }) => level),
  );
  const few = items.length <= MOST_BESIDE;
  const tallestMm = (few ? TALLEST.few : TALLEST.many) + CHAIN * chains.size;
  const rowsIn = (widthMm: number) =>
    rowsOf(drawing ? [drawing] : [], { widthMm, heightMm: tallestMm, tallestMm });
  const [narrow, whole] = [rowsIn(TEXT_WIDTH - BESIDE), rowsIn(TEXT_WIDTH)];
  const scaleIn = (rows: readonly Row[]) => Math.max(0, ...rows.map(scaleOf));
  const beside = few || scaleIn(narrow) <= scaleIn(whole);
  return {
    heading: wall ? `${capital(wall.name)} wall` : piece ? `On ${piece}` : "No wall is named",
    size: wall ? marked(`${printLength(wall.length, units)} long`) : null,
    before: piece ? "" : before(data, room, wall),
    beside: beside && drawing !== null,
    drawings: workshopDrawings(beside ? narrow : whole, `wall${at}`),
    entries: items.map((one) => entry(data, room, one, of, fitter)),
  };
}
