import { spellColourName } from "../../colour/colourName.ts";
import type { ProjectData } from "../../documents/projectData.ts";
import { backFor } from "../../documents/words/backFor.ts";
import { dateInWords } from "../../documents/words/dates.ts";
import { keyWords } from "../../documents/words/inVocabulary.ts";
import { clothText } from "../../quantities/text/clothText.ts";
import { itemsCalled } from "../../quantities/text/itemsCalled.ts";
import { rollsIn } from "../../quantities/text/rollsIn.ts";
import { togetherWords } from "../../quantities/text/togetherWords.ts";
import { sharedBuyOf } from "../../quantities/together/sharedBuyOf.ts";
import type { Length } from "../../units/length.ts";
import { printMoney } from "../../units/money.ts";
import { printMeasured } from "../../units/printLength.ts";
import { type ClothEntry, isUsed } from "./clothEntries.ts";
import { entryLines, plainSpaces } from "./plainText.ts";

/** A cloth's part of the record: which it was, where it is, how much was planned, ordered and received, and what it cost. */
export function clothLines(entry: ClothEntry, data: ProjectData): string[] {
  const { card, supplierName } = entry;
  const { fields } = card;
  const language = data.studio.fields.language as "en-US";
  const day = (iso: string) => dateInWords(iso, language);
  const { sample } = fields;
  const lines: [string, string][] = [
    ["Supplier", supplierName ?? "none named"],
    ["Their number", fields.reference ?? ""],
    ["Collection", fields.collection ?? ""],
    ["What it is", whatWords(entry, data)],
    ["Care", [fields.care, fields.fire].filter((w) => w !== undefined).join("; fire: ")],
    ["Colours", colourWords(entry, language)],
    ["Used for", usedWords(entry, data)],
    ...plannedWords(entry, data).map((words): [string, string] => ["Planned", words]),
    ...entry.orders.map((order): [string, string] => ["Ordered", orderWords(order, data)]),
    ...entry.receipts.map((receipt): [string, string] => ["Received", receiptWords(receipt, data)]),
    ["Price", priceWords(entry, language)],
    ["Cost here", costWords(entry, language)],
    ["Sample", sample?.approved ? `approved by the client on ${day(sample.approved)}` : ""],
    ["Photograph", fields.photo ? `files/cloths/${fields.photo.file}` : ""],
    ["Note", fields.private ?? ""],
  ];
  lines.push(...unknownWords(entry, data).map((words): [string, string] => ["Not known", words]));
  return [
    "",
    `${plainSpaces(fields.cloth)}  (files/${card.path})`,
    ...lines.flatMap(([label, words]) => entryLines(label, words)),
  ];
}

/** What a cloth that was used lacks, where the project's file tells it of others: where it tells it of none, that is said once. */
function unknownWords(entry: ClothEntry, { project }: ProjectData): string[] {
  if (!isUsed(entry)) return [];
  const { orders, receipts } = project.fields;
  const isBought = !entry.planned.some((each) => each.clientsOwn);
  return [
    ...(orders?.length && isBought && entry.orders.length === 0 ? ["what was ordered of it"] : []),
    ...(receipts?.length && entry.receipts.length === 0 ? ["which lot came"] : []),
  ];
}

function whatWords({ card: { fields } }: ClothEntry, data: ProjectData): string {
  const { units } = data.studio.fields;
  const { repeat, roll } = fields;
  const across = repeat?.across ? `${printMeasured(repeat.across, units)} across` : "";
  const along = repeat?.up ? `${printMeasured(repeat.up, units)} up` : "";
  return [
    fields.type ?? (roll ? "wallcovering" : ""),
    fields.fibre,
    fields.weight,
    fields.width ? `${printMeasured(fields.width, units)} wide` : "",
    roll
      ? `rolls of ${printMeasured(roll.width, units)} × ${printMeasured(roll.length, units)}`
      : "",
    repeat
      ? `repeat ${[along, across, repeat.match ?? ""].filter((w) => w !== "").join(", ")}`
      : "",
    fields.rubs ? `rubs ${fields.rubs}` : "",
  ]
    .filter((words) => words !== undefined && words !== "")
    .join("; ");
}

function colourWords({ colours, measured }: ClothEntry, language: string): string {
  if (colours.length === 0) return "";
  const each = colours
    .map((c) => `${spellColourName(c.name, language)} ${c.hex} ${shareWords(c.share)}`)
    .join(", ");
  return `${each} (${measured ? "read from its photograph, so about" : "as its card says"})`;
}

const shareWords = (share: number): string =>
  share < 0.01 ? "under 1 %" : `${Math.round(share * 100)} %`;

function usedWords({ uses }: ClothEntry, data: ProjectData): string {
  const called = itemsCalled(data.quantities, data.studio.fields.language as "en-US");
  const roomOf = (id: string) =>
    data.rooms.find((r) => r.record.id === id)?.record.fields.room ?? id;
  const items = [...new Set(uses.map(({ room, item }) => `${room}/${item}`))];
  const each = items.map((key) => {
    const own = uses.filter((use) => `${use.room}/${use.item}` === key);
    const { room, item } = own[0] as (typeof uses)[number];
    const name = called(room, item);
    const where = name.startsWith(`${roomOf(room)}: `) ? name : `${roomOf(room)}: ${name}`;
    const surfaces = own.map((use) => keyWords(use.surface, data.studio.fields.language));
    return `${where} (${[...new Set(surfaces)].join(", ")})`;
  });
  return each.length === 0 ? "nothing in the end: it was only looked at" : each.join("; ");
}

function plannedWords({ planned, materials }: ClothEntry, data: ProjectData): string[] {
  const called = itemsCalled(data.quantities, data.studio.fields.language as "en-US");
  const { units } = data.studio.fields;
  return [
    ...planned.map((each) => {
      const cut = `${clothText(each.plan.length, units)} is cut by plan ${each.plan.number}`;
      const { released } = each.plan;
      const free = released
        ? `, released to cut by ${released.by} on ${dateInWords(released.on, data.studio.fields.language)}`
        : ", never released to cut";
      const lot = each.lot === null ? "" : `, from lot ${each.lot}`;
      const own = each.clientsOwn ? " (the client’s own)" : "";
      return `for ${makerName(each.maker, data)}: ${each.buy.text}${own}; ${cut}${lot}${free}`;
    }),
    ...planned
      .flatMap((each) => sharedBuyOf(data.quantities, each) ?? [])
      .filter((each, at, all) => all.indexOf(each) === at)
      .map((each) => `bought once: ${togetherWords(each, (maker) => makerName(maker, data))}`),
    ...materials.map((each) => `for ${called(each.room, each.item)}: ${each.text}`),
  ];
}

/** `5 rolls` of what is sold by the roll; null of all else. */
function cameAs(
  { cloth, length }: { readonly cloth: string; readonly length: Length },
  { records }: ProjectData,
): string | null {
  return rollsIn(length, records.cloths.get(cloth));
}

function orderWords(order: ClothEntry["orders"][number], data: ProjectData): string {
  const { units, language } = data.studio.fields;
  const from = order.supplier
    ? `, from ${data.studio.fields.suppliers?.[order.supplier]?.name ?? order.supplier}`
    : "";
  const number = order.number ? `, number ${order.number}` : "";
  return `${cameAs(order, data) ?? printMeasured(order.length, units)} on ${dateInWords(order.on, language)}${number}${from}`;
}

function receiptWords(receipt: ClothEntry["receipts"][number], data: ProjectData): string {
  const { units, language } = data.studio.fields;
  const p = (length: Parameters<typeof printMeasured>[0]) => printMeasured(length, units);
  const { width, repeat, flaws, released } = receipt;
  const parts = [
    `lot ${receipt.lot}: ${cameAs(receipt, data) ?? p(receipt.length)}`,
    width ? `${p(width)} wide` : "",
    repeat ? `repeat ${p(repeat)}` : "",
    receipt.on ? `came on ${dateInWords(receipt.on, language)}` : "",
    receipt.washed ? `washed on ${dateInWords(receipt.washed, language)}, measured after` : "",
    receipt.maker ? `to ${makerName(receipt.maker, data)}` : "",
    ...(flaws ?? []).map(
      (flaw) => `${flaw.what ?? "a flaw"} from ${p(flaw.from)}, ${p(flaw.length)} long`,
    ),
    receipt.returned
      ? [
          `went back on ${dateInWords(receipt.returned.on, language)}`,
          backFor(receipt.returned),
          ...(receipt.returned.because ? [plainSpaces(receipt.returned.because)] : []),
        ].join(", ")
      : "",
    released
      ? `released to cut by ${released.by} on ${dateInWords(released.on, language)}${released.plan ? `, plan ${released.plan}` : ""}`
      : "",
  ];
  return parts.filter((words) => words !== "").join("; ");
}

function priceWords({ price, card }: ClothEntry, language: string): string {
  if (price === null) return "none written";
  const { on } = card.fields.price ?? {};
  const dated = on ? `, as of ${dateInWords(on, language)}` : "";
  return `${printMoney(price.trade, language)} a ${price.per} to the studio, ${printMoney(price.client, language)} to the client${dated}`;
}

function costWords({ cost }: ClothEntry, language: string): string {
  if (cost.open) return "its price was still to come";
  if (cost.trade.minor === 0n && cost.client.minor === 0n) return "";
  return `${printMoney(cost.trade, language)} to the studio, ${printMoney(cost.client, language)} to the client, with samples, before freight and tax`;
}

/** A maker's name as studio.md has it. */
export function makerName(maker: string | null, data: ProjectData): string {
  return maker === null ? "no maker" : (data.studio.fields.makers?.[maker]?.name ?? maker);
}
