import { type Money, printMoney } from "../units/money.ts";
import { printCloth, type UnitSystem } from "../units/printLength.ts";
import type { Alternative } from "./alternatives.ts";
import type { ProjectMoney } from "./projectMoney.ts";

/** How hard a phase is to undo, by its hardest item. */
const UNDO: Readonly<Record<1 | 2 | 3, string>> = {
  1: "easily changed",
  2: "made to measure",
  3: "hard to undo",
};

function signed(sum: Money, print: (m: Money) => string): string {
  if (sum.minor === 0n) return "the same";
  return sum.minor > 0n ? `${print(sum)} more` : `${print({ ...sum, minor: -sum.minor })} less`;
}

/** The price of a project or a room as plain text: line by line, then the totals, the phases and the instalments. For the studio: trade prices stand in it. */
export function moneyText(
  all: ProjectMoney,
  room: string | null,
  language: string,
  units: UnitSystem = "inches",
  alternatives: readonly Alternative[] = [],
): string {
  const lines = room === null ? all.lines : all.lines.filter((l) => l.room === room);
  const totals =
    room === null ? all.totals : (all.rooms.find((r) => r.room === room)?.totals ?? all.totals);
  const print = (m: Parameters<typeof printMoney>[0]): string => printMoney(m, language);
  const table = lines.map((l) => [
    l.item ? `${l.room}/${l.item}` : (l.room ?? ""),
    `${l.what}: ${l.label}`,
    print(l.trade),
    print(l.client),
    print(l.tax),
    [l.open ? "price to come" : "", l.unchosen ? "not chosen yet" : ""]
      .filter((w) => w !== "")
      .join("; "),
  ]);
  const head = ["Item", "What", "Trade", "Client", "Tax", ""];
  const widths = head.map((h, at) =>
    Math.max(h.length, ...table.map((row) => (row[at] as string).length)),
  );
  const row = (cells: readonly string[]): string =>
    cells
      .map((c, at) =>
        at >= 2 && at <= 4 ? c.padStart(widths[at] as number) : c.padEnd(widths[at] as number),
      )
      .join("  ")
      .trimEnd();
  const out = [row(head), ...table.map(row), ""];
  out.push(
    `Trade ${print(totals.trade)}; client ${print(totals.client)}; tax ${print(totals.tax)}${all.taxIncluded ? " (included)" : ""}; total ${print(totals.total)}.`,
  );
  if (totals.unchosen.minor !== 0n)
    out.push(
      `Of it ${print(totals.unchosen)} is for what the client has not chosen yet, as it is drawn; nothing of that is ordered.`,
    );
  if (totals.budget && totals.remaining)
    out.push(
      `Budget ${print(totals.budget)}; ${totals.remaining.minor >= 0n ? `${print(totals.remaining)} left` : `${print({ ...totals.remaining, minor: -totals.remaining.minor })} over`}.`,
    );
  if (room === null) {
    for (const p of all.phases)
      out.push(
        `${p.phase === null ? "Fees, samples and reserve" : `Phase ${p.phase}${p.commitment ? ` (${UNDO[p.commitment]})` : ""}`}: ${print(p.total)}.`,
      );
    for (const i of all.instalments) out.push(`${i.name}, due at ${i.due}: ${print(i.amount)}.`);
  }
  if (room === null)
    for (const b of all.bolts)
      out.push(
        `${b.name}: ${printCloth(b.need, units)} cut ${print(b.cut)}; ${b.boltCount === 1 ? "one whole bolt" : `${b.boltCount} whole bolts`} ${print(b.bolts)}, with ${printCloth(b.over, units)} over. A bolt pays from ${printCloth(b.breakEven, units)}.${b.taken ? " Bought by the bolt." : b.worth ? " Whole bolts cost less." : ""}`,
      );
  for (const a of alternatives.filter((each) => room === null || each.room === room))
    out.push(
      `${a.item ? `${a.room}/${a.item}, ${a.title}` : `${a.room}, ${a.title}`}: finished ${print(a.cost.client)}${a.stands ? ", as it stands" : `, the project ${signed(a.more, print)}`}.`,
    );
  return `${out.join("\n")}\n`;
}
