import type { Amount } from "../../fields/amountField.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import { rateFor } from "../../money/itemLines.ts";
import { toMoney } from "../../money/toMoney.ts";
import { isOpen } from "../../records/itemOptions.ts";
import { capital } from "../../units/capital.ts";
import { printMoney } from "../../units/money.ts";
import { issueWords } from "../board/board.ts";
import type { Page } from "../page.ts";
import { sheetPath } from "../paths.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { cautionsOf } from "../words/cautions.ts";
import { dateInWords } from "../words/dates.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import { runningWords } from "../words/pageStyle.ts";
import { countWord, itemPhrase, type Language, listed } from "../words/phrases.ts";
import { clothBlock, openReasons, releasedWords } from "./clothBlock.ts";
import { type ItemRoom, type ItemWords, roomForDrawings, roomOnTwoPages } from "./itemHeights.ts";
import { lookUpsOf } from "./lookUps.ts";
import { packed } from "./packBlocks.ts";
import { usualValues } from "./usualValues.ts";
import { type WorkshopDrawing, workshopDrawings } from "./workshopDrawings.ts";

/** The items as the maker makes them: worked out on the cloth that came, where it came otherwise than its card says. */
function madeOnArrival(data: ProjectData, room: RoomData, item: ItemData): ItemData {
  const rooms = data.quantities.asArrived.find((r) => r.plan.room.id === room.record.id);
  const made = rooms?.items.find((i) => i.record.id === item.record.id)?.made;
  return made ? { ...item, made } : item;
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

/** A line to tick; what is to be written in is kept beside the words that ask for it. */
function checkRow({ text, blank }: { text: string; blank: string | null }) {
  const at = blank === null ? -1 : text.lastIndexOf("; ");
  return at < 0
    ? { text: marked(text), asked: null, blank }
    : { text: marked(text.slice(0, at + 1)), asked: marked(text.slice(at + 2)), blank };
}

/** What stands on an item's second page, said on the first. */
function onNext(drawings: readonly WorkshopDrawing[], materials: number): string {
  const others = drawings.filter((d) => d.onSecond).length;
  const parts = [
    others > 0 ? `${countWord(others)} more ${others > 1 ? "drawings" : "drawing"}` : "",
    materials > 0 ? "materials" : "",
    "what to check",
  ];
  return `Next page: ${listed(parts.filter((part) => part !== ""))}.`;
}

/** A drawing smaller than one to this is hard to work from. */
const LEAST_LEGIBLE = 40;

/** How an item's page is divided, and its drawings: over two pages where one would leave them too small to work from. */
function itemPage(
  item: ItemData,
  context: DrawingContext,
  prefix: string,
  words: ItemWords,
  paper: "letter" | "a4",
): { room: ItemRoom; drawings: WorkshopDrawing[] } {
  const on = (room: ItemRoom, secondMm: number | null = null) => ({
    room,
    drawings: workshopDrawings(item, context, prefix, room.drawingsMm, secondMm),
  });
  const smallest = (drawings: readonly WorkshopDrawing[]) =>
    Math.max(0, ...drawings.map((d) => d.scale));
  const onePage = on(roomForDrawings(words, paper));
  if (onePage.room.wordsBelow || smallest(onePage.drawings) <= LEAST_LEGIBLE) return onePage;
  const { first, secondMm } = roomOnTwoPages(words, paper);
  const twoPages = on(first, secondMm);
  return smallest(twoPages.drawings) < smallest(onePage.drawings) ? twoPages : onePage;
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
  const paper = fields.paper === "a3" ? "a4" : "letter";
  const itemBlock = (item: ItemData, at: number) => {
    const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
    const sheet = entry?.sheet(item.record.fields as never, item.made as never, context) ?? {
      groups: [],
      checks: [],
      signs: [],
    };
    const cuts = data.quantities.cloths.some((c) =>
      c.plan.pieces.some((p) => p.room === room.record.id && p.item === item.record.id),
    );
    const questions = [...openWords(item), ...item.made.questions].map((q) =>
      inVocabulary(q, language),
    );
    const materials = item.made.materials.map((m) => ({
      what: m.what,
      text: inVocabulary(m.text, language),
      by: m.by === "studio" ? "supplied by the studio" : "from your stock",
    }));
    const cautions = listed(
      cautionsOf([item], language).map((c) => c.word.replace(/\.$/, "").toLowerCase()),
    );
    const rate = rateWords(data, maker, item);
    const estimate = item.made.estimate ?? "";
    const frames = [
      reasons.length > 0 ? `NOT FOR CUTTING. ${reasons.join(" ")}` : released,
      estimate === "" ? "" : `ESTIMATE. ${estimate}`,
    ].filter((text) => text !== "");
    const foot = [
      cautions && `Cautions on the last page: ${cautions}.`,
      rate && `Your charge: ${rate}.`,
    ].join(" ");
    const words = { sheet, frames, questions, materials: materials.map((m) => m.text), foot };
    const { room: page, drawings } = itemPage(item, context, `i${at}`, words, paper);
    return {
      heading:
        item.kind.kind === "object"
          ? objectName(data, item)
          : `${capital(itemPhrase(item, language))}: ${item.record.title}`,
      where: roomName,
      number: `Item ${at + 1} of ${items.length}`,
      rate,
      drawings,
      groups: sheet.groups.map((g) => ({ heading: g.heading, lines: g.lines.map(marked) })),
      checksAcross: page.checksAcross,
      wordsBelow: page.wordsBelow,
      overleaf: page.overleaf,
      onNext: page.overleaf ? onNext(drawings, materials.length) : "",
      signs: sheet.signs.join(" "),
      checks: sheet.checks.map(checkRow),
      questions: questions.map(marked),
      estimate,
      cautions,
      cut: cuts,
      materials: materials.map((m) => ({ ...m, text: marked(m.text) })),
    };
  };
  const model = {
    kind: "sheet",
    style: runningWords(
      `${project.fields.project}, ${roomName.toLowerCase()}`,
      `${card.name}, ${issueWords(data)}`,
      "",
      reasons.length > 0 ? "NOT FOR CUTTING" : released ? "Released to cut" : "",
    ),
    letter: `${paper}-page`,
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
    items: items.map((item, at) => itemBlock(item, at)),
    defaults: usualValues(
      items.map((item) => ({
        title: item.record.title,
        rows:
          data.quantities.items.find((i) => i.room === room.record.id && i.item === item.record.id)
            ?.defaultsUsed ?? [],
      })),
    ).map(({ titles, rows }) => ({
      title: titles.length > 3 && titles.length === items.length ? "Every item" : listed(titles),
      rows,
    })),
    cautions: cautionsOf(items, language),
    cloths: packed(cloths.map((c, at) => clothBlock(data, c, `cloth${at}`))).map((block) => {
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
    paper,
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
