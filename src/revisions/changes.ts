import { saysSame } from "./saysSame.ts";
import type { SentItem, SentOther, SentRevision } from "./sentRevision.ts";

/** In what a thing differs from what was sent. */
export type Difference = "price" | "cloths" | "way" | "priced" | "made";

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
    ["made", madeOtherwise(before, now).length > 0],
  ];
  return all.flatMap(([what, differs]) => (differs ? [what] : []));
}

/** A key in which a thing is made otherwise, with what stood there before and stands now. */
export interface OtherWay {
  readonly key: string;
  readonly before: string | null;
  readonly now: string | null;
  /** True of a part, whose text is in words already. */
  readonly isPart: boolean;
}

/** In what a thing is made otherwise than it was; in nothing where that was not kept. */
export function madeOtherwise(before: SentItem, now: SentItem): OtherWay[] {
  if (!before.made || !now.made) return [];
  const [was, is] = [
    { ...before.made, ...before.parts },
    { ...now.made, ...now.parts },
  ];
  // A part that only one of them keeps may have been there all along.
  const compared = before.parts && now.parts ? [is, was] : [now.made, before.made];
  const isPart = (key: string): boolean => [before, now].some(({ parts }) => key in (parts ?? {}));
  return [...new Set(compared.flatMap((all) => Object.keys(all)))]
    .map((key) => ({
      key,
      before: was[key] ?? null,
      now: is[key] ?? null,
      isPart: isPart(key),
    }))
    .filter((each) => !saysSame(each.before, each.now));
}

/** True where nothing of a thing is another but the last figure of its sum, which the sharing out of tax over all things moves. */
export function isRoundingAlone({ before, now, in: differs }: ChangedItem): boolean {
  const by = Math.abs(now.sumMinor - before.sumMinor);
  return differs.every((each) => each === "price") && by <= 2;
}

function otherChanges(before: readonly SentOther[], now: readonly SentOther[]): Changes["others"] {
  const names = [...new Set([...now, ...before].map(({ what }) => what))];
  const sumIn = (all: readonly SentOther[], what: string) =>
    all.find((each) => each.what === what)?.sumMinor ?? 0;
  return names
    .map((what) => ({ what, beforeMinor: sumIn(before, what), nowMinor: sumIn(now, what) }))
    .filter(({ beforeMinor, nowMinor }) => beforeMinor !== nowMinor);
}
