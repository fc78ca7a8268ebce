import type { TaxedLine } from "../../money/lines.ts";
import { pieceOf } from "../../money/unpricedGoods.ts";
import type { RoomMaterial } from "../../quantities/quantityTypes.ts";
import { printMoney } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { inVocabulary } from "../words/inVocabulary.ts";
import { marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";

/** The fields of an item that say what is bought ready for it. */
interface Fields {
  readonly object?: string;
  readonly count?: number;
  readonly hardware?: readonly {
    readonly what: string;
    readonly supplier?: string;
    readonly count?: number;
  }[];
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

/** What a piece is called, with what the item says of it: a name that says no more than the thing itself is said once. */
function pieceWords(label: string, need: RoomMaterial | undefined, language: Language): string {
  if (!need) return label;
  const thing = inVocabulary(need.what, language);
  const isSame = thing.toLowerCase().startsWith(label.toLowerCase());
  return isSame ? thing : `${label} (${thing})`;
}

/** Hardware and objects that are bought ready: one row for each, with its supplier and what the studio pays. */
export function orderPieces(data: ProjectData) {
  const { language, suppliers } = data.studio.fields;
  const name = (key: string | undefined): string =>
    key ? (suppliers?.[key]?.name ?? key) : "no supplier named";
  const row = (line: TaxedLine, what: string, count = 1, supplier?: string) => ({
    room: line.room as string,
    item: line.item as string,
    what: marked(what),
    count: String(count),
    supplier: name(supplier),
    sum: line.open ? "price to come" : printMoney(line.trade, language),
  });
  const lines = data.money.lines.filter((l) => l.what === "hardware" || l.what === "object");
  return lines
    .filter(({ room, item }) => room && item)
    .map((line) => {
      const { object, count, hardware } = fieldsOf(data, line.room, line.item);
      const isBeside = ({ what, room, item }: TaxedLine) =>
        what === line.what && room === line.room && item === line.item;
      if (line.what === "object") {
        const card = object ? data.records.objects.get(object) : undefined;
        return row(line, line.label, count, card?.fields.supplier);
      }
      // Two pieces of an item may bear one name, from two suppliers: the lines stand in the order of the file.
      const place = lines.filter(isBeside).indexOf(line);
      const piece = hardware?.[place];
      const need = data.quantities.materials
        .filter(({ room, item }) => room === line.room && item === line.item)
        .findLast((each) => placeOf(data, each) === place);
      const what = pieceWords(line.label, need, language as Language);
      return row(line, what, piece?.count, piece?.supplier);
    });
}
