import type { TaxedLine } from "../../money/lines.ts";
import { clothNames, payable } from "../../money/payable.ts";
import { isToCome } from "../../money/pricesIn.ts";
import { isClientsOwn } from "../../records/clientsOwn.ts";
import { isRoundingAlone } from "../../revisions/changes.ts";
import { capital, within as inSentence } from "../../units/capital.ts";
import type { Money } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { type Markup, marked } from "../words/marks.ts";
import { itemPhrase, type Language, listed } from "../words/phrases.ts";
import { starred, TO_COME } from "../words/stars.ts";

export interface BudgetRow {
  readonly what: string;
  readonly within: string;
  readonly buys: Markup;
  readonly sum: string;
}

/** What the work on a kind is called, where it is not making. */
const MAKING_WORDS: Readonly<Record<string, string>> = {
  paint: "painting",
  wallpaper: "hanging",
  armchair: "upholstery",
  sofa: "upholstery",
  "dining-chair": "upholstery",
  "drop-in-seat": "upholstery",
  ottoman: "upholstery",
  headboard: "upholstery",
};

/** What is bought ready with a kind is called, where it is no hardware. */
const READY_WORDS: Readonly<Record<string, string>> = { cushion: "filling", "seat-pad": "filling" };

/**
 * A sum as a client reads it: with a star where a price of its lines is still to come, and no figure at all where every price is. A fee
 * that is a share is open as long as its base is, and stands in the total as far as it is known.
 */
export function soFar(lines: readonly TaxedLine[], sum: string): string {
  if (lines.length > 0 && lines.every(isToCome)) return TO_COME;
  return starred(
    sum,
    lines.some((l) => l.open),
  );
}

/** What marks an item that is new, or another, since the last proposal that was sent. */
function changeMark({ changes }: ProjectData, line: TaxedLine | undefined): string {
  const is = (each: { readonly room: string; readonly item: string }) =>
    each.room === line?.room && each.item === line.item;
  if (changes?.added.some(is)) return "new";
  return changes?.changed.some((each) => is(each.now) && !isRoundingAlone(each)) ? "changed" : "";
}

/** A row of the budget with the lines that it sums. */
export interface ItemRow {
  readonly row: BudgetRow;
  readonly lines: readonly TaxedLine[];
}

/** A row for each item of some lines, in the order of the rooms' files. */
export function itemRows(
  data: ProjectData,
  lines: readonly TaxedLine[],
  print: (m: Money) => string,
): ItemRow[] {
  const keys = [...new Set(lines.map((l) => `${l.room}/${l.item}`))];
  const order = data.rooms.flatMap((r) => r.items.map((i) => `${r.record.id}/${i.record.id}`));
  keys.sort((a, b) => order.indexOf(a) - order.indexOf(b));
  const several = data.rooms.length > 1;
  return keys.map((key) => {
    const own = lines.filter((l) => `${l.room}/${l.item}` === key);
    const room = data.rooms.find((r) => r.record.id === own[0]?.room);
    const item = room?.items.find((i) => i.record.id === own[0]?.item);
    const face = (item?.record.fields as { readonly cloth?: string } | undefined)?.cloth ?? "";
    const clients = isClientsOwn(item?.record, face) ? data.records.cloths.get(face) : undefined;
    const cloths = [
      // It has no price and so no line, but it is in the room.
      ...(clients ? [`your own ${clients.fields.cloth}`] : []),
      ...clothNames(own),
    ];
    // Of paint its colour by name, where it has one.
    const { name } = (item?.record.fields ?? {}) as { readonly name?: string };
    const within =
      cloths.length > 0
        ? listed(cloths)
        : own.some((l) => l.what === "paint")
          ? (name ?? "paint")
          : "";
    const title = item
      ? item.kind.kind === "object"
        ? (data.objects.get(item.record.title)?.name ?? item.record.title)
        : `${capital(itemPhrase(item, data.studio.fields.language as Language))}, ${inSentence(item.record.title)}`
      : key;
    const parts = new Set(own.map((l) => l.what));
    const includes = [
      parts.has("lining") ? "lining" : null,
      parts.has("making") ? (MAKING_WORDS[item?.kind.kind ?? ""] ?? "making") : null,
      parts.has("hardware") ? (READY_WORDS[item?.kind.kind ?? ""] ?? "hardware") : null,
    ].filter((w): w is string => w !== null);
    return {
      lines: own,
      row: {
        what: title,
        within:
          several && room
            ? [within, inSentence(room.record.fields.room)].filter((w) => w !== "").join("; ")
            : within,
        buys: marked(
          [
            listed(includes),
            own.some((l) => l.unchosen) ? "yours to choose" : "",
            changeMark(data, own[0]),
          ]
            .filter((w) => w !== "")
            .join("; "),
        ),
        sum: soFar(own, print(payable(own, data.money.taxIncluded, data.money.currency))),
      },
    };
  });
}
