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

/** A choice between two, as an allowance describes it: what is chosen, and the words for 1 and for 0. */
const CHOICE = /^(.*); 1: (.*); 0: (.*)$/;

/** What a usual value is of and how much it is; of a choice the words of what was taken. */
function inWords(what: string, value: string): { what: string; value: string } {
  const said = what.replace(/^[\w-]+: /, "");
  const [, of, one, none] = CHOICE.exec(said) ?? [];
  return of === undefined
    ? { what: said, value }
    : { what: of, value: (value === "0" ? none : one) as string };
}

/** The usual values of a sheet, each said once: what several items took stands under all their names, in the order of the sheet. */
export function usualValues(items: readonly Used[]): UsualValues[] {
  const takers = new Map<string, { what: string; value: string; titles: string[] }>();
  for (const { title, rows } of items) {
    for (const row of rows) {
      const { what, value } = inWords(row.what, row.value);
      const known = takers.get(`${what}|${value}`);
      if (!known) takers.set(`${what}|${value}`, { what, value, titles: [title] });
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
