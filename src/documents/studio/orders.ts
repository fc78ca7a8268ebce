import { pieceOf } from "../../money/unpricedGoods.ts";
import type { RoomMaterial } from "../../quantities/quantityTypes.ts";
import { isOfCard } from "../../sourcing/needs.ts";
import { printMoney } from "../../units/money.ts";
import type { Page } from "../page.ts";
import type { ProjectData } from "../projectData.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";
import { orderRows, titleOf, waitOf } from "./orderRows.ts";
import { studioPage } from "./studioPage.ts";

type Hardware = readonly {
  readonly what: string;
  readonly supplier?: string;
  readonly count?: number;
}[];

/** The hardware that is written at an item of a room. */
function hardwareOf(data: ProjectData, room: string | null, item: string | null): Hardware {
  const record = data.rooms
    .find((r) => r.record.id === room)
    ?.items.find((i) => i.record.id === item)?.record;
  return (record?.fields as { readonly hardware?: Hardware } | undefined)?.hardware ?? [];
}

/** What an item needs of things bought ready that its hardware names, by the place of the piece: one row says size and price. */
function named(data: ProjectData, room: string, item: string): ReadonlyMap<number, RoomMaterial> {
  const own = data.quantities.materials.filter((m) => m.room === room && m.item === item);
  const hardware = hardwareOf(data, room, item);
  const all = own.map((need): [number, RoomMaterial] => [pieceOf(need, hardware), need]);
  return new Map(all.filter(([at]) => at >= 0));
}

/** What a piece is called, with what the item says of it: a name that says no more than the thing itself is said once. */
function pieceWords(label: string, need: RoomMaterial | undefined, language: Language): string {
  if (!need) return label;
  const thing = inVocabulary(need.what, language);
  const isSame = thing.toLowerCase().startsWith(label.toLowerCase());
  return isSame ? thing : `${label} (${thing})`;
}

/** Hardware and objects that are bought ready: one row for each, with its supplier and what the studio pays. */
function piecesOf(data: ProjectData) {
  const { language, suppliers } = data.studio.fields;
  const name = (key: string | undefined): string =>
    key ? (suppliers?.[key]?.name ?? key) : "no supplier named";
  const lines = data.money.lines.filter((l) => l.what === "hardware" || l.what === "object");
  return lines.flatMap((line, at) => {
    const item = data.rooms
      .find((r) => r.record.id === line.room)
      ?.items.find((i) => i.record.id === line.item);
    const fields = item?.record.fields as
      | {
          readonly object?: string;
          readonly count?: number;
        }
      | undefined;
    const card = fields?.object ? data.records.objects.get(fields.object) : undefined;
    // Two pieces of an item may bear one name, from two suppliers: the lines stand in the order of the file.
    const isBeside = (other: typeof line): boolean =>
      other.what === "hardware" && other.room === line.room && other.item === line.item;
    const place = lines.slice(0, at).filter(isBeside).length;
    const piece = hardwareOf(data, line.room, line.item)[place];
    const need =
      line.what === "hardware" && line.room && line.item
        ? named(data, line.room, line.item).get(place)
        : undefined;
    return line.room && line.item
      ? [
          {
            room: line.room,
            item: line.item,
            what: marked(pieceWords(line.label, need, language as Language)),
            count: String((line.what === "object" ? fields?.count : piece?.count) ?? 1),
            supplier: name(line.what === "object" ? card?.fields.supplier : piece?.supplier),
            sum: line.open ? "price to come" : printMoney(line.trade, language),
          },
        ]
      : [];
  });
}

/** Rows in the order in which their cloths first stand, those of one cloth after each other. */
function byCloth<R extends { readonly name: string }>(rows: readonly R[]): R[] {
  const names = [...new Set(rows.map((r) => r.name))];
  return names.flatMap((name) => rows.filter((r) => r.name === name));
}

/** The order list of a project, by supplier: for the studio alone, with trade prices and the suppliers' own numbers. */
export function ordersPage(data: ProjectData): Page {
  const { project, studio } = data;
  const language = studio.fields.language;
  const all = orderRows(data);
  const suppliers = [...new Set(all.map((r) => r.supplier))].sort();
  const others = data.quantities.materials.filter(
    (m) => m.by === "studio" && !isOfCard(m) && pieceOf(m, hardwareOf(data, m.room, m.item)) < 0,
  );
  return studioPage(data, "orders", {
    to: ["findings", "schedule", "receiving", "samples", "account"],
    model: {
      groups: suppliers.map((key) => {
        const card = studio.fields.suppliers?.[key];
        return {
          name: card?.name ?? (key || "No supplier named"),
          account: card?.account ?? "",
          email: card?.email ?? "",
          phone: card?.phone ?? "",
          rows: byCloth(all.filter((r) => r.supplier === key)),
        };
      }),
      materials: others.map((m) => ({
        what: marked(inVocabulary(m.what, language as Language)),
        // Of what is counted the number alone: its name stands beside it.
        text: marked(m.unit === "piece" ? `${m.amount.valueOf()}` : m.text),
        item: titleOf(data, m.room, m.item),
        wait: waitOf(data, m),
      })),
      pieces: piecesOf(data).map((p) => ({
        ...p,
        wait: waitOf(data, p),
        item: titleOf(data, p.room, p.item),
      })),
      deliver: project.fields.delivery ?? studio.fields.address ?? "",
    },
  });
}
