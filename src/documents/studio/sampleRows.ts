import { toMoney } from "../../money/toMoney.ts";
import { clothWaitsFor } from "../../quantities/unchosen.ts";
import { isFitted } from "../../records/hasReached.ts";
import type { ClothRecord } from "../../records/records.ts";
import { isSampled } from "../../sourcing/leadTimes.ts";
import {
  daysWaiting,
  type OpenPoint,
  openPoints,
  type SampleState,
  sampleStateIn,
} from "../../sourcing/samples.ts";
import type { Schedule } from "../../sourcing/scheduleTypes.ts";
import { capital } from "../../units/capital.ts";
import { type Money, printMoney } from "../../units/money.ts";
import { clothSwatch } from "../pictures/clothSwatch.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { dayInWords, daysWords, shortDate } from "../words/dates.ts";
import type { Markup } from "../words/marks.ts";
import { listed } from "../words/phrases.ts";
import { ordersWords } from "./orderedWords.ts";

/** A sample in the tray. */
export interface SampleRow {
  readonly state: SampleState | "not-needed";
  readonly swatch: Markup | null;
  readonly name: string;
  /** Supplier and the supplier's own number. */
  readonly from: string;
  /** Its days, and how long it has been waited for. */
  readonly days: string;
  readonly fee: string;
  /** By when it must be ordered, or that it was. */
  readonly order: string;
  /** What is still needed before it is ordered; where it was ordered unapproved, that. */
  readonly needed: string;
}

/** A sample in millimetres on paper; cloth stands at one quarter of its size. */
const SIZE = { width: 24, height: 18, scale: 4, name: "tray-swatch" };

/** The cards of a project: those of its rooms' mixes, of what is bought, and of the ways that the client may still choose. */
export function trayCards(data: ProjectData): ClothRecord[] {
  const { cloths, materials } = data.quantities;
  const own = new Set(cloths.filter((c) => c.clientsOwn).map((c) => c.cloth));
  const ids = [
    ...data.rooms.flatMap((room) => room.scheme.roles.map((role) => role.cloth)),
    ...cloths.map((c) => c.cloth),
    ...materials.flatMap((m) => m.cloth ?? []),
    ...data.choices.flatMap((c) => c.options.flatMap((o) => o.uses.map((use) => use.cloth))),
  ];
  return [...new Set(ids)]
    .filter((id) => !own.has(id))
    .flatMap((id) => data.records.cloths.get(id) ?? []);
}

/** A sample's fee in the studio's currency; null where its card names none. */
export function feeOf({ studio }: ProjectData, card: ClothRecord): Money | null {
  const fee = card.fields.sample?.fee;
  // What is wrong with a sum was said where it was priced.
  return fee ? toMoney(fee, studio.fields.currency, card.place(["sample", "fee"]), []) : null;
}

export function sampleRow(
  data: ProjectData,
  card: ClothRecord,
  schedule: Schedule,
  book: PictureBook,
  id: string,
): SampleRow {
  const { language, suppliers } = data.studio.fields;
  const { supplier, reference, sample } = card.fields;
  const swatch = data.swatches.get(card.id);
  const fee = feeOf(data, card);
  const ordered = ordersWords(data, card.id);
  const step = schedule.steps.find((s) => s.kind === "order" && s.cloth === card.id);
  const isUsed = step !== undefined || data.quantities.cloths.some((c) => c.cloth === card.id);
  const name = supplier === undefined ? "" : (suppliers?.[supplier]?.name ?? supplier);
  const day = ordered ? "on its order" : "when it is ordered";
  const credit = sample?.credited ? `credited ${day}` : "not credited";
  return {
    state: sampleStateIn(data.project, card),
    swatch: swatch ? clothSwatch(swatch, book, SIZE, id) : null,
    name: card.fields.cloth,
    from: [name, reference ?? ""].filter((w) => w !== "").join(", "),
    days: daysOf(data, card),
    fee: fee ? `${printMoney(fee, language)}, ${credit}` : "No fee",
    order:
      ordered ||
      (step && !step.done && !isFitted(data.project)
        ? `Order by ${dayInWords(step.on, language).replaceAll(" ", "\u00a0")}`
        : ""),
    needed: isFitted(data.project) ? "" : neededWords(data, card, ordered !== "", isUsed),
  };
}

function daysOf(data: ProjectData, card: ClothRecord): string {
  const { language } = data.studio.fields;
  const { ordered, arrived, approved, returned } = card.fields.sample ?? {};
  const waits = isFitted(data.project) ? null : daysWaiting(card, data.dated);
  const each = [
    ["asked for", ordered],
    ["came", arrived],
    ["approved", approved],
    ["went back", returned],
  ].flatMap(([what, day]) => (day ? [`${what} ${shortDate(day, language)}`] : []));
  const words = listed(each);
  const since = waits === null ? "" : ` (${daysWords(waits)} ago)`;
  return words === "" ? "" : `${capital(words)}${since}`;
}

function neededWords(
  data: ProjectData,
  card: ClothRecord,
  isOrdered: boolean,
  isUsed: boolean,
): string {
  const open = openPoints(card, data.quantities).filter(
    (point) => point !== "sample" || isSampled(card),
  );
  if (isOrdered)
    return open.includes("sample")
      ? "It was ordered, and its sample is not approved: have a cutting of the lot approved before it is cut."
      : "";
  if (open.length === 0) return "";
  const items = [...new Set(clothWaitsFor(data.quantities, card.id).map((u) => u.title))];
  const words: Readonly<Record<OpenPoint, string>> = {
    sample: "the sample’s approval",
    choice: `the client’s choice: ${listed(items)}`,
    repeat: "its repeat",
    price: "its price",
    supplier: "who sells it",
  };
  const before = isUsed ? "Before it is ordered" : "Not used yet; before it is ordered";
  return `${before}: ${listed(open.map((point) => words[point]))}.`;
}
