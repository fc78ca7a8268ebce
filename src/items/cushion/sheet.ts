import { capital } from "../../units/capital.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { clothLines } from "../common/clothLines.ts";
import { hasMotif } from "../common/join/centredMotif.ts";
import { whichStripe } from "../common/motifNoun.ts";
import { blankUnit } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import type { CushionMade } from "./pieces.ts";
import type { CushionFields } from "./schema.ts";

/** Every piece with its number and cut size. */
function cutLines(made: CushionMade, units: DrawingContext["units"]): string[] {
  const n = (count: number, one: string, many = `${one}s`) =>
    `${count} ${count === 1 ? one : many}`;
  const size = printSize(made.cut, units);
  if (made.bolster) {
    const end = printLength(made.bolster.end, units);
    return [
      `${n(made.count, "body", "bodies")}, ${size}`,
      `${made.count * 2} ends, ${made.bolster.section === "round" ? `circles ${end} across` : `squares ${end}`}`,
    ];
  }
  if (made.form === "box")
    return [
      `${made.count * 2} plates, ${size}`,
      ...(made.boxing?.strips ?? []).map(
        (s) => `${s.count * made.count} × ${s.name}, ${printSize(s.cut, units)}`,
      ),
    ];
  return [
    `${n(made.count, "face")}, ${size}`,
    `${n(made.count * made.backs, "back")}, ${printSize(made.backCut, units)}`,
  ];
}

/** Tops and bottoms wider than their cloth: their parts, and that the pattern runs on. */
function joinLines(made: CushionMade, context: DrawingContext): string[] {
  const wholes = made.cuts.filter(
    (c) => c.surface !== "boxing" && /, (whole|middle|first) width$/.test(c.piece),
  );
  return wholes.map((whole) => {
    const name = whole.piece.split(",")[0] as string;
    const strips = made.cuts.filter(
      (c) => c.surface === whole.surface && c.piece.startsWith(name) && c.piece.endsWith("strip"),
    );
    const size = strips[0] ? printLength(strips[0].width, context.units) : "";
    const motif = whole.across.how === "motif-at";
    const match =
      whole.along.how === "free"
        ? ""
        : motif
          ? ", matched at the joins"
          : ", matched at the selvedge";
    const middle = motif
      ? `a width of ${printLength(whole.width, context.units)}, cut so that a motif stands in the middle,`
      : "a whole width";
    return `${capital(name)} joined: ${middle} and ${strips.length === 1 ? "one strip" : "two strips"} of ${size}, turnings in${match}.`;
  });
}

const BACK_WORDS = {
  motif: "Back with a motif in its middle too.",
  gap: "Back with the gap between two motifs in its middle.",
  "as-it-falls": "Back as it falls.",
} as const;

/** Words of a cushion on its maker's sheet. */
export function cushionSheet(
  fields: CushionFields,
  made: CushionMade,
  context: DrawingContext,
): ItemSheet {
  const { units, language } = context;
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, units);
  const us = language === "en-US";
  const back = fields.back ?? fields.cloth;
  const stripe = whichStripe(context.cloth(fields.cloth), units);
  const patterned = (id: string) => hasMotif(context.cloth(id));
  const groups: SheetGroup[] = [
    {
      heading: made.bolster ? "Body" : made.form === "box" ? "Top" : "Face",
      lines: clothLines(fields.cloth, context),
    },
    {
      heading: made.bolster ? "Ends" : made.form === "box" ? "Bottom" : "Back",
      lines: back === fields.cloth ? ["The same cloth."] : clothLines(back, context),
    },
    ...(made.boxing && fields.boxing && fields.boxing !== fields.cloth
      ? [
          {
            heading: "Boxing",
            lines: fields.boxing === back ? ["As the bottom."] : clothLines(fields.boxing, context),
          },
        ]
      : []),
    {
      heading: "Cut",
      lines: [
        ...cutLines(made, units),
        ...joinLines(made, context),
        ...(made.railroad ? ["Cloth run sideways: the width lies along the bolt."] : []),
        `${p(made.seam)} seams are included.`,
      ],
    },
    {
      heading: us ? "Placing" : "Placing of the pattern",
      lines: [
        made.faceCentred
          ? stripe
            ? `Stripe in the middle of the face: ${stripe}.`
            : "Largest motif in the middle of the face, its top up."
          : made.shows.face === "gap"
            ? "The gap between two motifs in the middle of the face, their tops up."
            : patterned(fields.cloth)
              ? "Face as the pattern falls, its top up."
              : "Plain face, its top up.",
        ...(patterned(back) && !made.bolster ? [BACK_WORDS[made.shows.back]] : []),
      ],
    },
    ...(made.flange.isZero()
      ? []
      : [
          {
            heading: "Flange",
            lines: [
              `${p(made.flange)} flat border all round, stitched in the ditch of the stuffing.`,
            ],
          },
        ]),
    {
      heading: "Edge",
      lines: made.welt
        ? [
            `${us ? "Welt" : "Piping"} of ${context.cloth(made.welt.cloth)?.name ?? made.welt.cloth}, strip ${p(made.welt.strip)}, ${made.welt.cut === "bias" ? "on the bias" : "straight"}.`,
            `${p(made.welt.total)} in all, join at the foot.`,
          ]
        : [made.form === "knife" ? "Knife edge." : "No welt in the seams."],
    },
    {
      heading: us ? "Insert" : "Pad",
      lines: [
        `${made.count} ${made.filling === "fibre" && us ? "fiber" : made.filling} ${us ? "insert" : "pad"}${made.count === 1 ? "" : "s"}, ${printSize(made.insert, units)}`,
      ],
    },
    {
      heading: "Closing",
      lines: [
        made.zip
          ? `Zip ${p(made.zip)} ${made.boxing ? "in the back boxing, past both corners" : made.bolster ? "along the body's seam" : made.form === "flange" ? "across the middle of the back" : "in the lower seam"}.`
          : made.closure === "envelope"
            ? "Envelope back, upper piece on top."
            : "Sewn by hand at the foot.",
      ],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  return {
    groups,
    checks: [
      { text: "Cloth checked for flaws", blank: null },
      ...(made.shows.face === "as-it-falls"
        ? []
        : [{ text: "Repeat measured", blank: blankUnit(units) }]),
      ...(made.faceCentred
        ? [
            {
              text: stripe ? "Stripe in the middle" : "Motif in the middle, its top up",
              blank: null,
            },
          ]
        : []),
      { text: `Finished size ${printSize(made.finished, units)}`, blank: null },
      { text: "Seams and closing sound", blank: null },
    ],
    signs: [
      "Dashed: edge as cut, seam turning outside the finished line.",
      ...(made.faceCentred ? [`Lozenge: middle of the ${stripe ? "stripe" : "motif"}.`] : []),
      "Arrow: up the cloth.",
    ],
  };
}
