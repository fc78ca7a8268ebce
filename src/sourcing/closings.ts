import type { ClosedDays } from "../fields/closedField.ts";
import type { StudioRecord } from "../records/records.ts";
import { plusDays } from "./calendar.ts";
import { type OpenDays, openDays } from "./openDays.ts";

/** A closing that falls into the time of a schedule, and whose it is. */
export interface Closing extends ClosedDays {
  /** Key of the maker or supplier who keeps it alone; null of days on which nobody works. */
  readonly of: { readonly maker: string } | { readonly supplier: string } | null;
}

/** Whose days are asked for; without a key they are those on which anybody works. */
export interface Whose {
  readonly maker?: string | null | undefined;
  readonly supplier?: string | null | undefined;
}

/** The days on which the studio works, and this maker and supplier with it. */
export function openDaysOf({ fields }: StudioRecord, whose: Whose = {}): OpenDays {
  const { maker, supplier } = whose;
  return openDays([
    ...(fields.closed ?? []),
    ...((maker && fields.makers?.[maker]?.closed) || []),
    ...((supplier && fields.suppliers?.[supplier]?.closed) || []),
  ]);
}

/** The closings from one day to another of the studio and of these makers and suppliers, as they follow one another; weekends alone are none. */
export function closingsWithin(
  { fields }: StudioRecord,
  from: string,
  to: string,
  makers: readonly string[],
  suppliers: readonly string[],
): Closing[] {
  const own = (list: readonly ClosedDays[] | undefined, of: Closing["of"]): Closing[] =>
    (list ?? []).map((days) => ({ ...days, of }));
  const all = [
    ...own(fields.closed, null),
    ...makers.flatMap((maker) => own(fields.makers?.[maker]?.closed, { maker })),
    ...suppliers.flatMap((key) => own(fields.suppliers?.[key]?.closed, { supplier: key })),
  ];
  return all
    .filter((c) => c.from <= to && c.to >= from && hasWeekday(c))
    .sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
}

const ALWAYS = openDays([]);

function hasWeekday({ from, to }: ClosedDays): boolean {
  for (let day = from; day <= to; day = plusDays(day, 1)) if (ALWAYS.isOpen(day)) return true;
  return false;
}

/** The last day that the studio wrote as closed: what comes after it is not known. Null where none is written. */
export function closedUntil({ fields }: StudioRecord): string | null {
  return (
    (fields.closed ?? [])
      .map((c) => c.to)
      .sort()
      .at(-1) ?? null
  );
}

/** The closed days in which the fitting falls: the studio's, or those of all who fit; null where somebody fits on that day. */
export function closedAtFitting({ fields }: StudioRecord, fitting: string): ClosedDays | null {
  const holds = (list: readonly ClosedDays[] | undefined): ClosedDays | null =>
    (list ?? []).find((c) => c.from <= fitting && fitting <= c.to) ?? null;
  const fitters = Object.values(fields.makers ?? {}).filter((m) => m.makes.includes("fitting"));
  const theirs = fitters.map((m) => holds(m.closed));
  return holds(fields.closed) ?? (theirs.every((c) => c !== null) ? (theirs[0] ?? null) : null);
}
