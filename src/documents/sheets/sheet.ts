import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Drawing } from "../../drawing/shape.ts";
import type { Amount } from "../../fields/amountField.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext, SheetGroup } from "../../items/itemDrawing.ts";
import { rateFor } from "../../money/itemLines.ts";
import { toMoney } from "../../money/toMoney.ts";
import { lotOfLength, lotWords } from "../../quantities/lotWords.ts";
import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import { isOpen } from "../../records/itemOptions.ts";
import type { Length } from "../../units/length.ts";
import { printMoney } from "../../units/money.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { sheetPath } from "../paths.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { cautionsOf } from "../words/cautions.ts";
import { dateInWords } from "../words/dates.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { type Markup, marked } from "../words/marks.ts";
import { runningWords } from "../words/pageStyle.ts";
import { capital, itemPhrase, type Language, listed } from "../words/phrases.ts";
import { boltRows, boltScale, boltWidth, offCutWords } from "./bolt.ts";
import { cutGroups, cutNumbers } from "./cutNumbers.ts";
import { lookUpsOf } from "./lookUps.ts";

/** A workshop drawing fits this box on paper, millimetres. */
const DRAWING_WIDTH = 118;
const DRAWING_HEIGHT = 102;
/** What stands below the views. */
const BELOW_HEIGHT = 50;
const SCALES = [1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 16, 20, 24, 25, 30, 32, 36, 40, 48, 50];

/** A drawing at the largest of the usual scales at which it and its dimensions fit the box. */
export function workshopDrawing(
  drawing: Drawing,
  idPrefix: string,
  width = DRAWING_WIDTH,
  height = DRAWING_HEIGHT,
): { svg: string; scale: number } {
  const at = (scale: number) =>
    renderDrawing(drawing, {
      scale: 1 / scale,
      bindings: () => null,
      style: "workshop",
      dimensions: true,
      idPrefix,
    });
  for (const scale of SCALES) {
    if (drawing.widthMm / scale > width || drawing.heightMm / scale > height) continue;
    const rendered = at(scale);
    if (rendered.widthMm <= width && rendered.heightMm <= height)
      return { svg: rendered.svg, scale };
  }
  return { svg: at(60).svg, scale: 60 };
}

function drawings(
  item: ItemData,
  context: DrawingContext,
  prefix: string,
): { svg: Markup; words: string }[] {
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  if (!entry) return [];
  const all = entry.workshop(item.record.fields as never, item.made as never, context);
  const views = all.filter((d) => !d.below);
  const beside = views.length > 1 && views.every((d) => d.heightMm > d.widthMm * 0.6);
  const width = beside ? (DRAWING_WIDTH - 4) / views.length : DRAWING_WIDTH;
  // With pieces laid flat below them the views are smaller, so that an item keeps to its page.
  const below = views.length < all.length;
  const heights = (at: number): number => {
    if (beside) return below ? 72 : 92;
    if (at > 0) return below ? 34 : 40;
    return views.length === 1 ? DRAWING_HEIGHT : below ? 56 : 66;
  };
  // Drawings that stand side by side share one scale, the smaller one's.
  const scales = views.map((d, at) => workshopDrawing(d, "", width, heights(at)).scale);
  const shared = beside ? Math.max(...scales) : null;
  return [...views, ...all.filter((d) => d.below)].map((drawing, at) => {
    const scale = drawing.below
      ? workshopDrawing(drawing, "", DRAWING_WIDTH, BELOW_HEIGHT).scale
      : (shared ?? (scales[at] as number));
    const { svg } = renderDrawing(drawing, {
      scale: 1 / scale,
      bindings: () => null,
      style: "workshop",
      dimensions: true,
      idPrefix: `${prefix}-d${at}`,
    });
    return { svg: { html: svg }, words: `${drawing.title}, one to ${scale}` };
  });
}

function cutRows(
  cloth: ClothQuantity,
  units: ProjectData["studio"]["fields"]["units"],
  several: boolean,
  data: ProjectData,
) {
  return cutGroups(cloth).map((cut) => {
    const first = cut.pieces[0] as (typeof cut.pieces)[number];
    const [w, h] = first.turned ? [first.height, first.width] : [first.width, first.height];
    const room =
      data.rooms.find((r) => r.record.id === first.room)?.record.fields.room ?? first.room;
    const item = data.rooms
      .find((r) => r.record.id === first.room)
      ?.items.find((i) => i.record.id === first.item);
    return {
      number: cut.numbers,
      piece: `${cut.words}${several ? `; ${room.toLowerCase()}` : ""}`,
      item: item ? item.record.title : first.item,
      count: cut.pieces.length,
      size: marked(`${printLength(w, units)} × ${printLength(h, units)}`),
      at: marked(
        `${lengthName(cloth, first.length)}${cut.pieces.map((p) => printLength(p.y, units)).join(", ")}`,
      ),
      left: marked([...new Set(cut.pieces.map((p) => printLength(p.x, units)))].join(", ")),
      because: marked(first.because),
    };
  });
}

/** `length 2, lot B: ` before distances that run from the start of one length of several. */
function lengthName(cloth: ClothQuantity, length: number): string {
  if (cloth.plan.lengths.length < 2) return "";
  const lot = lotOfLength(cloth, length);
  return `length ${length + 1}${lot === null ? "" : `, lot ${lot}`}: `;
}

/** Where in the pattern cutting begins; silent where nothing lies in register or any point serves as well. */
function startWords(cloth: ClothQuantity, units: UnitSystem): string {
  const { levels, pieces, start, starts, lengths } = cloth.plan;
  if (!pieces.some((p) => p.register?.y)) return "";
  const centred = pieces.some((p) => p.register?.x);
  if (!centred && levels.length > 0 && levels.every((l) => l.motifAboveFoot === null))
    return "The pieces are level with each other; any point of the pattern serves as a beginning.";
  const words = (each: Length) =>
    each.isZero() ? "at a motif’s middle" : `${printLength(each, units)} above a motif’s middle`;
  const used = starts.flatMap((each, i) =>
    lengths[i]?.isZero() ? [] : [{ start: each, name: `length ${i + 1}` }],
  );
  if (used.every((each) => each.start.equals(start))) return `Begin cutting ${words(start)}.`;
  return `Begin ${used.map((each) => `${each.name}: ${words(each.start)}`).join("; ")}.`;
}

/** What still stands before cutting; empty once the plan is released. */
function openReasons({ plan }: ClothQuantity): readonly string[] {
  if (plan.released || plan.notForCutting.length > 0) return plan.notForCutting;
  return ["All is checked; the studio has still to release this plan."];
}

function releasedWords({ plan }: ClothQuantity, language: Language): string {
  if (!plan.released) return "";
  return `Released to cut by ${plan.released.by}, ${dateInWords(plan.released.on, language)}.`;
}

/** The items as the maker makes them: worked out on the cloth that came, where it came otherwise than its card says. */
function madeOnArrival(data: ProjectData, room: RoomData, item: ItemData): ItemData {
  const rooms = data.quantities.asArrived.find((r) => r.plan.room.id === room.record.id);
  const made = rooms?.items.find((i) => i.record.id === item.record.id)?.made;
  return made ? { ...item, made } : item;
}

/** What is to come, or that the plan is made on what came. */
function suppliedWords({ lot, buy, spare }: ClothQuantity, units: UnitSystem): string {
  if (lot !== null) return " of what came";
  const start = spare.isZero()
    ? ""
    : `, which holds ${printLength(spare, units)} for where the pattern begins`;
  return `; ${buy.text} to be supplied${start}`;
}

/** A plan this short on paper has its words beside it. */
const SHORT_MM = 62;
const MOST_OFF_CUTS = 8;

function offCutSentence(cuts: readonly string[]): string {
  if (cuts.length === 0) return "No off-cut is worth keeping.";
  const more = cuts.length > MOST_OFF_CUTS ? ` and ${cuts.length - MOST_OFF_CUTS} sizes more` : "";
  return `Off-cuts to keep, width × length: ${cuts.slice(0, MOST_OFF_CUTS).join(", ")}${more}.`;
}

/** Which room is cut from which lot, where no one lot holds everything. */
function lotsWords(data: ProjectData, { lots }: ClothQuantity): string {
  const roomOf = (id: string) => data.rooms.find((r) => r.record.id === id);
  const words = lotWords(
    lots,
    (room) => roomOf(room)?.record.fields.room.toLowerCase() ?? room,
    (room, item) => roomOf(room)?.items.find((i) => i.record.id === item)?.record.title ?? item,
  );
  return words === "" ? "" : `No one lot holds everything. ${capital(words)}.`;
}

function clothBlock(data: ProjectData, cloth: ClothQuantity, prefix: string) {
  const units = data.studio.fields.units;
  const rooms = new Set(cloth.plan.pieces.map((p) => p.room));
  const pattern = cloth.plan.pattern;
  const repeat = pattern
    ? `Repeat ${printLength(pattern.vertical, units)}${pattern.match === "half-drop" ? ", half-drop" : ""}.`
    : "No repeat.";
  const motifs = pattern?.horizontal ? " Lozenge: middle of the main motif." : "";
  return {
    name: cloth.facts.name,
    head: marked(
      `${printLength(cloth.usableWidth, units)} between the selvedges. ${repeat} Drawn one to ${boltScale(cloth)}, face up; arrows point up the pattern, hatching is waste.${motifs} Distances run from the start and from the left selvedge.`,
    ),
    parts: boltRows(cloth, cutNumbers(cloth), units, prefix),
    short: boltWidth(cloth) <= SHORT_MM,
    offCuts: marked(offCutSentence(offCutWords(cloth, units))),
    used: marked(
      `${printLength(cloth.plan.length, units)} used${cloth.plan.lengths.length > 1 ? ` in ${cloth.plan.lengths.length} lengths` : ""}${suppliedWords(cloth, units)}. No plan can need less than ${printLength(cloth.plan.lowerBound, units)}.`,
    ),
    start: marked(startWords(cloth, units)),
    rows: cutRows(cloth, units, rooms.size > 1, data),
    lot: cloth.lot ?? "not yet received",
    lots: lotsWords(data, cloth),
    number: cloth.plan.number,
    notForCutting: openReasons(cloth),
    released: releasedWords(cloth, data.studio.fields.language),
    estimates: cloth.estimates.map((e) => marked(e.text)),
  };
}

/** Where the words column is about as tall as the page, the boxes to tick keep to the drawings' column; else they stand across both. */
const WORDS_TALL = 165;

/** About how tall the words column will be, in millimetres: 32 letters to a line of 4.2 mm, and 6.6 for a heading. */
function wordsHeight(groups: readonly SheetGroup[]): number {
  return groups.reduce(
    (sum, g) => sum + 6.6 + g.lines.reduce((n, l) => n + Math.ceil(l.length / 32) * 4.2, 0),
    0,
  );
}

/** What the maker is paid for an item: the charge agreed for it, else the maker's own rate. */
function rateWords(data: ProjectData, maker: string, item: ItemData): string {
  const { currency, language } = data.studio.fields;
  const agreed = (item.record.fields as { making?: Amount }).making;
  if (agreed) {
    const sum = toMoney(agreed, currency, item.record.place(["making"]), []);
    return `${printMoney(sum, language, true)} for this item, as agreed`;
  }
  // What only hangs is put up by the fitter, at the rate for fitting.
  const work = item.kind.kind === "object" ? "fitting" : item.kind.kind;
  const rate = rateFor(data.studio, maker, item.kind.kind) ?? rateFor(data.studio, maker, work);
  if (!rate) return "";
  const sum = toMoney(rate, currency, data.studio.place([]), []);
  return `${printMoney(sum, language, true)} per ${rate.per.replace("-", " ")}`;
}

/** An item whose options are open is drawn in the first of them, and nobody begins on it. */
function openWords(item: ItemData): string[] {
  return isOpen(item.record)
    ? [
        "Do not begin yet: the client has still to choose how this is made. What is drawn may change.",
      ]
    : [];
}

/** An object that only stands needs no maker; what hangs does. */
function isWork(item: ItemData): boolean {
  return item.kind.kind !== "object" || (item.made as { hangs?: boolean }).hangs === true;
}

function objectName(data: ProjectData, item: ItemData): string {
  const { object } = item.record.fields as { object: string };
  return data.objects.get(object)?.name ?? item.record.title;
}

/** The specification sheet of one maker for one room, or null where the room gives that maker nothing to make. */
export function sheetPage(data: ProjectData, room: RoomData, maker: string): Page | null {
  const items = room.items
    .filter((i) => i.maker === maker && isWork(i))
    .map((i) => madeOnArrival(data, room, i));
  if (items.length === 0) return null;
  const { project, studio } = data;
  const fields = studio.fields;
  const card = fields.makers?.[maker];
  if (!card) return null;
  const language = fields.language as Language;
  const path = sheetPath(maker, project.id, room.record.id);
  const context = lookUpsOf(data);
  const roomName = capital(room.record.fields.room);
  const cloths = data.quantities.cloths.filter(
    (c) =>
      c.maker === maker &&
      (c.plan.pieces.some((p) => p.room === room.record.id) ||
        c.estimates.some((e) => e.room === room.record.id)),
  );
  const notChecked = !room.record.fields.measured?.checked;
  const reasons = [...new Set(cloths.flatMap(openReasons))];
  const releases = [...new Set(cloths.map((c) => releasedWords(c, language)).filter(Boolean))];
  const released = reasons.length === 0 ? releases.join(" ") : "";
  const sheetCount = items.length;
  const model = {
    kind: "sheet",
    style: runningWords(
      `${project.fields.project}, ${roomName.toLowerCase()}`,
      `${card.name}, ${issueWords(data)}`,
      "",
      reasons.length > 0 ? "NOT FOR CUTTING" : released ? "Released to cut" : "",
    ),
    letter: fields.paper === "a3" ? "a4-page" : "letter-page",
    maker: card.name,
    studio: {
      name: fields.studio,
      phone: fields.phone ?? "",
      email: fields.email ?? "",
    },
    project: project.fields.project,
    room: roomName,
    delivery: project.fields.delivery ?? "",
    fitting: project.fields.fitting ? dateInWords(project.fields.fitting, language) : "",
    measured: room.record.fields.measured
      ? `Measured by ${room.record.fields.measured.by}, ${dateInWords(room.record.fields.measured.on, language)}${notChecked ? "; not yet check-measured" : `; check-measured ${dateInWords(room.record.fields.measured.checked as string, language)}`}.`
      : "Not yet measured.",
    reasons,
    released,
    items: items.map((item, at) => {
      const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
      const sheet = entry?.sheet(item.record.fields as never, item.made as never, context);
      const cuts = data.quantities.cloths.some((c) =>
        c.plan.pieces.some((p) => p.room === room.record.id && p.item === item.record.id),
      );
      return {
        heading:
          item.kind.kind === "object"
            ? objectName(data, item)
            : `${capital(itemPhrase(item, language))}: ${item.record.title}`,
        where: roomName,
        number: `Item ${at + 1} of ${sheetCount}`,
        rate: rateWords(data, maker, item),
        drawings: drawings(item, context, `i${at}`),
        groups: (sheet?.groups ?? []).map((g) => ({
          heading: g.heading,
          lines: g.lines.map(marked),
        })),
        checksAcross: wordsHeight(sheet?.groups ?? []) < WORDS_TALL,
        signs: (sheet?.signs ?? []).join(" "),
        checks: (sheet?.checks ?? []).map((c) => ({
          text: marked(c.text),
          blank: c.blank,
        })),
        questions: [...openWords(item), ...item.made.questions].map((q) =>
          marked(inVocabulary(q, language)),
        ),
        estimate: item.made.estimate ?? "",
        cautions: listed(
          cautionsOf([item], language).map((c) => c.word.replace(/\.$/, "").toLowerCase()),
        ),
        cut: cuts,
        materials: item.made.materials.map((m) => ({
          what: m.what,
          text: marked(inVocabulary(m.text, language)),
          by: m.by === "studio" ? "supplied by the studio" : "from your stock",
        })),
      };
    }),
    defaults: items
      .map((item) => ({
        title: item.record.title,
        rows: (
          data.quantities.items.find((i) => i.room === room.record.id && i.item === item.record.id)
            ?.defaultsUsed ?? []
        ).map((d) => ({
          what: d.what.replace(/^[\w-]+: /, ""),
          value: marked(d.value),
        })),
      }))
      .filter((d) => d.rows.length > 0),
    cautions: cautionsOf(items, language),
    cloths: cloths.map((c, at) => {
      const block = clothBlock(data, c, `cloth${at}`);
      if (!block.released || reasons.length === 0) return block;
      return { ...block, released: `${block.released} Wait: not every cloth of this sheet is.` };
    }),
    ways: [],
  };
  return {
    reader: "maker",
    project: project.id,
    room: `${project.id}/${room.record.id}`,
    path,
    title: `${card.name}: ${project.fields.project}, ${roomName.toLowerCase()}`,
    language,
    paper: fields.paper === "a3" ? "a4" : "letter",
    pdf: true,
    model,
    pictures: [],
  };
}

/** Every maker's sheets of a project, room by room. */
export function sheetPages(data: ProjectData): Page[] {
  const makers = Object.keys(data.studio.fields.makers ?? {}).sort();
  return makers.flatMap((maker) =>
    data.rooms.flatMap((room) => sheetPage(data, room, maker) ?? []),
  );
}
