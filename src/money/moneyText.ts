import { type Money, printMoney, sumMoney } from "../units/money.ts";
import type { UnitSystem } from "../units/printLength.ts";
import type { Account } from "./account/account.ts";
import { accountText } from "./account/accountText.ts";
import type { Alternative } from "./alternatives.ts";
import { boltText } from "./boltText.ts";
import type { TaxedLine } from "./lines.ts";
import { moneyTable, type Row } from "./moneyTable.ts";
import { isToCome, pricesIn } from "./pricesIn.ts";
import type { ProjectMoney } from "./projectMoney.ts";
import { isReserve } from "./reserve.ts";

/** How hard a phase is to undo, by its hardest item. */
const UNDO: Readonly<Record<1 | 2 | 3, string>> = {
  1: "easily changed",
  2: "made to measure",
  3: "hard to undo",
};

/** How sums, lengths and names are written in the text. */
export interface MoneyWords {
  readonly language: string;
  readonly units: UnitSystem;
  /** What an item and a room are called; their ids where nothing is said. */
  readonly item: (room: string, item: string) => string;
  readonly room: (room: string) => string;
  readonly maker: (maker: string) => string;
}

const PLAINLY: MoneyWords = {
  language: "en-US",
  units: "inches",
  item: (_, item) => item,
  room: (room) => room,
  maker: (maker) => maker,
};

/**
 * The price of a project or of one room as plain text, for the studio: trade prices stand in it. Room by room and item by item its
 * lines, then the totals, the phases and instalments, whole bolts against cut lengths, the ways that the client may choose, and the account.
 */
export function moneyText(
  all: ProjectMoney,
  room: string | null,
  words: MoneyWords = PLAINLY,
  alternatives: readonly Alternative[] = [],
  account: Account | null = null,
): string {
  const print = (m: Money): string => printMoney(m, words.language);
  // A share of prices that are still to come is no sum yet.
  const told = all.lines.filter((l) => !isReserve(l) || l.client.minor !== 0n);
  const lines = room === null ? told : told.filter((l) => l.room === room);
  const out = [
    ...moneyTable(rowsOf(lines, all.currency, words), print),
    "",
    ...totalsText(all, room, print),
    ...(room === null ? [...wholeProjectText(all, print), ...boltsText(all, words, print)] : []),
    ...alternatives
      .filter((each) => room === null || each.room === room)
      .map((each) => alternativeText(each, words, print)),
    ...(room === null && account ? accountText(account, words.language) : []),
  ];
  return `${out.join("\n")}\n`;
}

/** A heading a room and an item, with the item's own sum, and below each its lines; what belongs to no room comes last. */
function rowsOf(lines: readonly TaxedLine[], currency: string, words: MoneyWords): Row[] {
  const rooms = [...new Set(lines.map((l) => l.room))].sort(nullLast);
  return rooms.flatMap((room): Row[] => {
    const mine = lines.filter((l) => l.room === room);
    const items = [...new Set(mine.map((l) => l.item))].sort(nullLast);
    const heading = room === null ? "For the whole project" : words.room(room);
    return [
      { depth: 0, label: heading, sums: sums(mine, currency), note: "" },
      ...items.flatMap((item): Row[] => {
        const own = mine.filter((l) => l.item === item);
        const rows = own.map(
          (l): Row => ({
            depth: item === null ? 1 : 2,
            label: lineWords(l),
            sums: sums([l], currency),
            note: isToCome(l) ? "price to come" : l.open ? "so far" : "",
          }),
        );
        if (item === null || room === null) return rows;
        const unchosen = own.some((l) => l.unchosen) ? "not chosen yet" : "";
        const title = words.item(room, item);
        return [{ depth: 1, label: title, sums: sums(own, currency), note: unchosen }, ...rows];
      }),
    ];
  });
}

function nullLast(a: string | null, b: string | null): number {
  return Number(a === null) - Number(b === null);
}

/** What lines come to; null while none of their prices is in. */
function sums(lines: readonly TaxedLine[], currency: string): Row["sums"] {
  const of = (key: "trade" | "client" | "tax"): Money =>
    sumMoney(
      lines.map((l) => l[key]),
      currency,
    );
  const all = { trade: of("trade"), client: of("client"), tax: of("tax") };
  return pricesIn(lines, [all.trade, all.client]) === "none" ? null : all;
}

/** `cloth Pomander`, but `making` where the label says no more than the line's kind. */
function lineWords(line: TaxedLine): string {
  const { what, label } = line;
  const said = label.toLowerCase();
  if (said === what) return what;
  return said.startsWith(`${what} `) || what === "fee" || what === "discount" || isReserve(line)
    ? label
    : `${what}: ${label}`;
}

function totalsText(all: ProjectMoney, room: string | null, print: (m: Money) => string): string[] {
  const totals =
    room === null ? all.totals : (all.rooms.find((r) => r.room === room)?.totals ?? all.totals);
  const { budget, remaining, unchosen } = totals;
  const lines = room === null ? all.lines : all.lines.filter((l) => l.room === room);
  const known = pricesIn(lines, [totals.trade, totals.client]);
  if (known === "none")
    return ["No price is in yet.", ...(budget ? [`Budget ${print(budget)}.`] : [])];
  const soFar = known === "some" ? " so far, prices still to come" : "";
  const out = [
    `Trade ${print(totals.trade)}; client ${print(totals.client)}; tax ${print(totals.tax)}${all.taxIncluded ? " (included)" : ""}; total ${print(totals.total)}${soFar}.`,
  ];
  if (unchosen.minor !== 0n)
    out.push(
      `Of it ${print(unchosen)} is for what the client has not chosen yet, as it is drawn; nothing of that is ordered.`,
    );
  if (budget && remaining)
    out.push(
      `Budget ${print(budget)}; ${remaining.minor >= 0n ? `${print(remaining)} left` : `${print({ ...remaining, minor: -remaining.minor })} over`}.`,
    );
  return out;
}

/** What belongs to no phase. */
function wholeWords({ lines }: ProjectMoney): string {
  const less = lines.some((l) => l.what === "discount") ? ", discounts" : "";
  return `Fees${less}, samples and reserve`;
}

/** Phases and instalments, which are the whole project's. */
function wholeProjectText(all: ProjectMoney, print: (m: Money) => string): string[] {
  // Parts of nothing would read as if nothing were to be paid.
  if (pricesIn(all.lines, [all.totals.trade, all.totals.client]) === "none") return [];
  const soFar = (is: boolean): string => (is && all.lines.some((l) => l.open) ? " so far" : "");
  const phases = all.phases.map(
    (p) =>
      `${p.phase === null ? wholeWords(all) : `Phase ${p.phase}${p.commitment ? ` (${UNDO[p.commitment]})` : ""}`}: ${print(p.total)}.`,
  );
  return [
    ...phases,
    ...all.instalments.map(
      (i) => `${i.name}, due at ${i.due}: ${print(i.amount)}${soFar(i.isShare)}.`,
    ),
  ];
}

function boltsText(
  all: ProjectMoney,
  { units, maker }: MoneyWords,
  print: (m: Money) => string,
): string[] {
  const ends = { worth: "Whole bolts cost less.", dear: "", maker };
  return all.bolts.map((b) => boltText(b, units, print, ends));
}

function alternativeText(
  { room, item, title, cost, stands, more }: Alternative,
  words: MoneyWords,
  print: (m: Money) => string,
): string {
  const what = `${words.room(room)}${item === null ? "" : `: ${words.item(room, item)}`}`;
  const than = stands ? ", as it stands" : `, the project ${signed(more, print)}`;
  if (cost.open && cost.client.minor === 0n) return `${what}, ${title}: price to come.`;
  const finished = `${print(cost.client)}${cost.open ? " so far" : ""}`;
  return `${what}, ${title}: finished ${finished}${than}.`;
}

function signed(sum: Money, print: (m: Money) => string): string {
  if (sum.minor === 0n) return "the same";
  return sum.minor > 0n ? `${print(sum)} more` : `${print({ ...sum, minor: -sum.minor })} less`;
}
