import { type Markup, marked } from "../words/marks.ts";

interface Used {
  readonly title: string;
  readonly rows: readonly { readonly what: string; readonly value: string }[];
}

/** Usual values under the names of the items that took them. */
export interface UsualValues {
  readonly titles: readonly string[];
  readonly rows: readonly { readonly what: string; readonly value: Markup }[];
}

/** The usual values of a sheet, each said once: what several items took stands under all their names, in the order of the sheet. */
export function usualValues(items: readonly Used[]): UsualValues[] {
  const takers = new Map<string, { what: string; value: string; titles: string[] }>();
  for (const { title, rows } of items) {
    for (const { what, value } of rows) {
      const said = what.replace(/^[\w-]+: /, "");
      const known = takers.get(`${said}|${value}`);
      if (!known) takers.set(`${said}|${value}`, { what: said, value, titles: [title] });
      else if (!known.titles.includes(title)) known.titles.push(title);
    }
  }
  const groups = new Map<string, { titles: readonly string[]; rows: UsualValues["rows"] }>();
  for (const { what, value, titles } of takers.values()) {
    const key = titles.join("|");
    const rows = groups.get(key)?.rows ?? [];
    groups.set(key, { titles, rows: [...rows, { what, value: marked(value) }] });
  }
  return [...groups.values()];
}
