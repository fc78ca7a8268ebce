import type { ProjectData } from "../../projectData.ts";
import { wayTo } from "../../ways.ts";

type Suppliers = NonNullable<ProjectData["studio"]["fields"]["suppliers"]>;

/** A supplier with what is asked of it. */
export interface Asked<T> {
  /** The supplier's key in studio.md. */
  readonly key: string;
  readonly supplier: Suppliers[string];
  readonly lines: readonly T[];
}

/** What is asked of each of the studio's suppliers, by their names; those of whom nothing is asked are left out. */
export function bySupplier<T>(
  { studio }: ProjectData,
  all: readonly { readonly supplier: string | undefined; readonly line: T }[],
): Asked<T>[] {
  return Object.entries(studio.fields.suppliers ?? {})
    .map(([key, supplier]) => ({
      key,
      supplier,
      lines: all.filter((each) => each.supplier === key).map(({ line }) => line),
    }))
    .filter(({ lines }) => lines.length > 0)
    .sort((a, b) => a.supplier.name.localeCompare(b.supplier.name));
}

/** Ways from a page to the letters of each supplier. */
export function letterWays(
  from: string,
  asked: readonly Pick<Asked<unknown>, "key" | "supplier">[],
  pathOf: (key: string) => string,
): { readonly href: string; readonly text: string }[] {
  return asked.map(({ key, supplier }) => ({
    href: wayTo(from, pathOf(key)),
    text: supplier.name,
  }));
}
