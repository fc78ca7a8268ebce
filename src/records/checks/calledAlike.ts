import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { TextFile } from "../reading/readCard.ts";
import type { Sourced } from "../records.ts";

/**
 * A warning at each card of a folder of the library that is called as another one is: in every document both stand by that name, and
 * neither the client nor a maker can tell which is meant. Capitals and spaces make no other name.
 */
export function cardsCalledAlike<F extends Readonly<Record<K, string>>, K extends string>(
  records: ReadonlyMap<string, Sourced<F>>,
  files: readonly TextFile[],
  key: K,
): Diagnostic[] {
  const byName = new Map<string, Sourced<F>[]>();
  for (const record of records.values()) {
    const name = record.fields[key].trim().replace(/\s+/g, " ").normalize("NFC").toLowerCase();
    byName.set(name, [...(byName.get(name) ?? []), record]);
  }
  return [...byName.values()].flatMap((alike) =>
    alike.length < 2 ? [] : alike.map((record) => warning(record, alike, files, key)),
  );
}

function warning<F extends Readonly<Record<K, string>>, K extends string>(
  record: Sourced<F>,
  alike: readonly Sourced<F>[],
  files: readonly TextFile[],
  key: K,
): Diagnostic {
  const others = alike.filter((each) => each !== record).map(({ path }) => path);
  const place = record.place([key]);
  const lines = files.find(({ path }) => path === record.path)?.text.split(/\r?\n/);
  const name = record.fields[key].trim();
  return diagnostic(
    place,
    "card-called-twice",
    `${others.length === 1 ? `Another ${key} is` : `Other ${key}s are`} called ${name} too, in ${others.join(" and ")}: in the documents nobody can tell which is meant.`,
    {
      severity: "warning",
      actual: name,
      excerpt: place.line === null ? null : (lines?.[place.line - 1] ?? null),
      hint: `Give one of them another name, for example with its colour behind it; or, if it is a copy, take it out of the ${key}s folder.`,
    },
  );
}
