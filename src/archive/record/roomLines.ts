import type { ItemData, ProjectData, RoomData } from "../../documents/projectData.ts";
import { dateInWords } from "../../documents/words/dates.ts";
import { keyWords } from "../../documents/words/inVocabulary.ts";
import { pricesIn } from "../../money/pricesIn.ts";
import { capital } from "../../units/capital.ts";
import { addMoney, type Money, printMoney, sumMoney } from "../../units/money.ts";
import { printMeasured } from "../../units/printLength.ts";
import { makerName } from "./clothText.ts";
import { madeLines } from "./madeLines.ts";
import { entryLines, plainSpaces } from "./plainText.ts";

/** A room's part of the record: its size and who measured it, then each item with its cloths, its maker and its price. */
export function roomLines(room: RoomData, data: ProjectData): string[] {
  const { fields, path } = room.record;
  const { units, language } = data.studio.fields;
  const { measured, height } = fields;
  const checked = measured?.checked ? `, checked ${dateInWords(measured.checked, language)}` : "";
  return [
    "",
    "",
    `${plainSpaces(fields.room).toUpperCase()}  (files/${path})`,
    ...entryLines("Height", height ? printMeasured(height, units) : ""),
    ...entryLines(
      "Measured",
      measured
        ? `by ${measured.by}, ${dateInWords(measured.on, language)}${checked}`
        : "nobody says by whom",
    ),
    ...entryLines("Client’s own", standingWords(room, data)),
    ...room.items
      .filter((item) => !isStanding(item, data))
      .flatMap((item) => ["", ...itemLines(item, room, data)]),
  ];
}

/** True of a thing of the client's that only stands there: nothing was made or bought. */
function isStanding({ kind, record }: ItemData, data: ProjectData): boolean {
  const { object } = record.fields as Painted;
  const card = kind.kind === "object" ? data.records.objects.get(object ?? "") : undefined;
  return card?.fields.owner === "client";
}

function standingWords({ items }: RoomData, data: ProjectData): string {
  const names = items
    .filter((item) => isStanding(item, data))
    .map(({ record }) => data.records.objects.get((record.fields as Painted).object ?? ""))
    .map((card) => `${card?.fields.object} (files/${card?.path})`);
  return [...new Set(names)].join("; ");
}

/** What a paint's own fields are called; other kinds have none of them. */
interface Painted {
  readonly colour?: string;
  readonly name?: string;
  readonly finish?: string;
  readonly object?: string;
}

function itemLines(item: ItemData, room: RoomData, data: ProjectData): string[] {
  const { record, kind, maker } = item;
  const language = data.studio.fields.language as "en-US";
  const fields = record.fields as Painted;
  const card = kind.kind === "object" ? data.records.objects.get(fields.object ?? "") : undefined;
  const name = card ? card.fields.object : `${record.title}, ${kind.words[language].one}`;
  const cloths = kind.cloths(record.fields as never).map(({ surface, cloth }) => {
    const called = data.records.cloths.get(cloth)?.fields.cloth ?? cloth;
    return `${keyWords(surface, language)} ${called}`;
  });
  const supplier = card?.fields.supplier;
  const lines: [string, string][] = [
    ["Card", card ? `files/${card.path}` : ""],
    ["Supplier", supplier ? (data.studio.fields.suppliers?.[supplier]?.name ?? supplier) : ""],
    ["Cloth", [...new Set(cloths)].join("; ")],
    [
      "Colour",
      kind.kind === "paint"
        ? [fields.name, fields.colour, fields.finish].filter((w) => w !== undefined).join(", ")
        : "",
    ],
    ...madeLines(item, room, data),
    ["Maker", card || maker === null ? "" : makerName(maker, data)],
    ["Way", wayWords(item)],
    ["Price", priceWords(item, room, data)],
  ];
  return [
    `  ${plainSpaces(capital(name))}`,
    ...lines.flatMap(([label, words]) => entryLines(label, words, 4)),
  ];
}

function wayWords({ record }: ItemData): string {
  const option = record.options?.[record.stands ?? 0];
  if (!option) return "";
  return `${option.title}${option.answer === "yes" ? ", as the client chose" : "; the client has not chosen"}`;
}

/** What it cost the studio, and what the client pays for it with the tax that comes on top. */
function priceWords({ record }: ItemData, room: RoomData, { money, studio }: ProjectData): string {
  const own = money.lines.filter((l) => l.room === room.record.id && l.item === record.id);
  if (own.length === 0) return "";
  const sum = (of: (line: (typeof own)[number]) => Money): Money =>
    sumMoney(own.map(of), money.currency);
  const trade = sum((l) => l.trade);
  const client = sum((l) => (money.taxIncluded ? l.client : addMoney(l.client, l.tax)));
  const known = pricesIn(own, [trade, client]);
  if (known === "none") return "its price was still to come";
  const print = (each: Money): string => printMoney(each, studio.fields.language);
  const open = known === "some" ? "; a price was still to come" : "";
  return `${print(trade)} to the studio, ${print(client)} to the client with tax${open}`;
}
