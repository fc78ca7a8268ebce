import type { Origin } from "../../quantities/text/origins.ts";
import { type Markup, marked } from "../words/marks.ts";

/** A note: one figure and where it comes from. */
export interface OriginNote {
  readonly number: number;
  readonly words: Markup;
}

/** Notes of one kind of origin: what the studio has set, what is only usual, and so on. */
export interface OriginHead {
  readonly from: string;
  readonly notes: readonly OriginNote[];
}

/** Every origin once, numbered by its head, and how each working names its own. */
export interface OriginNotes {
  readonly heads: readonly OriginHead[];
  /** The numbers of some origins, runs drawn together: `1–4, 7`; empty for none. */
  numbersOf(origins: readonly Origin[]): string;
}

const wordsOf = (o: Origin): string => `${o.what}: ${o.value} (${o.source})`;
const keyOf = (o: Origin): string => `${o.from}\n${wordsOf(o)}`;

/** Numbers in order, runs of three or more as their ends. */
export function runsOf(numbers: readonly number[]): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  const runs: number[][] = [];
  for (const n of sorted) {
    const run = runs.at(-1);
    if (run && run.at(-1) === n - 1) run.push(n);
    else runs.push([n]);
  }
  return runs
    .flatMap((run) => (run.length > 2 ? [`${run[0]}\u2013${run.at(-1)}`] : run.map(String)))
    .join(", ");
}

/** The notes of a document: the same figure from the same place is told once, however many workings rest on it. */
export function originNotes(all: readonly Origin[]): OriginNotes {
  const heads = [...new Set(all.map((o) => o.from))];
  const numbers = new Map<string, number>();
  const out: OriginHead[] = heads.map((from) => {
    const notes: OriginNote[] = [];
    for (const origin of all) {
      if (origin.from !== from || numbers.has(keyOf(origin))) continue;
      const number = numbers.size + 1;
      numbers.set(keyOf(origin), number);
      notes.push({ number, words: marked(wordsOf(origin)) });
    }
    return { from, notes };
  });
  return {
    heads: out,
    numbersOf: (origins) => runsOf(origins.map((o) => numbers.get(keyOf(o)) as number)),
  };
}
