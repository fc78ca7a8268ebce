import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { Notes } from "../notes.ts";
import { arcMeasures, arcRadius } from "./arcs.ts";

/** What is written of it (`lowerEdgeFields`). */
export interface LowerEdgeSaid {
  readonly "lower-edge"?: "straight" | "arched" | "scalloped" | undefined;
  readonly "end-depth"?: Length | undefined;
  readonly scallops?: number | undefined;
  readonly "scallop-depth"?: Length | undefined;
}

/** The lower edge of a front: straight, or circular arcs of one radius. */
export interface LowerEdge {
  readonly line: "straight" | "arched" | "scalloped";
  /** Where it is shortest: in the middle of an arch, between two scallops. */
  readonly shortest: Length;
  /** Where it is deepest: at the ends of an arch, in the middle of a scallop. */
  readonly deepest: Length;
  /** Arcs side by side; 0 where it is straight. */
  readonly arcs: number;
  readonly chord: Length;
  /** Radius to strike each arc with; null where it is straight. Millimetres, not rounded. */
  readonly radiusMm: number | null;
  /** Along the edge of the front, millimetres. */
  readonly runMm: number;
  /** Face of the front, square millimetres. */
  readonly areaMm2: number;
}

/** The lower edge from what is written; null, with a diagnostic at its line, where it cannot be cut. */
export function lowerEdge(
  fields: LowerEdgeSaid,
  board: Length,
  shortest: Length,
  word: "pelmet" | "valance",
  context: ItemContext,
  notes: Notes,
): LowerEdge | null {
  const line = fields["lower-edge"] ?? "straight";
  checkUnused(fields, line, context, notes);
  const wide = board.toMm();
  const high = shortest.toMm();
  if (line === "straight") {
    const flat = { arcs: 0, chord: board, radiusMm: null, runMm: wide, areaMm2: wide * high };
    return { line, shortest, deepest: shortest, ...flat };
  }
  const arched = line === "arched";
  const arcs = arched ? 1 : (fields.scallops ?? 0);
  const hangs = fields["scallop-depth"];
  const deepest = arched ? fields["end-depth"] : hangs && shortest.plus(hangs);
  if (!deepest || arcs === 0) {
    notes.diagnostics.push(unsaid(line, arcs, shortest, context));
    return null;
  }
  const edge = { line, shortest, deepest, arcs, chord: board.dividedBy(arcs) } as const;
  const rise = deepest.minus(shortest);
  if (rise.compare(Length.zero) <= 0 || rise.times(2).isMoreThan(edge.chord)) {
    notes.diagnostics.push(impossible(edge, rise, word, context));
    return null;
  }
  const { length, area } = arcMeasures(edge.chord.toMm(), rise.toMm());
  const radiusMm = arcRadius(edge.chord.toMm(), rise.toMm());
  const p = (each: Length) => printLength(each, context.units);
  notes.working.push({
    what: arched ? "Radius of the arch" : "Radius of each scallop",
    sum: `(${p(edge.chord)}² ÷ 4 + ${p(rise)}²) ÷ (2 × ${p(rise)})`,
    result: p(Length.mm(radiusMm.toFixed(3))),
    rounded: null,
  });
  // Under an arch the cloth is the deep rectangle less what the arc takes out; scallops add to the short one.
  const areaMm2 = arched ? wide * deepest.toMm() - area : wide * high + arcs * area;
  return { ...edge, radiusMm, runMm: arcs * length, areaMm2 };
}

type Curved = "arched" | "scalloped";

/** The key of a curved edge that is looked at first. */
function keyOf(line: Curved, arcs: number): string {
  if (line === "arched") return "end-depth";
  return arcs === 0 ? "scallops" : "scallop-depth";
}

/** A curved edge without the measures that it is struck by. */
function unsaid(line: Curved, arcs: number, shortest: Length, context: ItemContext): Diagnostic {
  const arched = line === "arched";
  const middle = printLength(shortest, context.units);
  return diagnostic(
    context.place(["lower-edge"]),
    "lower-edge-unsaid",
    arched
      ? "An arched lower edge needs its depth at the ends."
      : "A scalloped lower edge needs the number of its scallops and how far they hang.",
    {
      actual: line,
      expected: keyOf(line, arcs),
      hint: arched
        ? `Write for example end-depth: 20", more than its depth of ${middle} in the middle.`
        : `Write for example scallops: 7 and scallop-depth: 3".`,
    },
  );
}

/** Arcs that do not hang at all, or more than half a circle. */
function impossible(
  {
    line,
    arcs,
    shortest,
    deepest,
    chord,
  }: Pick<LowerEdge, "arcs" | "shortest" | "deepest" | "chord"> & { readonly line: Curved },
  rise: Length,
  word: "pelmet" | "valance",
  context: ItemContext,
): Diagnostic {
  const p = (length: Length) => printLength(length, context.units);
  const most = p(chord.dividedBy(2));
  const shallow = rise.compare(Length.zero) <= 0;
  return diagnostic(
    context.place([keyOf(line, arcs)]),
    "lower-edge-impossible",
    shallow
      ? `At its ends the ${word} is ${p(deepest)} deep, no deeper than in its middle, ${p(shortest)}.`
      : `An arc ${p(chord)} wide cannot hang more than half its width, ${most}; here it is ${p(rise)}.`,
    {
      actual: p(shallow ? deepest : rise),
      expected: shallow ? `more than ${p(shortest)}` : `${most} or less`,
      hint: shallow
        ? "Write depth for the middle and end-depth for the ends."
        : "Take fewer and wider arcs, or let them hang less.",
    },
  );
}

function checkUnused(
  fields: LowerEdgeSaid,
  line: string,
  context: ItemContext,
  notes: Notes,
): void {
  const of = {
    "end-depth": "arched",
    scallops: "scalloped",
    "scallop-depth": "scalloped",
  } as const;
  for (const [key, wanted] of Object.entries(of) as [keyof typeof of, string][]) {
    if (fields[key] === undefined || line === wanted) continue;
    notes.diagnostics.push(
      diagnostic(
        context.place([key]),
        "lower-edge-has-none",
        `${key} says nothing of a ${line} lower edge.`,
        { severity: "warning", hint: `Take the line out, or write lower-edge: ${wanted}.` },
      ),
    );
  }
}

/** Depth of the front at `x` from its left end, millimetres. */
export function depthAt(edge: LowerEdge, x: number): number {
  const shortest = edge.shortest.toMm();
  if (edge.radiusMm === null) return shortest;
  const chord = edge.chord.toMm();
  const radius = edge.radiusMm;
  const rise = edge.deepest.toMm() - shortest;
  const off = x - chord * (Math.min(edge.arcs - 1, Math.floor(x / chord)) + 0.5);
  // Height of the arc over its chord at this distance from the arc's middle.
  const over = Math.sqrt(Math.max(0, radius * radius - off * off)) - (radius - rise);
  return edge.line === "arched" ? shortest + rise - over : shortest + over;
}

/** The same edge on cloth that lies flat, before it is gathered or pleated: each arc as high, its chord and radius longer. */
export function onFlatCloth(edge: LowerEdge, flat: Length): LowerEdge {
  if (edge.arcs === 0) return { ...edge, chord: flat, runMm: flat.toMm() };
  const chord = flat.dividedBy(edge.arcs);
  const rise = edge.deepest.minus(edge.shortest).toMm();
  const { length } = arcMeasures(chord.toMm(), rise);
  return {
    ...edge,
    chord,
    radiusMm: arcRadius(chord.toMm(), rise),
    runMm: edge.arcs * length,
  };
}
