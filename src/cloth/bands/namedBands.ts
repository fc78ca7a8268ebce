import { hexOfOklab, oklabOf } from "../../colour/oklab.ts";
import type { MeasuredBand } from "../clothMeasure.ts";
import { channelsOf, oklabOfChannels } from "../pixels/field.ts";
import { distance, type Mean, type Segment } from "./bandSegments.ts";

/** Bands are of one yarn up to this difference, in a field's units, and as a part of the greatest there is. */
const ALIKE = 0.02;
const ALIKE_PART = 0.09;
/** Bands that differ by nearly as much, or yarns that hardly differ by more, in parts of it: which are of one yarn cannot be told. */
const UNLIKE = 0.7;
const NEAR = 1.3;
/** With more than two yarns, lines thinner than this in pixels, or of mixed colours, are not told from the rims of others. */
const FINEST_PX = 2.6;
/** What is narrower than this in pixels may have taken on up to such a part of its neighbours' colours: a file keeps hues in coarse blocks. */
const THIN_PX = 8;
const TAKEN_ON = [0, 0.1, 0.2, 0.3, 0.4, 0.5];
/** How far a thin line's colour may lie beside such a mixture. */
const MIXED = 0.06;
/** How far a yarn may be off the cloth's own colour that it is called by, and what it counts that another shows through it. */
const CALLED = 0.14;
const SHOWN = 0.3;

/** Bands and what they are told by. */
export interface Unnamed {
  readonly segments: readonly Segment[];
  /** The yarn's colour of each band, in a field's channels. */
  readonly colours: readonly Mean[];
  readonly periodPx: number;
  readonly repeatMm: number;
}

interface Yarn {
  mean: Mean;
  width: number;
}

/**
 * Bands with the cloth's own colours and their widths; the widest first, the others in their order after it. Neighbours of one yarn
 * are one band. A thin line that the picture mixes with what lies beside it is of a yarn that stands pure elsewhere, where there is one.
 * Empty where it cannot be told which bands are of one yarn.
 */
export function namedBands(unnamed: Unnamed, hexes: readonly string[]): MeasuredBand[] {
  const { segments, repeatMm } = unnamed;
  const yarns: Yarn[] = [];
  const yarnOf = yarnsOf(unnamed, yarns);
  if (yarnOf === null) return [];
  const names = namesOf(yarns, hexes);
  const named = segments.map(({ from, to }, i) => ({
    hex: names[yarnOf[i] as number] as string,
    widthMm: (to - from) * repeatMm,
  }));
  const joined: MeasuredBand[] = [];
  for (const band of named) {
    const last = joined.at(-1);
    if (last?.hex === band.hex) joined[joined.length - 1] = both(last, band);
    else joined.push(band);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (first && last && joined.length > 1 && first.hex === last.hex) {
    joined[0] = both(first, last);
    joined.pop();
  }
  const most = Math.max(...joined.map(({ widthMm }) => widthMm));
  const widest = joined.findIndex(({ widthMm }) => widthMm === most);
  return [...joined.slice(widest), ...joined.slice(0, widest)];
}

/** Tells the yarn of each band, the widest bands first; new ones are added to `yarns`. */
function yarnsOf({ segments, colours, periodPx }: Unnamed, yarns: Yarn[]): number[] | null {
  const most = Math.max(...colours.flatMap((one) => colours.map((other) => distance(one, other))));
  const limit = Math.max(ALIKE, ALIKE_PART * most);
  const width = (i: number) => (segments[i] as Segment).to - (segments[i] as Segment).from;
  const yarnOf = segments.map(() => -1);
  const order = segments.map((_, i) => i).sort((a, b) => width(b) - width(a));
  let unsure = false;
  let mixed = false;
  for (const i of order) {
    const colour = colours[i] as Mean;
    const around = [i + segments.length - 1, i + 1].map(
      (k) => colours[k % segments.length] as Mean,
    );
    const thin = width(i) * periodPx < THIN_PX;
    const offs = yarns.map(({ mean }) =>
      thin ? mixedOff(colour, mean, around) / Math.max(1, MIXED / limit) : distance(colour, mean),
    );
    const least = Math.min(...offs);
    if (least < limit) {
      const at = offs.indexOf(least);
      yarnOf[i] = at;
      const off = distance(colour, (yarns[at] as Yarn).mean);
      if (thin) mixed ||= off > limit;
      else unsure ||= off > UNLIKE * limit;
      if (!thin) add(yarns[at] as Yarn, colour, width(i));
    } else {
      yarnOf[i] = yarns.length;
      yarns.push({ mean: colour, width: width(i) });
    }
  }
  const near = yarns.some(({ mean }, i) =>
    yarns.slice(0, i).some((other) => distance(mean, other.mean) < NEAR * limit),
  );
  const fine = segments.some((_, i) => width(i) * periodPx < FINEST_PX);
  return unsure || near || (yarns.length > 2 && (fine || mixed)) ? null : yarnOf;
}

/** How far a colour lies from what a yarn becomes that takes on some of its neighbours. */
function mixedOff(colour: Mean, yarn: Mean, around: readonly Mean[]): number {
  return Math.min(
    ...TAKEN_ON.flatMap((part) =>
      around.map((other) =>
        distance(
          colour,
          yarn.map((v, c) => (1 - part) * v + part * (other[c] as number)),
        ),
      ),
    ),
  );
}

function add(yarn: Yarn, colour: Mean, width: number): void {
  const all = yarn.width + width;
  yarn.mean = yarn.mean.map((v, c) => (v * yarn.width + (colour[c] as number) * width) / all);
  yarn.width = all;
}

/**
 * Each yarn by one of the cloth's own colours, no two by the same, so that all together are least off; by its own mean where that is off
 * less. A yarn through which another shows is its colour mixed with that one's.
 */
function namesOf(yarns: readonly Yarn[], hexes: readonly string[]): string[] {
  const known = hexes.map((hex) => channelsOf(oklabOf(hex)));
  const means = yarns.map(({ mean }) => mean);
  const offs = means.map((mean) => known.map((own) => calledOff(mean, own, means)));
  // The best of all ways to call the yarns so far, for each set of colours that these take up.
  let best = new Map<number, { off: number; calls: number[] }>([[0, { off: 0, calls: [] }]]);
  for (const off of offs) {
    const next = new Map<number, { off: number; calls: number[] }>();
    for (const [used, way] of best) {
      for (let k = -1; k < hexes.length; k++) {
        if (k >= 0 && used & (1 << k)) continue;
        const sum = way.off + (k < 0 ? CALLED : (off[k] as number));
        const key = k < 0 ? used : used | (1 << k);
        if (sum < (next.get(key)?.off ?? Number.POSITIVE_INFINITY))
          next.set(key, { off: sum, calls: [...way.calls, k] });
      }
    }
    best = next;
  }
  const least = [...best.values()].reduce((one, other) => (other.off < one.off ? other : one));
  return means.map(
    (mean, i) => hexes[least.calls[i] as number] ?? hexOfOklab(oklabOfChannels(mean)),
  );
}

/** How far a yarn's mean is off a colour, or off what that becomes as another yarn shows through it, which counts as well. */
function calledOff(mean: Mean, own: Mean, others: readonly Mean[]): number {
  return Math.min(
    ...others.flatMap((other) =>
      TAKEN_ON.map((part) => {
        const mixed = own.map((v, c) => (1 - part) * v + part * (other[c] as number));
        return distance(mean, mixed) + SHOWN * part * distance(own, other);
      }),
    ),
  );
}

function both({ hex, widthMm }: MeasuredBand, other: MeasuredBand): MeasuredBand {
  return { hex, widthMm: widthMm + other.widthMm };
}
