import { itemName } from "../../items/itemName.ts";
import { capital, within } from "../../units/capital.ts";
import { issueWords } from "../board/board.ts";
import { isFitter } from "../fitting/fitter.ts";
import type { Page } from "../page.ts";
import { sheetPath } from "../paths.ts";
import type { ItemData, ProjectData, RoomData } from "../projectData.ts";
import { cautionsOf } from "../words/cautions.ts";
import { dateInWords } from "../words/dates.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { runningWords } from "../words/pageStyle.ts";
import { type Language, listed } from "../words/phrases.ts";
import { clothBlock, releasedWords } from "./clothBlock.ts";
import { sheetItem } from "./itemWords.ts";
import { lookUpsOf } from "./lookUps.ts";
import { madeOnArrival } from "./madeOnArrival.ts";
import { itemReasons, openReasons } from "./openReasons.ts";
import { sheetBlocks } from "./sheetBlocks.ts";
import { goneSince } from "./sinceSent.ts";
import { usualValues } from "./usualValues.ts";

/** An object that only stands needs no maker; what hangs does, and stands on the fitter's own sheet. */
function isWork(data: ProjectData, item: ItemData): boolean {
  if (item.kind.kind !== "object") return true;
  return (item.made as { hangs?: boolean }).hangs === true && !isFitter(data, item.maker);
}

/** An item's title; with what it is where another of the sheet has the same one. */
function ownTitle(item: ItemData, items: readonly ItemData[], language: Language): string {
  const { title } = item.record;
  const alone = items.every((each) => each === item || each.record.title !== title);
  return alone ? title : itemName(item.kind, title, language);
}

/** The specification sheet of one maker for one room, or null where the room gives that maker nothing to make. */
export function sheetPage(data: ProjectData, room: RoomData, maker: string): Page | null {
  const items = room.items
    .filter((i) => i.maker === maker && isWork(data, i))
    .map((i) => madeOnArrival(data, room, i));
  if (items.length === 0) return null;
  const { project, studio } = data;
  const fields = studio.fields;
  const card = fields.makers?.[maker];
  if (!card) return null;
  const language = fields.language as Language;
  const path = sheetPath(maker, project.id, room.record.id);
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
  const context = lookUpsOf(data);
  const plans = cloths.map((c, at) => {
    const block = clothBlock(data, c, `cloth${at}`);
    if (!block.released || reasons.length === 0) return block;
    return { ...block, released: `${block.released} Wait: not every cloth of this sheet is.` };
  });
  const blocks = sheetBlocks(
    items.map((item) => ({
      ...sheetItem(data, maker, room.record.id, item, context),
      reasons: itemReasons(cloths, room.record.id, item.record.id),
    })),
    plans,
    { where: `${roomName}, ${project.fields.project}`, released },
    paper,
  );
  const model = {
    kind: "sheet",
    style: runningWords(
      `${project.fields.project}, ${within(roomName)}`,
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
    released,
    blocks,
    gone: goneSince(data, room.record.id, maker),
    defaults: usualValues(
      items.map((item) => ({
        title: ownTitle(item, items, language),
        rows:
          data.quantities.items.find((i) => i.room === room.record.id && i.item === item.record.id)
            ?.defaultsUsed ?? [],
      })),
    ).map(({ titles, rows }) => ({
      title: titles.length > 3 && titles.length === items.length ? "Every item" : listed(titles),
      rows: rows.map(({ what, value }) => ({ what: inVocabulary(what, language), value })),
    })),
    cautions: cautionsOf(items, language, "maker"),
    ways: [],
  };
  return {
    reader: "maker",
    project: project.id,
    room: `${project.id}/${room.record.id}`,
    path,
    title: `${card.name}: ${project.fields.project}, ${within(roomName)}`,
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
