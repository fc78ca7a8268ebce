import { printCloth, printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { hasMotifInMiddle } from "../common/join/joinPiece.ts";
import { whichStripe } from "../common/motifNoun.ts";
import { blankUnit } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetCheck, SheetGroup } from "../itemDrawing.ts";
import type { CoverPiece } from "./coverPiece.ts";
import type { CoverMade } from "./makeCover.ts";
import { pieceWords } from "./pieceTable.ts";

/** What one kind of thing adds to the words that every cover has. */
export interface SheetAsk {
  /** `chair`, `chairs` */
  readonly one: string;
  readonly many: string;
  readonly existing: boolean;
  readonly note: string | undefined;
  /** After the pieces: filling, fixing, finish. */
  readonly groups?: readonly SheetGroup[];
  readonly checks?: readonly SheetCheck[];
  /** Signs of its own drawing. */
  readonly signs?: readonly string[];
  /** How the pattern runs down it: `down the back, over the seat, down the front`. */
  readonly column: string;
  /** False where nobody can see a pile's way: a headboard's stands. */
  readonly pile: string;
}

const letters = (pieces: readonly CoverPiece[]): string => pieces.map((p) => p.letter).join(", ");

/** Which pieces have their motif in the middle, and how high above the cut foot it stands where that is not half of what is cut. */
function motifLines(pieces: readonly CoverPiece[], context: DrawingContext): string[] {
  const { units } = context;
  const stripe = (p: CoverPiece) => whichStripe(context.cloth(p.cloth), units);
  const striped = pieces.find(stripe);
  const centred = pieces.filter((p) => !stripe(p));
  const even = centred.filter((p) => p.middleAboveFoot.times(2).equals(p.cut[1]));
  const places = centred
    .filter((p) => !even.includes(p))
    .map((p, at) => {
      const high = printLength(p.middleAboveFoot, units);
      return `of ${p.letter}, ${high}${at === 0 ? " above its cut foot" : ""}`;
    });
  return [
    ...(striped
      ? [`Stripe in the middle of ${letters(pieces.filter(stripe))}: ${stripe(striped)}.`]
      : []),
    ...(even.length > 0 ? [`Motif in the middle of ${letters(even)}.`] : []),
    ...(places.length > 0 ? [`Motif in the middle of what is seen ${places.join("; ")}.`] : []),
  ];
}

function pieceLine(p: CoverPiece, units: DrawingContext["units"]): string {
  const size = printSize(p.cut, units);
  const words = `${p.letter} ${pieceWords(p.piece)}${p.count > 1 ? ` × ${p.count}` : ""}, ${size}`;
  if (p.parts) {
    const whole = p.parts.find((x) => x.selvedge === null);
    const strips = p.parts.filter((x) => x.selvedge !== null);
    const strip = strips[0];
    const wholes = p.parts.length - strips.length;
    const middle = hasMotifInMiddle(p.parts) ? "a middle" : "a whole width";
    return `${words}: ${wholes === 1 ? middle : `${wholes} whole widths`}${whole ? ` of ${printLength(whole.width, units)}` : ""} and ${strips.length === 2 ? "two strips" : "one strip"}${strip ? ` of ${printLength(strip.width, units)}` : ""}, turnings in`;
  }
  return p.sideways ? `${words}, cloth sideways` : words;
}

/** Words of an upholstered thing on its maker's sheet: the letters of the drawing are those of the list. */
export function coverSheet(made: CoverMade, ask: SheetAsk, context: DrawingContext): ItemSheet {
  const { units } = context;
  const us = context.language === "en-US";
  const { job } = made;
  const others = [...new Set(made.pieces.filter((p) => p.cloth !== job.cloth).map((p) => p.cloth))];
  const name = (id: string) => context.cloth(id)?.name ?? id;
  const shown = (what: CoverPiece["shown"]) =>
    made.pieces.filter((p) => p.centred && p.shown === what);
  const centred = shown("motif");
  const column = made.pieces.filter((p) => p.inColumn).map((p) => p.letter);
  const joined = made.pieces.filter((p) => p.parts !== null).map((p) => p.letter);
  const nap = context.cloth(job.cloth)?.nap ?? false;
  const measured = made.pieces.length > 0;
  const patterned = context.cloth(job.cloth)?.repeat != null;
  const groups: SheetGroup[] = [
    {
      heading: us ? "Cover" : "Covering",
      lines: [
        ...(ask.existing ? [`The ${ask.one} is there and stays: it is re-covered.`] : []),
        ...(job.loose ? [us ? "A slipcover." : "A loose cover."] : []),
        ...clothLines(job.cloth, context),
      ],
    },
    ...others.map((id) => ({
      heading: `Also ${name(id)}`,
      lines: [
        ...clothLines(id, context),
        `For ${made.pieces
          .filter((p) => p.cloth === id)
          .map((p) => p.letter)
          .join(", ")}.`,
      ],
    })),
    measured
      ? {
          heading: made.count > 1 ? `Cut, for each of ${made.count} ${ask.many}` : "Cut",
          lines: made.pieces.map((p) => pieceLine(p, units)),
        }
      : { heading: "Estimate", lines: [made.estimate ?? "The pieces are not measured."] },
    ...(measured
      ? [
          {
            heading: "Measures",
            lines: [
              `Width by length at the widest; ${job.loose ? "seams and tuck-ins are" : "pull and seams are"} included.`,
              "Mark letter, left or right, and top on the back of every piece.",
            ],
          },
        ]
      : []),
    {
      heading: us ? "Placing" : "Placing of the pattern",
      lines: [
        ...motifLines(centred, context),
        ...(shown("gap").length > 0
          ? [`The gap between two motifs in the middle of ${letters(shown("gap"))}.`]
          : []),
        ...(column.length > 1
          ? [`One motif column down ${column.join(", ")}: ${ask.column}.`]
          : []),
        ...(joined.length > 0
          ? [`Joins in ${joined.join(", ")}${patterned ? " matched" : ""}, never in the middle.`]
          : []),
        ...(made.cuts.some((c) => c.along.how === "level")
          ? ["Left and right level with each other."]
          : []),
        ...(nap ? [ask.pile] : []),
        ...(job.railroad ? ["Cloth run sideways: the width lies along the bolt."] : []),
        job.railroad ? "All pieces one way." : "All tops one way.",
      ],
    },
    {
      heading: us ? "Welt" : "Piping",
      lines: made.welt
        ? [
            `${name(made.welt.cloth)}, ${printCloth(made.welt.length, units)}${made.welt.measured ? "" : ", an estimate"}, strip ${printLength(made.welt.strip, units)} ${made.welt.cut === "bias" ? "on the bias" : "straight"}.`,
          ]
        : ["None."],
    },
    ...(ask.groups ?? []),
    ...(ask.note ? [{ heading: "Note", lines: [ask.note] }] : []),
  ];
  return {
    groups,
    checks: [
      { text: "Cloth checked for flaws", blank: null },
      { text: `Pieces measured again on the ${ask.one}`, blank: null },
      ...(patterned ? [{ text: "Repeat measured", blank: blankUnit(units) }] : []),
      ...(column.length > 1 ? [{ text: `Motif columns line up: ${ask.column}`, blank: null }] : []),
      { text: "Which fire rule applies, and its evidence, noted", blank: null },
      ...(ask.checks ?? []),
    ],
    signs: [
      "Letters: pieces, as in the list.",
      ...(centred.length > 0 ? ["Lozenge: middle of the motif."] : []),
      ...(column.length > 0 || centred.length > 0
        ? ["Long and short dashes: the motif column."]
        : []),
      ...(joined.length > 0 ? ["Long dash, two dots: join."] : []),
      ...(measured ? ["Arrow: up the cloth."] : []),
      ...(ask.signs ?? []),
    ],
  };
}
