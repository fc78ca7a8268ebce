import type { ProjectData } from "../../documents/projectData.ts";
import { type ClothPrice, clothPrice } from "../../money/clothPrice.ts";
import type { ClothQuantity, RoomMaterial } from "../../quantities/quantityTypes.ts";
import type { ClothRecord, ProjectRecord } from "../../records/records.ts";
import type { SwatchColour } from "../../swatches/swatch.ts";
import { type Money, sumMoney } from "../../units/money.ts";

/** Everything that is known of one card of the library in one project: what it is, what was planned, ordered, received, paid. */
export interface ClothEntry {
  readonly card: ClothRecord;
  /** The supplier's key, or null, and what it is called. */
  readonly supplier: string | null;
  readonly supplierName: string | null;
  readonly colours: readonly SwatchColour[];
  /** True where the colours were read off its photograph. */
  readonly measured: boolean;
  readonly uses: readonly {
    readonly room: string;
    readonly item: string;
    readonly surface: string;
  }[];
  readonly planned: readonly ClothQuantity[];
  readonly materials: readonly RoomMaterial[];
  readonly orders: NonNullable<ProjectRecord["fields"]["orders"]>;
  readonly receipts: NonNullable<ProjectRecord["fields"]["receipts"]>;
  readonly price: ClothPrice | null;
  /** What all that was bought of it cost in this project, its samples with it, before freight and tax. */
  readonly cost: { readonly trade: Money; readonly client: Money; readonly open: boolean };
}

/** The cards that a project's files name, used ones first, each by its file's name. */
export function clothEntries(data: ProjectData): ClothEntry[] {
  const entries = data.project.cards
    .filter((path) => path.startsWith("cloths/"))
    .flatMap((path) => [...data.records.cloths.values()].filter((card) => card.path === path))
    .map((card) => entryOf(data, card));
  return [...entries.filter(isUsed), ...entries.filter((entry) => !isUsed(entry))];
}

/** True where something is or was to be made of it, or came; false of what was only looked at. */
export function isUsed({ uses, planned, materials, orders, receipts }: ClothEntry): boolean {
  return [uses, planned, materials, orders, receipts].some((each) => each.length > 0);
}

function entryOf(data: ProjectData, card: ClothRecord): ClothEntry {
  const { studio, project, quantities, money } = data;
  const { id } = card;
  const swatch = data.swatches.get(id);
  const supplier = card.fields.supplier ?? null;
  const lines = money.lines.filter((l) => l.cloth === id && l.what !== "freight");
  const sum = (key: "trade" | "client") =>
    sumMoney(
      lines.map((l) => l[key]),
      money.currency,
    );
  return {
    card,
    supplier,
    supplierName: supplier && (studio.fields.suppliers?.[supplier]?.name ?? supplier),
    colours: swatch?.colours ?? [],
    measured: swatch?.coloursFrom === "measured",
    uses: data.rooms.flatMap((room) =>
      room.items.flatMap(({ record, kind }) =>
        kind
          .cloths(record.fields as never)
          .filter((use) => use.cloth === id)
          .map(({ surface }) => ({ room: room.record.id, item: record.id, surface })),
      ),
    ),
    planned: quantities.cloths.filter((each) => each.cloth === id),
    materials: quantities.materials.filter((each) => each.cloth === id),
    orders: (project.fields.orders ?? []).filter((order) => order.cloth === id),
    receipts: (project.fields.receipts ?? []).filter((receipt) => receipt.cloth === id),
    price: clothPrice(card, studio, money.currency, []),
    cost: { trade: sum("trade"), client: sum("client"), open: lines.some((l) => l.open) },
  };
}
