import type { ProjectData } from "../../documents/projectData.ts";
import { type Json, planJson } from "../../quantities/text/toJson.ts";
import type { Length } from "../../units/length.ts";
import type { Money } from "../../units/money.ts";
import { type ClothEntry, clothEntries, isUsed } from "./clothEntries.ts";

/** What the machine form of a record is written from beside the project. */
export interface RecordJsonInput {
  readonly data: ProjectData;
  readonly on: string;
  readonly program: string;
  readonly money: unknown;
  readonly quantities: unknown;
}

const mm = (length: Length | undefined): number | null => length?.toMm() ?? null;
const minor = (sum: Money | undefined): number | null => (sum ? Number(sum.minor) : null);

/** The record of a project for another program: lengths in millimetres, sums in minor units, days as ISO 8601 writes them. */
export function recordJson({ data, on, program, money, quantities }: RecordJsonInput) {
  const { project, studio, sent, dated } = data;
  const { client, status, revision, fitting } = project.fields;
  return {
    /** The edition of this record's own form. */
    form: 1,
    program,
    archived: on,
    project: project.id,
    name: project.fields.project,
    studio: studio.fields.studio,
    client: client.name,
    address: client.address ?? null,
    status,
    revision: revision ?? null,
    dated,
    fitting: fitting ?? null,
    language: studio.fields.language,
    currency: studio.fields.currency,
    cloths: clothEntries(data).map(clothJson),
    rooms: data.rooms.map((room) => ({
      room: room.record.id,
      name: room.record.fields.room,
      file: `files/${room.record.path}`,
      heightMm: mm(room.record.fields.height),
      measured: room.record.fields.measured ?? null,
      items: room.items.map(({ record, kind, maker, made }) => ({
        item: record.id,
        kind: record.kind,
        title: record.title,
        maker,
        way: record.options?.[record.stands ?? 0]?.title ?? null,
        cloths: kind
          .cloths(record.fields as never)
          .map(({ surface, cloth }) => ({ surface, cloth })),
        figures: made.figures,
      })),
    })),
    sent,
    money,
    quantities,
  };
}

function clothJson(entry: ClothEntry): Json {
  const { card, price, cost } = entry;
  const { fields } = card;
  return {
    cloth: card.id,
    name: fields.cloth,
    file: `files/${card.path}`,
    photo: fields.photo ? `files/cloths/${fields.photo.file}` : null,
    used: isUsed(entry),
    supplier: entry.supplier,
    supplierName: entry.supplierName,
    reference: fields.reference ?? null,
    collection: fields.collection ?? null,
    widthMm: mm(fields.width),
    repeat: fields.repeat
      ? {
          verticalMm: mm(fields.repeat.up),
          horizontalMm: mm(fields.repeat.across),
          match: fields.repeat.match ?? "straight",
        }
      : null,
    fibre: fields.fibre ?? null,
    care: fields.care ?? null,
    colours: entry.colours.map(({ hex, name, share }) => ({ hex, name, share })),
    uses: entry.uses.map((use) => ({ ...use })),
    planned: entry.planned.map((each) => ({
      maker: each.maker,
      lot: each.lot,
      buyMm: each.buy.length.toMm(),
      text: each.buy.text,
      clientsOwn: each.clientsOwn,
      plan: planJson(each.plan),
    })),
    materials: entry.materials.map(({ room, item, text }) => ({ room, item, text })),
    orders: entry.orders.map((order) => ({
      lengthMm: mm(order.length),
      on: order.on,
      number: order.number ?? null,
      supplier: order.supplier ?? entry.supplier,
    })),
    receipts: entry.receipts.map((receipt) => ({
      lot: receipt.lot,
      lengthMm: mm(receipt.length),
      widthMm: mm(receipt.width),
      repeatMm: mm(receipt.repeat),
      on: receipt.on ?? null,
      washed: receipt.washed ?? null,
      maker: receipt.maker ?? null,
      flaws: (receipt.flaws ?? []).map((flaw) => ({
        fromMm: mm(flaw.from),
        lengthMm: mm(flaw.length),
        what: flaw.what ?? null,
      })),
      returned: receipt.returned
        ? {
            on: receipt.returned.on,
            for: receipt.returned.for ?? "replacement",
            because: receipt.returned.because ?? null,
          }
        : null,
      released: receipt.released
        ? { ...receipt.released, plan: receipt.released.plan ?? null }
        : null,
    })),
    price: price && { trade: minor(price.trade), client: minor(price.client), per: price.per },
    cost: { trade: minor(cost.trade), client: minor(cost.client), open: cost.open },
  };
}
