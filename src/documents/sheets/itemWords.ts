import type { Drawing } from "../../drawing/shape.ts";
import type { Amount } from "../../fields/amountField.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext, ItemSheet } from "../../items/itemDrawing.ts";
import { rateFor } from "../../money/itemLines.ts";
import { toMoney } from "../../money/toMoney.ts";
import { isOpen } from "../../records/itemOptions.ts";
import { capital } from "../../units/capital.ts";
import { printMoney } from "../../units/money.ts";
import type { ItemData, ProjectData } from "../projectData.ts";
import { cautionsOf } from "../words/cautions.ts";
import { inItemWords } from "../words/inVocabulary.ts";
import { itemPhrase, type Language, listed } from "../words/phrases.ts";
import type { ItemWords } from "./itemHeights.ts";
import { sinceSent } from "./sinceSent.ts";

/** An item as it goes on a maker's sheet, before it has a place: its words without the frames at its head, and its drawings. */
export interface SheetItem {
  readonly item: ItemData;
  readonly heading: string;
  readonly estimate: string;
  readonly words: Omit<ItemWords, "head" | "frames">;
  readonly views: readonly Drawing[];
}

/** What the maker is paid for a kind of item or for a work, by its own rate; nothing where it has none. */
export function makersRate(data: ProjectData, maker: string, work: string): string {
  const { currency, language } = data.studio.fields;
  const rate = rateFor(data.studio, maker, work);
  if (!rate) return "";
  const sum = toMoney(rate, currency, data.studio.place([]), []);
  return `${printMoney(sum, language, true)} per ${rate.per.replace("-", " ")}`;
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
  return makersRate(data, maker, item.kind.kind) || makersRate(data, maker, work);
}

/** An item whose options are open is drawn in the first of them, and nobody begins on it. */
export function openWords(item: ItemData): string[] {
  return isOpen(item.record)
    ? [
        "Do not begin yet: the client has still to choose how this is made. What is drawn may change.",
      ]
    : [];
}

/** An item's heading on a sheet: what it is and its title; an object's own name. */
export function headingOf(data: ProjectData, item: ItemData, language: Language): string {
  if (item.kind.kind !== "object")
    return `${capital(itemPhrase(item, language))}: ${item.record.title}`;
  const { object } = item.record.fields as { object: string };
  return data.objects.get(object)?.name ?? item.record.title;
}

/** A sheet's own lines in those words; what the studio wrote as a note stands as it was written. */
function spokenSheet(sheet: ItemSheet, say: (text: string) => string): ItemSheet {
  return {
    groups: sheet.groups.map((group) =>
      group.heading === "Note" ? group : { ...group, lines: group.lines.map(say) },
    ),
    checks: sheet.checks.map((check) => ({ ...check, text: say(check.text) })),
    signs: sheet.signs.map(say),
  };
}

const SILENT: ItemSheet = { groups: [], checks: [], signs: [] };

/** The words and drawings of one item for its maker. */
export function sheetItem(
  data: ProjectData,
  maker: string,
  room: string,
  item: ItemData,
  context: DrawingContext,
): SheetItem {
  const language = data.studio.fields.language as Language;
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  const fields = item.record.fields as never;
  const made = item.made as never;
  const say = (text: string) => inItemWords(text, item.kind.kind, language);
  const cautions = cautionsOf([item], language, "maker").map((c) =>
    c.word.replace(/[.:]$/, "").toLowerCase(),
  );
  return {
    item,
    heading: headingOf(data, item, language),
    estimate: say(item.made.estimate ?? ""),
    words: {
      sheet: spokenSheet(entry?.sheet(fields, made, context) ?? SILENT, say),
      since: sinceSent(data, room, item.record.id),
      questions: [...openWords(item), ...item.made.questions].map(say),
      materials: item.made.materials.map((m) => ({
        text: say(m.text),
        by: m.by === "studio" ? "studio" : "maker",
      })),
      cautions: listed(cautions),
      rate: rateWords(data, maker, item),
    },
    views: entry?.workshop(fields, made, context) ?? [],
  };
}
