import type { Money } from "../units/money.ts";

/** A line of the table; `depth` 0 is a room, 1 an item, 2 a line of it. */
export interface Row {
  readonly depth: 0 | 1 | 2;
  readonly label: string;
  /** Null, and empty on its line, while no price of it is in. */
  readonly sums: { readonly trade: Money; readonly client: Money; readonly tax: Money } | null;
  readonly note: string;
}

/** Rows as lines of plain text, sums flush right under their heads, an empty line before each room. */
export function moneyTable(rows: readonly Row[], print: (m: Money) => string): string[] {
  const table = rows.map((row) => [
    `${"  ".repeat(row.depth)}${row.label}`,
    ...(["trade", "client", "tax"] as const).map((key) => (row.sums ? print(row.sums[key]) : "")),
    row.note,
  ]);
  const head = ["", "Trade", "Client", "Tax", ""];
  const widths = head.map((h, at) =>
    Math.max(h.length, ...table.map((row) => (row[at] as string).length)),
  );
  const line = (cells: readonly string[]): string =>
    cells
      .map((c, at) =>
        at >= 1 && at <= 3 ? c.padStart(widths[at] as number) : c.padEnd(widths[at] as number),
      )
      .join("  ")
      .trimEnd();
  return [
    line(head),
    ...table.flatMap((cells, i) => [...(rows[i]?.depth === 0 && i > 0 ? [""] : []), line(cells)]),
  ];
}
