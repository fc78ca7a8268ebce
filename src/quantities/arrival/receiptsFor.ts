import type { LengthAtHand } from "../../cutplan/plan.ts";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../../items/itemKind.ts";
import type { ProjectRecord } from "../../records/records.ts";
import { Length } from "../../units/length.ts";
import { printLike } from "../../units/printLike.ts";
import { mod, type PlannedCloth } from "../cutPieces.ts";
import { grainsDown, grainsNearest, grainsUp } from "../grains.ts";
import { keptReceipts, type Receipt } from "./returned.ts";

/** What has arrived of one lot of a cloth for one maker. */
export interface ArrivedLot {
  readonly lot: string;
  readonly receipts: readonly { readonly receipt: Receipt; readonly index: number }[];
  /** The narrowest that arrived. */
  readonly width: Length | null;
  readonly repeat: Length | null;
  readonly length: Length;
}

/**
 * The lots of a cloth that arrived for a maker and did not go back, the longest first. A receipt without a maker is the only maker's; of a cloth that several
 * makers share it is nobody's. A lot that came with two repeats stands here twice, since no one plan is in register on both; a length
 * that was not measured goes with the first of its lot that was.
 */
export function arrivedLots(
  project: ProjectRecord,
  cloth: string,
  maker: string | null,
  shared: boolean,
): ArrivedLot[] {
  const lots = new Map<string, { receipt: Receipt; index: number }[]>();
  const repeats = new Map<string, Length>();
  for (const { lot, repeat, cloth: own } of keptReceipts(project))
    if (own === cloth && repeat && !repeats.has(lot)) repeats.set(lot, repeat);
  (project.fields.receipts ?? []).forEach((receipt, index) => {
    if (receipt.cloth !== cloth || receipt.returned) return;
    if (
      receipt.maker === undefined ? shared : receipt.maker !== maker && (shared || maker !== null)
    )
      return;
    const repeat = receipt.repeat ?? repeats.get(receipt.lot);
    const key = JSON.stringify([receipt.lot, repeat?.mm.toFraction() ?? null]);
    const same = lots.get(key) ?? [];
    same.push({ receipt, index });
    lots.set(key, same);
  });
  const all = [...lots.values()].map((receipts) =>
    lotOf((receipts[0] as { receipt: Receipt }).receipt.lot, receipts),
  );
  return all.sort((a, b) => b.length.compare(a.length) || (a.lot < b.lot ? -1 : 1));
}

/** Receipts that are planned on together: as wide as the narrowest of them, with the first repeat that was measured. */
export function lotOf(lot: string, receipts: ArrivedLot["receipts"]): ArrivedLot {
  const widths = receipts.flatMap(({ receipt }) => receipt.width ?? []);
  return {
    lot,
    receipts,
    width: widths.length > 0 ? Length.min(...widths) : null,
    repeat: receipts.find(({ receipt }) => receipt.repeat)?.receipt.repeat ?? null,
    length: Length.sum(receipts.map(({ receipt }) => receipt.length)),
  };
}

/** The card's values with what was measured on arrival in their place, and a word where the two differ. */
export function factsOnArrival(
  facts: ClothFacts,
  lot: ArrivedLot,
  project: ProjectRecord,
): { readonly facts: ClothFacts; readonly diagnostics: readonly Diagnostic[] } {
  const found: Diagnostic[] = [];
  const at = (key: string) => project.place(["receipts", lot.receipts[0]?.index ?? 0, key]);
  const say = (length: Length) => length.typed ?? printLike(length);
  if (lot.width && facts.usableWidth && lot.width.isLessThan(facts.usableWidth)) {
    found.push(
      diagnostic(
        at("width"),
        "arrived-narrower",
        facts.washing
          ? `${facts.name} is ${say(lot.width)} wide when it is washed; ${say(facts.usableWidth)} was expected.`
          : `${facts.name} arrived ${say(lot.width)} wide; its card says ${say(facts.usableWidth)}.`,
        {
          severity: "warning",
          hint: "The plan is made on what arrived. Look whether the joined widths still reach.",
        },
      ),
    );
  }
  // What washing makes of a repeat is only ever expected: that it is another is no news.
  if (lot.repeat && facts.repeat && !facts.washing && !lot.repeat.equals(facts.repeat.up)) {
    found.push(
      diagnostic(
        at("repeat"),
        "arrived-repeat-differs",
        `${facts.name} arrived with a repeat of ${say(lot.repeat)}; its card says ${say(facts.repeat.up)}.`,
        {
          severity: "warning",
          hint: "The plan is made on what arrived. Correct the card if the next lot will be the same.",
        },
      ),
    );
  }
  return {
    facts: {
      ...facts,
      usableWidth: lot.width ?? facts.usableWidth,
      ...(lot.width && facts.usableWidth ? { statedWidth: facts.usableWidth } : {}),
      repeat: facts.repeat && lot.repeat ? { ...facts.repeat, up: lot.repeat } : facts.repeat,
    },
    diagnostics: found,
  };
}

/** True where a cloth came as wide, and with the repeat, that its card says. */
export function sameMeasures(card: ClothFacts, came: ClothFacts): boolean {
  const same = (a: Length | null, b: Length | null) => (a && b ? a.equals(b) : a === b);
  return (
    same(card.usableWidth, came.usableWidth) &&
    same(card.repeat?.up ?? null, came.repeat?.up ?? null)
  );
}

/**
 * The lengths at hand for the planner. Where `first-motif` says where the pattern begins, the whole length is there, from its cut
 * end. Where it does not, just under a repeat may be lost before the point where cutting starts: each length is that much shorter,
 * and a flaw that much longer downwards. A flaw's edges go outwards.
 */
export function lengthsAtHand(lot: ArrivedLot, cloth: PlannedCloth, start: number): LengthAtHand[] {
  const vertical = cloth.pattern?.vertical ?? 0;
  return lot.receipts.map(({ receipt }) => {
    const motif = receipt["first-motif"];
    const known = motif !== undefined && vertical > 0;
    const lost = known ? 0 : vertical;
    return {
      length: Math.max(0, grainsDown(receipt.length) - lost),
      // The pattern's origin is a motif's middle.
      start: known ? mod(-grainsNearest(motif), vertical) : start,
      flaws: (receipt.flaws ?? []).map((flaw) => {
        const from = Math.max(0, grainsDown(flaw.from) - lost);
        const left = flaw["from-left"] ?? Length.zero;
        const x = Math.min(grainsDown(left), cloth.usableWidthG);
        const right = flaw.width ? grainsUp(left.plus(flaw.width)) : cloth.usableWidthG;
        return {
          x,
          y: from,
          width: Math.max(0, Math.min(right, cloth.usableWidthG) - x),
          height: grainsUp(flaw.from.plus(flaw.length)) - from,
        };
      }),
    };
  });
}

/** What is free between flaws that reach from selvedge to selvedge: in all, and the longest run. */
export function clearOf(lot: ArrivedLot): { readonly all: Length; readonly longest: Length } {
  const runs = lot.receipts.flatMap(({ receipt }) => {
    const across = (receipt.flaws ?? [])
      .filter((flaw) => !flaw["from-left"] && !flaw.width)
      .sort((a, b) => a.from.compare(b.from));
    const free: Length[] = [];
    let from = Length.zero;
    for (const flaw of across) {
      if (flaw.from.isMoreThan(from)) free.push(Length.min(flaw.from, receipt.length).minus(from));
      const end = flaw.from.plus(flaw.length);
      if (end.isMoreThan(from)) from = Length.min(end, receipt.length);
    }
    return [...free, receipt.length.minus(from)];
  });
  return { all: Length.sum(runs), longest: Length.max(...runs) };
}
