import type { TaxedLine } from "../../money/lines.ts";
import {
  addMoney,
  compareMoney,
  type Money,
  minorDigits,
  money,
  printMoney,
  subtractMoney,
  sumMoney,
} from "../../units/money.ts";
import type { PictureBook } from "../pictures/pictureBook.ts";
import type { ProjectData } from "../projectData.ts";
import { type Markup, marked } from "../words/marks.ts";
import { capital, listed } from "../words/phrases.ts";
import { spelled } from "../words/spelling.ts";
import { type Stair, type StairPart, stairSvg } from "./stair.ts";

export interface BudgetRow {
  readonly what: string;
  readonly within: string;
  readonly buys: Markup;
  readonly sum: string;
}

export interface BudgetGroup {
  readonly name: string;
  readonly sentence: string;
  readonly sum: string;
  readonly rows: readonly BudgetRow[];
}

export interface Budget {
  readonly sum: string;
  readonly sentence: string;
  readonly head: string;
  readonly picture: Markup;
  readonly currency: string;
  readonly groups: readonly BudgetGroup[];
  readonly closing: readonly { readonly what: string; readonly sum: string }[];
  readonly total: string;
  readonly open: readonly string[];
  readonly instalments: readonly {
    readonly name: string;
    readonly due: string;
    readonly sum: string;
  }[];
  readonly rooms: readonly {
    readonly name: string;
    readonly sum: string;
    readonly budget: string;
    readonly words: string;
  }[];
  readonly footnote: string;
}

const STEP_NAMES = ["First", "Second", "Third", "Fourth", "Fifth"];
const STEP_WORDS: Readonly<Record<number, string>> = {
  1: "Quick to do and easy to change. It sets the colours at once.",
  2: "Made to measure, once its samples have hung in the room.",
  3: "Hard to undo, so it waits until the rest has proved itself.",
};

/** What the work on a kind is called, where it is not making. */
const MAKING_WORDS: Readonly<Record<string, string>> = {
  paint: "painting",
  wallpaper: "hanging",
  armchair: "upholstery",
};

function stepName(at: number, of: number): string {
  return at === of - 1 && of > 1 ? "Last" : (STEP_NAMES[at] ?? `Step ${at + 1}`);
}

/** What a client pays for some lines: prices, and the tax that comes on top. */
export function payable(lines: readonly TaxedLine[], included: boolean, currency: string): Money {
  return sumMoney(
    lines.map((l) => (included ? l.client : addMoney(l.client, l.tax))),
    currency,
  );
}

interface ItemRow {
  readonly row: BudgetRow;
  readonly lines: readonly TaxedLine[];
}

function itemRows(
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
    const cloths = [
      ...new Set(
        own
          .filter((l) => l.cloth && l.what !== "freight" && l.what !== "lining")
          .map((l) => l.label),
      ),
    ];
    const within =
      cloths.length > 0 ? listed(cloths) : own.some((l) => l.what === "paint") ? "paint" : "";
    const title = item
      ? item.kind.kind === "object"
        ? (data.objects.get(item.record.title)?.name ?? item.record.title)
        : `${capital(item.kind.words[data.studio.fields.language as "en-US"].one)}, ${item.record.title.charAt(0).toLowerCase()}${item.record.title.slice(1)}`
      : key;
    const parts = new Set(own.map((l) => l.what));
    const includes = [
      parts.has("lining") ? "lining" : null,
      parts.has("making") ? (MAKING_WORDS[item?.kind.kind ?? ""] ?? "making") : null,
      parts.has("hardware") ? "hardware" : null,
    ].filter((w): w is string => w !== null);
    return {
      lines: own,
      row: {
        what: several && room ? `${title}` : title,
        within:
          several && room
            ? [within, room.record.fields.room.toLowerCase()].filter((w) => w !== "").join("; ")
            : within,
        buys: marked(includes.length > 0 ? listed(includes) : ""),
        sum: own.some((l) => l.open)
          ? `${print(payable(own, data.money.taxIncluded, data.money.currency))} *`
          : print(payable(own, data.money.taxIncluded, data.money.currency)),
      },
    };
  });
}

function stairPart(data: ProjectData, line: TaxedLine, book: PictureBook): StairPart {
  const sum = data.money.taxIncluded ? line.client : addMoney(line.client, line.tax);
  const swatch = line.cloth ? data.swatches.get(line.cloth) : undefined;
  const tile = swatch && line.what !== "freight" ? book.tile(swatch, 5) : null;
  if (tile) return { label: line.label, sum, fill: { tile, scale: 5 } };
  if (line.what === "paint") {
    const room = data.rooms.find((r) => r.record.id === line.room);
    const colour = (
      room?.items.find((i) => i.record.id === line.item)?.record.fields as
        | { colour?: string }
        | undefined
    )?.colour;
    return { label: line.label, sum, fill: { flat: colour ?? "#e8e4da" } };
  }
  if (swatch?.average) return { label: line.label, sum, fill: { flat: swatch.average } };
  return {
    label: line.label,
    sum,
    fill: line.what === "making" || line.what === "fee" ? { hatch: true } : { flat: "#c9c5bb" },
  };
}

/** Lines of a step merged by cloth, so that its bar has few parts: cloths first in the order of their sums, hatching last. */
function mergeParts(parts: readonly StairPart[], currency: string): StairPart[] {
  const key = (p: StairPart): string =>
    "tile" in p.fill ? p.fill.tile.href : "flat" in p.fill ? p.fill.flat : "hatch";
  const groups = new Map<string, StairPart>();
  for (const p of parts) {
    const before = groups.get(key(p));
    groups.set(key(p), before ? { ...before, sum: addMoney(before.sum, p.sum) } : p);
  }
  const rank = (p: StairPart): number => ("hatch" in p.fill ? 1 : 0);
  return [...groups.values()]
    .filter((p) => compareMoney(p.sum, money(0, currency)) > 0)
    .sort((a, b) => rank(a) - rank(b) || compareMoney(b.sum, a.sum));
}

const DUE_WORDS: Readonly<Record<string, string>> = {
  approval: "when you sign",
  order: "when the cloth is ordered",
  fitting: "when everything is fitted",
};

/** The budget as a client reads it: the answer first, one picture, then what makes it up. Only client prices stand in it. */
export function budgetOf(data: ProjectData, book: PictureBook, prefix: string): Budget {
  const { money: m, studio } = data;
  const language = studio.fields.language;
  const clientLines = m.lines.filter(
    (l) => l.what !== "sample" || compareMoney(l.client, money(0, m.currency)) !== 0,
  );
  const unit = 10n ** BigInt(minorDigits(m.currency));
  const cents = clientLines.some((l) => l.client.minor % unit !== 0n || l.tax.minor % unit !== 0n);
  const symbol =
    new Intl.NumberFormat(language, { style: "currency", currency: m.currency })
      .formatToParts(0)
      .find((p) => p.type === "currency")?.value ?? m.currency;
  const print = (sum: Money): string =>
    printMoney(sum, language, !cents).replace(symbol, "").trim();
  const whole = (sum: Money): string => printMoney(sum, language, true);
  const phases = [
    ...new Set(clientLines.filter((l) => l.item !== null).map((l) => l.phase ?? 1)),
  ].sort((a, b) => a - b);
  const reserve = clientLines.find((l) => l.what === "reserve");
  const groups = phases.map((phase, at): BudgetGroup & { parts: StairPart[] } => {
    const lines = clientLines.filter((l) => l.item !== null && (l.phase ?? 1) === phase);
    return {
      name: stepName(at, phases.length),
      sentence: spelled(STEP_WORDS[phase] ?? "", language),
      sum: print(payable(lines, m.taxIncluded, m.currency)),
      rows: itemRows(data, lines, print).map((r) => r.row),
      parts: mergeParts(
        lines.map((l) => stairPart(data, l, book)),
        m.currency,
      ),
    };
  });
  const fees = clientLines.filter((l) => l.item === null && l.what !== "reserve");
  const feeParts = mergeParts(
    fees.map((l) => stairPart(data, l, book)),
    m.currency,
  );
  const stair: Stair = {
    steps: [
      ...groups.map((g) => ({
        name: g.name,
        sum: whole(
          sumMoney(
            g.parts.map((p) => p.sum),
            m.currency,
          ),
        ),
        parts: g.parts,
      })),
      ...(feeParts.length > 0
        ? [
            {
              name: "Fees and fitting",
              sum: whole(
                sumMoney(
                  feeParts.map((p) => p.sum),
                  m.currency,
                ),
              ),
              parts: feeParts,
            },
          ]
        : []),
    ],
    reserve: reserve
      ? {
          sum: reserve.client,
          words: `kept in reserve, ${whole(reserve.client)}`,
        }
      : null,
    limit: m.totals.budget
      ? { sum: m.totals.budget, words: `your limit, ${whole(m.totals.budget)}` }
      : null,
  };
  const remaining = m.totals.remaining;
  const taxWords =
    m.taxIncluded || m.totals.tax.minor > 0n ? ", tax and making included" : ", making included";
  const leaves =
    remaining === null
      ? ""
      : remaining.minor > 0n
        ? ` That leaves ${whole(remaining)} of the sum you set.`
        : remaining.minor === 0n
          ? " That is the sum you set."
          : ` That is ${whole(subtractMoney(money(0, m.currency), remaining))} more than the sum you set.`;
  const roomNames = data.rooms.map((r) => r.record.fields.room.toLowerCase());
  const open = [...new Set(clientLines.filter((l) => l.open).map((l) => l.label))];
  return {
    sum: whole(m.totals.total),
    sentence: `for ${data.rooms.length === 1 ? `the ${roomNames[0]}` : `the ${listed(roomNames)}`}${taxWords}.${leaves}`,
    head: `${capital(["nothing", "one step", "two steps", "three steps", "four steps", "five steps"][stair.steps.length] ?? `${stair.steps.length} steps`)}, one after another`,
    picture: stairSvg(stair, prefix),
    currency: symbol,
    groups: groups.map(({ parts: _, ...g }) => g),
    closing: [
      ...fees.map((l) => ({
        what: l.label,
        sum: print(payable([l], m.taxIncluded, m.currency)),
      })),
      ...(reserve
        ? [
            {
              what: "Kept in reserve for the unforeseen",
              sum: print(reserve.client),
            },
          ]
        : []),
    ],
    total: print(m.totals.total),
    open,
    instalments: m.instalments.map((i) => ({
      name: capital(i.name),
      due: DUE_WORDS[i.due] ?? i.due,
      sum: whole(i.amount),
    })),
    rooms: m.rooms.map((r) => ({
      name: data.rooms.find((d) => d.record.id === r.room)?.record.fields.room ?? r.room,
      sum: whole(r.totals.total),
      budget: r.totals.budget ? whole(r.totals.budget) : "none set",
      words:
        r.totals.remaining === null
          ? ""
          : r.totals.remaining.minor >= 0n
            ? `${whole(r.totals.remaining)} in hand`
            : `${whole(subtractMoney(money(0, m.currency), r.totals.remaining))} over`,
    })),
    footnote: data.project.fields["prices-hold"]
      ? `Cloth lengths include matching the pattern. Each line holds its cloth, making and tax.`
      : "Each line holds its cloth, making and tax.",
  };
}
