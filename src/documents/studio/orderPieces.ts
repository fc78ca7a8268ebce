import type { HardwareFields } from "../../fields/itemBase.ts";
import type { TaxedLine } from "../../money/lines.ts";
import { pieceOf } from "../../money/unpricedGoods.ts";
import type { RoomMaterial } from "../../quantities/quantityTypes.ts";
import type { Length } from "../../units/length.ts";
import { printMoney } from "../../units/money.ts";
import { printMeasured, type UnitSystem } from "../../units/printLength.ts";
import type { ProjectData } from "../projectData.ts";
import { dateInWords } from "../words/dates.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";

/** How many there are of a piece that is bought ready, and what has become of it. */
type Piece = Pick<HardwareFields, "count" | "ordered" | "arrived">;

/** The fields of an item that say what is bought ready for it. */
interface Fields extends Piece {
  readonly object?: string;
  readonly pole?: Length;
  readonly hardware?: readonly HardwareFields[];
}

/** `Here since 3 December 2026`, `Ordered on 20 November 2026`, or nothing. */
function stateWords(of: Piece | undefined, language: Language): string {
  const { ordered, arrived } = of ?? {};
  if (arrived) return `Here since ${dateInWords(arrived, language)}`;
  return ordered ? `Ordered on ${dateInWords(ordered, language)}` : "";
}

function fieldsOf(data: ProjectData, room: string | null, item: string | null): Fields {
  return (data.rooms.find((r) => r.record.id === room)?.items.find((i) => i.record.id === item)
    ?.record.fields ?? {}) as Fields;
}

/** Which piece of its item's hardware something that is needed is; -1 where it is none. */
const placeOf = (data: ProjectData, need: RoomMaterial): number =>
  pieceOf(need, fieldsOf(data, need.room, need.item).hardware ?? []);

/** True of what stands among the pieces with its price, so that it is no row of its own. */
export function isAmongPieces(data: ProjectData, need: RoomMaterial): boolean {
  return placeOf(data, need) >= 0;
}

/** What hangs from a window's whole length, as people call it. */
const RAIL = /\b(?:pole|rod|track|rail)s?\b/iu;

/** A pole or track whose name says no length has its item's, where that was written. */
function withLength(label: string, pole: Length | undefined, units: UnitSystem): string {
  return pole && RAIL.test(label) && !/\d/u.test(label)
    ? `${label}, ${printMeasured(pole, units)}`
    : label;
}

/** What a piece is called, with what the item says of it: a name that says no more than the thing itself is said once. */
function pieceWords(label: string, need: RoomMaterial | undefined, language: Language): string {
  if (!need) return label;
  const thing = inVocabulary(need.what, language);
  const isSame = thing.toLowerCase().startsWith(label.toLowerCase());
  return isSame ? thing : `${label} (${thing})`;
}

/** Hardware and objects that are bought ready: one row for each, with its supplier and what the studio pays. */
export function orderPieces(data: ProjectData) {
  const { suppliers, units } = data.studio.fields;
  const language = data.studio.fields.language as Language;
  const name = (key: string | undefined): string =>
    key ? (suppliers?.[key]?.name ?? key) : "no supplier named";
  const row = (
    line: TaxedLine,
    { what, of, supplier }: { what: string; of: Piece | undefined; supplier: string | undefined },
  ) => ({
    room: line.room as string,
    item: line.item as string,
    what: marked(what),
    count: String(of?.count ?? 1),
    supplierKey: supplier ?? "",
    supplier: name(supplier),
    state: stateWords(of, language),
    price: line.open ? null : line.trade,
    sum: line.open ? "price to come" : printMoney(line.trade, language),
  });
  const lines = data.money.lines.filter((l) => l.what === "hardware" || l.what === "object");
  return lines
    .filter(({ room, item }) => room && item)
    .map((line) => {
      const fields = fieldsOf(data, line.room, line.item);
      const { object, hardware } = fields;
      const isBeside = ({ what, room, item }: TaxedLine) =>
        what === line.what && room === line.room && item === line.item;
      if (line.what === "object") {
        const card = object ? data.records.objects.get(object) : undefined;
        return row(line, { what: line.label, of: fields, supplier: card?.fields.supplier });
      }
      // Two pieces of an item may bear one name, from two suppliers: the lines stand in the order of the file.
      const place = lines.filter(isBeside).indexOf(line);
      const piece = hardware?.[place];
      const need = data.quantities.materials
        .filter(({ room, item }) => room === line.room && item === line.item)
        .findLast((each) => placeOf(data, each) === place);
      const label = withLength(line.label, fields.pole, units);
      const what = pieceWords(label, need, language);
      return row(line, { what, of: piece, supplier: piece?.supplier });
    });
}
