import type { SentItem, SentOther, SentRevision } from "./sentRevision.ts";

/** In what a thing differs from what was sent. */
export type Difference = "price" | "cloths" | "way" | "priced";

export interface ChangedItem {
  readonly before: SentItem;
  readonly now: SentItem;
  readonly in: readonly Difference[];
}

/** What is another in a proposal than it was in one that was sent. */
export interface Changes {
  readonly since: SentRevision;
  readonly added: readonly SentItem[];
  readonly removed: readonly SentItem[];
  readonly changed: readonly ChangedItem[];
  /** What belongs to the whole project and is another: nought where it was not, or is no longer, there. */
  readonly others: readonly {
    readonly what: string;
    readonly beforeMinor: number;
    readonly nowMinor: number;
  }[];
  readonly beforeMinor: number;
  readonly nowMinor: number;
}

/**
 * The latest record that a state is compared with: of another revision than its own, by the day on which it was sent, the later letter
 * where two were sent on one day. Null where nothing was sent before, or only in another currency.
 */
export function lastBefore(
  sent: readonly SentRevision[],
  now: { readonly revision: string; readonly currency: string },
): SentRevision | null {
  const others = sent.filter((r) => r.revision !== now.revision && r.currency === now.currency);
  const key = (r: SentRevision) => `${r.sent} ${r.revision}`;
  return others.reduce<SentRevision | null>((a, b) => (a && key(a) > key(b) ? a : b), null);
}

/** Compares two states of a project, thing by thing: an item is the same as long as its room, kind and title are. */
export function changesBetween(before: SentRevision, now: SentRevision): Changes {
  const key = ({ room, item }: SentItem) => `${room}/${item}`;
  const was = new Map(before.items.map((each) => [key(each), each]));
  const is = new Set(now.items.map(key));
  return {
    since: before,
    added: now.items.filter((each) => !was.has(key(each))),
    removed: before.items.filter((each) => !is.has(key(each))),
    changed: now.items.flatMap((each): ChangedItem[] => {
      const old = was.get(key(each));
      const differs = old ? differences(old, each) : [];
      return old && differs.length > 0 ? [{ before: old, now: each, in: differs }] : [];
    }),
    others: otherChanges(before.others, now.others),
    beforeMinor: before.totalMinor,
    nowMinor: now.totalMinor,
  };
}

function differences(before: SentItem, now: SentItem): Difference[] {
  const all: [Difference, boolean][] = [
    ["way", before.way !== now.way],
    // Which stands first hangs on where they were bought.
    ["cloths", [...before.cloths].sort().join("\n") !== [...now.cloths].sort().join("\n")],
    ["price", before.sumMinor !== now.sumMinor],
    ["priced", before.open !== now.open],
  ];
  return all.flatMap(([what, differs]) => (differs ? [what] : []));
}

function otherChanges(before: readonly SentOther[], now: readonly SentOther[]): Changes["others"] {
  const names = [...new Set([...now, ...before].map(({ what }) => what))];
  const sumIn = (all: readonly SentOther[], what: string) =>
    all.find((each) => each.what === what)?.sumMinor ?? 0;
  return names
    .map((what) => ({ what, beforeMinor: sumIn(before, what), nowMinor: sumIn(now, what) }))
    .filter(({ beforeMinor, nowMinor }) => beforeMinor !== nowMinor);
}
