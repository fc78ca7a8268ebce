import { printMoney } from "../units/money.ts";
import type { ProjectMoney } from "./projectMoney.ts";

/** The price of a project or a room as plain text: line by line, then the totals, the phases and the instalments. For the studio: trade prices stand in it. */
export function moneyText(all: ProjectMoney, room: string | null, language: string): string {
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
    l.open ? "price to come" : "",
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
  if (totals.budget && totals.remaining)
    out.push(
      `Budget ${print(totals.budget)}; ${totals.remaining.minor >= 0n ? `${print(totals.remaining)} left` : `${print({ ...totals.remaining, minor: -totals.remaining.minor })} over`}.`,
    );
  if (room === null) {
    for (const p of all.phases)
      out.push(
        `${p.phase === null ? "Fees, samples and reserve" : `Phase ${p.phase}`}: ${print(p.total)}.`,
      );
    for (const i of all.instalments) out.push(`${i.name}, due at ${i.due}: ${print(i.amount)}.`);
  }
  return `${out.join("\n")}\n`;
}
